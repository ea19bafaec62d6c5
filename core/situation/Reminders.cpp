#include "situation/Reminders.h"

#include "protocol/CareSheets.h"
#include "protocol/Kit.h"
#include "situation/CourseStage.h"
#include "situation/Leave.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <span>

namespace firstdew::situation {

namespace {

constexpr int kHorizonDays = 28;
constexpr std::size_t kAtMost = 60;
constexpr int kCheckInDays = 7; // days ahead on which no check-in makes room for another reminder
/// Days after the due day on which the top-up is mentioned: ever more rarely, so as not to nag (our own choice).
constexpr int kDueRepeats[] = {0, 1, 3, 7, 14, 21};
/// First dew is mentioned on each of the first days, because a prompt top-up matters most, then ever more rarely.
constexpr int kFirstDewRepeats[] = {0, 1, 2, 3, 5, 7, 14, 21};

bool among(std::span<const int> days, int day) { return std::find(days.begin(), days.end(), day) != days.end(); }

bool quiet(MinuteOfDay at, const ReminderSettings& s)
{
    const int from = s.quietFrom.minute;
    const int until = s.quietUntil.minute;
    if (from <= until)
        return at.minute >= from && at.minute < until;
    return at.minute >= from || at.minute < until;
}

/// Moves a time out of the quiet hours to their end. If the quiet hours run past midnight, a time in their evening
/// part moves to the minute before they begin, so that it stays on its day.
MinuteOfDay outsideQuiet(MinuteOfDay at, const ReminderSettings& s)
{
    const int from = s.quietFrom.minute;
    const int until = s.quietUntil.minute;
    if (!quiet(at, s))
        return at;
    if (from < until)
        return s.quietUntil;
    if (at.minute >= from)
        return {from - 1}; // not negative, because `from` is later than `until`
    return s.quietUntil;
}

using CourseDays = std::map<DiarySite, std::vector<LocalDate>>;

class Day {
public:
    Day(const Diary& diary, const Situation& situation, const CourseDays& courseDays, const ReminderSettings& settings,
        LocalDate day)
        : m_diary(diary), m_situation(situation), m_courseDays(courseDays), m_settings(settings), m_day(day)
    {
    }

    std::vector<Reminder> all()
    {
        checkIn();
        for (const SiteSituation& s : m_situation.sites) {
            if (s.stage == Stage::Paused)
                continue;
            session(s);
            skin(s);
            hdss(s);
            review(s);
        }
        cells();
        screening();
        prescriber();
        backUp();
        return std::move(m_out);
    }

private:
    bool isToday() const { return m_day == m_situation.today; }

    void add(ReminderKind kind, std::optional<DiarySite> site, MinuteOfDay at, LocalDate since)
    {
        const std::string key = site ? fmt::format("{}:{}:{}", token(kind), token(*site), m_day.iso())
                                     : fmt::format("{}:{}", token(kind), m_day.iso());
        m_out.push_back({kind, site, {m_day, outsideQuiet(at, m_settings)}, since, key});
    }

    /// One for each site, so that each is answered for itself.
    void checkIn()
    {
        for (const SiteSituation& s : m_situation.sites)
            if (s.stage != Stage::Paused && (!isToday() || !s.checkedInToday))
                add(ReminderKind::CheckIn, s.site, m_settings.checkIn, m_day);
    }

    void session(const SiteSituation& s)
    {
        if (s.advice == Advice::Blocked)
            return;
        if (s.stage == Stage::FirstCourse) {
            const bool done = isToday() && s.advice != Advice::DoCourseSession; // or the skin had enough
            if (done || !std::ranges::binary_search(m_courseDays.at(s.site), m_day))
                return;
            add(ReminderKind::CourseSession, s.site, m_settings.sessions, m_day);
            m_sessionDay = true;
            return;
        }
        if (s.stage == Stage::FirstDew || s.stage == Stage::SweatingAgain)
            firstDew(s);
        else if (s.stage == Stage::KeepingDry)
            topUp(s);
    }

    /// The person's answer to the call on `day`, if any.
    std::optional<CallAnswer> answerOn(const SiteSituation& s, LocalDate day) const
    {
        std::optional<CallAnswer> out;
        for (const auto& e : m_diary.callAnswers)
            if (e.payload.site == s.site && e.happened.date == day)
                out = e.payload.answer;
        return out;
    }

    /// The skin had enough for today: the call stands again tomorrow.
    static bool spared(const SiteSituation& s)
    {
        return std::ranges::any_of(s.reasons, [](const Reason& r) { return r.kind == ReasonKind::EnoughToday; });
    }

    bool chosenFor(const SiteSituation& s, LocalDate day) const { return answerOn(s, day - 1) == CallAnswer::Tomorrow; }

    bool away() const { return m_diary.awayAround(m_day).has_value(); }
    /// The day after days away, asked on a day at home: a call that waited for it comes then.
    bool back() const { return m_diary.awayAround(m_day - 1).has_value(); }

    void firstDew(const SiteSituation& s)
    {
        if (away())
            return;
        const LocalDate called = s.reasons.front().date.value_or(m_situation.today);
        const bool stands =
            s.advice == Advice::FirstDewTopUp || s.advice == Advice::RestartCourse || spared(s) || s.heldByAway;
        const bool chosen = chosenFor(s, m_day);
        const bool due = chosen || (stands && (among(kFirstDewRepeats, m_day - called) || back()));
        if (!due || (spared(s) && isToday()))
            return;
        m_sessionDay = true;
        // In the morning, or at the hour for sessions if the person chose this evening or this day.
        const bool later = chosen || answerOn(s, m_day) == CallAnswer::ThisEvening;
        add(ReminderKind::FirstDew, s.site, later ? m_settings.sessions : m_settings.quietUntil, called);
    }

    void topUp(const SiteSituation& s)
    {
        // The days ahead are planned as if nobody opened the app again; every check-in plans them anew.
        const bool quietly = s.advice == Advice::None && !spared(s);
        auto planned = quietly ? s.forecast.dueIfSilent : s.nextSession;
        std::optional<Leave> leave;
        if (quietly && planned)
            leave = leaveAround(m_diary, *s.forecast.lastSession, *planned);
        if (planned && quietly && s.compares()) // without check-ins the comparison rests, and the forecast calls again
            planned = std::max(*planned, restsFrom(m_diary, s.site, *s.comparison));
        if (!planned || away() || (isToday() && s.advice != Advice::TopUpDue))
            return;
        const LocalDate due = *planned;
        const bool leaving = leave && m_day >= leave->offered && m_day < leave->from;
        const bool stands = s.advice != Advice::Watch || s.heldByAway;
        const bool named = among(kDueRepeats, m_day - due) || (m_day > due && back());
        if (!chosenFor(s, m_day) && !leaving && (!stands || !named))
            return;
        add(ReminderKind::TopUpDue, s.site, m_settings.sessions, leaving ? leave->offered : due);
        m_sessionDay = true;
    }

    void skin(const SiteSituation& s)
    {
        const auto last = std::find_if(m_diary.sessions.rbegin(), m_diary.sessions.rend(), [&](const auto& e) {
            return treats(e.payload.site).contains(s.site); // interrupted or not
        });
        if (last == m_diary.sessions.rend() || last->happened.date + 1 != m_day)
            return;
        for (const auto& e : m_diary.skin)
            if (e.payload.site == s.site && e.happened.date == m_day)
                return;
        add(ReminderKind::SkinCheck, s.site, {std::max(m_settings.quietUntil.minute, 9 * 60)}, m_day);
    }

    void hdss(const SiteSituation& s)
    {
        if (s.stage == Stage::NotStarted)
            return;
        std::optional<LocalDate> last;
        for (const auto& e : m_diary.scores)
            if (e.payload.site == s.site)
                last = e.happened.date;
        const int every = s.stage == Stage::FirstCourse || s.stage == Stage::Review ? 7 : 30;
        if (!last) {
            if (isToday())
                add(ReminderKind::HdssDue, s.site, m_settings.checkIn, m_day);
            return;
        }
        // On the due day, then once a week until it is answered.
        const int late = m_day - (*last + every);
        if (late >= 0 && late % 7 == 0)
            add(ReminderKind::HdssDue, s.site, m_settings.checkIn, *last + every);
    }

    void review(const SiteSituation& s)
    {
        if (s.stage != Stage::Review || !s.lastSession)
            return;
        const int late = m_day - (*s.lastSession + 1);
        if (late >= 0 && late % 7 == 0)
            add(ReminderKind::PrescriberReview, s.site, m_settings.sessions, *s.lastSession + 1);
    }

    void prescriber()
    {
        const auto inForce = protocol::sheetsInForce(m_diary);
        if (std::ranges::any_of(inForce, [&](const auto& s) { return s.sheet.review == m_day; }))
            add(ReminderKind::PrescriberReview, std::nullopt, m_settings.sessions, m_day);
    }

    void cells()
    {
        if (m_sessionDay && protocol::cellsLow(m_situation.cellSessionsLeft))
            add(ReminderKind::Cells, std::nullopt, m_settings.sessions, m_day);
    }

    void screening()
    {
        if (isToday() && m_sessionDay && m_situation.screeningDue == protocol::ScreeningDue::Full)
            add(ReminderKind::Screening, std::nullopt, m_settings.sessions, m_day);
    }

    void backUp()
    {
        if (m_settings.backupMonthly && m_day.day() == 1)
            add(ReminderKind::BackUp, std::nullopt, m_settings.checkIn, m_day);
    }

    const Diary& m_diary;
    const Situation& m_situation;
    const CourseDays& m_courseDays;
    const ReminderSettings& m_settings;
    LocalDate m_day;
    bool m_sessionDay = false;
    std::vector<Reminder> m_out;
};

/// Drops dismissed reminders and moves snoozed ones.
void applyHandled(const Diary& diary, const ReminderSettings& settings, std::vector<Reminder>& list)
{
    for (const auto& e : diary.remindersHandled) {
        if (e.payload.action == ReminderAction::Dismissed)
            std::erase_if(list, [&](const Reminder& r) { return r.key == e.payload.key; });
        else if (e.payload.until)
            for (Reminder& r : list)
                if (r.key == e.payload.key)
                    r.at = {e.payload.until->date, outsideQuiet(e.payload.until->at, settings)};
    }
}

/// The situation from tomorrow on if nothing is said until then. Dampness told in the evening after a session or on the
/// day after calls for nothing that day, and may call on the next.
Situation fromTomorrow(const Diary& diary, const Situation& now)
{
    Situation out = now;
    std::optional<Situation> tomorrow;
    for (SiteSituation& s : out.sites) {
        const auto last = s.forecast.lastSession;
        if (callsForTopUp(s.advice) || !last || diary.today - *last > outlook::kSettlingDays)
            continue;
        if (!tomorrow) {
            Diary later = diary;
            later.today = diary.today + 1;
            tomorrow = assess(later);
        }
        const auto& next = *std::ranges::find(tomorrow->sites, s.site, &SiteSituation::site);
        if (next.stage == Stage::FirstDew || next.stage == Stage::SweatingAgain)
            s = next;
    }
    return out;
}

std::vector<Reminder> gather(const Diary& diary, int days)
{
    const ReminderSettings settings = diary.reminderSettings.value_or(ReminderSettings{});
    if (!settings.on)
        return {};
    const Situation situation = assess(diary);
    CourseDays courseDays;
    for (const diary::SiteInUse& use : diary.sitesInUse())
        courseDays[use.site] = courseDaysAhead(diary, use, days);
    const Situation later = days > 1 ? fromTomorrow(diary, situation) : situation;
    std::vector<Reminder> list;
    for (int i = 0; i < days; ++i) {
        auto some = Day(diary, i == 0 ? situation : later, courseDays, settings, diary.today + i).all();
        std::move(some.begin(), some.end(), std::back_inserter(list));
    }
    applyHandled(diary, settings, list);
    std::stable_sort(list.begin(), list.end(), [](const Reminder& a, const Reminder& b) { return a.at < b.at; });
    return list;
}

} // namespace

TodaysReminders todaysReminders(const Diary& diary, MinuteOfDay now)
{
    if (diary.running(now) != nullptr)
        return {};
    TodaysReminders out{{}, gather(diary, 1)};
    if (!quiet(now, diary.reminderSettings.value_or(ReminderSettings{})))
        std::copy_if(out.standing.begin(), out.standing.end(), std::back_inserter(out.due), [&](const Reminder& r) {
            return r.at <= LocalTime{diary.today, now};
        });
    return out;
}

std::vector<Reminder> dueReminders(const Diary& diary, MinuteOfDay now) { return todaysReminders(diary, now).due; }

std::vector<Reminder> upcomingReminders(const Diary& diary, MinuteOfDay now)
{
    auto list = gather(diary, kHorizonDays);
    std::erase_if(list, [&](const Reminder& r) { return r.at <= LocalTime{diary.today, now}; });
    // The check-ins furthest off make room first: they come every day, and the app is usually opened before.
    for (auto r = list.end(); r != list.begin() && list.size() > kAtMost;)
        if ((--r)->kind == ReminderKind::CheckIn && r->at.date > diary.today + kCheckInDays)
            r = list.erase(r);
    list.resize(std::min(list.size(), kAtMost));
    return list;
}

} // namespace firstdew::situation
