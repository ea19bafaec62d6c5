#pragma once

#include "outlook/Dose.h"
#include "outlook/Predictive.h"
#include "outlook/Shift.h"

#include <array>
#include <optional>

namespace firstdew::outlook {

/// From this e-value on, a person's forecasts are taken not to fit. Whoever they fit meets it with a chance of at most
/// 1 in 20, however long the diary is kept (Ville's inequality; the figure is our own choice).
inline constexpr double kForecastsMisfit = 20;

/// Tests, spell by spell, whether the forecasts fit this person, and says how to widen them if they do not.
///
/// A forecast that fits has PIT values spread evenly between 0 and 1: the spell ends before the forecast's 10 % point
/// in one case of ten, and so on. Each alternative says that they crowd at the ends, by another forecast F' with
/// odds(F') = e^shift * odds(F)^slope, slope below 1 (the log-odds line of Cox, Biometrika 1958;45:562-565). For each
/// spell, the chance of its reports by the alternative is divided by their chance by the forecast, which was made
/// without them. So spells cut short, days without a check-in and wrong reports count as what they are. The e-value is
/// the mean of the products of these ratios: a test martingale, whose mean is 1 if the forecasts fit (Shafer, J R Stat
/// Soc A 2021;184:407-431). The alternatives may begin to hold at any spell. Half of the stake is set on the first
/// spell, and a fortieth of the rest on each later one. Alternatives and shares are our own choice.
class Fitting {
public:
    /// Takes in a spell. `survivors` are the forecast's on the days of `terms`, from the spells before it.
    void see(const Terms& terms, std::span<const double> survivors);

    [[nodiscard]] double eValue() const;
    /// The forecasts do not fit: from an e-value of kForecastsMisfit on, until it is below 1 again.
    [[nodiscard]] bool misfit() const { return m_misfit; }
    /// The survivor to use in place of the forecast's: the mean of the forecast and the alternatives by how well each
    /// told the spells. The alternatives all leave more room on both sides.
    [[nodiscard]] double widened(double survivor) const;

private:
    static constexpr std::size_t kWays = 10;

    std::array<double, kWays> m_stakes{}; ///< on each alternative, with what it won
    double m_kept = 1;                    ///< not set on any alternative yet
    bool m_begun = false;
    bool m_misfit = false;
};

/// Which of a person's distributions: the one that forecasts use, or the one before any widening.
enum class Clock { InForce, AsLearned };

/// When a person's dry spells became shorter, as indexes among the spells learned, oldest first.
struct Change {
    std::size_t before = 0; ///< the first spell after the change before that; 0: there was none
    std::size_t since = 0;  ///< the first spell after the change
    std::size_t found = 0;  ///< the spell that told it
};

/// A change is looked for among so many latest spells (our own choice).
inline constexpr std::size_t kChangeWithin = 30;

/// A person's distribution of dry spells after a usual session, what the dose does to them, and the tests of how it has
/// done. Forecasts ask inForce() and afterUnusual().
///
/// Once the spells are found to have become shorter, those since are also learned by themselves, to tell how long they
/// last and as the forecast against which the test begins anew. Forecasts go on with all of them.
class OwnClock {
public:
    OwnClock() : m_learned(std::span<const Evidence>{}) {}
    /// Adds further spells, oldest first. `doses`: of the session before each; empty: all as usual.
    void learn(std::span<const Evidence> spells, std::span<const double> doses = {});
    /// The same. It asks `next` for each spell in turn; learned().survivorsOn() then tells what was known until then.
    void learn(std::size_t spells, const std::function<Evidence(std::size_t)>& next, std::span<const double> doses);
    [[nodiscard]] const Predictive& inForce() const { return m_widened ? *m_widened : m_learned; }
    [[nodiscard]] const Predictive& of(Clock which) const { return which == Clock::InForce ? inForce() : m_learned; }
    /// The distribution after a session of that dose, or nullopt where it is that of a usual one.
    [[nodiscard]] std::optional<Predictive> afterUnusual(double dose, Clock which = Clock::InForce) const;
    /// What a spell after a session of that dose says of those after usual ones.
    [[nodiscard]] Evidence asUsual(const Evidence& spell, double dose) const;
    [[nodiscard]] const DosePower& power() const { return m_power; }
    /// What the spells alone say, before any widening.
    [[nodiscard]] const Predictive& learned() const { return m_learned; }
    [[nodiscard]] const Fitting& fitting() const { return m_fitting; }
    [[nodiscard]] const Shift& shift() const { return m_shift; }
    /// The latest change found.
    [[nodiscard]] const std::optional<Change>& change() const { return m_change; }
    /// What the spells since that change say by themselves; set where there is one.
    [[nodiscard]] const std::optional<Predictive>& since() const { return m_since; }

private:
    /// Judges what was said of a spell before it is learned.
    void judge(const Evidence& spell);
    void beginAnew(std::size_t spells);

    Predictive m_learned;
    Fitting m_fitting;
    Shift m_shift;
    DosePower m_power;
    std::optional<Predictive> m_widened;
    std::optional<Change> m_change;
    std::optional<Predictive> m_since;
    std::vector<Evidence> m_latest; ///< spells among which a change is looked for
    std::size_t m_spells = 0;
};

} // namespace firstdew::outlook
