#pragma once

#include "outlook/Fit.h"

#include <span>

// Whether a shorter session holds as long as the usual one, by spells after either in random pairs.
namespace firstdew::outlook {

/// A comparison is over after so many pairs of spells. With 16 spells of the usual shape of 3, reported on 85 of 100
/// days, a shorter session that holds 0.6 times as long is found in four comparisons of five, see COSTS.md.
inline constexpr int kPairs = 8;
/// It is looked at early after so many pairs (our own choice).
inline constexpr int kEarlyLooks[] = {4, 6};
/// So many standard errors below 1 the shorter session plainly holds less at an early look. A bound that far away
/// leaves the error at the end nearly as it is; three is usual (Haybittle, Br J Radiol 1971;44:793-797; Peto et al., Br
/// J Cancer 1976;34:585-612; from memory). So few spells take a little more (our own choice, by simulation).
inline constexpr double kPlainly = 3.3;
/// A shorter session holds about as long if it surely holds for at least this part of the usual time (our own choice:
/// ten sessions then do what seven usual ones would).
inline constexpr double kAboutAsLong = 0.7;
/// A ratio is looked for between this and its inverse.
inline constexpr double kLeastRatio = 0.05;

struct ComparedSpell {
    Interval held;        ///< days to clammy
    bool shorter = false; ///< it followed the shorter session
};

/// How long the shorter session holds in parts of the usual one: accelerated failure time with Weibull times, the
/// maximum of the likelihood and the interval of 95 % where the likelihood ratio allows it.
struct HoldRatio {
    double ratio = 1;
    double low = kLeastRatio;
    double high = 1 / kLeastRatio;
    double usualMedian = 0; ///< days
    double logLikelihood = 0;
    /// Whether the interval is worth telling: one that goes beyond three times the usual time says nothing (our own
    /// choice).
    [[nodiscard]] bool bounded() const { return high <= 3; }
    [[nodiscard]] double shorterMedian() const { return ratio * usualMedian; }
};

/// Errors: see fit(). Without a spell that ended there is no ratio.
[[nodiscard]] facts::Result<HoldRatio> holdRatioOf(std::span<const ComparedSpell> spells);

/// Whether the shorter session holds less by kPlainly standard errors, as the likelihood ratio counts them.
[[nodiscard]] bool plainlyLess(std::span<const ComparedSpell> spells);

enum class HoldAnswer { AsLong, Less, NotTold };
/// AsLong if the whole interval lies above kAboutAsLong, Less if it lies below 1 otherwise.
[[nodiscard]] HoldAnswer answerOf(const HoldRatio& ratio);

} // namespace firstdew::outlook

namespace firstdew::facts {
FIRSTDEW_TOKENS(outlook::HoldAnswer, "as-long", "less", "not-told");
} // namespace firstdew::facts
