#include "outlook/Evidence.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace firstdew::outlook {

namespace {

constexpr double kForever = std::numeric_limits<double>::infinity();
constexpr double kNegligible = 1e-7; // relative to the greatest weight

/// P(report of a day | state dry, clammy, sweating). A day without a report gives 1 for each state.
std::vector<std::array<double, 3>> signsOf(std::span<const DayReport> reports, LocalDate lastSession, int days,
                                           const FilterRules& rules)
{
    std::vector<std::array<double, 3>> out(static_cast<std::size_t>(days) + 1, {1, 1, 1});
    for (const DayReport& r : reports) {
        const int day = r.date - lastSession;
        if (day < 1 || day > days)
            continue;
        const auto& says = r.stirred() ? rules.stirred : rules.calm;
        for (std::size_t state = 0; state < 3; ++state)
            out[static_cast<std::size_t>(day)][state] = says[state][static_cast<std::size_t>(r.level)];
    }
    return out;
}

} // namespace

Evidence evidenceOf(const Interval& interval)
{
    // A single point has no mass, so a minute on either side represents an exact time.
    const double minute = 1.0 / 1440;
    const bool exact = interval.right && *interval.right == interval.left;
    const double from = exact ? std::max(0.0, interval.left - minute) : interval.left;
    const double to = exact ? *interval.right + minute : interval.right.value_or(kForever);
    return {{{from, to, 1}}, 0};
}

Evidence evidenceOf(std::span<const DayReport> reports, LocalDate lastSession, int days, const FilterRules& rules)
{
    const auto n = static_cast<std::size_t>(std::max(0, days));
    const auto signs = signsOf(reports, lastSession, static_cast<int>(n), rules);
    // Backwards: likelihood of the reports from day d on if day d is clammy, and if it is sweating. Logarithms, because
    // years of reports would underflow.
    std::vector<double> logOnset(n + 2, 0);
    double clammy = 1;
    double sweating = 1;
    double scale = 0;
    for (std::size_t d = n; d >= 1; --d) {
        clammy = signs[d][1] * ((1 - rules.clammyToSweating) * clammy + rules.clammyToSweating * sweating);
        sweating *= signs[d][2];
        const double greater = std::max(clammy, sweating);
        clammy /= greater;
        sweating /= greater;
        scale += std::log(greater);
        logOnset[d] = std::log(clammy) + scale;
    }
    const double staysClammy = (1 - rules.sweatingIfNot) * (1 - rules.clammyToSweating);
    const double never = staysClammy * clammy + (1 - staysClammy) * sweating;
    const double logNever = std::log((1 - rules.stayDryAfterSession) * never) + scale;

    Evidence out;
    double logDry = std::log(rules.stayDryAfterSession);
    for (std::size_t d = 1; d <= n; ++d) {
        out.pieces.push_back({static_cast<double>(d - 1), static_cast<double>(d), logDry + logOnset[d]});
        logDry += std::log(signs[d][0]);
    }
    out.pieces.push_back({static_cast<double>(n), kForever, logDry});
    double greatest = logNever;
    for (const Evidence::Piece& p : out.pieces)
        greatest = std::max(greatest, p.weight);
    for (Evidence::Piece& p : out.pieces)
        p.weight = std::exp(p.weight - greatest);
    std::erase_if(out.pieces, [](const Evidence::Piece& p) { return p.weight < kNegligible; });
    out.regardless = std::exp(logNever - greatest);
    return out;
}

} // namespace firstdew::outlook
