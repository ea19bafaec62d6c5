#pragma once

#include "rehearsal/Rehearsal.h"

namespace firstdew::rehearsal {

/// What a person went through.
struct Tally {
    int sessions = 0;
    int clammyDays = 0;
    int sweatingDays = 0;
};

/// How well it was foreseen.
struct Foresight {
    std::array<int, 3> covered{};
    std::array<int, 10> pit{};
    std::optional<std::size_t> judged; ///< tenth of the one spell drawn beforehand
    int before = 0;
    int onTheDay = 0;
    int spells = 0;
    double squares = 0;
    int days = 0;
};

/// A person under the weekly or the late policy.
[[nodiscard]] Tally liveByCalendar(const Request& request, Chance chance, bool weekly);

/// A person who keeps a diary as the world lets them and does what is advised on the day it is advised.
[[nodiscard]] Tally liveByAdvice(const Request& request, Chance chance, Foresight& foresight);

} // namespace firstdew::rehearsal
