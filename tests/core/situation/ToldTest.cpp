#include "core/Told.h"
#include "protocol/CurrentAdvice.h"
#include "protocol/MayBegin.h"
#include "protocol/SheetCourse.h"
#include "protocol/SheetEffect.h"
#include "situation/Assess.h"
#include "situation/Reminders.h"

#include "core/Build.h"

#include <fmt/format.h>

using namespace firstdew::situation;
using build::day;
using build::Facts;

namespace {

const LocalDate kStart = day("2026-01-05"); // a Monday

std::string told(const Reason& r)
{
    std::string out(token(r.kind));
    const auto add = [&](bool there, const std::string& what) { out += there ? " " + what : std::string(); };
    add(r.number != 0, fmt::format("number {}", r.number));
    add(r.count != 0, fmt::format("of {}", r.count));
    add(r.days != 0, fmt::format("{} days", r.days));
    add(r.from != 0 || r.to != 0, fmt::format("{:g}-{:g}", r.from, r.to));
    add(r.probability != 0, fmt::format("{:.0f} %", 100 * r.probability));
    add(r.date.has_value(), r.date ? r.date->iso() : "");
    if (r.row)
        out += fmt::format(" {}", token(*r.row));
    return out;
}

std::string told(const SiteSituation& s)
{
    std::string out =
        fmt::format("{} as {}: {}, {}", token(s.site), token(s.treatedAs), token(s.stage), token(s.advice));
    if (s.nextSession)
        out += fmt::format(", next {}", s.nextSession->iso());
    if (s.lastSession)
        out += fmt::format(", last {}", s.lastSession->iso());
    if (s.hdssStart)
        out += fmt::format(", hdss {} to {}", *s.hdssStart, s.hdssNow ? std::to_string(*s.hdssNow) : "?");
    if (s.response)
        out += fmt::format(", response {}", token(*s.response));
    if (s.checkedInToday)
        out += ", checked in";
    for (const Reason& r : s.reasons)
        out += fmt::format("; {}", told(r));
    return out;
}

std::string clock(MinuteOfDay at) { return fmt::format("{:02}:{:02}", at.minute / 60, at.minute % 60); }

/// A day as the person lives it: in the morning what is due, in the evening where things stand and what reminds of it.
void tell(std::vector<std::string>& lines, const Facts& d, LocalDate today)
{
    const auto diary = d.on(today);
    const Situation s = assess(diary);
    lines.push_back(
        fmt::format("{}{}{}", today.iso(), s.first ? fmt::format(", first {}", token(s.sites[*s.first].site)) : "",
                    s.cellSessionsLeft ? fmt::format(", {} sessions in the cells", *s.cellSessionsLeft) : ""));
    for (const SiteSituation& site : s.sites)
        lines.push_back("  " + told(site));
    const auto todays = todaysReminders(diary, {21 * 60});
    for (const Reminder& r : todays.standing)
        lines.push_back(fmt::format(
            "  {} {} since {}{}", clock(r.at.at), r.key, r.since.iso(),
            std::any_of(todays.due.begin(), todays.due.end(), [&](const Reminder& due) { return due.key == r.key; })
                ? ""
                : ", not at nine in the evening"));
}

/// What is to come, as a phone's own clock would be told of it.
void tellUpcoming(std::vector<std::string>& lines, const Facts& d, LocalTime now)
{
    lines.push_back(fmt::format("to come after {} {}", now.date.iso(), clock(now.at)));
    for (const Reminder& r : upcomingReminders(d.on(now.date), now.at))
        if (r.kind != ReminderKind::CheckIn || r.at.date < now.date + 3)
            lines.push_back(fmt::format("  {} {} {} since {}", r.at.date.iso(), clock(r.at.at), r.key, r.since.iso()));
}

Facts person() { return Facts().adult().screened(kStart - 3); }

Course courseOf(Site site, LocalDate start)
{
    Course c;
    c.site = site;
    c.start = start;
    return c;
}

} // namespace

TEST_CASE("told: a first course with a day missed, a week away, a move by hand, and its review")
{
    std::vector<std::string> lines;
    auto d = person();
    tell(lines, d, kStart - 1);
    Machine m;
    m.name = "invented";
    m.power = PowerSource::Cells;
    d.add(m, kStart - 2).add(CellsChanged{"invented"}, kStart - 1);
    d.add(courseOf(Site::Hands, kStart), kStart - 1).add(Hdss{DiarySite::Hands, 4}, kStart - 1, 0);
    tellUpcoming(lines, d, {kStart - 1, {12 * 60}});
    for (int i = -1; i < 45; ++i) {
        const LocalDate today = kStart + i;
        if (i == 5)
            d.add(Away{kStart + 8, kStart + 12}, today);
        if (i == 7)
            d.add(CourseMove{Site::Hands, 5, kStart + 14}, today);
        if (i == 7 || i == 15)
            d.add(Hdss{DiarySite::Hands, i == 7 ? 4 : 3}, today);
        if (i == 30)
            d.screened(today);
        if (i == 38)
            d.add(Hdss{DiarySite::Hands, 2}, today);
        if (i == 40)
            d.add(ReviewDone{Site::Hands, true}, today);
        const auto site = assess(d.on(today)).sites;
        if (i % 4 != 2)
            tell(lines, d, today);
        // Done as advised, but for the third day.
        if (!site.empty() && site[0].advice == Advice::DoCourseSession && i != 3) {
            d.session(Site::Hands, today);
            tell(lines, d, today);
        }
        if (i < 10 || i > 35)
            d.checkIn(DiarySite::Hands, today, i < 10 ? Level::Wet : Level::Dry);
    }
    build::checkTold("course", lines);
}

TEST_CASE("told: sessions missed until they crowd, both paces, and days away for top-ups")
{
    std::vector<std::string> lines;
    auto d = person().add(courseOf(Site::Hands, kStart), kStart - 1).add(Hdss{DiarySite::Hands, 4}, kStart - 1, 0);
    d.session(Site::Hands, kStart).session(Site::Hands, kStart + 1);
    for (const int i : {3, 4, 12, 22})
        tell(lines, d, kStart + i);
    for (const Pace pace : allOf<Pace>()) {
        const auto chosen = Facts(d).add(CoursePace{Site::Hands, pace}, kStart + 22, 6 * 60);
        lines.push_back(fmt::format("chosen {}:", token(pace)));
        tell(lines, chosen, kStart + 22);
        tellUpcoming(lines, chosen, {kStart + 22, {12 * 60}});
    }
    auto leaving = person().session(Site::Hands, kStart).add(Hdss{DiarySite::Hands, 2}, kStart);
    const LocalDate due = *assess(leaving.on(kStart)).sites[0].nextSession;
    leaving.add(Away{due, due + 6}, kStart);
    lines.push_back("away when the top-up falls due:");
    tellUpcoming(lines, leaving, {kStart, {12 * 60}});
    for (const int i : {-3, -2, -1, 0, 3, 6, 7})
        tell(lines, leaving, due + i);
    leaving.checkIn(DiarySite::Hands, due + 2, Level::Wet).checkIn(DiarySite::Hands, due + 3, Level::Wet);
    lines.push_back("and wet on the way:");
    for (const int i : {3, 7})
        tell(lines, leaving, due + i);
    build::checkTold("life", lines);
}

TEST_CASE("told: every way in which dampness returns, and every answer to the call")
{
    struct Report {
        int after;
        Level level;
        bool stirred;
    };
    std::vector<std::string> lines;
    const std::vector<std::pair<const char*, std::vector<Report>>> ways{
        {"clammy at rest the next day", {{1, Level::Clammy, false}}},
        {"clammy at rest after three days", {{3, Level::Clammy, false}}},
        {"clammy at rest after twelve days", {{12, Level::Clammy, false}}},
        {"clammy in the heat after twelve days", {{12, Level::Clammy, true}}},
        {"clammy twice within two days, in the heat", {{5, Level::Clammy, true}, {7, Level::Clammy, true}}},
        {"clammy twice, three days apart, in the heat", {{5, Level::Clammy, true}, {8, Level::Clammy, true}}},
        {"clammy, then dry", {{12, Level::Clammy, false}, {13, Level::Dry, false}}},
        {"wet in the heat", {{6, Level::Wet, true}}},
        {"wet at rest", {{6, Level::Wet, false}}},
        {"dripping at rest, then dry", {{6, Level::Dripping, false}, {7, Level::Dry, false}}},
    };
    for (const auto& [what, reports] : ways) {
        auto d = person().session(Site::Hands, kStart);
        d.add(Hdss{DiarySite::Hands, 2}, kStart);
        for (const Report& r : reports)
            d.checkIn(DiarySite::Hands, kStart + r.after, r.level,
                      r.stirred ? SetOf<Circumstance>{Circumstance::Heat} : SetOf<Circumstance>{});
        const LocalDate last = kStart + reports.back().after;
        lines.push_back(fmt::format("{}:", what));
        for (const int later : {0, 1, 2, 4})
            tell(lines, d, last + later);
        for (const CallAnswer answer : allOf<CallAnswer>()) {
            auto answered = Facts(d).add(CallAnswered{DiarySite::Hands, answer, ""}, last, 21 * 60);
            lines.push_back(fmt::format("answered {}:", token(answer)));
            for (const int later : {0, 1})
                tell(lines, answered, last + later);
            answered.checkIn(DiarySite::Hands, last + 3, Level::Clammy);
            lines.push_back("and clammy again three days later:");
            tell(lines, answered, last + 3);
        }
    }
    build::checkTold("dampness", lines);
}

TEST_CASE("told: a rhythm by the forecast alone, its answers and a personal risk")
{
    std::vector<std::string> lines;
    auto d = person().session(Site::Feet, kStart).session(Site::Feet, kStart + 9).session(Site::Feet, kStart + 20);
    for (int i = 0; i < 20; ++i)
        if (i % 9 != 0)
            d.checkIn(DiarySite::Feet, kStart + i, i % 9 == 8 ? Level::Clammy : Level::Dry);
    for (const char* risk : {"", "0.05", "0.5", "0.009", "0.91", "0.01", "0.9", "much"}) {
        auto own = d;
        if (*risk != '\0')
            own.add(Preference{"risk", risk}, kStart + 20);
        lines.push_back(fmt::format("risk '{}':", risk));
        for (const int i : {20, 21, 22, 28, 35, 42})
            tell(lines, own, kStart + i);
    }
    const LocalDate due = *assess(d.on(kStart + 20)).sites[0].nextSession;
    for (const CallAnswer answer : allOf<CallAnswer>()) {
        auto answered = Facts(d).add(CallAnswered{DiarySite::Feet, answer, ""}, due, 12 * 60);
        lines.push_back(fmt::format("answered {} on the due day:", token(answer)));
        for (const int later : {0, 1, 2, 3, 7})
            tell(lines, answered, due + later);
    }
    build::checkTold("rhythm", lines);
}

TEST_CASE("told: what bars a session, what is paused, and what matters first of several sites")
{
    std::vector<std::string> lines;
    auto d = person();
    Machine m;
    m.name = "invented";
    d.add(m, kStart - 2).session(Site::HandFoot, kStart).session(Site::Armpits, kStart, Waveform::Pulsed);
    lines.push_back("three sites, a machine for direct current alone:");
    for (const int i : {0, 1, 10, 25, 26, 40})
        tell(lines, d, kStart + i);
    auto paused = Facts(d).add(Pause{Site::Armpits, true}, kStart + 5);
    lines.push_back("the armpits paused:");
    tell(lines, paused, kStart + 25);
    auto wet = Facts(paused).checkIn(DiarySite::Feet, kStart + 25, Level::Wet);
    lines.push_back("the feet wet:");
    tell(lines, wet, kStart + 25);
    for (const ScreeningRow row : allOf<ScreeningRow>()) {
        auto answered = Facts(wet).screened(kStart + 25, {row});
        lines.push_back(fmt::format("yes to {}:", token(row)));
        tell(lines, answered, kStart + 25);
        answered.add(Clearance{row, "Dr. Invented", kStart + 25, kStart + 26}, kStart + 25, 12 * 60);
        lines.push_back("cleared until the next day:");
        tell(lines, answered, kStart + 26);
        tell(lines, answered, kStart + 27);
    }
    lines.push_back("never screened:");
    tell(lines, Facts().adult().session(Site::Hands, kStart), kStart + 30);
    lines.push_back("the course comes to nothing:");
    auto none = person().add(courseOf(Site::Feet, kStart), kStart).add(Hdss{DiarySite::Feet, 3}, kStart, 0);
    for (const int n : {1, 2, 4, 7, 10, 15, 22})
        none.session(Site::Feet, kStart + (n - 1));
    none.add(Hdss{DiarySite::Feet, 3}, kStart + 22);
    tell(lines, none, kStart + 22);
    tell(lines, none, kStart + 29);
    none.add(ReviewDone{Site::Feet, false}, kStart + 30);
    tell(lines, none, kStart + 31);
    build::checkTold("bars", lines);
}

TEST_CASE("told: hours of reminders, quiet hours and handled reminders")
{
    std::vector<std::string> lines;
    const auto base = person().session(Site::Hands, kStart).add(Hdss{DiarySite::Hands, 2}, kStart);
    for (const auto& [from, until] : {std::pair{22, 7}, {7, 22}, {13, 13}, {0, 9}, {18, 21}}) {
        ReminderSettings s;
        s.quietFrom = {from * 60};
        s.quietUntil = {until * 60};
        s.backupMonthly = true;
        auto d = Facts(base).add(s, kStart);
        lines.push_back(fmt::format("quiet from {} to {}:", from, until));
        tellUpcoming(lines, d, {kStart, {12 * 60}});
        d.checkIn(DiarySite::Hands, kStart + 12, Level::Clammy);
        tell(lines, d, kStart + 12);
        tell(lines, d, kStart + 14);
    }
    auto off = base;
    ReminderSettings silent;
    silent.on = false;
    tell(lines, off.add(silent, kStart), kStart + 12);
    auto handled = Facts(base).checkIn(DiarySite::Hands, kStart + 12, Level::Clammy);
    const auto key = [&](ReminderKind kind) {
        for (const Reminder& r : todaysReminders(handled.on(kStart + 12), {21 * 60}).standing)
            if (r.kind == kind)
                return r.key;
        return std::string("none");
    };
    lines.push_back("the call snoozed to nine and to eleven in the evening, and dismissed:");
    const std::string call = key(ReminderKind::FirstDew);
    for (const int hour : {21, 23})
        tell(lines,
             Facts(handled).add(ReminderHandled{call, ReminderAction::Snoozed, LocalTime{kStart + 12, {hour * 60}}},
                                kStart + 12),
             kStart + 12);
    tell(lines, Facts(handled).add(ReminderHandled{call, ReminderAction::Dismissed, {}}, kStart + 12), kStart + 12);
    auto sheet = base;
    CareSheet c;
    c.review = kStart + 30;
    tell(lines, sheet.add(c, kStart), kStart + 30);
    build::checkTold("hours", lines);
}

namespace {

/// Where the site stands, whether a session may begin, and with what aim and limit.
void tellPermission(std::vector<std::string>& lines, const std::string& what, const Facts& d, LocalDate today,
                    Site site = Site::Hands, Waveform waveform = Waveform::Direct)
{
    const auto diary = d.on(today);
    lines.push_back(what + ":");
    for (const SiteSituation& s : assess(diary).sites)
        if (s.treatedAs == site)
            lines.push_back("  " + told(s));
    const auto may = firstdew::protocol::mayBegin(diary, site, waveform);
    if (!may) {
        lines.push_back(fmt::format("  {} {}: no: {}", token(site), token(waveform), may.error().message));
        return;
    }
    const auto aim = firstdew::protocol::currentAdviceFor(diary, site, waveform, may->limit);
    lines.push_back(fmt::format("  {} {}: aim {:g} mA ({}), limit {:g} mA{}", token(site), token(waveform),
                                aim.target.mA, token(aim.reasons.front()), may->limit.mA,
                                may->warnAbove ? fmt::format(", warns above {:g} mA", may->warnAbove->mA) : ""));
}

Session sessionWith(SetOf<SkinFinding> skin, Waveform waveform = Waveform::Direct)
{
    Session s;
    s.site = Site::Hands;
    s.waveform = waveform;
    s.comfortable = Milliamps{16};
    s.comfort = Comfort::Comfortable;
    s.skin = skin;
    return s;
}

} // namespace

TEST_CASE("told: what the skin, a lapse, pads, care sheets and clearances allow")
{
    std::vector<std::string> lines;
    const LocalDate today = kStart + 20;
    const auto base = Facts().adult().screened(today).session(Site::Hands, kStart);
    const auto on = [&](const char* what, Payload payload, LocalDate day, const Facts& d) {
        tellPermission(lines, what, Facts(d).add(std::move(payload), day), today);
    };
    on("a burn with the last session", sessionWith({SkinFinding::Burn}), today - 2, base);
    on("a blister noted in the diary", SideEffect{DiarySite::Hands, {SkinFinding::Blister}, ""}, today - 1, base);
    const auto burned = Facts(base).add(sessionWith({SkinFinding::Burn}), today - 2);
    on("seen by a clinician since", SkinClearance{DiarySite::Hands, "Dr. Invented", today - 1}, today - 1, burned);
    on("seen before it happened", SkinClearance{DiarySite::Hands, "Dr. Invented", today - 3}, today - 1, burned);
    const auto comfortable = Facts(base).add(sessionWith({}), today - 4);
    tellPermission(lines, "comfortable last time", comfortable, today);
    on("red the next day", SideEffect{DiarySite::Hands, {SkinFinding::Redness}, ""}, today - 3, comfortable);
    tellPermission(lines, "red the next day, pulsed",
                   Facts(base)
                       .add(sessionWith({}, Waveform::Pulsed), today - 4)
                       .add(SideEffect{DiarySite::Hands, {SkinFinding::Redness}, ""}, today - 3),
                   today, Site::Hands, Waveform::Pulsed);
    for (const int days : {55, 56, 181, 182}) {
        auto lapsed = Facts().adult().screened(today).add(sessionWith({}), today - days);
        tellPermission(lines, fmt::format("{} days without a session", days), lapsed, today);
    }
    const Machine both{"invented", true, true, {}, false, {}, {}};
    auto pads = Facts(base).add(both, kStart);
    tellPermission(lines, "pads of unknown size", pads, today, Site::Armpits, Waveform::Pulsed);
    auto known = both;
    known.pad = SquareCentimetres{45};
    tellPermission(lines, "pads of 45 cm2", pads.add(known, kStart), today, Site::Armpits, Waveform::Pulsed);
    CareSheet sheet;
    sheet.given = kStart;
    sheet.sites = {Site::Feet};
    sheet.directLimit = Milliamps{9};
    tellPermission(lines, "a sheet of 9 mA for the feet", Facts(base).add(sheet, kStart), today);
    tellPermission(lines, "the same for hand + foot", Facts(base).add(sheet, kStart), today, Site::HandFoot);
    sheet.sites = {};
    sheet.waveform = Waveform::Pulsed;
    tellPermission(lines, "pulsed prescribed", Facts(base).add(sheet, kStart), today);
    tellPermission(lines, "no birth date", Facts().screened(today).session(Site::Hands, kStart), today);
    auto wet = Facts().adult().screened(kStart).session(Site::Hands, kStart);
    wet.checkIn(DiarySite::Hands, kStart + 1, Level::Wet);
    tellPermission(lines, "wet the day after a top-up", wet, kStart + 1);
    wet.checkIn(DiarySite::Hands, kStart + 2, Level::Wet);
    tellPermission(lines, "wet the day after that, too", wet, kStart + 2);
    build::checkTold("permission", lines);
}

namespace {

std::string toldCourse(const firstdew::protocol::PrescribedCourse& next)
{
    return fmt::format("    course for {}: {} from {}, days {}{}{}", token(next.course.site), token(next.course.plan),
                       next.course.start.iso(), fmt::join(next.course.days, " "), next.goesOn ? ", goes on" : "",
                       next.replaces ? ", in place of another" : "");
}

/// What accepting the sheet changes, and what is called on that day and the days after.
void tellSheet(std::vector<std::string>& lines, std::string_view what, const CareSheet& sheet, Facts& d,
               LocalDate today)
{
    lines.push_back(fmt::format("{}:", what));
    const auto diary = d.on(today);
    for (const auto& effect : firstdew::protocol::effectsOf(sheet, diary)) {
        std::string line = "    for";
        for (const Site site : effect.sites)
            line += fmt::format(" {}", token(site));
        for (const auto& change : effect.changes)
            line += fmt::format("; {}{}", token(change.field), change.loosens ? " (allows more)" : "");
        lines.push_back(line);
    }
    for (const auto& next : firstdew::protocol::coursesOf(sheet, diary))
        lines.push_back(toldCourse(next));
    for (const Payload& payload : firstdew::protocol::acceptanceOf(sheet, diary))
        d.add(payload, today, 9 * 60);
    for (const int ahead : {0, 1, 2})
        for (const auto& site : assess(d.on(today + ahead)).sites)
            lines.push_back(fmt::format("  {} {}", (today + ahead).iso(), told(site)));
}

} // namespace

TEST_CASE("told: what follows from a care sheet")
{
    std::vector<std::string> lines;
    Facts d = Facts().adult().screened(kStart);
    CareSheet sheet;
    sheet.who = "Dr Vance";
    sheet.given = kStart;
    sheet.sites = {Site::Hands};
    sheet.plan = CourseTemplate::Prescribed;
    sheet.days = {1, 3, 5, 8};
    sheet.directLimit = Milliamps{10};
    tellSheet(lines, "a first sheet with its days", sheet, d, kStart);
    sheet.given = kStart + 1;
    sheet.directLimit = Milliamps{12};
    tellSheet(lines, "a higher limit, the same days", sheet, d, kStart + 1);
    sheet.given = kStart + 2;
    sheet.days = {1, 2, 3};
    tellSheet(lines, "other days", sheet, d, kStart + 2);
    sheet.given = kStart + 1;
    tellSheet(lines, "a sheet older than the one in use", sheet, d, kStart + 3);
    sheet.given = kStart + 4;
    sheet.sites = {Site::HandFoot};
    sheet.plan = CourseTemplate::MonWedFri;
    sheet.days = {};
    tellSheet(lines, "hand and foot in place of the hands", sheet, d, kStart + 4);
    build::checkTold("sheets", lines);
}
