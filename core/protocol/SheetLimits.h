#pragma once

#include "protocol/Limits.h"

#include <optional>
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

/// The highest level to begin with that a sheet may name: the lowest of its limits for that current. Nullopt where the
/// sheet leaves no site to it.
[[nodiscard]] std::optional<Milliamps> mostLevel(const CareSheet& sheet, Waveform waveform, AgeGroup age);
/// Where the choice of that level begins: at most the first aim at each of its sites.
[[nodiscard]] std::optional<Milliamps> levelToStart(const CareSheet& sheet, Waveform waveform, AgeGroup age);

} // namespace firstdew::protocol
