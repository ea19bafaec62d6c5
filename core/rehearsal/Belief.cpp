#include "rehearsal/Belief.h"

#include <algorithm>
#include <numeric>
#include <span>

namespace firstdew::rehearsal {

namespace {

/// Adds factor * from to `to` and takes it from `from`.
void move(double& from, double& to, double factor)
{
    const double moved = from * factor;
    from -= moved;
    to += moved;
}

} // namespace

Belief::Belief(const World& world) : m_world(world), m_hotRuns(hotRunsOf(world))
{
    constexpr int kDraws = 1000;
    for (int i = 0; i < kDraws; ++i)
        m_toGo[static_cast<std::size_t>(sessionsToDry(world, (i + 0.5) / kDraws))] += 1.0 / kDraws;
    const double hot = m_hotRuns.begins / (m_hotRuns.begins + m_hotRuns.ends);
    m_states[0].dry = 1 - hot;
    m_states[1].dry = hot;
}

double Belief::turnsToSweating(int day) const
{
    const double before = day > 0 ? staysClammy(m_world, day - 0.5) : 1;
    return before > 0 ? 1 - staysClammy(m_world, day + 0.5) / before : 1;
}

void Belief::pass(States& states, double hazard) const
{
    double sweats = 0;
    auto& clammy = states.clammy;
    for (std::size_t day = kClammyDays; day-- > 0;) {
        const std::size_t next = std::min(day + 1, kClammyDays - 1);
        move(clammy[day], sweats, turnsToSweating(static_cast<int>(next)));
        if (next != day)
            move(clammy[day], clammy[next], 1);
    }
    move(states.dry, clammy[0], hazard);
    move(clammy[0], sweats, turnsToSweating(0));
    for (std::size_t i = 0; i < m_toGo.size(); ++i)
        states.sweating[i] += sweats * m_toGo[i];
}

void Belief::mixWeather()
{
    auto& [usual, hot] = m_states;
    const auto mix = [this](double& a, double& b) {
        const double toHot = a * m_hotRuns.begins;
        const double toUsual = b * m_hotRuns.ends;
        a += toUsual - toHot;
        b += toHot - toUsual;
    };
    mix(usual.dry, hot.dry);
    for (std::size_t i = 0; i < kClammyDays; ++i)
        mix(usual.clammy[i], hot.clammy[i]);
    for (std::size_t i = 0; i < m_toGo.size(); ++i)
        mix(usual.sweating[i], hot.sweating[i]);
}

void Belief::pass(double hazard)
{
    for (States& states : m_states)
        pass(states, hazard);
    mixWeather();
}

void Belief::hear(const Said& said)
{
    double sum = 0;
    for (std::size_t hot = 0; hot < m_states.size(); ++hot) {
        States& states = m_states[hot];
        const auto weigh = [&](std::span<double> chances, Skin skin) {
            const double says = chanceOf(said, m_world, skin, hot == 1);
            for (double& chance : chances) {
                chance *= says;
                sum += chance;
            }
        };
        weigh({&states.dry, 1}, Skin::Dry);
        weigh(states.clammy, Skin::Clammy);
        weigh(states.sweating, Skin::Sweating);
    }
    for (States& states : m_states) {
        states.dry /= sum;
        for (double& chance : states.clammy)
            chance /= sum;
        for (double& chance : states.sweating)
            chance /= sum;
    }
}

void Belief::treat()
{
    for (States& states : m_states) {
        for (double& chance : states.clammy)
            move(chance, states.dry, m_world.takesClammy);
        move(states.sweating[1], states.dry, 1);
        std::rotate(states.sweating.begin(), states.sweating.begin() + 1, states.sweating.end());
    }
}

double Belief::dry() const { return m_states[0].dry + m_states[1].dry; }

double Belief::sweating() const
{
    double out = 0;
    for (const States& states : m_states)
        out = std::accumulate(states.sweating.begin(), states.sweating.end(), out);
    return out;
}

} // namespace firstdew::rehearsal
