#include "protocol/Course.h"

#include <algorithm>
#include <fmt/format.h>
#include <limits>

namespace firstdew::protocol {

namespace {

constexpr int kLongestCourse = 1000;                          // sessions
constexpr int kFarthestDay = 3660;                            // days from day 1
constexpr long kNever = std::numeric_limits<long>::max() / 4; // a cost that two of can be added

/// Days 1, 2, 4, 7, 10 and 22: NHS hospital leaflet WPR26540; day 15 from memory; seven in four weeks: common practice.
const std::vector<int> kSevenDays{1, 2, 4, 7, 10, 15, 22};
constexpr int kFourWeeks = 28;
constexpr int kMostInARow = 3; // sessions on consecutive days without a question: our own choice

std::vector<int> everyWeekday(LocalDate start, std::initializer_list<Weekday> on, std::size_t count)
{
    std::vector<int> days;
    for (int day = 1; days.size() < count; ++day)
        if (std::find(on.begin(), on.end(), (start + (day - 1)).weekday()) != on.end())
            days.push_back(day);
    return days;
}

Result<TemplateDays> prescribedDays(const std::vector<int>& days)
{
    if (days.empty())
        return Error{"no-days", "days", "a course by prescription names no days; list them, counted from day 1"};
    if (days.size() > static_cast<std::size_t>(kLongestCourse))
        return Error{
            "too-many-days", "days",
            fmt::format("a course of {} sessions is longer than {}; check the list", days.size(), kLongestCourse)};
    for (std::size_t i = 0; i < days.size(); ++i) {
        if (days[i] < 1 || days[i] > kFarthestDay)
            return Error{"day-out-of-range", "days",
                         fmt::format("day {} is not between 1 and {}; count from day 1", days[i], kFarthestDay)};
        if (i > 0 && days[i] <= days[i - 1])
            return Error{"days-not-ascending", "days",
                         fmt::format("day {} follows day {}; list each day once, ascending", days[i], days[i - 1])};
    }
    return TemplateDays{days, std::max(kFourWeeks, days.back())};
}

std::optional<Error> refusal(const CourseRequest& q)
{
    for (const auto& [from, to] : q.away)
        if (to < from)
            return Error{
                "away-backwards", "away",
                fmt::format("days away from {} end before they begin on {}; turn them round", from.iso(), to.iso())};
    for (const LocalDate d : q.done) {
        if (d < q.start)
            return Error{"done-before-start", "done",
                         fmt::format("{} lies before day 1, {}; a session before the course is no part of it", d.iso(),
                                     q.start.iso())};
        if (d > q.today)
            return Error{
                "done-in-the-future", "done",
                fmt::format("{} is after today, {}; only sessions already done count", d.iso(), q.today.iso())};
    }
    for (const LocalDate d : q.missed) {
        if (d > q.today)
            return Error{
                "missed-in-the-future", "missed",
                fmt::format("{} is after today, {}; to skip a day to come, name it as away", d.iso(), q.today.iso())};
        if (std::find(q.done.begin(), q.done.end(), d) != q.done.end())
            return Error{"done-and-missed", "missed",
                         fmt::format("{} is named both done and missed; it can only be one", d.iso())};
    }
    return std::nullopt;
}

std::optional<Error> refusalOfFixed(const CourseRequest& q, int doneCount, int count)
{
    auto fixed = q.fixed;
    std::sort(fixed.begin(), fixed.end());
    for (std::size_t i = 0; i < fixed.size(); ++i) {
        const auto& [number, date] = fixed[i];
        if (number <= doneCount || number > count)
            return Error{"no-such-session", "fixed",
                         fmt::format("session {} cannot be moved: {} of {} are done", number, doneCount, count)};
        if (date < q.today || (date == q.today && std::find(q.done.begin(), q.done.end(), q.today) != q.done.end()))
            return Error{
                "day-not-open", "fixed",
                fmt::format("session {} cannot go on {}: that day is past or has its session", number, date.iso())};
        if (i > 0 && date - fixed[i - 1].second < number - fixed[i - 1].first)
            return Error{"order-broken", "fixed",
                         fmt::format("session {} on {} leaves no room after session {} on {}; choose a later day",
                                     number, date.iso(), fixed[i - 1].first, fixed[i - 1].second.iso())};
        const LocalDate firstOpen = q.today;
        if (date - firstOpen < number - doneCount - 1)
            return Error{"order-broken", "fixed",
                         fmt::format("session {} on {} leaves no room for the sessions before it; choose a later day",
                                     number, date.iso())};
    }
    return std::nullopt;
}

bool named(const std::vector<LocalDate>& list, LocalDate date)
{
    return std::find(list.begin(), list.end(), date) != list.end();
}

/// What rules a day out for a session that is not put there by hand.
ShiftReason closedBy(const CourseRequest& q, LocalDate date)
{
    if (named(q.missed, date))
        return ShiftReason::Missed;
    if (named(q.done, date))
        return ShiftReason::HasSession;
    if (std::any_of(q.away.begin(), q.away.end(), [&](const auto& a) { return a.first <= date && date <= a.second; }))
        return ShiftReason::Away;
    return q.free.empty() || q.free.contains(date.weekday()) ? ShiftReason::None : ShiftReason::WeekdayNotFree;
}

std::optional<LocalDate> byHand(const CourseRequest& q, int number)
{
    const auto f = std::find_if(q.fixed.begin(), q.fixed.end(), [&](const auto& one) { return one.first == number; });
    return f == q.fixed.end() ? std::nullopt : std::optional(f->second);
}

/// The remaining sessions on open days: least sum of squared shifts, earlier on ties.
class Planner {
public:
    /// `apart`: days from one session to the next at the least.
    Planner(const CourseRequest& q, std::vector<LocalDate> wanted, int firstNumber, LocalDate firstDay, int apart)
        : m_q(q), m_wanted(std::move(wanted)), m_firstDay(firstDay), m_apart(static_cast<std::size_t>(apart))
    {
        for (std::size_t i = 0; i < m_wanted.size(); ++i)
            m_byHand.push_back(byHand(q, firstNumber + static_cast<int>(i)));
    }

    /// The days by session, within days up to `last`; nothing when they do not fit.
    [[nodiscard]] std::optional<std::vector<LocalDate>> within(LocalDate last) const
    {
        const int days = last - m_firstDay + 1;
        const std::size_t n = m_wanted.size();
        if (days < static_cast<int>(n))
            return std::nullopt;
        const auto width = static_cast<std::size_t>(days) + 1;
        std::vector<bool> open(width);
        for (int d = 0; d < days; ++d)
            open[static_cast<std::size_t>(d)] = closedBy(m_q, m_firstDay + d) == ShiftReason::None;
        const auto next = [&](std::size_t day) { return std::min(day + m_apart, width - 1); };
        const auto cost = [&](std::size_t session, std::size_t day) {
            const LocalDate date = m_firstDay + static_cast<int>(day);
            // A day chosen by hand holds even on a weekday or a trip that was ruled out.
            const bool can = m_byHand[session] ? *m_byHand[session] == date : open[day];
            const long shift = date - m_wanted[session];
            return can ? shift * shift : kNever;
        };
        // best[i][d]: least cost of sessions i.. on days d.. ; filled from the back so that walking forward
        // can take the earliest day among equals.
        std::vector<std::vector<long>> best(n + 1, std::vector<long>(width, kNever));
        std::fill(best[n].begin(), best[n].end(), 0L);
        for (std::size_t i = n; i-- > 0;)
            for (std::size_t d = width - 1; d-- > 0;)
                best[i][d] = std::min(best[i][d + 1], cost(i, d) + best[i + 1][next(d)]);
        if (best[0][0] >= kNever)
            return std::nullopt;
        std::vector<LocalDate> out;
        std::size_t d = 0;
        for (std::size_t i = 0; i < n; ++i, d = next(d)) {
            while (cost(i, d) + best[i + 1][next(d)] != best[i][d])
                ++d;
            out.push_back(m_firstDay + static_cast<int>(d));
        }
        return out;
    }

private:
    const CourseRequest& m_q;
    std::vector<LocalDate> m_wanted;
    std::vector<std::optional<LocalDate>> m_byHand;
    LocalDate m_firstDay;
    std::size_t m_apart;
};

/// The plan that ends as soon after the window as every session can be held; a later end never fits worse.
std::optional<std::vector<LocalDate>> leastOverrun(const Planner& planner, LocalDate windowEnd)
{
    int tooShort = 0;
    int enough = 1;
    while (!planner.within(windowEnd + enough)) {
        if (enough == kFarthestDay)
            return std::nullopt;
        tooShort = enough;
        enough = std::min(2 * enough, kFarthestDay); // the search costs as many days as it spans
    }
    while (enough - tooShort > 1) {
        const int middle = (tooShort + enough) / 2;
        (planner.within(windowEnd + middle) ? enough : tooShort) = middle;
    }
    return planner.within(windowEnd + enough);
}

/// Days for the sessions that are left, with at least `apart` days from one to the next. Nothing if they cannot be held
/// within ten years.
std::optional<std::vector<LocalDate>> restOf(const CourseRequest& q, const std::vector<LocalDate>& wanted,
                                             const std::vector<LocalDate>& done, LocalDate windowEnd, int apart)
{
    LocalDate first = std::max(q.start, q.today);
    if (!done.empty())
        first = std::max(first, done.back() + apart);
    const Planner planner(q, wanted, static_cast<int>(done.size()) + 1, first, apart);
    auto dates = planner.within(windowEnd);
    return dates ? dates : leastOverrun(planner, windowEnd);
}

/// The most sessions on consecutive days, of rows that begin at or reach `from`.
int longestRow(std::vector<LocalDate> days, LocalDate from)
{
    std::sort(days.begin(), days.end());
    int longest = 0;
    int row = 0;
    for (std::size_t i = 0; i < days.size(); ++i) {
        row = i > 0 && days[i] - days[i - 1] == 1 ? row + 1 : 1;
        if (days[i] >= from)
            longest = std::max(longest, row);
    }
    return longest;
}

std::vector<LocalDate> distinctDone(const CourseRequest& q, std::size_t most)
{
    auto done = q.done;
    std::sort(done.begin(), done.end());
    done.erase(std::unique(done.begin(), done.end()), done.end());
    done.resize(std::min(done.size(), most));
    return done;
}

PlannedSession sessionOn(const TemplateDays& plan, LocalDate start, std::size_t index, LocalDate date,
                         CourseState state)
{
    const int wanted = plan.days[index];
    return {static_cast<int>(index) + 1, wanted, date, state, date - (start + (wanted - 1)), ShiftReason::None};
}

ShiftReason whyShifted(const CourseRequest& q, const PlannedSession& s)
{
    if (byHand(q, s.number))
        return ShiftReason::ByHand;
    if (s.shift == 0)
        return ShiftReason::None;
    const LocalDate wanted = s.date - s.shift;
    if (const ShiftReason closed = closedBy(q, wanted); closed != ShiftReason::None)
        return closed;
    return wanted < q.today ? ShiftReason::Past : ShiftReason::MakesRoom;
}

} // namespace

Result<TemplateDays> templateDays(CourseTemplate plan, const std::vector<int>& prescribed, LocalDate start)
{
    switch (plan) {
    case CourseTemplate::Seven: return TemplateDays{kSevenDays, kFourWeeks};
    // Siah & Hampton, Dermatol Online J 2013;19(3):14: three a week for four weeks. The window runs from the first of
    // them.
    case CourseTemplate::MonWedFri: {
        auto days = everyWeekday(start, {Weekday::Mon, Weekday::Wed, Weekday::Fri}, 12);
        const int window = days.front() - 1 + kFourWeeks;
        return TemplateDays{std::move(days), window};
    }
    // Kim et al., Ann Dermatol 2017;29:728-734: five a week for two weeks.
    case CourseTemplate::Daily: {
        auto days = everyWeekday(start, {Weekday::Mon, Weekday::Tue, Weekday::Wed, Weekday::Thu, Weekday::Fri}, 10);
        const int window = std::max(14, days.back());
        return TemplateDays{std::move(days), window};
    }
    case CourseTemplate::Prescribed: return prescribedDays(prescribed);
    }
    return Error{"no-such-template", "template", "this course is not known; choose one of the named ones"};
}

Result<CoursePlan> planCourse(const CourseRequest& request)
{
    const auto days = templateDays(request.plan, request.days, request.start);
    if (!days)
        return days.error();
    if (auto error = refusal(request))
        return *error;
    const TemplateDays& plan = *days;
    const std::vector<LocalDate> done = distinctDone(request, plan.days.size());
    if (auto error = refusalOfFixed(request, static_cast<int>(done.size()), static_cast<int>(plan.days.size())))
        return *error;

    CoursePlan out;
    out.windowEnd = request.start + (plan.windowDays - 1);
    for (std::size_t i = 0; i < done.size(); ++i)
        out.sessions.push_back(sessionOn(plan, request.start, i, done[i], CourseState::Done));

    std::vector<LocalDate> wanted;
    for (std::size_t i = done.size(); i < plan.days.size(); ++i)
        wanted.push_back(request.start + (plan.days[i] - 1));
    if (!wanted.empty()) {
        const bool between = request.pace == Pace::DayBetween;
        auto rest = restOf(request, wanted, done, out.windowEnd, between ? 2 : 1);
        if (!rest && between) // a day chosen by hand leaves no day between
            rest = restOf(request, wanted, done, out.windowEnd, 1);
        if (!rest)
            return Error{
                "no-open-days", "free",
                "no days are left for the sessions within ten years; free some weekdays or shorten the days away"};
        for (std::size_t i = 0; i < rest->size(); ++i) {
            out.sessions.push_back(sessionOn(plan, request.start, done.size() + i, (*rest)[i], CourseState::Planned));
            out.sessions.back().why = whyShifted(request, out.sessions.back());
            const long shift = out.sessions.back().shift;
            out.shiftCost += shift * shift;
        }
        out.overrunDays = std::max(0, rest->back() - out.windowEnd);
        out.fits = out.overrunDays == 0;
    }
    return out;
}

std::optional<Crowding> crowdingOf(const CourseRequest& request, const CoursePlan& plan)
{
    std::vector<LocalDate> dates;
    std::vector<LocalDate> ofTemplate;
    std::optional<LocalDate> next;
    for (const PlannedSession& s : plan.sessions) {
        dates.push_back(s.date);
        ofTemplate.push_back(request.start + (s.templateDay - 1));
        if (s.state == CourseState::Planned && !next)
            next = s.date;
    }
    if (!next || request.pace == Pace::DayBetween)
        return std::nullopt;
    const int row = longestRow(dates, *next);
    if (row <= std::max(kMostInARow, longestRow(ofTemplate, request.start)))
        return std::nullopt;
    CourseRequest between = request;
    between.pace = Pace::DayBetween;
    auto other = planCourse(between);
    if (!other || std::ranges::equal(other->sessions, plan.sessions, {}, &PlannedSession::date, &PlannedSession::date))
        return std::nullopt;
    return Crowding{row, std::move(other.value())};
}

Result<CourseSoFar> courseSoFar(const CourseRequest& request)
{
    CourseSoFar out;
    CourseRequest q = request;
    q.missed.clear();
    q.fixed.clear();
    q.today = request.start;
    for (bool again = true; again;) {
        again = false;
        q.done = out.done;
        const auto plan = planCourse(q);
        if (!plan)
            return plan.error();
        for (const PlannedSession& s : plan->sessions) {
            const bool missed = named(request.missed, s.date);
            if (s.state == CourseState::Done || s.date > request.today || (s.date == request.today && !missed))
                continue;
            (missed ? out.missed : out.done).push_back(s.date);
            if (!missed)
                continue;
            again = true;
            q.missed.push_back(s.date);
            q.today = s.date + 1;
            break;
        }
    }
    for (const LocalDate d : request.missed)
        if (!named(out.missed, d))
            out.notSessionDays.push_back(d);
    return out;
}

} // namespace firstdew::protocol
