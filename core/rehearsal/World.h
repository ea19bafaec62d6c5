#pragma once

#include "facts/Enumerations.h"
#include "rehearsal/Chance.h"

#include <optional>

namespace firstdew::rehearsal {

/// The family of the dry spells' lengths. Gamma and log-logistic ones have the spread that the Weibull of that shape
/// has.
enum class Times { Weibull, Gamma, LogLogistic };

/// How simulated people sweat and how they report it. All numbers are invented, in the range of common practice. The
/// model differs from the outlook's model, so that the outlook can be wrong.
struct World {
    /// Median dry spell and Weibull shape of each person, log-normal between people.
    double medianDays = 10;
    double medianSdlog = 0.6;
    double shape = 3;
    double shapeSdlog = 0.25;
    double daysClammyBeforeSweating = 4; ///< mean, Rayleigh distributed
    double checkinMissed = 0.15;         ///< share of days without a check-in
    double falseClammyCalm = 0.02;       ///< share of dry days reported clammy
    double falseClammyStirred = 0.15;
    double missedClammy = 0.10; ///< share of clammy days reported dry
    double stirredDays = 0.10;  ///< share of days with heat or exertion
    double seasonAmplitude = 0; ///< relative swing of the median over the period, 0 to below 1
    double seasonPeriod = 365;  ///< days
    double wearOff = 0;         ///< share of the median lost per year, 0 to below 1
    /// Chance that one session dries a clammy site. One or two are usually enough (common practice, no source).
    double takesClammy = 0.8;
    /// Number of sessions that dry a fully sweating site, uniform from least to most: a large part of the first course.
    double courseLeast = 3;
    double courseMost = 7;
    double sessionBeforeCheckin = 0.5; ///< share of people whose session comes before the day's check-in
    double falseWet = 0;               ///< share of dry days at rest reported wet
    double hotRuns = 0;     ///< share of days in runs of hot days, on which dry skin feels clammy and no heat is noted
    double weekendGaps = 0; ///< further share of Saturdays and Sundays without a check-in
    double habitDays = 0;   ///< a top-up of habit after so many days, called for or not; 0: none
    double feltInAdvance = 0; ///< chance that a top-up is done unasked in the last day before dampness
    double changeDay = 0;     ///< from this day on every median is changed by the factor
    double changeFactor = 1;
    double ar1 = 0;  ///< correlation of one spell's median with the next one's; they vary by a fifth
    double dose = 0; ///< power by which a session of more charge than usual holds longer
    Times times = Times::Weibull;
};

enum class Skin { Dry, Clammy, Sweating };

/// The true state of one site of one person. Time of day does not matter. Day 0 is the day of the first session.
class Body {
public:
    Body(const World& world, Chance chance);

    /// Advances to day `day`, which must not be earlier than the present one.
    void pass(int day);
    /// A session in the evening of the present day. Once a course has dried the site, it stays dry until the course
    /// ends. The dry spell starts after the last session.
    void treat(bool ofCourse);
    [[nodiscard]] Skin skin() const { return m_skin; }
    /// Length of the present dry spell from its last session, if nothing is done.
    [[nodiscard]] double spell() const { return m_spell; }
    [[nodiscard]] double ownMedian() const { return m_median; }
    /// Chance that a spell which begins as the present one did lasts longer than `days`.
    [[nodiscard]] double survivor(double days) const;
    /// The same for one who knows the person, the season and the session, but not how chance moves this spell's median
    /// (World::ar1).
    [[nodiscard]] double foreseen(double days) const;
    /// Charge of the next session in parts of the usual one.
    [[nodiscard]] double nextDose() const;

private:
    void begin();
    [[nodiscard]] double survivorBy(double median, double days) const;
    [[nodiscard]] double doseOf(std::uint64_t session) const;

    World m_world;
    Chance m_chance;
    double m_median = 0;
    double m_shape = 0;
    double m_phase = 0;
    int m_day = 0;
    int m_since = 0; ///< day of the last session
    double m_spell = 0;
    double m_spellMedian = 0;
    double m_drift = 0;  ///< of the logarithm of the median
    double m_clammy = 0; ///< days from clammy to sweating
    int m_toGo = 0;      ///< sessions until full sweating ends
    bool m_held = false; ///< a course has dried the site and continues
    std::uint64_t m_spells = 0;
    std::uint64_t m_sessions = 0;
    std::uint64_t m_relapses = 0;
    Skin m_skin = Skin::Dry;
};

/// What a person says at the check-in of a day.
struct Said {
    facts::Level level{};
    bool stirred = false;
};

/// The check-in of that day with its errors, or nullopt if it is missed.
[[nodiscard]] std::optional<Said> checkInOf(const World& world, const Chance& chance, Skin skin, int day);
/// The chance that a check-in on such skin says that, within a run of hot days or not.
[[nodiscard]] double chanceOf(const Said& said, const World& world, Skin skin, bool hot);

/// Chances, from one day to the next, that a run of hot days begins and ends.
struct HotRuns {
    double begins = 0;
    double ends = 1;
};
[[nodiscard]] HotRuns hotRunsOf(const World& world);

/// Number of sessions that dry a fully sweating site, by a uniform draw.
[[nodiscard]] int sessionsToDry(const World& world, double uniform);
/// The chance that dampness is not sweating yet after so many days.
[[nodiscard]] double staysClammy(const World& world, double days);

} // namespace firstdew::rehearsal

namespace firstdew::facts {
FIRSTDEW_TOKENS(rehearsal::Times, "weibull", "gamma", "loglogistic");
} // namespace firstdew::facts
