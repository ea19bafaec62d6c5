#include "outlook/Reporting.h"

#include "outlook/Filter.h"

#include <algorithm>
#include <numeric>

namespace firstdew::outlook {

namespace {

struct ErrorSet {
    ErrorRates rates;
    double chance = 0; ///< at first
};

/// Usual, often wrong on dry skin, seldom wrong, often missing dampness. Our own choice; COSTS.md tests them.
constexpr std::array<ErrorSet, Reporting::kSets> kAll{
    {{{0.02, 0.15, 0.10}, 0.84}, {{0.06, 0.30, 0.10}, 0.10}, {{0.01, 0.08, 0.05}, 0.04}, {{0.02, 0.15, 0.25}, 0.02}}};
constexpr double kLeastChance = 1e-6; // so that no set is ruled out for good

void setFirst(std::array<double, 4>& row, double first)
{
    const double others = (1 - first) / (1 - row[0]);
    row[0] = first;
    for (std::size_t level = 1; level < row.size(); ++level)
        row[level] *= others;
}

ErrorRates meanOf(const std::array<double, Reporting::kSets>& chances)
{
    ErrorRates out;
    for (std::size_t i = 0; i < chances.size(); ++i) {
        out.falseCalm += chances[i] * kAll[i].rates.falseCalm;
        out.falseStirred += chances[i] * kAll[i].rates.falseStirred;
        out.missed += chances[i] * kAll[i].rates.missed;
    }
    return out;
}

} // namespace

FilterRules erring(const FilterRules& rules, const ErrorRates& rates)
{
    FilterRules out = rules;
    setFirst(out.calm[0], 1 - rates.falseCalm);
    setFirst(out.stirred[0], 1 - rates.falseStirred);
    setFirst(out.calm[1], rates.missed);
    setFirst(out.stirred[1], rates.missed);
    return out;
}

std::array<double, Reporting::kSets> Reporting::startingChances()
{
    std::array<double, kSets> out{};
    std::ranges::transform(kAll, out.begin(), &ErrorSet::chance);
    return out;
}

ErrorRates Reporting::rates() const { return meanOf(m_chances); }

FilterRules Reporting::rulesFor(const FilterRules& rules) const { return erring(rules, rates()); }

void Reporting::see(std::span<const DayReport> reports, const Spell& spell, std::span<const double> survivors,
                    const FilterRules& rules)
{
    double sum = 0;
    for (std::size_t i = 0; i < kSets; ++i) {
        const FilterRules own = erring(rules, kAll[i].rates);
        StateProbability belief = beliefAfterSession(own);
        auto report = reports.begin();
        for (std::size_t day = 1; day < survivors.size(); ++day) {
            belief = dayLater(belief, hazardOf(survivors[day - 1], survivors[day]), own);
            if (report == reports.end() || report->date != spell.lastSession + static_cast<int>(day))
                continue;
            m_chances[i] *= hear(belief, report->level, report->stirred(), own);
            ++report;
        }
        sum += m_chances[i];
    }
    if (!(sum > 0)) {
        m_chances = startingChances();
        return;
    }
    for (double& chance : m_chances)
        chance = std::max(kLeastChance, chance / sum);
    const double total = std::accumulate(m_chances.begin(), m_chances.end(), 0.0);
    for (double& chance : m_chances)
        chance /= total;
}

} // namespace firstdew::outlook
