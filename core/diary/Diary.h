#pragma once

#include "diary/Preferences.h"
#include "facts/Entry.h"
#include "facts/Fact.h"

#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace firstdew::facts {
class Record;
}
namespace firstdew::outlook {
class Learned;
}

namespace firstdew::diary {

using namespace facts;

/// What was reported of a site on one day: the highest level of the day and, of equal reports, the later one.
struct DayReport {
    LocalDate date;
    Level level{};
    SetOf<Circumstance> with;
    bool operator==(const DayReport&) const = default;

    /// Some circumstance went with it, which makes it weaker evidence than a report at rest.
    [[nodiscard]] bool stirred() const { return !with.empty(); }
};

/// A course and what became of it.
struct CourseSet {
    Course course;
    LocalTime set;                        ///< when it was recorded as the plan
    std::optional<LocalDate> firstReview; ///< the day it was first reviewed, on or after its start
    bool keepGoing = true;                ///< by its latest review
    bool operator==(const CourseSet&) const = default;
};

/// Everything known of one diary site. Hand + foot sessions count for hands and for feet.
struct SiteDiary {
    std::vector<LocalDate> sessionDays; ///< days with a completed session, ascending, each once
    std::vector<DayReport> reports;     ///< one a day, ascending
    std::vector<CourseSet> courses;     ///< in the order set; the last one counts
    bool operator==(const SiteDiary&) const = default;

    [[nodiscard]] const CourseSet* course() const { return courses.empty() ? nullptr : &courses.back(); }
};

/// A diary site in use and the kind of session that treats it.
struct SiteInUse {
    DiarySite site{};
    Site treatedAs{};
    bool paused = false;
};

/// One answer to a health question.
struct HealthAnswer {
    bool yes = false;
    LocalTime when;
    std::size_t position = 0; ///< among all facts, in the order recorded
    bool operator==(const HealthAnswer&) const = default;
};

/// A led session as it was recorded while it ran.
struct LedSession {
    std::optional<BathPrepared> prepared;
    LocalDate on;                  ///< the day it was prepared
    std::vector<BathEvent> events; ///< by sequence
    bool logged = false;           ///< a Session fact names it
    bool operator==(const LedSession&) const = default;
};

/// What a later computation keeps with a diary to save work. It is no part of what the diary says: a copy starts
/// without it, and two diaries that differ only in it are equal.
template <class T>
class Memo {
public:
    Memo() = default;
    Memo(const Memo&) {}
    Memo(Memo&&) noexcept = default;
    Memo& operator=(const Memo&)
    {
        m_kept.reset();
        return *this;
    }
    Memo& operator=(Memo&&) noexcept = default;
    ~Memo() = default;
    bool operator==(const Memo&) const { return true; }

    template <class Make>
    T& orMake(Make make) const
    {
        if (!m_kept)
            m_kept = std::shared_ptr<T>(make());
        return *m_kept;
    }

private:
    mutable std::shared_ptr<T> m_kept;
};

/// One person's record as it reads on one day: each question to the record is answered here, once, and every rule,
/// page, reminder and report asks the diary. Corrections are applied. What is dated after `today` (by a clock that was
/// ahead, or from beyond the date line) has not happened yet; choices, kit and plan count whatever their date, and so
/// do a session and an answer that make today's session less safe (see the members that say so). Entries stand in the
/// order in which they happened, then in which they were recorded.
struct Diary {
    LocalDate today;

    // Who.
    std::optional<Person> person;

    // What happened.
    PerWord<DiarySite, SiteDiary> sites;
    std::vector<Entry<Session>> sessions;
    std::vector<Entry<Session>> sessionsTomorrow; ///< dated the day after `today`: they were done today or before
    std::vector<Entry<CheckIn>> checkIns;
    std::vector<Entry<SideEffect>> skin;
    std::vector<Entry<Hdss>> scores;
    std::vector<Entry<Weighing>> weighings;
    std::vector<Entry<CallAnswered>> callAnswers;
    std::vector<Entry<Preparation>> preparations;
    std::vector<Entry<Question>> questions;
    std::map<std::string, LedSession> ledSessions;
    std::string latestLed; ///< key of the led session prepared last; empty where there was none

    // Whether it is safe.
    PerWord<ScreeningRow, std::vector<HealthAnswer>> answers; ///< a yes dated after `today` is among them
    std::optional<LocalDate> fullScreening;                   ///< day of the latest full screening
    std::optional<LocalDate> anyScreening;                    ///< day of the latest screening, full or short
    std::vector<Entry<Clearance>> clearances;
    std::vector<Entry<SkinClearance>> skinClearances;

    // The plan.
    std::vector<Entry<Course>> courses;
    std::vector<Entry<CourseMove>> courseMoves;
    std::vector<Entry<ReviewDone>> reviews;
    std::vector<Entry<Away>> away;
    std::vector<Entry<CareSheet>> careSheets;
    PerWord<Site, std::optional<bool>> chosen; ///< whether a kind of session was chosen (true) or dropped (false)
    PerWord<Site, bool> paused{};

    // Kit, reminders and choices.
    std::optional<Machine> machine;
    std::vector<Entry<CellsChanged>> cellsChanged;
    std::optional<ReminderSettings> reminderSettings;
    std::vector<Entry<ReminderHandled>> remindersHandled;
    Preferences preferences;

    Memo<outlook::Learned> learned;

    bool operator==(const Diary&) const = default;

    [[nodiscard]] const SiteDiary& at(DiarySite site) const { return sites[site]; }
    /// The care sheet accepted last, or nullptr.
    [[nodiscard]] const CareSheet* careSheet() const;
    /// Whether that question is answered yes: by the answer of the latest moment or by the one recorded last. They
    /// differ where the clock was set back in between; then the cautious one counts.
    [[nodiscard]] bool answeredYes(ScreeningRow row) const;
    /// The latest answer given up to today, whatever was answered on days that have not come yet.
    [[nodiscard]] std::optional<bool> answerSoFar(ScreeningRow row) const;
    /// The session that is running: prepared today or yesterday, begun, neither stopped nor logged. Nullptr where none
    /// is.
    [[nodiscard]] const LedSession* running() const;
    /// The session to be taken up, not logged yet: one that was never stopped, or one in which more happened than its
    /// beginning, stopped today or yesterday. Nullptr where none is.
    [[nodiscard]] const LedSession* unwritten() const;
    /// The site's report of that day, or nullptr.
    [[nodiscard]] const DayReport* reportOn(DiarySite site, LocalDate day) const;
    /// The check-in that counts for a site on a day, to be corrected: the one recorded last. Nullptr where none is.
    [[nodiscard]] const Entry<CheckIn>* checkInOn(DiarySite site, LocalDate day) const;
    /// The diary sites the person follows, in the order hands, feet, armpits: those chosen, and those never dropped
    /// about which something was recorded.
    [[nodiscard]] std::vector<SiteInUse> sitesInUse() const;
};

/// As of this day everything recorded has happened: for exports, which leave nothing out.
inline constexpr LocalDate kEndOfTime{10'000'000};

/// Reads a record as of `today`. The only reader of a Record.
[[nodiscard]] Diary readDiary(const Record& record, LocalDate today);
/// Reads one person's record out of all facts, which stand in the order recorded.
[[nodiscard]] Diary readDiary(std::span<const Fact> facts, std::string_view person, LocalDate today);

} // namespace firstdew::diary
