#pragma once

#include "facts/LocalDate.h"

#include <string>

namespace firstdew::facts {

/// A recorded payload with its corrections applied.
template <class P>
struct Entry {
    std::string id;
    LocalTime happened;
    long long recordedMs{};
    std::size_t position{}; ///< index among all facts, in the order recorded
    bool corrected = false; ///< this entry replaces an earlier one
    P payload;
    bool operator==(const Entry&) const = default;
};

} // namespace firstdew::facts
