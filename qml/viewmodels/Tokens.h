#pragma once

#include "Enums.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>

// The tokens by which the record keeps what only the interface knows, in the order of the values.
namespace firstdew::viewmodels {

inline constexpr std::array<std::string_view, 5> kNotNowTokens{"explained", "skin", "no-time", "away", "other"};
inline constexpr std::array<std::string_view, 4> kPlaceTokens{"today", "bath", "diary", "plan"};

static_assert(kNotNowTokens.size() == ui::NotNow::Other + 1);
static_assert(kPlaceTokens.size() == ui::Place::Plan + 1);

template <std::size_t N, class E>
[[nodiscard]] std::string tokenOf(const std::array<std::string_view, N>& tokens, E value)
{
    const auto i = static_cast<std::size_t>(value);
    return i < N ? std::string(tokens[i]) : std::string();
}

/// The value of a token; `otherwise` for one that is not known.
template <class E, std::size_t N>
[[nodiscard]] E valueOf(const std::array<std::string_view, N>& tokens, std::string_view token, E otherwise)
{
    for (std::size_t i = 0; i < N; ++i)
        if (tokens[i] == token)
            return static_cast<E>(i);
    return otherwise;
}

} // namespace firstdew::viewmodels
