#pragma once

#include "diary/Diary.h"

#include <algorithm>

namespace firstdew::diary {

/// Whether a kind is an event, which is ignored while its date is in the future. The others are choices, kit and plan.
template <class P>
inline constexpr bool kHappens =
    std::is_same_v<P, CheckIn> || std::is_same_v<P, Session> || std::is_same_v<P, Screening> ||
    std::is_same_v<P, Clearance> || std::is_same_v<P, SkinClearance> || std::is_same_v<P, Course> ||
    std::is_same_v<P, ReviewDone> || std::is_same_v<P, Hdss> || std::is_same_v<P, Weighing> ||
    std::is_same_v<P, SideEffect> || std::is_same_v<P, CallAnswered> || std::is_same_v<P, Taught>;

/// Adds entries to a diary, one at a time. Within each kind they must come in order of time.
class Notes {
public:
    explicit Notes(Diary& diary) : m_diary(diary) {}

    void note(const Entry<Person>& e) { m_diary.person = e.payload; }
    void note(const Entry<SiteUse>& e) { m_diary.chosen[e.payload.site] = e.payload.inUse; }
    void note(const Entry<Machine>& e) { m_diary.machine = e.payload; }
    void note(const Entry<CellsChanged>& e) { m_diary.cellsChanged.push_back(e); }

    void note(const Entry<CheckIn>& e)
    {
        m_diary.checkIns.push_back(e);
        auto& reports = m_diary.sites[e.payload.site].reports;
        const DayReport report{e.happened.date, e.payload.level, e.payload.with};
        if (reports.empty() || reports.back().date != report.date)
            reports.push_back(report);
        else if (report.level >= reports.back().level)
            reports.back() = report;
        orderByClock(e.payload.site, e.happened.date);
    }

    void note(const Entry<Session>& e)
    {
        m_diary.sessions.push_back(e);
        if (!e.payload.bath.empty())
            m_diary.ledSessions[e.payload.bath].logged = true;
        for (const DiarySite site : allOf<DiarySite>()) {
            auto& days = m_diary.sites[site].sessionDays;
            if (e.payload.completed && treats(e.payload.site).contains(site) &&
                (days.empty() || days.back() != e.happened.date))
                days.push_back(e.happened.date);
            if (e.payload.completed && treats(e.payload.site).contains(site))
                orderByClock(site, e.happened.date);
        }
    }

    void note(const Entry<BathPrepared>& e)
    {
        m_diary.ledSessions[e.payload.bath].prepared = e.payload;
        m_diary.ledSessions[e.payload.bath].on = e.happened.date;
        m_diary.ledSessions[e.payload.bath].from = e.happened.at;
        m_diary.latestLed = e.payload.bath;
    }

    void note(const Entry<BathEvent>& e)
    {
        auto& events = m_diary.ledSessions[e.payload.bath].events;
        const auto at = std::upper_bound(events.begin(), events.end(), e.payload.sequence,
                                         [](int sequence, const BathEvent& b) { return sequence < b.sequence; });
        events.insert(at, e.payload);
    }

    void note(const Entry<Screening>& e)
    {
        answer(e, false);
        m_diary.anyScreening = e.happened.date;
        if (e.payload.full && std::ranges::all_of(allOf<ScreeningRow>(), [&](ScreeningRow row) {
                return isAsked(e.payload, row) || knownByAge(row);
            }))
            m_diary.fullScreening = e.happened.date;
    }

    /// A yes was asked for, whatever the list of what was asked says.
    static bool isAsked(const Screening& s, ScreeningRow row) { return s.asked.contains(row) || s.yes.contains(row); }

    /// Adds the answers only, not the day of the screening. With `onlyYes` it skips every no: a no dated ahead must not
    /// clear anything.
    void answer(const Entry<Screening>& e, bool onlyYes)
    {
        for (const ScreeningRow row : allOf<ScreeningRow>()) {
            const bool yes = e.payload.yes.contains(row);
            if (isAsked(e.payload, row) && (yes || !onlyYes))
                m_diary.answers[row].push_back({yes, e.happened, e.position});
        }
    }

    void note(const Entry<Clearance>& e) { m_diary.clearances.push_back(e); }
    void note(const Entry<SkinClearance>& e) { m_diary.skinClearances.push_back(e); }
    void note(const Entry<Preparation>& e) { m_diary.preparations.push_back(e); }

    void note(const Entry<Course>& e)
    {
        m_diary.courses.push_back(e);
        for (const DiarySite site : allOf<DiarySite>())
            if (treats(e.payload.site).contains(site))
                m_diary.sites[site].courses.push_back({e.payload, e.happened, {}, true});
        for (const auto& review : m_diary.reviews)
            apply(review);
    }

    void note(const Entry<CourseMove>& e) { m_diary.courseMoves.push_back(e); }

    void note(const Entry<CoursePace>& e) { m_diary.coursePaces.push_back(e); }

    void note(const Entry<ReviewDone>& e)
    {
        m_diary.reviews.push_back(e);
        apply(e);
    }

    void note(const Entry<Away>& e) { m_diary.away.push_back(e); }
    void note(const Entry<Pause>& e) { m_diary.paused[e.payload.site] = e.payload.paused; }
    void note(const Entry<Hdss>& e) { m_diary.scores.push_back(e); }
    void note(const Entry<Weighing>& e) { m_diary.weighings.push_back(e); }
    void note(const Entry<SideEffect>& e) { m_diary.skin.push_back(e); }

    void note(const Entry<OtherTreatment>& e)
    {
        m_diary.otherTreatments.push_back(e);
        for (const DiarySite site : allOf<DiarySite>())
            if (e.payload.sites.empty() || e.payload.sites.contains(site))
                m_diary.sites[site].otherwise.push_back({e.payload.from, e.payload.until});
    }

    void note(const Entry<Comparison>& e) { m_diary.comparisons.push_back(e); }
    void note(const Entry<Taught>& e) { m_diary.taught.push_back(e); }
    void note(const Entry<CallAnswered>& e) { m_diary.callAnswers.push_back(e); }
    void note(const Entry<ReminderSettings>& e) { m_diary.reminderSettings = e.payload; }
    void note(const Entry<ReminderHandled>& e) { m_diary.remindersHandled.push_back(e); }
    void note(const Entry<CareSheet>& e) { m_diary.careSheets.push_back(e); }
    void note(const Entry<Question>& e) { m_diary.questions.push_back(e); }
    void note(const Entry<Preference>& e) { diary::apply(m_diary.preferences, e.payload); }
    void note(const Entry<Retraction>&) {}

private:
    /// Finds the report of that day again that was given before the day's first session. A session may be noted before
    /// the check-ins of its day or after them.
    void orderByClock(DiarySite site, LocalDate day)
    {
        const auto* session = m_diary.firstSessionOn(site, day);
        std::optional<DayReport> counts;
        const auto& all = m_diary.checkIns;
        auto e = std::lower_bound(all.begin(), all.end(), day,
                                  [](const auto& c, LocalDate d) { return c.happened.date < d; });
        for (; e != all.end() && e->happened.date == day; ++e)
            if (e->payload.site == site && (session == nullptr || e->happened <= session->happened) &&
                (!counts || e->payload.level >= counts->level))
                counts = DayReport{day, e->payload.level, e->payload.with};
        auto& reports = m_diary.sites[site].spellReports;
        auto at = std::lower_bound(reports.begin(), reports.end(), day,
                                   [](const DayReport& r, LocalDate d) { return r.date < d; });
        if (at != reports.end() && at->date == day)
            at = reports.erase(at);
        if (counts)
            reports.insert(at, *counts);
    }

    void apply(const Entry<ReviewDone>& e)
    {
        for (SiteDiary& site : m_diary.sites.values)
            for (CourseSet& set : site.courses)
                if (set.course.site == e.payload.site && e.happened.date >= set.course.start) {
                    set.keepGoing = e.payload.keepGoing;
                    set.firstReview = set.firstReview.value_or(e.happened.date);
                }
    }

    Diary& m_diary;
};

} // namespace firstdew::diary
