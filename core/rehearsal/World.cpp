#include "rehearsal/World.h"

namespace firstdew::rehearsal {

constexpr double kLongestGap = 7; // days between two sessions of the default course at most

Body::Body(const World& world, Chance chance)
    : m_world(world), m_chance(chance),
      m_median(world.medianDays * std::exp(world.medianSdlog * chance.normal(Draw::Median))),
      m_shape(world.shape * std::exp(world.shapeSdlog * chance.normal(Draw::Shape))),
      m_phase(2 * std::numbers::pi * chance.uniform(Draw::Phase))
{
    begin();
}

/// Draws a new dry spell from the person's Weibull distribution on this day.
void Body::begin()
{
    const double season =
        1 + m_world.seasonAmplitude * std::sin(2 * std::numbers::pi * m_day / m_world.seasonPeriod + m_phase);
    const double median = m_median * season * std::pow(1 - m_world.wearOff, m_day / 365.25);
    const double u = m_chance.uniform(Draw::Spell, m_spells);
    m_spell = median * std::pow(-std::log(u) / std::numbers::ln2, 1 / m_shape);
    // Rayleigh: the chance of sweating rises with time. The outlook assumes a constant chance per day, so it can be
    // wrong.
    const double mean = m_world.daysClammyBeforeSweating;
    m_clammy = mean * std::sqrt(-std::log(m_chance.uniform(Draw::Clammy, m_spells)) * 4 / std::numbers::pi);
    ++m_spells;
    m_since = m_day;
    m_skin = Skin::Dry;
}

void Body::pass(int day)
{
    m_day = day;
    const double age = day - m_since;
    if (m_skin == Skin::Dry && age >= m_spell && !(m_held && age <= kLongestGap))
        m_skin = Skin::Clammy;
    if (m_skin == Skin::Clammy && age >= m_spell + m_clammy) {
        m_skin = Skin::Sweating;
        const double span = m_world.courseMost - m_world.courseLeast + 1;
        m_toGo = static_cast<int>(m_world.courseLeast + m_chance.uniform(Draw::Course, m_relapses++) * span);
    }
}

void Body::treat(bool ofCourse)
{
    const bool takes = m_skin == Skin::Sweating ? --m_toGo <= 0
                       : m_skin == Skin::Clammy ? m_chance.happens(m_world.takesClammy, Draw::Takes, m_sessions)
                                                : true;
    ++m_sessions;
    m_held = ofCourse;
    if (takes)
        begin();
}

} // namespace firstdew::rehearsal
