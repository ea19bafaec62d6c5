#pragma once

#include "facts/Payloads.h"

#include <charconv>
#include <cmath>
#include <concepts>
#include <fmt/format.h>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

// One value of a payload's field as text and back, by its type alone. FactJson and the tables of
// summary/ both stand on this, so that a new field of a known type needs no further code.
namespace firstdew::codec {

template <class T>
inline constexpr bool isOptional = false;
template <class T>
inline constexpr bool isOptional<std::optional<T>> = true;

template <class T>
inline constexpr bool isSet = false;
template <class E>
inline constexpr bool isSet<facts::SetOf<E>> = true;

/// A type that is written as text everywhere: words, dates, times, plain text.
template <class T>
concept Textual = facts::HasTokens<T> || std::same_as<T, facts::LocalDate> || std::same_as<T, facts::LocalTime> ||
    std::same_as<T, facts::MinuteOfDay> || std::same_as<T, std::string>;

/// A plain number or a unit around one.
template <class T>
concept Quantity = (std::is_arithmetic_v<T> && !std::same_as<T, bool>) ||
                   (std::is_aggregate_v<T> && std::is_class_v<T> && !Textual<T>);

/// The bare number inside a unit, or the number itself.
template <Quantity T>
[[nodiscard]] auto& bare(T& value)
{
    if constexpr (std::is_arithmetic_v<std::remove_const_t<T>>) {
        return value;
    } else {
        auto& [number] = value;
        return number;
    }
}

/// What a reading of that unit can possibly be; whether it is wise is decided elsewhere.
template <Quantity T>
[[nodiscard]] constexpr facts::Range possible()
{
    using namespace facts;
    if constexpr (std::same_as<T, Milliamps>)
        return {0, 100};
    else if constexpr (std::same_as<T, MilliampMinutes>)
        return {0, 100'000};
    else if constexpr (std::same_as<T, Seconds>)
        return {0, 86'400};
    else if constexpr (std::same_as<T, Centimetres>)
        return {20, 300};
    else if constexpr (std::same_as<T, Kilograms>)
        return {1, 700};
    else if constexpr (std::same_as<T, Milligrams>)
        return {0, 1e7};
    else if constexpr (std::same_as<T, SquareCentimetres>)
        return {1, 1000};
    else if constexpr (std::same_as<T, double>)
        return {-1e15, 1e15};
    else if constexpr (std::same_as<T, long long>)
        return {-9e15, 9e15}; // whole numbers that survive a reader which knows only doubles
    else
        return {static_cast<double>(std::numeric_limits<T>::lowest()),
                static_cast<double>(std::numeric_limits<T>::max())};
}

template <class N>
[[nodiscard]] bool within(N number, facts::Range range)
{
    const auto x = static_cast<double>(number);
    return std::isfinite(x) && x >= range.least && x <= range.most;
}

/// "a number from 0 to 100", for error messages.
template <Quantity T>
[[nodiscard]] std::string expected(facts::Range range)
{
    T probe{};
    constexpr bool whole = std::integral<std::remove_reference_t<decltype(bare(probe))>>;
    return fmt::format("{} from {} to {}", whole ? "a whole number" : "a number", range.least, range.most);
}

template <facts::HasTokens E>
[[nodiscard]] std::string wordsOf()
{
    std::string out;
    for (const auto w : facts::Tokens<E>::list)
        out += (out.empty() ? "" : ", ") + std::string(w);
    return out;
}

template <Textual T>
[[nodiscard]] std::string expected()
{
    if constexpr (facts::HasTokens<T>)
        return "one of " + wordsOf<T>();
    else if constexpr (std::same_as<T, facts::LocalDate>)
        return "a date YYYY-MM-DD";
    else if constexpr (std::same_as<T, facts::LocalTime>)
        return "a local time YYYY-MM-DDTHH:MM";
    else if constexpr (std::same_as<T, facts::MinuteOfDay>)
        return "a time of day HH:MM";
    else
        return "a text";
}

template <Textual T>
[[nodiscard]] std::string textOf(const T& value)
{
    if constexpr (facts::HasTokens<T>)
        return std::string(facts::token(value));
    else if constexpr (std::same_as<T, facts::MinuteOfDay>)
        return value.text();
    else if constexpr (std::same_as<T, std::string>)
        return value;
    else
        return value.iso();
}

template <Textual T>
[[nodiscard]] std::optional<T> parseText(std::string_view text)
{
    if constexpr (facts::HasTokens<T>)
        return facts::fromToken<T>(text);
    else if constexpr (std::same_as<T, std::string>)
        return std::string(text);
    else
        return T::parse(text);
}

} // namespace firstdew::codec
