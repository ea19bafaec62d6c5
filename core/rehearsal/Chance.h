#pragma once

#include <cmath>
#include <cstdint>
#include <numbers>

namespace firstdew::rehearsal {

/// The purpose of a draw. Draws with different purposes are independent.
enum class Draw : std::uint64_t {
    Median,
    Shape,
    Phase,
    Spell,
    Clammy,
    Takes,
    Course,
    Stirred,
    Missed,
    Report,
    Level,
    Judged,
    Order,
    FalseWet,
    HotRun,
    HotLength,
    Weekend,
    Felt,
    Drift,
    Dose
};

/// Random numbers by lookup: a number depends only on seed, person, purpose and index. A person therefore lives through
/// the same days under every policy, and the order of simulation and the threads do not affect the result.
class Chance {
public:
    Chance(std::uint64_t seed, std::uint64_t person) : m_key(mix(mix(seed + kStep) ^ (person + kStep))) {}

    /// Uniform in (0, 1).
    [[nodiscard]] double uniform(Draw draw, std::uint64_t index = 0) const
    {
        const std::uint64_t bits = mix(m_key ^ mix((static_cast<std::uint64_t>(draw) << 40U) + index + kStep));
        return (static_cast<double>(bits >> 11U) + 0.5) * 0x1p-53;
    }
    [[nodiscard]] bool happens(double chance, Draw draw, std::uint64_t index) const
    {
        return uniform(draw, index) < chance;
    }
    /// Standard normal (Box & Muller, Ann Math Stat 1958;29:610-611).
    [[nodiscard]] double normal(Draw draw, std::uint64_t index = 0) const
    {
        return std::sqrt(-2 * std::log(uniform(draw, 2 * index))) *
               std::cos(2 * std::numbers::pi * uniform(draw, 2 * index + 1));
    }

private:
    static constexpr std::uint64_t kStep = 0x9E3779B97F4A7C15U;

    /// The output function of SplitMix64 (Steele, Lea & Flood, OOPSLA 2014).
    static constexpr std::uint64_t mix(std::uint64_t z)
    {
        z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27U)) * 0x94D049BB133111EBU;
        return z ^ (z >> 31U);
    }

    std::uint64_t m_key;
};

} // namespace firstdew::rehearsal
