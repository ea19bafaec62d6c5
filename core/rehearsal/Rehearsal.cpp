#include "rehearsal/Rehearsal.h"

#include "rehearsal/Life.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <numeric>
#include <string>
#include <thread>

namespace firstdew::rehearsal {

namespace {

using facts::Error;

constexpr double kYear = 365.25;
constexpr double kMinutesASession = 20; // both hands, 2 x 10 min: common practice, no source

struct Lived {
    double median = 0;
    std::array<Tally, kPolicies> tallies;
    Foresight foresight;
};

Lived liveOne(const Request& request, int person)
{
    const Chance chance(request.seed, static_cast<std::uint64_t>(person));
    Lived out;
    out.median = Body(request.world, chance).ownMedian();
    for (const Policy p : facts::allOf<Policy>())
        out.tallies[static_cast<std::size_t>(p)] =
            p == Policy::Early ? liveByAdvice(request, chance, out.foresight) : liveByRule(request, chance, p);
    return out;
}

std::vector<Lived> liveAll(const Request& request)
{
    std::vector<Lived> all(static_cast<std::size_t>(request.people));
    std::atomic<int> next{0};
    const auto work = [&] {
        for (int person = next++; person < request.people; person = next++)
            all[static_cast<std::size_t>(person)] = liveOne(request, person);
    };
    std::vector<std::thread> others;
    for (int i = 1; i < std::min(request.threads, request.people); ++i)
        others.emplace_back(work);
    work();
    for (std::thread& t : others)
        t.join();
    return all;
}

double costOf(const Tally& tally, const Request& request)
{
    return tally.sessions + costOfDampDay(request) * (tally.clammyDays + tally.sweatingDays);
}

Figures figuresOf(const std::vector<Lived>& all, std::span<const std::size_t> who, std::size_t policy,
                  const Request& request)
{
    Figures out;
    const double years = request.days / kYear;
    const auto n = static_cast<double>(who.size());
    double squares = 0;
    for (const std::size_t i : who) {
        const Tally& tally = all[i].tallies[policy];
        const Tally& early = all[i].tallies[static_cast<std::size_t>(Policy::Early)];
        const double above = (costOf(tally, request) - costOf(early, request)) / years;
        out.sessions += tally.sessions / years / n;
        out.clammyDays += tally.clammyDays / years / n;
        out.sweatingDays += tally.sweatingDays / years / n;
        out.cost += costOf(tally, request) / years / n;
        out.aboveEarly += above / n;
        squares += above * above / n;
    }
    out.minutes = out.sessions * kMinutesASession;
    if (n > 1)
        out.aboveEarlyError = std::sqrt(std::max(0.0, squares - out.aboveEarly * out.aboveEarly) / (n - 1));
    return out;
}

Conduct conductOf(const std::vector<Lived>& all)
{
    Calls sum;
    for (const Lived& one : all) {
        const Calls& c = one.foresight.calls;
        sum.all += c.all;
        sum.onDry += c.onDry;
        sum.named += c.named;
        sum.restarts += c.restarts;
        sum.restartsDry += c.restartsDry;
    }
    const auto share = [](int n, int of) { return of > 0 ? static_cast<double>(n) / of : 0; };
    return {sum.all, share(sum.onDry, sum.all), share(sum.named, sum.all), sum.restarts,
            share(sum.restartsDry, sum.restarts)};
}

Calibration calibrationOf(const std::vector<Lived>& all)
{
    Calibration c;
    std::array<long long, 3> covered{};
    long long before = 0;
    long long onTheDay = 0;
    double squares = 0;
    for (const Lived& one : all) {
        const Foresight& f = one.foresight;
        for (std::size_t i = 0; i < covered.size(); ++i)
            covered[i] += f.covered[i];
        for (std::size_t i = 0; i < c.pit.size(); ++i)
            c.pit[i] += f.pit[i];
        if (f.judged)
            ++c.pitOneEach[*f.judged];
        before += f.before;
        onTheDay += f.onTheDay;
        squares += f.squares;
        c.meanMisfit += f.misfit / static_cast<double>(all.size());
        c.found += (f.found ? 1.0 : 0.0) / static_cast<double>(all.size());
        c.shortenings += f.shortenings;
        c.shortened += (f.shortened ? 1.0 : 0.0) / static_cast<double>(all.size());
        c.spells += f.spells;
        c.days += f.days;
    }
    const auto share = [&](long long n) {
        return c.spells > 0 ? static_cast<double>(n) / static_cast<double>(c.spells) : 0;
    };
    for (std::size_t i = 0; i < covered.size(); ++i)
        c.coverage[i] = share(covered[i]);
    c.flatness = flatnessOf(c.pitOneEach);
    c.dueHitRate = share(before);
    c.onTheDayRate = share(onTheDay);
    c.brier = c.days > 0 ? squares / static_cast<double>(c.days) : 0;
    return c;
}

std::optional<Error> outOfRange(const Request& r)
{
    const auto check = [](const char* name, double value, double least, double most) -> std::optional<Error> {
        if (value >= least && value <= most)
            return std::nullopt;
        return Error{"out-of-range", name, "must be between " + std::to_string(least) + " and " + std::to_string(most)};
    };
    const World& w = r.world;
    for (const auto& fault : {check("people", r.people, 1, 1e6),
                              check("days", r.days, 1, 36600),
                              check("threads", r.threads, 1, 256),
                              check("median_days.median", w.medianDays, 0.5, 365),
                              check("median_days.sdlog", w.medianSdlog, 0, 3),
                              check("shape.median", w.shape, 0.2, 50),
                              check("shape.sdlog", w.shapeSdlog, 0, 3),
                              check("days_clammy_before_sweating.mean", w.daysClammyBeforeSweating, 0, 365),
                              check("checkin_missed", w.checkinMissed, 0, 1),
                              check("false_clammy.calm", w.falseClammyCalm, 0, 1),
                              check("false_clammy.stirred", w.falseClammyStirred, 0, 1),
                              check("missed_clammy", w.missedClammy, 0, 1),
                              check("stirred_days", w.stirredDays, 0, 1),
                              check("season.amplitude", w.seasonAmplitude, 0, 0.95),
                              check("season.period", w.seasonPeriod, 1, 36600),
                              check("wear_off", w.wearOff, 0, 0.95),
                              check("takes.clammy", w.takesClammy, 0, 1),
                              check("course.least", w.courseLeast, 1, w.courseMost),
                              check("course.most", w.courseMost, 1, 7),
                              check("session_before_checkin", w.sessionBeforeCheckin, 0, 1),
                              check("false_wet", w.falseWet, 0, 1),
                              check("hot_runs", w.hotRuns, 0, 1),
                              check("weekend_gaps", w.weekendGaps, 0, 1),
                              check("habit_days", w.habitDays, 0, 365),
                              check("felt_in_advance", w.feltInAdvance, 0, 1),
                              check("change.day", w.changeDay, 0, 36600),
                              check("change.factor", w.changeFactor, 0.05, 20),
                              check("ar1", w.ar1, 0, 0.99),
                              check("dose", w.dose, 0, 3)})
        if (fault)
            return fault;
    return std::nullopt;
}

} // namespace

double returnCostOf(const Request& request)
{
    return request.settings.returnCost.value_or(outlook::returnCostOf(request.settings.risk));
}

double costOfDampDay(const Request& request) { return returnCostOf(request) / 2; }

facts::Result<Outcome> rehearse(const Request& request)
{
    if (const auto fault = outOfRange(request))
        return *fault;
    const auto all = liveAll(request);
    std::vector<std::size_t> order(all.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return all[a].median < all[b].median; });
    Outcome out;
    for (std::size_t p = 0; p < kPolicies; ++p) {
        out.policies[p] = figuresOf(all, order, p, request);
        for (std::size_t t = 0; t < kTerciles; ++t) {
            const std::size_t from = order.size() * t / kTerciles;
            const std::size_t to = order.size() * (t + 1) / kTerciles;
            out.terciles[p][t] = figuresOf(all, std::span(order).subspan(from, to - from), p, request);
        }
    }
    out.calibration = calibrationOf(all);
    out.conduct = conductOf(all);
    return out;
}

} // namespace firstdew::rehearsal
