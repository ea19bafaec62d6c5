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
/// What whoever teaches has seen the person do or heard the person say at a first session. Teach-back is common
/// practice in nursing, no source; this list is our own choice.
enum class TaughtTick { SkinAndJewellery, TraysAndWater, TurnedUpSlowly, SwappedAtZero, OutOfWater, WhenToStop };

/// The tokens of an enumeration, in the order of its values.
template <class E>
struct Tokens;

/// Gives an enumeration its tokens, one for each enumerator and in the same order; tests/core/lint.py compares them.
#define FIRSTDEW_TOKENS(E, ...)                                                                                        \
    template <>                                                                                                        \
    struct Tokens<E> {                                                                                                 \
        static constexpr auto list = std::to_array<std::string_view>({__VA_ARGS__});                                   \
    }

FIRSTDEW_TOKENS(Site, "hands", "feet", "hand-foot", "armpits");
FIRSTDEW_TOKENS(DiarySite, "hands", "feet", "armpits");
FIRSTDEW_TOKENS(Level, "dry", "clammy", "wet", "dripping");
FIRSTDEW_TOKENS(Circumstance, "heat", "exertion", "stress", "illness");
FIRSTDEW_TOKENS(Waveform, "direct", "pulsed");
FIRSTDEW_TOKENS(AgeGroup, "adult", "child");
FIRSTDEW_TOKENS(Side, "right", "left");
FIRSTDEW_TOKENS(PolaritySwap, "leads", "switch", "pads");
FIRSTDEW_TOKENS(WayOfWorking, "free-hand", "helper", "hands-under");
FIRSTDEW_TOKENS(PowerSource, "cells", "mains");
FIRSTDEW_TOKENS(Comfort, "nothing-felt", "comfortable", "strong", "unpleasant", "painful");
FIRSTDEW_TOKENS(SkinFinding, "fine", "redness", "dryness", "itch", "blister", "burn", "pain");
FIRSTDEW_TOKENS(CallAnswer, "start-now", "this-evening", "tomorrow", "not-this-time");
FIRSTDEW_TOKENS(CourseTemplate, "seven", "mwf", "daily", "prescribed");
FIRSTDEW_TOKENS(Pace, "keep-window", "day-between");
FIRSTDEW_TOKENS(OtherKind, "botulinum", "tablets", "cream", "other");
FIRSTDEW_TOKENS(TaughtTick, "skin-and-jewellery", "trays-and-water", "turned-up-slowly", "swapped-at-zero",
                "out-of-water", "when-to-stop");
FIRSTDEW_TOKENS(Weekday, "mon", "tue", "wed", "thu", "fri", "sat", "sun");

template <class E>
concept HasTokens = requires
{
    Tokens<E>::list;
};

template <HasTokens E>
[[nodiscard]] constexpr std::string_view token(E value)
{
    return Tokens<E>::list[static_cast<std::size_t>(value)];
}

template <HasTokens E>
[[nodiscard]] constexpr std::optional<E> fromToken(std::string_view text)
{
    for (std::size_t i = 0; i < Tokens<E>::list.size(); ++i)
        if (Tokens<E>::list[i] == text)
            return static_cast<E>(i);
    return std::nullopt;
}

/// Every value of an enumeration with tokens, in order.
template <HasTokens E>
[[nodiscard]] constexpr auto allOf()
{
    std::array<E, Tokens<E>::list.size()> out{};
    for (std::size_t i = 0; i < out.size(); ++i)
        out[i] = static_cast<E>(i);
    return out;
}

/// One T for each value of an enumeration with tokens.
template <HasTokens E, class T>
struct PerValue {
    std::array<T, Tokens<E>::list.size()> values{};
    [[nodiscard]] constexpr T& operator[](E e) { return values[static_cast<std::size_t>(e)]; }
    [[nodiscard]] constexpr const T& operator[](E e) const { return values[static_cast<std::size_t>(e)]; }
    constexpr bool operator==(const PerValue&) const = default;
};

/// A set of values of an enumeration with tokens.
template <HasTokens E>
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
    static_assert(Tokens<E>::list.size() <= std::numeric_limits<unsigned>::digits, "the set needs more bits");
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

/// Whether sessions at `a` and at `b` treat some of the same skin.
[[nodiscard]] constexpr bool shareSkin(Site a, Site b) { return (treats(a).bits() & treats(b).bits()) != 0; }

} // namespace firstdew::facts
