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

/// The report that counts for a site on one day: the highest level and, among equal levels, the later report.
struct DayReport {
    LocalDate date;
    Level level{};
    SetOf<Circumstance> with;
    bool operator==(const DayReport&) const = default;

    /// The report names a circumstance, such as heat. It is weaker evidence than a report at rest.
    [[nodiscard]] bool stirred() const { return !with.empty(); }
};

/// A course and its review.
struct CourseSet {
    Course course;
    LocalTime set;                        ///< when the person chose this course
    std::optional<LocalDate> firstReview; ///< day of its first review, on or after its start
    bool keepGoing = true;                ///< answer of its latest review
    bool operator==(const CourseSet&) const = default;
};

/// Days on which something else dried the site.
struct OtherDays {
    LocalDate from;
    std::optional<LocalDate> until; ///< inclusive; nullopt: it goes on
    bool operator==(const OtherDays&) const = default;
};

/// Everything known about one diary site. Hand + foot sessions count for hands and for feet.
struct SiteDiary {
    std::vector<LocalDate> sessionDays; ///< days with a completed session, ascending, each once
    std::vector<DayReport> reports;     ///< one a day, ascending
    /// The same without what was reported after a session of its day: that belongs to the new dry spell, on whose day 0
    /// nothing is learned. Forecasts read these.
    std::vector<DayReport> spellReports;
    std::vector<CourseSet> courses;   ///< in the order chosen; the last one counts
    std::vector<OtherDays> otherwise; ///< days under another treatment
    bool operator==(const SiteDiary&) const = default;

    /// Whether another treatment worked on any of these days.
    [[nodiscard]] bool otherwiseTreated(LocalDate from, LocalDate to) const;
    /// The report of that day, if it was given after a session of the day and none before it; else null.
    [[nodiscard]] const DayReport* afterSessionOn(LocalDate day) const;
    [[nodiscard]] const CourseSet* course() const { return courses.empty() ? nullptr : &courses.back(); }
};

/// A diary site that the person follows, and the kind of session that treats it.
struct SiteInUse {
    DiarySite site{};
    Site treatedAs{};
    bool paused = false;
};

/// One answer to a health question.
struct HealthAnswer {
    bool yes = false;
    LocalTime when;
    std::size_t position = 0; ///< index among all facts, in the order recorded
    bool operator==(const HealthAnswer&) const = default;
};

/// A led session, as recorded while it ran.
struct LedSession {
    std::optional<BathPrepared> prepared;
    LocalDate on;                  ///< the day it was prepared
    MinuteOfDay from;              ///< the minute of that
    std::vector<BathEvent> events; ///< by sequence
    bool logged = false;           ///< true if a Session fact names it
    bool operator==(const LedSession&) const = default;
};

/// A cache that a later computation keeps in the diary. It is not part of the diary's value: a copy starts without it,
/// and two diaries that differ only in it are equal.
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

/// What one person's record means on one day. Every rule, page, reminder and report asks the diary, so each question to
/// the record has one answer. Corrections are applied. Events dated after `today` are left out: they come from a clock
/// that was ahead or from the other side of the date line. Choices, kit and plan count whatever their date. A session
/// or an answer dated ahead also counts where ignoring it would be less safe; the members below say so. Entries are
/// sorted by the time they happened, then by the time they were recorded.
struct Diary {
    LocalDate today;

    // Who.
    std::optional<Person> person;

    // What happened.
    PerValue<DiarySite, SiteDiary> sites;
    std::vector<Entry<Session>> sessions;
    std::vector<Entry<Session>>
        sessionsAhead; ///< dated after `today`, by a clock that was wrong or beyond the date line
    std::vector<Entry<CheckIn>> checkIns;
    std::vector<Entry<SideEffect>> skin;
    std::vector<Entry<SideEffect>> skinAhead; ///< dated after `today`: a burn counts whatever its date
    std::vector<Entry<Hdss>> scores;
    std::vector<Entry<Weighing>> weighings;
    std::vector<Entry<OtherTreatment>> otherTreatments;
    std::vector<Entry<Taught>> taught;
    std::vector<Entry<CallAnswered>> callAnswers;
    std::vector<Entry<Preparation>> preparations;
    std::vector<Entry<Question>> questions;
    std::map<std::string, LedSession> ledSessions;
    std::string latestLed; ///< key of the led session prepared last; empty if there is none

    // Whether it is safe.
    PerValue<ScreeningRow, std::vector<HealthAnswer>> answers; ///< includes each yes dated after `today`
    std::optional<LocalDate> fullScreening;                    ///< day of the latest full screening
    std::optional<LocalDate> anyScreening;                     ///< day of the latest screening, full or short
    std::vector<Entry<Clearance>> clearances;
    std::vector<Entry<SkinClearance>> skinClearances;

    // The plan.
    std::vector<Entry<Course>> courses;
    std::vector<Entry<CourseMove>> courseMoves;
    std::vector<Entry<CoursePace>> coursePaces;
    std::vector<Entry<ReviewDone>> reviews;
    std::vector<Entry<Away>> away;
    std::vector<Entry<CareSheet>> careSheets;
    std::vector<Entry<Comparison>> comparisons;
    PerValue<Site, std::optional<bool>> chosen; ///< true: the person chose this kind of session; false: dropped it
    PerValue<Site, bool> paused{};

    // Kit, reminders and choices.
    std::optional<Machine> machine;
    std::vector<Entry<CellsChanged>> cellsChanged;
    std::optional<ReminderSettings> reminderSettings;
    std::vector<Entry<ReminderHandled>> remindersHandled;
    Preferences preferences;

    Memo<outlook::Learned> learned;

    bool operator==(const Diary&) const = default;

    [[nodiscard]] const SiteDiary& at(DiarySite site) const { return sites[site]; }
    /// The latest answer up to today. Answers dated ahead are ignored.
    [[nodiscard]] std::optional<bool> answerSoFar(ScreeningRow row) const;
    /// The session that runs at that minute of today: prepared at most four hours before, begun, neither stopped nor
    /// logged. Nullptr if there is none. The longest session, with two restarts, takes less (our own choice).
    [[nodiscard]] const LedSession* running(MinuteOfDay now) const;
    /// The led session that the person still has to log: begun, and never stopped or stopped today or yesterday.
    /// Nullptr if there is none.
    [[nodiscard]] const LedSession* unwritten() const;
    /// The first and last of the days away around that day, with those that follow without a day at home. Nullopt if
    /// the person is at home.
    [[nodiscard]] std::optional<std::pair<LocalDate, LocalDate>> awayAround(LocalDate day) const;
    /// The report that counts for the site on that day, or nullptr.
    [[nodiscard]] const DayReport* reportOn(DiarySite site, LocalDate day) const;
    /// The latest check-in for a site on a day, which a new check-in corrects. Nullptr if there is none.
    [[nodiscard]] const Entry<CheckIn>* checkInOn(DiarySite site, LocalDate day) const;
    /// The check-in that one made at `now` corrects: the latest of its day, if the site was not treated since. Nullptr
    /// if there is none.
    [[nodiscard]] const Entry<CheckIn>* checkInCorrectedAt(DiarySite site, LocalTime now) const;
    /// The first completed session of the site on that day, or nullptr.
    [[nodiscard]] const Entry<Session>* firstSessionOn(DiarySite site, LocalDate day) const;
    /// The diary sites that the person follows, in the order hands, feet, armpits. The person chose them, or recorded
    /// something about them and never dropped them.
    [[nodiscard]] std::vector<SiteInUse> sitesInUse() const;
};

/// A day after every recorded one. Exports read the diary as of it, so that they leave nothing out.
inline constexpr LocalDate kEndOfTime{10'000'000};

/// Reads a record as of `today`. This is the only function that reads a Record.
[[nodiscard]] Diary readDiary(const Record& record, LocalDate today);
/// Reads the record of one person. `facts` holds all facts in the order recorded.
[[nodiscard]] Diary readDiary(std::span<const Fact> facts, std::string_view person, LocalDate today);

} // namespace firstdew::diary
