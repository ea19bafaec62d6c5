#pragma once

#include "facts/Fact.h"

#include <optional>
#include <span>

namespace firstdew::codec {

using namespace facts;

/// What a record or a back-up holds, in numbers that a person can compare on two phones.
struct Tally {
    int people = 0;
    int checkIns = 0;
    int sessions = 0;
    int entries = 0;               ///< facts of every kind
    std::optional<LocalDate> last; ///< day of the latest check-in or session
    bool operator==(const Tally&) const = default;
};

/// Counts the facts. A corrected check-in or session counts once, a withdrawn one does not.
[[nodiscard]] Tally tallyOf(std::span<const Fact> facts);

} // namespace firstdew::codec
