#include "ComparisonAnswer.h"
#include "Files.h"
#include "Verb.h"

#include "outlook/HoldRatio.h"
#include "outlook/Predictive.h"
#include "outlook/Renewal.h"
#include "outlook/Turnbull.h"

#include <charconv>
#include <fmt/format.h>
#include <memory>
#include <sstream>

namespace firstdew::cli {

namespace {

using nlohmann::json;
using outlook::Family;
using outlook::Interval;

constexpr std::array kLevels{0.1, 0.2, 0.5, 0.8, 0.9};

struct Options {
    std::string file, family;
    double level = 0.95;
    bool prior = false;
    bool shorter = false;
    std::optional<double> returnCost;
    std::optional<double> dosePower;
};

double numberIn(const std::string& where, const std::string& text)
{
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size())
        throw Refused{where + ": '" + text + "' is no number of days"};
    return value;
}

/// The third field is the dose before the spell. Its times are then those after a usual session.
Interval afterUsual(const std::string& where, const std::string& dose, double power, Interval x)
{
    const double value = numberIn(where + ", dose", dose);
    if (!(value > 0))
        throw Refused{where + ", dose: has to be above 0, in parts of the usual one"};
    const double by = std::pow(value, power);
    x.left /= by;
    if (x.right)
        x.right = *x.right / by;
    return x;
}

Interval intervalIn(const std::string& where, const std::string& line)
{
    const auto comma = line.find(',');
    if (comma == std::string::npos || line.find(',', comma + 1) != std::string::npos)
        throw Refused{where + ": write left,right and nothing else; leave right empty where it was still dry"};
    Interval x;
    x.left = numberIn(where + ", left", line.substr(0, comma));
    if (comma + 1 < line.size())
        x.right = numberIn(where + ", right", line.substr(comma + 1));
    if (const auto fault = outlook::faultIn(std::span(&x, 1)))
        throw Refused{where + ": " + fault->message};
    return x;
}

/// A dry spell a day for a century takes less.
constexpr std::size_t kMostIntervalBytes = 1U << 20U;

/// Calls `take` with the place, the interval and the third field, if the file has one of that name, of each row.
template <class Take>
void eachRow(const std::string& file, const std::string& third, Take take)
{
    const std::string head = third.empty() ? "left,right" : "left,right," + third;
    std::istringstream in(readWhole(file, kMostIntervalBytes));
    std::string line;
    for (int number = 1; std::getline(in, line); ++number) {
        if (!line.empty() && line.back() == '\r')
            line.pop_back();
        const std::string where = fmt::format("{}, line {}", file, number);
        if (number == 1 && line != head)
            throw Refused{where + ": the first line has to be " + head};
        if (number <= 1 || line.empty())
            continue;
        const auto comma = third.empty() ? std::string::npos : line.rfind(',');
        const Interval x = intervalIn(where, line.substr(0, comma));
        take(where, x, comma == std::string::npos ? std::string() : line.substr(comma + 1));
    }
}

std::vector<Interval> intervalsOf(const std::string& file, std::optional<double> dosePower)
{
    std::vector<Interval> out;
    eachRow(file, dosePower ? "dose" : "", [&](const std::string& where, const Interval& x, const std::string& dose) {
        out.push_back(dosePower ? afterUsual(where, dose, *dosePower, x) : x);
    });
    if (out.empty())
        throw Refused{file + ": holds no interval; give at least two below the line left,right"};
    return out;
}

std::string levelName(double p) { return fmt::format("{:.1f}", p); }

json named(Family family, std::array<double, 2> values)
{
    if (family == Family::Weibull)
        return {{"shape", values[0]}, {"scale", values[1]}};
    return {{"meanlog", values[0]}, {"sdlog", values[1]}};
}

/// Interval of a quantile at the wanted level: symmetric on the logarithmic scale, where it is nearly normal.
json quantileLimits(const outlook::FamilyFit& fit, double p, double level)
{
    const double z = outlook::FamilyFit{Family::LogNormal, 0, 1, 0, {}}.quantile(0.5 + level / 2);
    const double by = std::log(z) * fit.logQuantileError(p);
    return {fit.quantile(p) * std::exp(-by), fit.quantile(p) * std::exp(by)};
}

json turnbullJson(std::span<const outlook::Mass> masses)
{
    json out = json::array();
    for (const auto& m : masses)
        out.push_back({{"from", m.from}, {"to", m.to ? json(*m.to) : json()}, {"mass", m.mass}});
    return out;
}

json posteriorOf(std::span<const Interval> data)
{
    std::vector<outlook::Evidence> evidence;
    for (const Interval& x : data)
        evidence.push_back(outlook::evidenceOf(x));
    const outlook::Predictive predictive(evidence);
    json out;
    for (const double p : kLevels)
        out[levelName(p)] = predictive.quantile(p);
    return out;
}

/// When to treat while still dry, by the fit and the cost of a return.
void addReplacement(const outlook::FamilyFit& fit, double returnCost, Answer& a)
{
    const outlook::Renewal renewal([&](double days) { return fit.survivor(days); }, returnCost);
    a.json["replacement"] = {{"age", renewal.age()}, {"rate", renewal.rate()}};
    a.text += fmt::format("  treating a dry site costs least after {} days: {:.3f} sessions a day\n", renewal.age(),
                          renewal.rate());
}

/// How long the shorter session holds in parts of the usual one. The third field tells them apart.
Answer compare(const Options& o)
{
    std::vector<outlook::ComparedSpell> spells;
    eachRow(o.file, "shorter", [&](const std::string& where, const Interval& x, const std::string& shorter) {
        if (shorter != "0" && shorter != "1")
            throw Refused{where + ", shorter: write 0 after the usual session and 1 after the shorter one"};
        spells.push_back({x, shorter == "1"});
    });
    const auto held = orRefuse(outlook::holdRatioOf(spells));
    Answer a;
    a.json = holdRatioJson(held);
    a.json["loglik"] = held.logLikelihood;
    a.json["plainly_less"] = outlook::plainlyLess(spells);
    a.json["n"] = spells.size();
    a.text = holdRatioText(held);
    return a;
}

Answer fit(const Options& o)
{
    if (o.shorter)
        return compare(o);
    const auto family = tokenOption<Family>("--family", o.family);
    if (!(o.level > 0 && o.level < 1))
        throw Usage{"--level: has to lie between 0 and 1, for instance 0.95"};
    const auto data = intervalsOf(o.file, o.dosePower);
    const auto fit = orRefuse(outlook::fit(family, data));
    const auto masses = orRefuse(outlook::turnbull(data));
    const auto events = std::ranges::count_if(data, [](const Interval& x) { return x.right.has_value(); });
    Answer a;
    a.json = {{"family", facts::token(family)},
              {"estimate", named(family, fit.parameters())},
              {"se", named(family, fit.standardErrors())},
              {"loglik", fit.logLikelihood},
              {"median", fit.quantile(0.5)},
              {"level", o.level},
              {"median_limits", quantileLimits(fit, 0.5, o.level)},
              {"quantiles", json::object()},
              {"turnbull", turnbullJson(masses)},
              {"turnbull_loglik", outlook::logLikelihood(masses, data)},
              {"n", data.size()},
              {"events", events}};
    for (const double p : kLevels)
        a.json["quantiles"][levelName(p)] = fit.quantile(p);
    a.text = fmt::format("{} times, {} of them ended; {}, log likelihood {:.4f}\n", data.size(), events, o.family,
                         fit.logLikelihood);
    for (const auto& [name, value] : a.json["estimate"].items())
        a.text += fmt::format("  {} {:.4f} (standard error {:.4f})\n", name, value.get<double>(),
                              a.json["se"][name].get<double>());
    a.text +=
        fmt::format("  half by {:.1f} days ({:.0f} % limits {:.1f} to {:.1f})\n", fit.quantile(0.5), 100 * o.level,
                    a.json["median_limits"][0].get<double>(), a.json["median_limits"][1].get<double>());
    if (o.prior) {
        a.json["posterior"] = posteriorOf(data);
        a.text += fmt::format("  with the prior: next time half by {:.1f} days, 80 % between {:.1f} and {:.1f}\n",
                              a.json["posterior"]["0.5"].get<double>(), a.json["posterior"]["0.1"].get<double>(),
                              a.json["posterior"]["0.9"].get<double>());
    }
    if (o.returnCost)
        addReplacement(fit, *o.returnCost, a);
    return a;
}

const Verb verb("fit", "estimate the time to clammy from intervals", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("intervals", o->file, "CSV with the columns left,right in days; right empty: still dry")->required();
    sub.add_option("--family", o->family, "weibull or lognormal")->required();
    sub.add_option("--level", o->level, "of the limits given (0.95)");
    sub.add_flag("--prior", o->prior, "also the prediction with the population's prior, rows oldest first");
    sub.add_option("--dose-power", o->dosePower,
                   "the CSV has a third column, dose: in parts of the usual one; a spell is dose^power times as long")
        ->check(CLI::Range(-5.0, 5.0));
    sub.add_flag(
        "--shorter", o->shorter,
        "the CSV has a third column, shorter: 1 after a shorter session, 0 after the usual one; tells how long "
        "the shorter one holds (Weibull)");
    sub.add_option("--return-cost", o->returnCost, "also when to treat while dry, if a return costs so many sessions")
        ->check(CLI::Range(0.01, 1000.0));
    return [o] { return fit(*o); };
});

} // namespace

} // namespace firstdew::cli
