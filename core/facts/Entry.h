#pragma once

#include "facts/LocalDate.h"

#include <string>

namespace firstdew::facts {

/// A recorded payload as it counts, with its corrections applied.
template <class P>
struct Entry {
    std::string id;
    LocalTime happened;
    long long recordedMs{};
    std::size_t position{}; ///< among all facts, in the order in which they were recorded
    bool corrected = false; ///< this stands in place of an earlier entry
    P payload;
    bool operator==(const Entry&) const = default;
};

} // namespace firstdew::facts
