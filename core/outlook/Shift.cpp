#include "outlook/Shift.h"

#include <algorithm>

namespace firstdew::outlook {

namespace {

/// What each alternative says of a chance that the forecast gives: its powers 2, 4 and 8.
std::array<double, 3> alternativesTo(double survivor)
{
    const double square = survivor * survivor;
    const double fourth = square * square;
    return {square, fourth, fourth * fourth};
}

} // namespace

void Shift::see(const Terms& terms, std::span<const double> survivors)
{
    if (++m_known <= kSpellsBeforeShift)
        return;
    double forecast = terms.regardless;
    std::array<double, kPowers> others{};
    others.fill(terms.regardless);
    for (std::size_t d = 0; d < survivors.size(); ++d) {
        forecast += terms.weights[d] * survivors[d];
        const auto told = alternativesTo(survivors[d]);
        for (std::size_t i = 0; i < kPowers; ++i)
            others[i] += terms.weights[d] * told[i];
    }
    if (!(forecast > 0))
        return;
    ++m_tested;
    for (std::size_t i = 0; i < kPowers; ++i) {
        Way& way = m_ways[i];
        const double ratio = std::clamp(others[i] / forecast, 0.0, kMostOfOne);
        way.sum = (1 + way.sum) * ratio;
        if (way.peak <= 1) {
            way.peak = 1;
            way.spells = 0;
        }
        way.peak *= ratio;
        ++way.spells;
    }
}

double Shift::sum() const
{
    double all = 0;
    for (const Way& way : m_ways)
        all += way.sum;
    return all / kPowers;
}

std::optional<Shifted> Shift::found() const
{
    if (sum() < kShifted)
        return std::nullopt;
    const auto best = std::ranges::max_element(m_ways, {}, &Way::peak);
    return best->spells >= kSpellsAfterShift ? std::optional(Shifted{best->spells}) : std::nullopt;
}

double Shift::eValue() const { return m_tested > 0 ? sum() / m_tested : 1; }

} // namespace firstdew::outlook
