#include "outlook/Turnbull.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <tuple>

namespace firstdew::outlook {

namespace {

constexpr double kForever = std::numeric_limits<double>::infinity();
constexpr double kGap = 1e-8; // allowed distance of the log likelihood from its maximum
constexpr int kMostRounds = 20000;

/// Order of ends at the same time: exact times begin, then intervals end, then other intervals begin.
enum class EndKind { ExactLeft, Right, OpenLeft };

struct End {
    double at = 0;
    EndKind kind{};
    auto operator<=>(const End&) const = default;
};

End leftOf(const Interval& x)
{
    return {x.left, x.right && *x.right == x.left ? EndKind::ExactLeft : EndKind::OpenLeft};
}

End rightOf(const Interval& x) { return {x.right.value_or(kForever), EndKind::Right}; }

/// Innermost intervals: a beginning directly followed by an end. All mass lies in them.
std::vector<std::pair<End, End>> innermost(std::span<const Interval> data)
{
    std::vector<End> ends;
    for (const Interval& x : data) {
        ends.push_back(leftOf(x));
        ends.push_back(rightOf(x));
    }
    std::sort(ends.begin(), ends.end());
    std::vector<std::pair<End, End>> out;
    for (std::size_t i = 1; i < ends.size(); ++i)
        if (ends[i].kind == EndKind::Right && ends[i - 1].kind != EndKind::Right)
            out.emplace_back(ends[i - 1], ends[i]);
    return out;
}

/// First and last (exclusive) innermost interval inside each observation.
struct Reach {
    std::size_t first = 0;
    std::size_t last = 0;
};

std::vector<Reach> reachOf(std::span<const Interval> data, const std::vector<std::pair<End, End>>& cells)
{
    std::vector<Reach> out;
    for (const Interval& x : data) {
        Reach r;
        while (r.first < cells.size() && cells[r.first].first < leftOf(x))
            ++r.first;
        r.last = r.first;
        while (r.last < cells.size() && cells[r.last].second <= rightOf(x))
            ++r.last;
        out.push_back(r);
    }
    return out;
}

using Masses = std::vector<double>;

class Climb {
public:
    Climb(std::vector<Reach> reach, std::size_t cells)
        : m_reach(std::move(reach)), m_masses(cells, 1 / static_cast<double>(cells)), m_chances(m_reach.size())
    {
    }

    Masses top()
    {
        refresh();
        for (int round = 0; round < kMostRounds && excess() > kGap; ++round) {
            for (std::size_t j = 0; j < m_masses.size(); ++j) // EM
                m_masses[j] *= m_gradient[j] / n();
            refresh();
            exchange();
        }
        return m_masses;
    }

private:
    double n() const { return static_cast<double>(m_reach.size()); }

    void refresh()
    {
        m_gradient.assign(m_masses.size(), 0);
        for (std::size_t i = 0; i < m_reach.size(); ++i) {
            double sum = 0;
            for (std::size_t j = m_reach[i].first; j < m_reach[i].last; ++j)
                sum += m_masses[j];
            m_chances[i] = sum;
            for (std::size_t j = m_reach[i].first; j < m_reach[i].last; ++j)
                m_gradient[j] += 1 / sum;
        }
    }

    /// Upper bound of what the log likelihood can still gain.
    double excess() const { return *std::max_element(m_gradient.begin(), m_gradient.end()) - n(); }

    /// Moves mass from where it helps least to where it helps most, as far as the likelihood rises.
    void exchange()
    {
        std::size_t worst = m_masses.size();
        for (std::size_t j = 0; j < m_masses.size(); ++j)
            if (m_masses[j] > 0 && (worst == m_masses.size() || m_gradient[j] < m_gradient[worst]))
                worst = j;
        const auto best =
            static_cast<std::size_t>(std::max_element(m_gradient.begin(), m_gradient.end()) - m_gradient.begin());
        if (best == worst)
            return;
        const double move = bestMove(worst, best);
        m_masses[worst] = move >= m_masses[worst] ? 0 : m_masses[worst] - move;
        m_masses[best] += move;
        refresh();
    }

    /// The amount of mass that maximises the likelihood when moved: the zero of the slope, which falls with the amount.
    double bestMove(std::size_t from, std::size_t to) const
    {
        const auto slope = [&](double amount) {
            double sum = 0;
            for (std::size_t i = 0; i < m_reach.size(); ++i) {
                const bool gives = m_reach[i].first <= from && from < m_reach[i].last;
                const bool takes = m_reach[i].first <= to && to < m_reach[i].last;
                if (gives != takes)
                    sum += takes ? 1 / (m_chances[i] + amount) : -1 / (m_chances[i] - amount);
            }
            return sum;
        };
        double low = 0;
        double high = m_masses[from];
        if (slope(high * (1 - 1e-12)) >= 0)
            return high;
        for (int i = 0; i < 60; ++i) {
            const double middle = (low + high) / 2;
            (slope(middle) > 0 ? low : high) = middle;
        }
        return low;
    }

    std::vector<Reach> m_reach;
    Masses m_masses;
    std::vector<double> m_chances;
    std::vector<double> m_gradient;
};

bool inside(const Mass& m, const Interval& x)
{
    const bool exact = x.right && *x.right == x.left;
    const bool point = m.to && *m.to == m.from;
    const bool begins = exact ? point && m.from == x.left : m.from > x.left || (m.from == x.left && !point);
    return begins && m.to.value_or(kForever) <= x.right.value_or(kForever);
}

} // namespace

facts::Result<std::vector<Mass>> turnbull(std::span<const Interval> data)
{
    if (const auto fault = faultIn(data))
        return *fault;
    const auto cells = innermost(data);
    const auto masses = Climb(reachOf(data, cells), cells.size()).top();
    std::vector<Mass> out;
    for (std::size_t j = 0; j < cells.size(); ++j) {
        const double to = cells[j].second.at;
        if (masses[j] > 1e-12)
            out.push_back({cells[j].first.at, to < kForever ? std::optional(to) : std::nullopt, masses[j]});
    }
    return out;
}

double logLikelihood(std::span<const Mass> masses, std::span<const Interval> data)
{
    double log = 0;
    for (const Interval& x : data) {
        double sum = 0;
        for (const Mass& m : masses)
            if (inside(m, x))
                sum += m.mass;
        log += std::log(sum);
    }
    return log;
}

double survivor(std::span<const Mass> masses, double days)
{
    double sum = 0;
    for (const Mass& m : masses)
        if (m.to.value_or(kForever) > days)
            sum += m.mass;
    return std::min(1.0, sum);
}

} // namespace firstdew::outlook
