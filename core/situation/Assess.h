#pragma once

#include "diary/Diary.h"
#include "outlook/Forecast.h"
#include "protocol/Course.h"
#include "protocol/Limits.h"
#include "protocol/Response.h"
#include "protocol/Screening.h"
#include "situation/Comparison.h"

#include <optional>
#include <string>
#include <vector>

namespace firstdew::situation {

using namespace facts;
using diary::DayReport;
using diary::Diary;

enum class Stage { NotStarted, FirstCourse, Review, KeepingDry, FirstDew, SweatingAgain, Paused };
enum class Advice {
    None,
    DoCourseSession,
    FirstDewTopUp,
    TopUpDue,
    Watch,
    RestartCourse,
    Review,
    AskPrescriber,
    Blocked,
    TryFurther ///< the course brought no response yet: check how it is done, and go on to ten or twelve sessions
};

/// Why an advice is given, as data. Screens and the printed page turn it into sentences.
enum class ReasonKind {
    NoCourseYet,        ///< the site has no first course
    CourseSessionToday, ///< number, count
    CourseSessionLater, ///< number, count, date
    CourseOverrun,      ///< days past the window
    CourseFinished,     ///< count = sessions done
    SessionDoneToday,
    ClammyAtRest,     ///< date of the report
    ClammyStirred,    ///< clammy, but with a circumstance; date
    ClammyTwice,      ///< two clammy reports in a row; date of the later
    WetAtRest,        ///< wet or dripping with no circumstance; date
    ReturnLikely,     ///< probability that dampness has begun
    DrySpellUsual,    ///< from, to (days, 80 % range), number = day of the present spell
    DueByForecast,    ///< date = day of the call, probability of dampness by tomorrow
    NoCheckInFor,     ///< days
    ScreeningStops,   ///< row
    ScreeningAsks,    ///< row
    ScreeningStale,   ///< days since the last full screening; 0 = never
    SkinBars,         ///< finding, date: a blister or burn that no clinician has seen
    BirthDateMissing, ///< without it the limit is unknown
    MachineUnsuited,  ///< armpits need pulsed current, and this machine has none
    NoResponse,
    ResponseGood,
    ResponseStrong,
    PausedByPerson,
    PutOff,              ///< the person put the call off; date: until when, none: not this time
    WetOnce,             ///< wet or dripping at rest, though full sweating is not likely yet; date
    PrescribedLacks,     ///< this machine has not the waveform that the care sheet prescribes
    MachineHasNone,      ///< no waveform is entered for this machine
    NotBetterYet,        ///< count = sessions done, fewer than what a judgement takes
    ScoreNeeded,         ///< days since the latest score; 0 = none: the response is judged by a recent one
    EnoughToday,         ///< this skin had as many runs, or as much charge, as one day may bring it
    CourseSessionMissed, ///< number; date = the day it was planned for; days from then to its new day
    CourseCrowded,       ///< count = sessions on consecutive days; days past the window with a day between
    BeforeLeaving,       ///< date = first day away, days = how many; the call would fall into them
    AwayNow,             ///< date = last day away; the call waits until then
    StoppedCounts,       ///< today's session was stopped with most of its charge done
    Comparing            ///< number, count = pair and pairs of the comparison that keeps the forecast from calling
};

struct Reason {
    ReasonKind kind{};
    int number = 0;
    int count = 0;
    int days = 0;
    double from = 0;
    double to = 0;
    double probability = 0;
    std::optional<LocalDate> date;
    std::optional<ScreeningRow> row;
    std::optional<SkinFinding> finding;
};

/// The next session of the running course, where it was not done on the day it was planned for.
struct MissedSession {
    int number = 0;
    LocalDate planned;
};

/// Where one diary site stands. Hand + foot sessions count for hands and for feet.
struct SiteSituation {
    DiarySite site{};
    Site treatedAs{}; ///< the kind of session that treats it
    Stage stage{};
    Advice advice{};
    std::vector<Reason> reasons;          ///< the deciding reason first
    std::optional<LocalDate> nextSession; ///< next day of the course, or the day on which the app calls for a top-up
    std::optional<protocol::CoursePlan> course;
    std::optional<MissedSession> missed;
    Pace pace{}; ///< at which the course is planned
    /// The plan crowds sessions, and the person has not chosen a pace since the last one was missed.
    std::optional<protocol::Crowding> crowding;
    std::optional<protocol::Response> response;
    std::optional<int> hdssStart;
    std::optional<LocalDate> hdssStartOn; ///< day of that score
    std::optional<int> hdssNow;
    std::string atNoResponse; ///< what the care sheet says to do, where the course brought no response
    bool checkedInToday = false;
    bool heldByAway = false; ///< the skin or the forecast calls for a session, and the call waits for the return
    std::optional<LocalDate> lastSession;
    outlook::Forecast forecast;
    std::optional<Compared> comparison; ///< the latest one; while it runs, the forecast calls for nothing
    [[nodiscard]] bool compares() const { return comparison && comparison->runs(); }
    /// The day on which the forecast calls for a top-up. None while a comparison runs.
    [[nodiscard]] std::optional<LocalDate> callDay() const { return compares() ? std::nullopt : forecast.due; }
};

struct Situation {
    LocalDate today;
    AgeGroup age{};
    std::vector<SiteSituation> sites; ///< sites in use, in the order hands, feet, armpits
    protocol::ScreeningDue screeningDue{};
    std::optional<int> cellSessionsLeft;
    /// Index in `sites` of the most urgent one; nullopt if no site is in use.
    std::optional<std::size_t> first;
};

/// Whether the advice asks for a top-up or a new course now.
[[nodiscard]] bool callsForTopUp(Advice advice);

/// Whether the advice asks for a session now: a top-up, a new course or a session of the course.
[[nodiscard]] bool callsForSession(Advice advice);

/// Where things stand today. The function is pure: the same diary gives the same answer. `costs` and `rules` in
/// `settings` say how to weigh evidence. The person's own risk, if they chose one, replaces `settings.risk`.
[[nodiscard]] Situation assess(const Diary& diary, const outlook::Settings& settings = {});

} // namespace firstdew::situation

namespace firstdew::facts {
FIRSTDEW_TOKENS(situation::Stage, "not-started", "first-course", "review", "keeping-dry", "first-dew", "sweating-again",
                "paused");
FIRSTDEW_TOKENS(situation::Advice, "none", "do-course-session", "first-dew-top-up", "top-up-due", "watch",
                "restart-course", "review", "ask-prescriber", "blocked", "try-further");
FIRSTDEW_TOKENS(situation::ReasonKind, "no-course-yet", "course-session-today", "course-session-later",
                "course-overrun", "course-finished", "session-done-today", "clammy-at-rest", "clammy-stirred",
                "clammy-twice", "wet-at-rest", "return-likely", "dry-spell-usual", "due-by-forecast", "no-check-in-for",
                "screening-stops", "screening-asks", "screening-stale", "skin-bars", "birth-date-missing",
                "machine-unsuited", "no-response", "response-good", "response-strong", "paused-by-person", "put-off",
                "wet-once", "prescribed-lacks", "machine-has-none", "not-better-yet", "score-needed", "enough-today",
                "course-session-missed", "course-crowded", "before-leaving", "away-now", "stopped-counts", "comparing");
} // namespace firstdew::facts
