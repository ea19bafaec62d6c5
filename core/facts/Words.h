#pragma once

#include "facts/LocalDate.h"

#include <array>
#include <initializer_list>
#include <limits>
#include <optional>
#include <string_view>
#include <utility>

// The enumerations that facts use, and the tokens that stand for their values in files and on the command line.
namespace firstdew::facts {

/// What a session treats.
enum class Site { Hands, Feet, HandFoot, Armpits };
/// What a check-in is about. A hand + foot session treats two of them, hands and feet.
enum class DiarySite { Hands, Feet, Armpits };
enum class Level { Dry, Clammy, Wet, Dripping };
enum class Circumstance { Heat, Exertion, Stress, Illness };
enum class Waveform { Direct, Pulsed };
enum class AgeGroup { Adult, Child };
enum class Side { Right, Left };
/// How the polarity is reversed between phases: the person exchanges the two leads, uses the machine's switch or
/// exchanges the armpit pads between the sides.
enum class PolaritySwap { Leads, Switch, Pads };
/// Who can touch the phone while current flows.
enum class WayOfWorking { FreeHand, Helper, HandsUnder };
enum class PowerSource { Cells, Mains };
/// How the session felt, as the person says.
enum class Comfort { NothingFelt, Comfortable, Strong, Unpleasant, Painful };
enum class SkinFinding { Fine, Redness, Dryness, Itch, Blister, Burn, Pain };
/// Answers to the call for a top-up.
enum class CallAnswer { StartNow, ThisEvening, Tomorrow, NotThisTime };
enum class CourseTemplate { Seven, MonWedFri, Daily, Prescribed };
/// How a course goes on where sessions crowd: inside its window, or with a day between any two.
enum class Pace { KeepWindow, DayBetween };
/// Something other than the sessions that dries the skin.
enum class OtherKind { Botulinum, Tablets, Cream, Other };

/// The tokens of an enumeration, in the order of its values.
template <class E>
struct Words;

/// Gives an enumeration its tokens, one for each enumerator and in the same order; tests/core/lint.py compares them.
#define FIRSTDEW_WORDS(E, ...)                                                                                         \
    template <>                                                                                                        \
    struct Words<E> {                                                                                                  \
        static constexpr auto list = std::to_array<std::string_view>({__VA_ARGS__});                                   \
    }

FIRSTDEW_WORDS(Site, "hands", "feet", "hand-foot", "armpits");
FIRSTDEW_WORDS(DiarySite, "hands", "feet", "armpits");
FIRSTDEW_WORDS(Level, "dry", "clammy", "wet", "dripping");
FIRSTDEW_WORDS(Circumstance, "heat", "exertion", "stress", "illness");
FIRSTDEW_WORDS(Waveform, "direct", "pulsed");
FIRSTDEW_WORDS(AgeGroup, "adult", "child");
FIRSTDEW_WORDS(Side, "right", "left");
FIRSTDEW_WORDS(PolaritySwap, "leads", "switch", "pads");
FIRSTDEW_WORDS(WayOfWorking, "free-hand", "helper", "hands-under");
FIRSTDEW_WORDS(PowerSource, "cells", "mains");
FIRSTDEW_WORDS(Comfort, "nothing-felt", "comfortable", "strong", "unpleasant", "painful");
FIRSTDEW_WORDS(SkinFinding, "fine", "redness", "dryness", "itch", "blister", "burn", "pain");
FIRSTDEW_WORDS(CallAnswer, "start-now", "this-evening", "tomorrow", "not-this-time");
FIRSTDEW_WORDS(CourseTemplate, "seven", "mwf", "daily", "prescribed");
FIRSTDEW_WORDS(Pace, "keep-window", "day-between");
FIRSTDEW_WORDS(OtherKind, "botulinum", "tablets", "cream", "other");
FIRSTDEW_WORDS(Weekday, "mon", "tue", "wed", "thu", "fri", "sat", "sun");

template <class E>
concept Worded = requires
{
    Words<E>::list;
};

template <Worded E>
[[nodiscard]] constexpr std::string_view word(E value)
{
    return Words<E>::list[static_cast<std::size_t>(value)];
}

template <Worded E>
[[nodiscard]] constexpr std::optional<E> fromWord(std::string_view text)
{
    for (std::size_t i = 0; i < Words<E>::list.size(); ++i)
        if (Words<E>::list[i] == text)
            return static_cast<E>(i);
    return std::nullopt;
}

/// Every value of an enumeration with tokens, in order.
template <Worded E>
[[nodiscard]] constexpr auto allOf()
{
    std::array<E, Words<E>::list.size()> out{};
    for (std::size_t i = 0; i < out.size(); ++i)
        out[i] = static_cast<E>(i);
    return out;
}

/// One T for each value of an enumeration with tokens.
template <Worded E, class T>
struct PerWord {
    std::array<T, Words<E>::list.size()> values{};
    [[nodiscard]] constexpr T& operator[](E e) { return values[static_cast<std::size_t>(e)]; }
    [[nodiscard]] constexpr const T& operator[](E e) const { return values[static_cast<std::size_t>(e)]; }
    constexpr bool operator==(const PerWord&) const = default;
};

/// A set of values of an enumeration with tokens.
template <Worded E>
class SetOf {
public:
    constexpr SetOf() = default;
    constexpr SetOf(std::initializer_list<E> values)
    {
        for (const E v : values)
            insert(v);
    }
    constexpr void insert(E v) { m_bits |= bit(v); }
    constexpr void erase(E v) { m_bits &= ~bit(v); }
    [[nodiscard]] constexpr bool contains(E v) const { return (m_bits & bit(v)) != 0; }
    [[nodiscard]] constexpr bool empty() const { return m_bits == 0; }
    [[nodiscard]] constexpr unsigned bits() const { return m_bits; }
    constexpr bool operator==(const SetOf&) const = default;

private:
    static_assert(Words<E>::list.size() <= std::numeric_limits<unsigned>::digits, "the set needs more bits");
    static constexpr unsigned bit(E v) { return 1U << static_cast<unsigned>(v); }
    unsigned m_bits = 0;
};

/// The diary sites that a session at `site` treats.
[[nodiscard]] constexpr SetOf<DiarySite> treats(Site site)
{
    switch (site) {
    case Site::Hands: return {DiarySite::Hands};
    case Site::Feet: return {DiarySite::Feet};
    case Site::HandFoot: return {DiarySite::Hands, DiarySite::Feet};
    case Site::Armpits: return {DiarySite::Armpits};
    }
    return {};
}

} // namespace firstdew::facts
