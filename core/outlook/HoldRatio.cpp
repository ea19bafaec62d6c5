#include "outlook/HoldRatio.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <optional>
#include <vector>

namespace firstdew::outlook {

namespace {

constexpr double kHalfOf95 = 1.9207294103470618; // half of the 95 % quantile of chi squared with one degree
constexpr double kNear = 1e-9;                   // of the logarithm of the ratio
constexpr int kMostSteps = 100;

/// The Weibull fit with the ratio held, and how the log likelihood rises with the logarithm of the ratio.
struct At {
    double logRatio = 0;
    double value = 0;
    double slope = 0;
    double usualMedian = 0;
};

/// The density of the logarithm of a standard Weibull time.
double density(double z) { return std::exp(z - std::exp(z)); }

class Profile {
public:
    explicit Profile(std::span<const ComparedSpell> spells) : m_spells(spells) {}

    /// The best fit if the shorter session holds exp(logRatio) times as long: its times are divided by that, and all
    /// are fitted as one.
    [[nodiscard]] facts::Result<At> at(double logRatio) const
    {
        std::vector<Interval> all;
        all.reserve(m_spells.size());
        for (const ComparedSpell& s : m_spells)
            all.push_back(asUsual(s, logRatio));
        const auto fitted = fit(Family::Weibull, all);
        if (fitted)
            return At{logRatio, fitted->logLikelihood, slopeOf(*fitted, logRatio), fitted->quantile(0.5)};
        if (fitted.error().code == "no-spread") // one time explains everything: each interval has the chance 1
            return At{logRatio, 0, 0, oneTimeOf(all)};
        return fitted.error();
    }

private:
    static Interval asUsual(const ComparedSpell& s, double logRatio)
    {
        const double by = s.shorter ? std::exp(logRatio) : 1;
        return {s.held.left / by, s.held.right ? std::optional(*s.held.right / by) : std::nullopt};
    }

    static double oneTimeOf(std::span<const Interval> all)
    {
        double latest = 0;
        double soonest = std::numeric_limits<double>::infinity();
        for (const Interval& x : all) {
            latest = std::max(latest, x.left);
            soonest = std::min(soonest, x.right.value_or(soonest));
        }
        return (latest + soonest) / 2;
    }

    /// Location and spread are the best ones, so only the ratio itself counts: the sum over the spells after the
    /// shorter session of the derivative of the logarithm of S(left) - S(right).
    [[nodiscard]] double slopeOf(const FamilyFit& f, double logRatio) const
    {
        double slope = 0;
        for (const ComparedSpell& s : m_spells) {
            if (!s.shorter)
                continue;
            const Interval x = asUsual(s, logRatio);
            double chance = 1;
            double rise = 0;
            if (x.left > 0) {
                chance = f.survivor(x.left);
                rise = density((std::log(x.left) - f.location) / f.spread);
            }
            if (x.right) {
                chance -= f.survivor(*x.right);
                rise -= density((std::log(*x.right) - f.location) / f.spread);
            }
            slope += rise / (f.spread * chance);
        }
        return slope;
    }

    std::span<const ComparedSpell> m_spells;
};

/// The root between two ends at which `f` has opposite signs (regula falsi, Illinois).
template <class F>
double rootBetween(double a, double fa, double b, double fb, F f)
{
    for (int i = 0; i < kMostSteps && std::abs(b - a) > kNear; ++i) {
        const double x = i % 8 == 7 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
        const double fx = f(x);
        if (fx == 0 || !std::isfinite(fx))
            return x;
        if ((fx < 0) != (fb < 0)) {
            a = b;
            fa = fb;
        } else {
            fa /= 2;
        }
        b = x;
        fb = fx;
    }
    return b;
}

const double kMostLog = -std::log(kLeastRatio);

/// The ratio nearest to `hole` that still has a fit, seen from `good`, which has one.
double edgeOf(const Profile& profile, double good, double hole)
{
    for (int i = 0; i < kMostSteps && std::abs(good - hole) > kNear; ++i) {
        const double middle = (good + hole) / 2;
        (profile.at(middle) ? good : hole) = middle;
    }
    return good;
}

/// Between these ratios a few regular spells leave no scatter, and the likelihood only rises towards that. Its best is
/// that of the better edge, and the ratio lies in the middle.
facts::Result<At> betweenEdges(const Profile& profile, double hole)
{
    const auto low = profile.at(edgeOf(profile, -kMostLog, hole));
    const auto high = profile.at(edgeOf(profile, kMostLog, hole));
    if (!low || !high)
        return low ? high : low;
    At out = low->value > high->value ? *low : *high;
    out.logRatio = (low->logRatio + high->logRatio) / 2;
    return out;
}

/// The maximum over the ratio. It has one: the likelihood is concave in (location / spread, 1 / spread, log ratio /
/// spread), so that the ratios above any level form an interval.
facts::Result<At> best(const Profile& profile)
{
    const auto low = profile.at(-kMostLog);
    const auto high = profile.at(kMostLog);
    if (!low)
        return low;
    if (!high)
        return high;
    if (low->slope <= 0)
        return low;
    if (high->slope >= 0)
        return high;
    bool hole = false;
    const double root = rootBetween(-kMostLog, low->slope, kMostLog, high->slope, [&](double x) {
        const auto there = profile.at(x);
        hole = !there;
        return there ? there->slope : std::numeric_limits<double>::quiet_NaN();
    });
    return hole ? betweenEdges(profile, root) : profile.at(root);
}

/// Where the log likelihood falls to `level` between the best ratio and the end of the range.
double limitOf(const Profile& profile, const At& top, double level, double end)
{
    const auto far = profile.at(end);
    if (!far || far->value >= level || top.logRatio == end)
        return end;
    return rootBetween(top.logRatio, top.value - level, end, far->value - level, [&](double x) {
        const auto there = profile.at(x);
        return there ? there->value - level : std::numeric_limits<double>::quiet_NaN();
    });
}

} // namespace

facts::Result<HoldRatio> holdRatioOf(std::span<const ComparedSpell> spells)
{
    const Profile profile(spells);
    const auto top = best(profile);
    if (!top)
        return top.error();
    const double level = top->value - kHalfOf95;
    HoldRatio out;
    out.ratio = std::exp(top->logRatio);
    out.low = std::exp(limitOf(profile, *top, level, -kMostLog));
    out.high = std::exp(limitOf(profile, *top, level, kMostLog));
    out.usualMedian = top->usualMedian;
    out.logLikelihood = top->value;
    return out;
}

bool plainlyLess(std::span<const ComparedSpell> spells)
{
    const Profile profile(spells);
    const auto top = best(profile);
    const auto same = profile.at(0);
    return top && same && top->logRatio < 0 && top->value - same->value >= kPlainly * kPlainly / 2;
}

HoldAnswer answerOf(const HoldRatio& ratio)
{
    if (ratio.low >= kAboutAsLong)
        return HoldAnswer::AsLong;
    return ratio.high < 1 ? HoldAnswer::Less : HoldAnswer::NotTold;
}

} // namespace firstdew::outlook
