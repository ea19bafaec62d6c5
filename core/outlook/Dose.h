#pragma once

#include "diary/Diary.h"
#include "outlook/Predictive.h"

#include <array>
#include <vector>

namespace firstdew::outlook {

using diary::Diary;

/// A day on which a site was treated, and how much it was beside this person's usual session.
struct TreatedDay {
    LocalDate day;
    double dose = 1;       ///< charge of the day in parts of the usual one; 1: usual, or not known
    bool completed = true; ///< false: stopped early, with most of the usual charge done
    bool operator==(const TreatedDay&) const = default;
};

/// The usual charge is the median of so many completed sessions of that kind and waveform before the day, at the most
/// and at the least (our own choice).
inline constexpr int kUsualOfLatest = 9;
inline constexpr int kUsualFrom = 3;
/// A dose between these is as usual, and one beyond the others counts as they do (our own choice). More current than
/// usual is not trusted to hold much longer.
inline constexpr double kUsualLeast = 0.8;
inline constexpr double kUsualMost = 1.25;
inline constexpr double kLeastDose = 0.25;
inline constexpr double kMostDose = 1.5;
/// A session that was stopped counts for the dry spell from this share of the usual charge on (our own choice). With
/// hand and foot the sides follow each other, so that half of the charge may be one side alone: there it takes more.
inline constexpr double kStoppedCounts = 0.5;
inline constexpr double kStoppedCountsBySides = 0.75;

/// The days on which the site was treated, ascending: those with a completed session, and those on which what was
/// stopped brought most of the usual charge. It says how long the skin may stay dry. What a session is to the skin, to
/// the course and to the next permission is asked elsewhere, and there one that was stopped counts as before.
[[nodiscard]] std::vector<TreatedDay> treatedDays(const Diary& diary, DiarySite site);

/// The evidence with all its times divided by `by` (above 0).
[[nodiscard]] Evidence shortened(const Evidence& spell, double by);

/// How long a spell holds by the dose before it: its time is that after a usual session, times dose^power (accelerated
/// failure time). Nobody has published the power. It starts as 0, 1/2 or 1 with chances of 0.3, 0.4 and 0.3 (our own
/// choice), and this person's spells after unusual doses decide. So it is 1/2 at first and moves slowly.
class DosePower {
public:
    /// Takes in a spell that followed that dose. `clock` is the distribution after usual sessions.
    void see(const Predictive& clock, const Evidence& spell, double dose);
    /// By how much a spell after that dose is longer than after a usual session.
    [[nodiscard]] double lengthening(double dose) const;
    [[nodiscard]] double power() const;

private:
    static constexpr std::array<double, 3> kPowers{0, 0.5, 1};
    std::array<double, 3> m_chances{0.3, 0.4, 0.3};
};

} // namespace firstdew::outlook
