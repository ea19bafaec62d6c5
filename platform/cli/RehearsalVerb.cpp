#include "Files.h"
#include "Verb.h"

#include "rehearsal/Rehearsal.h"

#include <chrono>
#include <fmt/format.h>
#include <memory>
#include <numeric>
#include <span>

namespace firstdew::cli {

namespace {

using nlohmann::json;
using rehearsal::Figures;
using rehearsal::Outcome;
using rehearsal::Policy;
using rehearsal::Request;
using rehearsal::World;

constexpr std::array kTercileNames{"short", "middle", "long"};

struct Options {
    std::string world;
    Request request;
};

/// Every key of a world file and the number it sets.
std::vector<std::pair<std::string, double*>> keysOf(World& w)
{
    return {{"/median_days/median", &w.medianDays},
            {"/median_days/sdlog", &w.medianSdlog},
            {"/shape/median", &w.shape},
            {"/shape/sdlog", &w.shapeSdlog},
            {"/days_clammy_before_sweating/mean", &w.daysClammyBeforeSweating},
            {"/checkin_missed", &w.checkinMissed},
            {"/false_clammy/calm", &w.falseClammyCalm},
            {"/false_clammy/stirred", &w.falseClammyStirred},
            {"/missed_clammy", &w.missedClammy},
            {"/stirred_days", &w.stirredDays},
            {"/season/amplitude", &w.seasonAmplitude},
            {"/season/period", &w.seasonPeriod},
            {"/wear_off", &w.wearOff},
            {"/takes_clammy", &w.takesClammy},
            {"/course/least", &w.courseLeast},
            {"/course/most", &w.courseMost},
            {"/session_before_checkin", &w.sessionBeforeCheckin},
            {"/false_wet", &w.falseWet},
            {"/hot_runs", &w.hotRuns},
            {"/weekend_gaps", &w.weekendGaps},
            {"/habit_days", &w.habitDays},
            {"/felt_in_advance", &w.feltInAdvance},
            {"/change/day", &w.changeDay},
            {"/change/factor", &w.changeFactor},
            {"/ar1", &w.ar1},
            {"/dose", &w.dose}};
}

constexpr std::size_t kMostWorldBytes = 64U << 10U;

World worldOf(const std::string& file)
{
    World world;
    const json content = json::parse(readWhole(file, kMostWorldBytes), nullptr, false);
    if (!content.is_object())
        throw Refused{file + ": is no JSON object; see the rehearsal verb's keys"};
    if (content.empty()) // flatten() makes one nameless value of it
        return world;
    const auto keys = keysOf(world);
    const json flat = content.flatten();
    for (const auto& [path, value] : flat.items()) {
        if (path == "/times") {
            const auto times = facts::fromToken<rehearsal::Times>(value.is_string() ? value.get<std::string>() : "");
            if (!times)
                throw Refused{fmt::format("{}: /times has to be weibull, gamma or loglogistic", file)};
            world.times = *times;
            continue;
        }
        const auto key = std::find_if(keys.begin(), keys.end(), [&](const auto& k) { return k.first == path; });
        if (key == keys.end())
            throw Refused{fmt::format("{}: {} is no key of a world", file, path)};
        if (!value.is_number())
            throw Refused{fmt::format("{}: {} has to be a number", file, path)};
        *key->second = value.get<double>();
    }
    return world;
}

json figuresJson(const Figures& f)
{
    return {{"sessions_per_year", f.sessions},
            {"clammy_days_per_year", f.clammyDays},
            {"sweating_days_per_year", f.sweatingDays},
            {"minutes_per_year", f.minutes},
            {"cost_per_year", f.cost},
            {"above_early", f.aboveEarly},
            {"above_early_error", f.aboveEarlyError}};
}

json outcomeJson(const Outcome& o)
{
    json j;
    for (const Policy p : facts::allOf<Policy>()) {
        const auto i = static_cast<std::size_t>(p);
        const std::string name(facts::token(p));
        j["policies"][name] = figuresJson(o.policies[i]);
        for (std::size_t t = 0; t < rehearsal::kTerciles; ++t)
            j["terciles"][kTercileNames[t]][name] = figuresJson(o.terciles[i][t]);
    }
    const auto& c = o.calibration;
    j["calibration"] = {{"coverage", {{"0.5", c.coverage[0]}, {"0.8", c.coverage[1]}, {"0.95", c.coverage[2]}}},
                        {"pit", c.pit},
                        {"pit_one_each", c.pitOneEach},
                        {"pit_test", {{"statistic", c.flatness.statistic}, {"freedom", 9}, {"p", c.flatness.p}}},
                        {"brier", c.brier},
                        {"due_hit_rate", c.dueHitRate},
                        {"by_due_rate", c.onTheDayRate},
                        {"shortenings", c.shortenings},
                        {"shortened", c.shortened},
                        {"spells", c.spells},
                        {"days", c.days}};
    j["conduct"] = {{"calls", o.conduct.calls},
                    {"on_dry", o.conduct.onDry},
                    {"as_named", o.conduct.asNamed},
                    {"restarts", o.conduct.restarts},
                    {"restarts_not_sweating", o.conduct.restartsNotWet}};
    return j;
}

std::string row(std::string_view who, Policy p, const Figures& f)
{
    return fmt::format("{:<9}{:<18}{:>10.1f}{:>14.1f}{:>16.2f}{:>10.0f}{:>10.1f}\n", who, facts::token(p), f.sessions,
                       f.clammyDays, f.sweatingDays, f.minutes, f.cost);
}

std::string tenths(std::span<const long long, 10> counts)
{
    const auto n = static_cast<double>(std::accumulate(counts.begin(), counts.end(), 0LL));
    std::string out;
    for (const long long count : counts)
        out += fmt::format(" {:.1f}", n > 0 ? 100 * static_cast<double>(count) / n : 0);
    return out + " %\n";
}

std::string outcomeText(const Outcome& o)
{
    std::string out = "per year policy              sessions   clammy days   sweating days   minutes      cost\n";
    for (const Policy p : facts::allOf<Policy>())
        out += row("all", p, o.policies[static_cast<std::size_t>(p)]);
    for (std::size_t t = 0; t < rehearsal::kTerciles; ++t)
        for (const Policy p : facts::allOf<Policy>())
            out += row(kTercileNames[t], p, o.terciles[static_cast<std::size_t>(p)][t]);
    const auto& c = o.calibration;
    out += fmt::format("coverage 50 %: {:.1f} %, 80 %: {:.1f} %, 95 %: {:.1f} % of {} spells\n", 100 * c.coverage[0],
                       100 * c.coverage[1], 100 * c.coverage[2], c.spells);
    out += "tenths of the forecast:" + tenths(c.pit);
    out += "of one spell each:    " + tenths(c.pitOneEach);
    out +=
        fmt::format("flat by chi-square over those {}: {:.1f} on 9 degrees of freedom, p = {:.3f}\n",
                    std::accumulate(c.pitOneEach.begin(), c.pitOneEach.end(), 0LL), c.flatness.statistic, c.flatness.p);
    out += fmt::format(
        "Brier score {:.4f}; clammy before the day on which silence calls {:.1f} %, by its check-in {:.1f} %\n",
        c.brier, 100 * c.dueHitRate, 100 * c.onTheDayRate);
    const auto& d = o.conduct;
    out += fmt::format("{} calls by the forecast: {:.1f} % on dry skin, {:.1f} % on the day named the day before\n",
                       d.calls, 100 * d.onDry, 100 * d.asNamed);
    out += fmt::format("{} restarts of the course, {:.1f} % on skin that did not sweat\n", d.restarts,
                       100 * d.restartsNotWet);
    return out;
}

Answer rehearse(Options o)
{
    if (!o.world.empty())
        o.request.world = worldOf(o.world);
    const auto began = std::chrono::steady_clock::now();
    const Outcome outcome = orRefuse(rehearsal::rehearse(o.request));
    const double seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - began).count();
    const double speed = static_cast<double>(o.request.people) * o.request.days / std::max(seconds, 1e-9);
    Answer a;
    a.json = outcomeJson(outcome);
    a.json["people_days_per_second"] = speed;
    a.text = outcomeText(outcome) + fmt::format("{:.0f} people-days a second\n", speed);
    return a;
}

const Verb verb("rehearsal", "let simulated people follow the advice, and judge it", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--people", o->request.people, "how many")->required();
    sub.add_option("--days", o->request.days, "for how long")->required();
    sub.add_option("--seed", o->request.seed, "of chance; the same seed gives the same answer")->required();
    sub.add_option("--world", o->world, "JSON file: how these people sweat and report");
    sub.add_option("--threads", o->request.threads, "at work at once (1); the answer does not depend on it");
    sub.add_option("--risk", o->request.settings.risk, "the person's, which says what a return costs (0.2)");
    sub.add_option("--return-cost", o->request.settings.returnCost,
                   "sessions that a return of dampness costs, whatever the risk (2)")
        ->check(CLI::Range(0.01, 1000.0));
    return [o] { return rehearse(*o); };
});

} // namespace

} // namespace firstdew::cli
