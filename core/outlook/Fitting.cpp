#include "outlook/Fitting.h"

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

void Fitting::see(const Terms& terms, std::span<const double> survivors)
{
    static_assert(kWays == kAlternatives);
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

void OwnClock::judge(const Evidence& spell)
{
    const Terms terms = termsOf(spell);
    const auto survivors = m_learned.survivorsOn(terms.days);
    // A median that wanders would soon have followed a change, which is then not told.
    auto said = (m_since ? *m_since : m_learned).steadySurvivorsOn(terms.days);
    if (!m_since && m_fitting.misfit())
        std::transform(said.begin(), said.end(), said.begin(), [this](double s) { return m_fitting.widened(s); });
    m_fitting.see(terms, survivors);
    m_shift.see(terms, said);
    if (m_since)
        m_since->learn({&spell, 1});
    if (m_latest.size() == kChangeWithin)
        m_latest.erase(m_latest.begin());
    m_latest.push_back(spell);
    ++m_spells;
    if (const auto shifted = m_shift.found())
        beginAnew(static_cast<std::size_t>(shifted->spells));
}

void OwnClock::beginAnew(std::size_t spells)
{
    const auto since = std::min(m_latest.size(), spells);
    m_latest.erase(m_latest.begin(), m_latest.end() - static_cast<std::ptrdiff_t>(since));
    m_change = Change{m_change ? m_change->since : 0, m_spells - since, m_spells - 1};
    m_since = Predictive(m_latest);
    m_shift = {};
    for (std::size_t i = 0; i < since; ++i)
        m_shift.skip();
}

void OwnClock::learn(std::span<const Evidence> spells, std::span<const double> doses)
{
    learn(
        spells.size(), [&](std::size_t i) { return spells[i]; }, doses);
}

void OwnClock::learn(std::size_t spells, const std::function<Evidence(std::size_t)>& next,
                     std::span<const double> doses)
{
    m_learned.learn(spells, [&](std::size_t i) {
        const Evidence spell = next(i);
        const bool unusual = i < doses.size() && doses[i] != 1;
        const Evidence usual = unusual ? asUsual(spell, doses[i]) : spell;
        if (unusual && !spell.pieces.empty())
            m_power.see(m_learned, spell, doses[i]);
        if (!usual.pieces.empty())
            judge(usual);
        return usual;
    });
    m_widened.reset();
    if (m_fitting.misfit())
        m_widened = m_learned.reshaped([this](double survivor) { return m_fitting.widened(survivor); });
}

Evidence OwnClock::asUsual(const Evidence& spell, double dose) const
{
    return shortened(spell, m_power.lengthening(dose));
}

std::optional<Predictive> OwnClock::afterUnusual(double dose, Clock which) const
{
    const double by = m_power.lengthening(dose);
    return by == 1 ? std::nullopt : std::optional(of(which).stretched(by));
}

} // namespace firstdew::outlook
