#pragma once

#include "facts/Payloads.h"
#include "facts/Result.h"

#include <utility>
#include <vector>

namespace firstdew::protocol {

using namespace facts;

/// A missed session is not kept as one: it moves, and stands in the plan on its new day.
enum class CourseState { Done, Planned };

/// Why a planned session does not stand on its template day.
enum class ShiftReason {
    None,           ///< it does stand there, or it is done
    Past,           ///< that day is over
    Missed,         ///< that day was missed
    Away,           ///< the person is away then
    WeekdayNotFree, ///< not one of the person's weekdays
    HasSession,     ///< that day has its session already
    MakesRoom,      ///< one session a day (or a day between), in order, inside the window: the others need it so
    ByHand          ///< put on its day by the person
};

struct CourseRequest {
    CourseTemplate plan = CourseTemplate::Seven;
    std::vector<int> days; ///< prescribed: days counted from day 1; empty for the named templates
    LocalDate start;       ///< day 1
    LocalDate today;
    SetOf<Weekday> free;                               ///< empty: every weekday
    std::vector<std::pair<LocalDate, LocalDate>> away; ///< inclusive ranges
    std::vector<LocalDate> done;                       ///< days with a session
    std::vector<LocalDate> missed;                     ///< days said to be missed
    std::vector<std::pair<int, LocalDate>> fixed;      ///< session number put on a day by hand
    Pace pace = Pace::KeepWindow;
};

struct PlannedSession {
    int number = 0;      ///< from 1
    int templateDay = 0; ///< day of the template, from 1
    LocalDate date;
    CourseState state{};
    int shift = 0; ///< days away from the template (+ later)
    ShiftReason why = ShiftReason::None;
};

struct CoursePlan {
    std::vector<PlannedSession> sessions;
    LocalDate windowEnd; ///< last day of the window
    bool fits = true;    ///< every session inside the window
    int overrunDays = 0; ///< days by which the last session lies past the window
    long shiftCost = 0;  ///< sum of squared shifts of the planned sessions, days²
};

/// Days of a template, counted from day 1 (Mon/Wed/Fri: from the first such weekday), and its window in days.
struct TemplateDays {
    std::vector<int> days;
    int windowDays = 28;
};
[[nodiscard]] Result<TemplateDays> templateDays(CourseTemplate plan, const std::vector<int>& prescribed,
                                                LocalDate start);

/// Plans or re-plans a first course: at most one session a day, order kept, on free days, inside the window
/// where that can be done; the least sum of squared shifts, earlier on ties. Exact (dynamic programming).
/// At Pace::DayBetween a day lies between any two sessions, and the window is overrun where that needs it. Only a day
/// chosen by hand may then lie next to another session.
[[nodiscard]] Result<CoursePlan> planCourse(const CourseRequest& request);

/// A plan that puts more sessions on consecutive days than three, and than the course itself has.
struct Crowding {
    int inARow = 0;        ///< sessions on consecutive days
    CoursePlan dayBetween; ///< the same course with a day between any two sessions
};
/// Whether `plan`, made for `request`, crowds a session still to come (our own choice: more than three in a row).
/// Nullopt also where a day between would change nothing.
[[nodiscard]] std::optional<Crowding> crowdingOf(const CourseRequest& request, const CoursePlan& plan);

/// What a course looks like before `request.today` where nothing was said of it but the days missed.
struct CourseSoFar {
    std::vector<LocalDate> done;           ///< session days taken as done
    std::vector<LocalDate> missed;         ///< days named missed on which a session stood
    std::vector<LocalDate> notSessionDays; ///< days named missed on which none stood
};

/// Follows the course from day 1: every session day before today that is not named missed is taken as done;
/// after each miss the rest is planned again. `request.done` and `request.fixed` are not looked at.
[[nodiscard]] Result<CourseSoFar> courseSoFar(const CourseRequest& request);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_TOKENS(protocol::CourseState, "done", "planned");
FIRSTDEW_TOKENS(protocol::ShiftReason, "none", "past", "missed", "away", "weekday-not-free", "has-session",
                "makes-room", "by-hand");
} // namespace firstdew::facts
