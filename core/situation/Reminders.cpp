#include "situation/Reminders.h"

#include "situation/Sites.h"

#include <algorithm>
#include <fmt/format.h>

namespace firstdew::situation {

namespace {

constexpr int kHorizonDays = 28;
constexpr std::size_t kAtMost = 60;
/// Our own choice: a due top-up is named on its day and then ever more rarely, so as never to nag.
constexpr int kDueRepeats[] = {0, 1, 3, 7, 14, 21};

/// Pushes a time out of the quiet hours: to their end, or, where they run past midnight, from the evening part
/// back to the minute before they begin, so that it stays on its day.
MinuteOfDay outsideQuiet(MinuteOfDay at, const ReminderSettings& s)
{
    const int from = s.quietFrom.minute;
    const int until = s.quietUntil.minute;
    if (from == until)
        return at;
    if (from < until)
        return at.minute >= from && at.minute < until ? s.quietUntil : at;
    if (at.minute >= from)
        return {std::max(0, from - 1)};
    return at.minute < until ? s.quietUntil : at;
}

bool quiet(MinuteOfDay at, const ReminderSettings& s)
{
    const int from = s.quietFrom.minute;
    const int until = s.quietUntil.minute;
    if (from <= until)
        return at.minute >= from && at.minute < until;
    return at.minute >= from || at.minute < until;
}

class Day {
public:
    Day(const Record& record, const Situation& situation, const ReminderSettings& settings, LocalDate day)
        : m_record(record), m_situation(situation), m_settings(settings), m_day(day)
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
        const std::string key = site ? fmt::format("{}:{}:{}", word(kind), word(*site), m_day.iso())
                                     : fmt::format("{}:{}", word(kind), m_day.iso());
        m_out.push_back({kind, site, {m_day, outsideQuiet(at, m_settings)}, since, key});
    }

    void checkIn()
    {
        std::vector<DiarySite> open;
        for (const SiteSituation& s : m_situation.sites)
            if (s.stage != Stage::Paused && !(isToday() && s.checkedInToday))
                open.push_back(s.site);
        if (!open.empty())
            add(ReminderKind::CheckIn, open.size() == 1 ? std::optional(open.front()) : std::nullopt, m_settings.checkIn,
                m_day);
    }

    void session(const SiteSituation& s)
    {
        if (s.advice == Advice::Blocked)
            return;
        const LocalDate today = m_situation.today;
        if (s.stage == Stage::FirstCourse) {
            if (!s.course)
                return;
            for (const auto& p : s.course->sessions)
                if (p.state == protocol::CourseState::Planned && p.date == m_day && !(isToday() && s.advice != Advice::DoCourseSession)) {
                    add(ReminderKind::CourseSession, s.site, m_settings.sessions, m_day);
                    m_sessionDay = true;
                }
            return;
        }
        if (s.stage == Stage::FirstDew || s.stage == Stage::SweatingAgain) {
            const LocalDate called = s.reasons.empty() || !s.reasons.front().date ? today : *s.reasons.front().date;
            const bool now = isToday() && (s.advice == Advice::FirstDewTopUp || s.advice == Advice::RestartCourse);
            const bool putOff = s.advice == Advice::Watch && s.nextSession == m_day && m_day > today;
            if (!now && !putOff)
                return;
            m_sessionDay = true;
            // At once where it has just been noticed; at the session hour where the person chose the evening or a later day.
            const bool evening = std::any_of(s.reasons.begin(), s.reasons.end(), [&](const Reason& r) {
                return r.kind == ReasonKind::PutOff && r.date == today;
            });
            add(ReminderKind::FirstDew, s.site, now && !evening ? m_settings.quietUntil : m_settings.sessions, called);
            return;
        }
        if (s.stage == Stage::KeepingDry && s.forecast.due && s.advice != Advice::Watch) {
            const LocalDate due = *s.forecast.due;
            const int late = m_day - due;
            if (isToday() && s.advice != Advice::TopUpDue)
                return;
            if (std::find(std::begin(kDueRepeats), std::end(kDueRepeats), late) != std::end(kDueRepeats)) {
                add(ReminderKind::TopUpDue, s.site, m_settings.sessions, due);
                m_sessionDay = true;
            }
        }
    }

    void skin(const SiteSituation& s)
    {
        if (!s.lastSession || m_day != *s.lastSession + 1)
            return;
        for (const auto& e : m_record.all<SideEffect>())
            if (e.payload.site == s.site && e.happened.date == m_day)
                return;
        add(ReminderKind::SkinCheck, s.site, {std::max(m_settings.quietUntil.minute, 9 * 60)}, m_day);
    }

    void hdss(const SiteSituation& s)
    {
        if (s.stage == Stage::NotStarted)
            return;
        std::optional<LocalDate> last;
        for (const auto& e : m_record.all<Hdss>())
            if (e.payload.site == s.site && e.happened.date <= m_situation.today)
                last = e.happened.date;
        const int every = s.stage == Stage::FirstCourse || s.stage == Stage::Review ? 7 : 30;
        if (!last) {
            if (isToday())
                add(ReminderKind::HdssDue, s.site, m_settings.checkIn, m_day);
            return;
        }
        // On the day it falls due, and once a week until it is answered.
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
        const auto* sheet = m_record.latest<CareSheet>();
        if (sheet != nullptr && sheet->payload.review == m_day)
            add(ReminderKind::PrescriberReview, std::nullopt, m_settings.sessions, m_day);
    }

    void cells()
    {
        if (m_sessionDay && m_situation.cellSessionsLeft && *m_situation.cellSessionsLeft <= 1)
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

    const Record& m_record;
    const Situation& m_situation;
    const ReminderSettings& m_settings;
    LocalDate m_day;
    bool m_sessionDay = false;
    std::vector<Reminder> m_out;
};

/// Drops what the person dismissed and moves what they snoozed.
void heed(const Record& record, const ReminderSettings& settings, std::vector<Reminder>& list)
{
    for (const auto& e : record.all<ReminderHandled>()) {
        if (e.payload.action == ReminderAction::Dismissed)
            std::erase_if(list, [&](const Reminder& r) { return r.key == e.payload.key; });
        else if (e.payload.until)
            for (Reminder& r : list)
                if (r.key == e.payload.key)
                    r.at = {e.payload.until->date, outsideQuiet(e.payload.until->at, settings)};
    }
}

std::vector<Reminder> gather(const Record& record, LocalDate today, int days)
{
    const auto* chosen = record.latest<ReminderSettings>();
    const ReminderSettings settings = chosen ? chosen->payload : ReminderSettings{};
    if (!settings.on)
        return {};
    const Situation situation = assess(record, today);
    std::vector<Reminder> list;
    for (int i = 0; i < days; ++i) {
        auto some = Day(record, situation, settings, today + i).all();
        std::move(some.begin(), some.end(), std::back_inserter(list));
    }
    heed(record, settings, list);
    std::stable_sort(list.begin(), list.end(), [](const Reminder& a, const Reminder& b) { return a.at < b.at; });
    return list;
}

} // namespace

std::vector<Reminder> dueReminders(const Record& record, LocalTime now)
{
    const auto* chosen = record.latest<ReminderSettings>();
    if (bathRunning(record) || quiet(now.at, chosen ? chosen->payload : ReminderSettings{}))
        return {};
    auto list = gather(record, now.date, 1);
    std::erase_if(list, [&](const Reminder& r) { return r.at > now; });
    return list;
}

std::vector<Reminder> upcomingReminders(const Record& record, LocalTime now)
{
    auto list = gather(record, now.date, kHorizonDays);
    std::erase_if(list, [&](const Reminder& r) { return r.at <= now; });
    if (list.size() > kAtMost)
        list.resize(kAtMost);
    return list;
}

} // namespace firstdew::situation
