#pragma once

#include "rehearsal/World.h"

#include <array>

namespace firstdew::rehearsal {

/// What somebody believes of the skin who knows every number of the world, and how long each dry spell may last, but
/// learns of the skin only by the check-ins. Within a day dampness begins at noon, and how long a run of hot days lasts
/// is forgotten within it; otherwise the beliefs are those of Bayes' rule.
class Belief {
public:
    explicit Belief(const World& world);

    /// Goes to the next day. `hazard`: the chance that skin which was dry turns clammy by then.
    void pass(double hazard);
    /// Takes in what was said.
    void hear(const Said& said);
    /// A session.
    void treat();
    [[nodiscard]] double dry() const;
    [[nodiscard]] double sweating() const;

private:
    static constexpr std::size_t kClammyDays = 30; ///< told apart; later days are as the last of them
    static constexpr std::size_t kCourse = 7;      ///< sessions to go at most
    struct States {
        double dry = 0;
        std::array<double, kClammyDays> clammy{};   ///< by days since dampness began
        std::array<double, kCourse + 1> sweating{}; ///< by sessions to go
    };
    /// Chance that skin which is clammy on that day of dampness sweats on the next one.
    [[nodiscard]] double turnsToSweating(int day) const;
    void pass(States& states, double hazard) const;
    void mixWeather();

    World m_world;
    std::array<double, kCourse + 1> m_toGo{}; ///< chances of so many sessions
    HotRuns m_hotRuns;
    std::array<States, 2> m_states; ///< on a usual day and on one in a run of hot days; together they sum to 1
};

} // namespace firstdew::rehearsal
