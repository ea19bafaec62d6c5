#include "core/Build.h"
#include "outlook/Turnbull.h"
#include "rehearsal/Rehearsal.h"
#include "situation/Assess.h"

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <functional>

// What the heavy calls cost, each also as a ratio to a floor measured in the same run: reading every check-in of the
// record once. Prints, asserts nothing: times belong to machines. Build it optimised (CMAKE_BUILD_TYPE=Release).

namespace
{

using namespace firstdew;
using namespace firstdew::facts;
using build::Diary;

constexpr int kYears = 10;

/// One invented person's ten years: three sites, check-ins on five days of six, a dry spell of ten to fourteen days.
facts::Record tenYears()
{
    Diary d;
    const auto start = build::day("2016-01-01");
    d.adult().screened(start);
    const std::array sites{Site::Hands, Site::Feet, Site::Armpits};
    for (std::size_t s = 0; s < sites.size(); ++s) {
        int next = 0;
        for (int i = 0; i < kYears * 365; ++i) {
            const bool clammy = i == next && i > 0;
            const bool missed = (i * 37 + static_cast<int>(s) * 11) % 19 < 3; // about one day in six
            if (!missed)
                d.checkIn(static_cast<DiarySite>(s), start + i, clammy ? Level::Clammy : Level::Dry);
            if (i != next)
                continue;
            d.session(sites[s], start + i);
            next = i + 10 + (i * 7 + static_cast<int>(s)) % 5;
        }
    }
    return d.record();
}

/// Of processor time, since others may be at work on the machine.
double medianMs(int rounds, const std::function<void()>& what)
{
    std::vector<double> ms;
    for (int i = 0; i < rounds; ++i) {
        const auto began = std::clock();
        what();
        ms.push_back(1000.0 * static_cast<double>(std::clock() - began) / CLOCKS_PER_SEC);
    }
    std::sort(ms.begin(), ms.end());
    return ms[ms.size() / 2];
}

} // namespace

int main()
{
    const auto record = tenYears();
    const auto today = build::day("2016-01-01") + kYears * 365;
    volatile long sink = 0;
    constexpr int kTimes = 1000; // the clock is too coarse for one
    const double floor = medianMs(11, [&] {
        for (int i = 0; i < kTimes; ++i)
            for (const auto& e : record.all<CheckIn>())
                sink = sink + e.happened.date.daysSince1970() * static_cast<long>(e.payload.level);
    }) / kTimes;
    const auto show = [&](const char* name, double ms) { std::printf("%-44s %9.3f ms  %8.1f x floor\n", name, ms, ms / floor); };
    std::printf("%zu check-ins, %zu sessions\n", record.all<CheckIn>().size(), record.all<Session>().size());
    show("floor: every check-in read once", floor);
    show("assess, ten years of three sites", medianMs(51, [&] { sink = sink + static_cast<long>(situation::assess(record, today).sites.size()); }));

    std::vector<outlook::Interval> spells;
    for (int i = 0; i < 200; ++i)
        spells.push_back({8.0 + i % 7, i % 5 == 0 ? std::nullopt : std::optional<double>(9.0 + i % 7 + i % 3)});
    show("fit, Weibull, 200 spells", medianMs(51, [&] { sink = sink + outlook::fit(outlook::Family::Weibull, spells).ok(); }));
    show("fit, Turnbull, 200 spells", medianMs(51, [&] { sink = sink + outlook::turnbull(spells).ok(); }));

    for (const int people : {10, 20, 40}) {
        rehearsal::Request r;
        r.people = people;
        r.days = 365;
        const double ms = medianMs(3, [&] { sink = sink + rehearsal::rehearse(r).ok(); });
        std::printf("rehearsal, %3d people, one year %23.3f us a person-day\n", people, 1000 * ms / (people * 365.0));
    }
}
