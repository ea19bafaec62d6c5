#pragma once

#include "outlook/Terms.h"

#include <array>
#include <optional>

namespace firstdew::outlook {

/// From this sum on, a person's dry spells are taken to have become shorter. Somebody in whom nothing changed meets it
/// once in at least so many spells on average (our own choice).
inline constexpr double kShifted = 100;
/// The test begins after so many spells, when the forecast is this person's own (our own choice).
inline constexpr int kSpellsBeforeShift = 4;

/// A ratio counts up to here, which keeps its mean at 1 at most: one odd spell says little (our own choice).
inline constexpr double kMostOfOne = 8;
/// So many spells have to follow a change before it is taken for one, so that no single spell is (our own choice).
inline constexpr int kSpellsAfterShift = 3;

/// What a test of the spells found: the last `spells` of them came after the change.
struct Shifted {
    int spells = 0;
};

/// Tests, spell by spell, whether this person's dry spells have become shorter.
///
/// Each alternative says that at every moment the spell ends a certain number of times as readily as the forecast says:
/// its survivor is the forecast's to that power (Lehmann, Ann Math Stat 1953;24:23-43). With spells of the usual shape,
/// the powers 2, 4 and 8 shorten the median to 0.79, 0.63 and 0.5 of what it was. For each spell, the chance of its
/// reports by the alternative is divided by their chance by the forecast, which was made from the spells before. Both
/// are chances of the same reports, so spells cut short, days without a check-in and wrong reports count as what they
/// are, and the ratio is 1 on average if the forecast is right. The sum over every spell at which the change may have
/// begun is the statistic of Shiryaev (Theory Probab Appl 1963;8:22-46) and Roberts (Technometrics 1966;8:411-430): R =
/// (1 + R) * ratio. Without a change its mean is the number of spells, so that it reaches kShifted after that many of
/// them on average, or later.
class Shift {
public:
    /// Takes in a spell. `survivors` are the forecast's on the days of `terms`.
    void see(const Terms& terms, std::span<const double> survivors);
    /// As see(), where the spell is known to belong to the person as they now are.
    void skip() { ++m_known; }
    [[nodiscard]] std::optional<Shifted> found() const;
    /// The sum in parts of the number of spells tested: an e-value, 1 on average without a change.
    [[nodiscard]] double eValue() const;

private:
    static constexpr std::size_t kPowers = 3;

    struct Way {
        double sum = 0;  ///< R
        double peak = 1; ///< greatest product of the latest ratios
        int spells = 0;  ///< of so many
    };
    [[nodiscard]] double sum() const; ///< the mean of R over the alternatives

    std::array<Way, kPowers> m_ways{};
    int m_known = 0;
    int m_tested = 0;
};

} // namespace firstdew::outlook
