#pragma once

#include "protocol/Limits.h"

#include <vector>

namespace firstdew::protocol {

/// The limit that a care sheet leaves for one kind of session and one current.
struct SheetLimit {
    Site site{};
    Waveform waveform{};
    Milliamps limit;
    bool operator==(const SheetLimit&) const = default;
};

/// For every kind of session and every current that the sheet allows somebody of that age: the lowest of the trade's
/// limit, the sheet's and that of the armpit pads. The app may know of more that lowers it (body size, the machine).
[[nodiscard]] std::vector<SheetLimit> limitsOf(const CareSheet& sheet, AgeGroup age);

} // namespace firstdew::protocol
