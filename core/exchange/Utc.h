#pragma once

#include "facts/LocalDate.h"

#include <fmt/format.h>

namespace firstdew::exchange {

/// An instant (ms since 1970 UTC) as `2026-03-05T12:00:00Z` (ISO 8601).
[[nodiscard]] inline std::string utcText(long long ms)
{
    constexpr long long day = 86'400'000;
    const long long days = ms >= 0 ? ms / day : -((-ms + day - 1) / day);
    const long long s = (ms - days * day) / 1000;
    return fmt::format("{}T{:02}:{:02}:{:02}Z", facts::LocalDate(static_cast<int>(days)).iso(), s / 3600, s / 60 % 60,
                       s % 60);
}

} // namespace firstdew::exchange
