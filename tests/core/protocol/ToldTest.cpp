#include "core/Told.h"
#include "protocol/Area.h"
#include "protocol/Course.h"
#include "protocol/Limits.h"
#include "protocol/Preparation.h"
#include "protocol/Script.h"

#include "core/Build.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

using namespace firstdew::protocol;
using build::day;

namespace {

const char* name(LimitRow row)
{
    switch (row) {
    case LimitRow::AdultDirect: return "adult-direct";
    case LimitRow::ChildDirect: return "child-direct";
    case LimitRow::AdultPulsed: return "adult-pulsed";
    case LimitRow::ChildPulsed: return "child-pulsed";
    case LimitRow::CareSheet: return "care-sheet";
    case LimitRow::Density: return "density";
    case LimitRow::PadUnknown: return "pad-unknown";
    case LimitRow::PrescribedWaveform: return "prescribed-waveform";
    case LimitRow::ArmpitsPulsedOnly: return "armpits-pulsed-only";
    case LimitRow::MachineLacksWaveform: return "machine-lacks-waveform";
    }
    return "?";
}

std::string told(const LimitAnswer& a)
{
    std::string out = a.allowed ? fmt::format("{:g} mA by {}", a.limit.mA, name(a.binding))
                                : fmt::format("no, by {}", name(a.binding));
    out += " of";
    for (const LimitRow row : a.applied)
        out += fmt::format(" {}", name(row));
    return a.warnAbove ? out + fmt::format("; warns above {:g} mA", a.warnAbove->mA) : out;
}

std::string told(const Step& s)
{
    return fmt::format("  {} {} s{}, phase {}, polarity {:+d}, {}, {:g} mA, {}", token(s.kind), s.length.s,
                       s.timed ? " by the clock" : "", s.phase, s.polarity, s.side ? token(*s.side) : "no side",
                       s.limit.mA, token(s.prompt));
}

void tell(std::vector<std::string>& lines, const std::string& what, const CourseRequest& q)
{
    const auto plan = planCourse(q);
    if (!plan) {
        lines.push_back(fmt::format("{}: refused, {} at {}: {}", what, plan.error().code, plan.error().input,
                                    plan.error().message));
        return;
    }
    lines.push_back(fmt::format("{}: until {}{}, shift cost {}", what, plan->windowEnd.iso(),
                                plan->fits ? "" : fmt::format(", {} days over", plan->overrunDays), plan->shiftCost));
    for (const auto& s : plan->sessions)
        lines.push_back(fmt::format("  {} (day {}) {} {} {:+d} {}", s.number, s.templateDay, s.date.iso(),
                                    token(s.state), s.shift, token(s.why)));
}

CourseRequest course(CourseTemplate plan, LocalDate start)
{
    CourseRequest q;
    q.plan = plan;
    q.start = q.today = start;
    return q;
}

/// As sheetFor() finds it: none where the sheet is for other sites alone.
std::vector<CareSheet> sheetsOf(const CareSheet& sheet, Site site)
{
    return sheet.sites.empty() || sheet.sites.contains(site) ? std::vector{sheet} : std::vector<CareSheet>{};
}

void tellMovedByHand(std::vector<std::string>& lines, LocalDate monday)
{
    CourseRequest q;
    for (const int later : {20, 21, 22}) {
        q = course(CourseTemplate::Seven, monday);
        q.today = monday + later;
        tell(lines, fmt::format("nothing done by day {}", later + 1), q);
    }
    q = course(CourseTemplate::Seven, monday);
    q.fixed = {{2, monday + 2}};
    tell(lines, "the second put on day 3", q);
    q.fixed = {{2, monday + 3}, {3, monday + 4}};
    tell(lines, "the second on day 4, the third on day 5", q);
    q.fixed = {{3, monday}};
    tell(lines, "the third put on day 1", q);
    q.fixed = {{8, monday + 3}};
    tell(lines, "an eighth", q);
    q.fixed = {{0, monday + 3}};
    tell(lines, "a session before the first", q);
    q.fixed = {{7, monday + 40}};
    tell(lines, "the seventh put beyond the window", q);
    q.fixed = {{2, monday + 3}, {3, monday + 3}};
    tell(lines, "two on one day", q);
    q.done = {monday};
    q.fixed = {{1, monday + 3}};
    tell(lines, "one that is done put on another day", q);
}

void tellMissed(std::vector<std::string>& lines, LocalDate monday)
{
    auto q = course(CourseTemplate::Seven, monday);
    q.today = monday + 12;
    for (const std::vector<int>& missed : {std::vector<int>{}, {2}, {2, 3, 5}, {1, 8}}) {
        q.missed.clear();
        for (const int n : missed)
            q.missed.push_back(monday + (n - 1));
        const auto so = courseSoFar(q);
        REQUIRE(so);
        const auto days = [&](const std::vector<LocalDate>& list) {
            std::string out;
            for (const LocalDate d : list)
                out += fmt::format(" {}", d - monday + 1);
            return out.empty() ? std::string(" none") : out;
        };
        lines.push_back(fmt::format("day 13, missed {}: done{}; missed{}; no session on{}", missed, days(so->done),
                                    days(so->missed), days(so->notSessionDays)));
    }
}

} // namespace

TEST_CASE("told: the limit of every site, current and age, with and without a sheet, a machine and an area")
{
    std::vector<std::string> lines;
    CareSheet lower;
    lower.directLimit = Milliamps{12};
    lower.pulsedLimit = Milliamps{18};
    CareSheet higher;
    higher.directLimit = higher.pulsedLimit = Milliamps{99};
    CareSheet same;
    same.directLimit = Milliamps{15};
    same.pulsedLimit = Milliamps{30};
    CareSheet feetOnly = lower;
    feetOnly.sites = {Site::Feet};
    Machine direct;
    Machine pulsed;
    pulsed.direct = false;
    pulsed.pulsed = true;
    for (const Site site : allOf<Site>())
        for (const Waveform waveform : allOf<Waveform>())
            for (const AgeGroup age : allOf<AgeGroup>()) {
                LimitQuery q;
                q.site = site;
                q.waveform = waveform;
                q.age = age;
                const auto tell = [&](const char* with, const LimitQuery& asked) {
                    lines.push_back(fmt::format("{} {} {}{}: {}", token(site), token(waveform), token(age), with,
                                                told(limitFor(asked))));
                };
                tell("", q);
                auto other = q;
                for (const auto& [with, sheet] : {std::pair{", sheet of 12 and 18", lower},
                                                  {", sheet of 99", higher},
                                                  {", sheet of 15 and 30", same},
                                                  {", sheet for feet alone", feetOnly}}) {
                    other.sheets = sheetsOf(sheet, site);
                    tell(with, other);
                }
                other = q;
                other.machine = direct;
                tell(", direct machine", other);
                other.machine = pulsed;
                tell(", pulsed machine", other);
                other = q;
                for (const double cm2 : {0.0, 20.0, 45.0, 158.2}) {
                    other.contact = SquareCentimetres{cm2};
                    tell(fmt::format(", over {:g} cm2", cm2).c_str(), other);
                }
            }
    build::checkTold("limits", lines);
}

TEST_CASE("told: the steps of every kind of session")
{
    std::vector<std::string> lines;
    for (const Site site : allOf<Site>())
        for (const WayOfWorking way : allOf<WayOfWorking>())
            for (const PolaritySwap swap : allOf<PolaritySwap>())
                for (const Side first : {Side::Right, Side::Left}) {
                    if (first == Side::Left && (site != Site::HandFoot || swap == PolaritySwap::Switch))
                        continue;
                    ScriptRequest q;
                    q.site = site;
                    q.waveform = site == Site::Armpits ? Waveform::Pulsed : Waveform::Direct;
                    q.age = AgeGroup::Adult;
                    q.way = way;
                    q.swap = swap;
                    q.firstSide = first;
                    q.limit = {20};
                    q.raise = {70};
                    q.lower = {25};
                    q.swapping = {50};
                    const auto script = scriptFor(q);
                    const std::string what =
                        fmt::format("{}, {}, {}, {} first", token(site), token(way), token(swap), token(first));
                    if (!script) {
                        lines.push_back(
                            fmt::format("{}: refused, {} at {}", what, script.error().code, script.error().input));
                        continue;
                    }
                    lines.push_back(
                        fmt::format("{}: {} s held of {} s", what, script->holdTotal().s, script->total().s));
                    for (const Step& s : script->steps)
                        lines.push_back(told(s));
                }
    build::checkTold("scripts", lines);
}

TEST_CASE("told: first courses with days done, missed, away, not free and moved by hand")
{
    std::vector<std::string> lines;
    const LocalDate monday = day("2026-01-05");
    for (const CourseTemplate plan : {CourseTemplate::Seven, CourseTemplate::MonWedFri, CourseTemplate::Daily})
        for (const int later : {0, 2, 5, 6})
            tell(lines, fmt::format("{} from {}", token(plan), (monday + later).iso()), course(plan, monday + later));
    auto q = course(CourseTemplate::Prescribed, monday);
    q.days = {1, 3, 30};
    tell(lines, "days 1, 3 and 30", q);
    q.days = {3, 1};
    tell(lines, "days that go back", q);
    q.days = {};
    tell(lines, "no days", q);

    q = course(CourseTemplate::Seven, monday);
    q.done = {monday, monday + 1, monday + 1};
    q.today = monday + 1;
    tell(lines, "two done, the second today", q);
    q.today = monday + 9;
    tell(lines, "two done, on day 10", q);
    q.missed = {monday + 9};
    tell(lines, "two done, day 10 missed", q);
    q.away = {{monday + 10, monday + 16}};
    tell(lines, "and away for a week from day 11", q);
    q.free = {Weekday::Mon, Weekday::Thu};
    tell(lines, "and only Mondays and Thursdays free", q);
    q.today = monday + 26;
    tell(lines, "two done, on day 27", q);
    q = course(CourseTemplate::Seven, monday);
    for (int i = 0; i < 9; ++i)
        q.done.push_back(monday + i);
    q.today = monday + 9;
    tell(lines, "nine done", q);
    tellMovedByHand(lines, monday);
    tellMissed(lines, monday);
    build::checkTold("courses", lines);
}

TEST_CASE("told: the preparation for every site, machine and way of working, and the waits after each answer")
{
    std::vector<std::string> lines;
    for (const Site site : allOf<Site>())
        for (const WayOfWorking way : allOf<WayOfWorking>())
            for (const bool remote : {false, true})
                for (const PowerSource power : allOf<PowerSource>())
                    for (const bool wounds : {false, true}) {
                        Machine m;
                        m.remote = remote;
                        m.power = power;
                        std::string items;
                        for (const PrepItem item : preparationFor(site, m, way, wounds))
                            items += fmt::format(" {}", token(item));
                        lines.push_back(fmt::format("{}, {}{}, {}{}:{}", token(site), token(way),
                                                    remote ? ", remote" : "", token(power), wounds ? ", wounds" : "",
                                                    items));
                    }
    const LocalTime now{day("2026-01-05"), {18 * 60}};
    for (const int antiperspirant : {-60, 0, 23 * 60, 24 * 60 - 1, 24 * 60})
        for (const int shaved : {-60, 0, 3 * 24 * 60 - 1, 3 * 24 * 60}) {
            const auto ago = [&](int minutes) {
                const int at = 18 * 60 - minutes;
                const int days = at >= 0 ? 0 : (-at + 24 * 60 - 1) / (24 * 60);
                return LocalTime{now.date - days, {at + days * 24 * 60}};
            };
            Preparation p;
            p.antiperspirant = ago(antiperspirant);
            p.shaved = ago(shaved);
            std::string waits;
            for (const PrepWait& w : waitsFor(p, now))
                waits += fmt::format(" {} until {} {}", token(w.item), w.until.date.iso(), w.until.at.minute);
            lines.push_back(fmt::format("antiperspirant {} min ago, shaved {} min ago:{}", antiperspirant, shaved,
                                        waits.empty() ? " no wait" : waits));
        }
    build::checkTold("preparation", lines);
}

TEST_CASE("told: the heights and weights that are accepted")
{
    std::vector<std::string> lines;
    for (const double cm : {39.9, 40.0, 250.0, 250.1})
        for (const double kg : {1.9, 2.0, 350.0, 350.1}) {
            const auto body = bodySurface({cm}, {kg});
            lines.push_back(fmt::format("{} cm, {} kg: {}", cm, kg,
                                        body ? fmt::format("{:.4f} m2", body->cautious().m2)
                                             : body.error().code + ": " + body.error().message));
        }
    build::checkTold("bodies", lines);
}
