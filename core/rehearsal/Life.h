#pragma once

#include "rehearsal/Rehearsal.h"

namespace firstdew::rehearsal {

/// What happened to a person.
struct Tally {
    int sessions = 0;
    int clammyDays = 0;
    int sweatingDays = 0;
};

/// How good the forecasts were.
struct Foresight {
    std::array<int, 3> covered{};
    std::array<int, 10> pit{};
    std::optional<std::size_t> judged; ///< tenth in which the one spell drawn beforehand ended
    int before = 0;
    int onTheDay = 0;
    int spells = 0;
    double squares = 0;
    int days = 0;
};

/// Simulates a person under the weekly or the late policy.
[[nodiscard]] Tally liveByCalendar(const Request& request, Chance chance, bool weekly);

/// Simulates a person who keeps a diary, with the errors of the world, and follows each advice on its day.
[[nodiscard]] Tally liveByAdvice(const Request& request, Chance chance, Foresight& foresight);

} // namespace firstdew::rehearsal
