#pragma once

#include "rehearsal/Rehearsal.h"

namespace firstdew::rehearsal {

/// What happened to a person.
struct Tally {
    int sessions = 0;
    int clammyDays = 0;
    int sweatingDays = 0;
};

/// What the app called for.
struct Calls {
    int all = 0;   ///< calls for a top-up by the forecast
    int onDry = 0; ///< those on dry skin
    int named = 0; ///< those on the day that was named for it the day before
    int restarts = 0;
    int restartsDry = 0; ///< restarts of the course on skin that did not sweat
};

/// How good the forecasts were.
struct Foresight {
    Calls calls;
    std::array<int, 3> covered{};
    std::array<int, 10> pit{};
    std::optional<std::size_t> judged; ///< tenth in which the one spell drawn beforehand ended
    int before = 0;
    int onTheDay = 0;
    int spells = 0;
    double squares = 0;
    int days = 0;
    double misfit = 1;      ///< e-value against the forecasts fitting, at the end
    bool found = false;     ///< that they do not fit, at some time
    int shortenings = 0;    ///< found
    bool shortened = false; ///< one was found after the day on which medians change
};

/// Simulates a person who treats by any other policy than the app's.
[[nodiscard]] Tally liveByRule(const Request& request, Chance chance, Policy policy);

/// Simulates a person who keeps a diary, with the errors of the world, and follows each advice on its day.
[[nodiscard]] Tally liveByAdvice(const Request& request, Chance chance, Foresight& foresight);

} // namespace firstdew::rehearsal
