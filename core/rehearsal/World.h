#pragma once

#include "rehearsal/Chance.h"

namespace firstdew::rehearsal {

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

private:
    void begin();

    World m_world;
    Chance m_chance;
    double m_median = 0;
    double m_shape = 0;
    double m_phase = 0;
    int m_day = 0;
    int m_since = 0; ///< day of the last session
    double m_spell = 0;
    double m_clammy = 0; ///< days from clammy to sweating
    int m_toGo = 0;      ///< sessions until full sweating ends
    bool m_held = false; ///< a course has dried the site and continues
    std::uint64_t m_spells = 0;
    std::uint64_t m_sessions = 0;
    std::uint64_t m_relapses = 0;
    Skin m_skin = Skin::Dry;
};

} // namespace firstdew::rehearsal
