#include "outlook/Renewal.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace firstdew::outlook {

namespace {

constexpr double kOver = 1e-9; // a spell that lasts longer with less than this chance is over

} // namespace

Renewal::Renewal(const std::function<double(double)>& survivor, double returnCost) : m_returnCost(returnCost)
{
    m_survivor.push_back(1);
    m_dryDays.push_back(0);
    m_rate = std::numeric_limits<double>::infinity();
    for (int t = 1; t <= kLongestWait + 1; ++t) {
        const double before = m_survivor.back();
        const double now = std::clamp(survivor(t), 0.0, before);
        // Simpson's rule for each day
        const double middle = std::clamp(survivor(t - 0.5), now, before);
        m_survivor.push_back(now);
        m_dryDays.push_back(m_dryDays.back() + (before + 4 * middle + now) / 6);
        const double rate = (1 + returnCost * (1 - now)) / m_dryDays.back();
        if (t <= kLongestWait && rate < m_rate) {
            m_rate = rate;
            m_age = t;
        }
        if (now < kOver)
            break;
    }
    for (std::size_t t = 0; t < m_survivor.size(); ++t)
        m_gain.push_back(m_rate * m_dryDays[t] - returnCost * (1 - m_survivor[t]));
    m_best = m_gain;
    for (std::size_t t = m_best.size() - 1; t-- > 0;)
        m_best[t] = std::max(m_best[t], m_best[t + 1]);
}

std::size_t Renewal::indexOf(int days) const
{
    return std::min(static_cast<std::size_t>(std::max(days, 0)), m_survivor.size() - 2);
}

double Renewal::lost(int days) const
{
    const std::size_t i = indexOf(days);
    return m_survivor[i] > kOver ? (m_best[i] - m_gain[i]) / m_survivor[i] : 0;
}

double Renewal::dampTomorrow(int days, double dry) const
{
    const std::size_t i = indexOf(days);
    return m_survivor[i] > kOver ? 1 - dry * m_survivor[i + 1] / m_survivor[i] : 1;
}

bool Renewal::treat(int days, double dry) const
{
    const std::size_t i = indexOf(days);
    const double damp = dampTomorrow(days, dry);
    const double day = m_survivor[i] > kOver ? (m_dryDays[i + 1] - m_dryDays[i]) / m_survivor[i] : 1;
    return m_returnCost * damp >= m_rate * day + (1 - damp) * lost(days + 1);
}

} // namespace firstdew::outlook
