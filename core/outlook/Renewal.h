#pragma once

#include <functional>
#include <vector>

namespace firstdew::outlook {

/// The days for which a decision to treat is worked out.
inline constexpr int kLongestWait = 365;

/// When to treat while still dry: age replacement by cost a day in the long run (Barlow & Hunter, Operations Research
/// 1960;8:90-100). A session costs 1; a spell that ends damp costs `returnCost` more. Treating at age t
/// costs (1 + returnCost * F(t)) / integral of S from 0 to t a day, with S the chance that a spell lasts longer and F =
/// 1 - S.
class Renewal {
public:
    /// `survivor` is S, not increasing, 1 at 0, of days. `returnCost` is above 0.
    Renewal(const std::function<double(double)>& survivor, double returnCost);

    /// The whole number of days after which treating costs least: at least 1, at most kLongestWait.
    [[nodiscard]] int age() const { return m_age; }
    /// That least cost, in sessions a day.
    [[nodiscard]] double rate() const { return m_rate; }
    /// What a session at that age throws away of a dry spell, in sessions: 1 right after a session, 0 from age() on if
    /// the spell does not get safer with age.
    [[nodiscard]] double lost(int days) const;
    /// Whether to treat now rather than tomorrow, by the chance `dry` that the site is dry and has been so for `days`
    /// days (0 or more). Weighs the return that waiting risks against the rate and against what is thrown away.
    [[nodiscard]] bool treat(int days, double dry) const;
    /// The chance that the site is damp by tomorrow.
    [[nodiscard]] double dampTomorrow(int days, double dry) const;

private:
    [[nodiscard]] std::size_t indexOf(int days) const;

    double m_returnCost;
    int m_age = 1;
    double m_rate = 0;
    std::vector<double> m_survivor; ///< on each whole day
    std::vector<double> m_dryDays;  ///< integral of the survivor from 0 to each day
    std::vector<double> m_gain;     ///< rate * integral - returnCost * F, up to each day
    std::vector<double> m_best;     ///< greatest gain from each day on
};

} // namespace firstdew::outlook
