#include "outlook/Fitting.h"

#include "outlook/Terms.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace firstdew::outlook {

namespace {

constexpr std::array kSlopes{0.4, 0.65};
constexpr std::array kShifts{-1.5, -0.75, 0.0, 0.75, 1.5};
constexpr std::size_t kAlternatives = kSlopes.size() * kShifts.size();
constexpr double kFirstShare = 0.5;
constexpr double kLaterShare = 1.0 / 40;
/// An e-value counts up to here, so that somebody whom the forecasts fit again is told so before long.
constexpr double kMost = kForecastsMisfit * kForecastsMisfit;

/// What each alternative says of a chance that the forecast gives.
std::array<double, kAlternatives> alternativesTo(double survivor)
{
    static const auto kFactors = [] {
        std::array<double, kShifts.size()> out{};
        std::transform(kShifts.begin(), kShifts.end(), out.begin(), [](double shift) { return std::exp(shift); });
        return out;
    }();
    std::array<double, kAlternatives> out{};
    if (survivor >= 1 || survivor <= 0) {
        out.fill(survivor >= 1 ? 1 : 0);
        return out;
    }
    const double logOdds = std::log((1 - survivor) / survivor);
    for (std::size_t slope = 0; slope < kSlopes.size(); ++slope) {
        const double odds = std::exp(kSlopes[slope] * logOdds);
        for (std::size_t shift = 0; shift < kShifts.size(); ++shift)
            out[slope * kShifts.size() + shift] = 1 / (1 + kFactors[shift] * odds);
    }
    return out;
}

} // namespace

void Fitting::see(const Predictive& clock, const Evidence& spell)
{
    static_assert(kWays == kAlternatives);
    if (spell.pieces.empty())
        return;
    const Terms terms = termsOf(spell);
    const std::vector<double> survivors = clock.survivorsOn(terms.days);
    double forecast = terms.regardless;
    std::array<double, kWays> others{};
    others.fill(terms.regardless);
    for (std::size_t d = 0; d < survivors.size(); ++d) {
        forecast += terms.weights[d] * survivors[d];
        const auto told = alternativesTo(survivors[d]);
        for (std::size_t i = 0; i < kWays; ++i)
            others[i] += terms.weights[d] * told[i];
    }
    if (!(forecast > 0))
        return;
    const double set = m_kept * (m_begun ? kLaterShare : kFirstShare);
    m_begun = true;
    m_kept -= set;
    for (std::size_t i = 0; i < kWays; ++i)
        m_stakes[i] = (m_stakes[i] + set / kWays) * std::max(0.0, others[i]) / forecast;
    const double e = eValue();
    for (double& stake : m_stakes)
        stake *= std::min(1.0, kMost / e);
    m_misfit = e >= kForecastsMisfit || (m_misfit && e >= 1);
}

double Fitting::eValue() const { return m_kept + std::accumulate(m_stakes.begin(), m_stakes.end(), 0.0); }

double Fitting::widened(double survivor) const
{
    const auto told = alternativesTo(survivor);
    const double own = 1; // what the forecast itself has won
    double sum = own * survivor;
    double total = own;
    for (std::size_t i = 0; i < kWays; ++i) {
        sum += m_stakes[i] * told[i];
        total += m_stakes[i];
    }
    return sum / total;
}

void OwnClock::learn(std::span<const Evidence> spells, std::span<const double> doses)
{
    const auto judge = [this](const Evidence& spell) { m_fitting.see(m_learned, spell); };
    std::size_t from = 0;
    for (std::size_t i = 0; i < doses.size(); ++i) {
        if (doses[i] == 1)
            continue;
        m_learned.learn(spells.subspan(from, i - from), judge);
        const Evidence usual = shortened(spells[i], m_power.lengthening(doses[i]));
        m_power.see(m_learned, spells[i], doses[i]);
        m_learned.learn({&usual, 1}, judge);
        from = i + 1;
    }
    m_learned.learn(spells.subspan(from), judge);
    m_widened.reset();
    if (m_fitting.misfit())
        m_widened = m_learned.reshaped([this](double survivor) { return m_fitting.widened(survivor); });
}

std::optional<Predictive> OwnClock::afterUnusual(double dose, Clock which) const
{
    const double by = m_power.lengthening(dose);
    return by == 1 ? std::nullopt : std::optional(of(which).stretched(by));
}

} // namespace firstdew::outlook
