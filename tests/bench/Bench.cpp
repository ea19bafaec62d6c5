#include "core/Build.h"
#include "journal/Journal.h"
#include "outlook/Turnbull.h"
#include "rehearsal/Rehearsal.h"
#include "situation/Assess.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <ctime>
#include <filesystem>
#include <functional>
#include <stdexcept>
#include <tuple>

// What the heavy calls of core cost, and the floors they are set against. Prints lines `name value`, asserts nothing:
// times belong to machines. tests/bench/bench.py makes ratios of them.

namespace {

using namespace firstdew;
using namespace firstdew::facts;

/// One invented person's years: three sites, check-ins on five days of six, a dry spell of ten to fourteen days.
diary::Diary yearsOf(int years)
{
    build::Facts d;
    const auto start = build::day("2016-01-01");
    d.adult().screened(start);
    const std::array sites{Site::Hands, Site::Feet, Site::Armpits};
    for (std::size_t s = 0; s < sites.size(); ++s) {
        int next = 0;
        for (int i = 0; i < years * 365; ++i) {
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
    return d.on(start + years * 365);
}

double median(std::vector<double> values)
{
    std::sort(values.begin(), values.end());
    return values[values.size() / 2];
}

/// Milliseconds of processor time, since others may be at work on the machine.
double processorMs(int rounds, const std::function<void()>& what)
{
    std::vector<double> ms;
    for (int i = 0; i < rounds; ++i) {
        const auto began = std::clock();
        what();
        ms.push_back(1000.0 * static_cast<double>(std::clock() - began) / CLOCKS_PER_SEC);
    }
    return median(ms);
}

double wallMs(const std::function<void()>& what)
{
    const auto began = std::chrono::steady_clock::now();
    what();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - began).count();
}

void show(const char* name, double value) { std::printf("%s %.9g\n", name, value); }

volatile long sink = 0;

void assessing()
{
    for (const int years : {1, 10}) {
        constexpr int kRounds = 51;
        const std::vector<diary::Diary> diaries(kRounds, yearsOf(years)); // a copy has learned nothing yet
        std::size_t round = 0;
        const double ms = processorMs(
            kRounds, [&] { sink = sink + static_cast<long>(situation::assess(diaries[round++]).sites.size()); });
        show(years == 1 ? "assess-1-year-ms" : "assess-10-years-ms", ms);
    }
}

constexpr int kOfAYear = 26; ///< spells of somebody who bathes every other week
constexpr int kOfManyYears = 200;

/// The same data go to R.
std::vector<outlook::Interval> spells(int count)
{
    std::vector<outlook::Interval> out;
    for (int i = 0; i < count; ++i)
        out.push_back({8.0 + i % 7, i % 5 == 0 ? std::nullopt : std::optional<double>(9.0 + i % 7 + i % 3)});
    return out;
}

void fitting()
{
    constexpr int kTimes = 100; // the clock is too coarse for one
    for (const auto& [family, count, name] : {std::tuple{outlook::Family::Weibull, kOfAYear, "fit-weibull-ms"},
                                              {outlook::Family::LogNormal, kOfAYear, "fit-lognormal-ms"},
                                              {outlook::Family::Weibull, kOfManyYears, "fit-weibull-200-ms"},
                                              {outlook::Family::LogNormal, kOfManyYears, "fit-lognormal-200-ms"}}) {
        const auto data = spells(count);
        show(name, processorMs(11, [&] {
                       for (int i = 0; i < kTimes; ++i)
                           sink = sink + outlook::fit(family, data).ok();
                   }) / kTimes);
    }
    const auto data = spells(kOfManyYears);
    show("fit-turnbull-200-ms", processorMs(11, [&] { sink = sink + outlook::turnbull(data).ok(); }));
}

/// Check-ins into our store and rows of the same size into a bare table as durable, turn by turn, so that a busy disk
/// is busy for both; and into new ones again, so that no slow moment decides. As in life, few are stored until the log
/// that SQLite writes ahead begins anew.
void storing(const std::filesystem::path& folder)
{
    constexpr int kStores = 8;
    constexpr int kTimes = 300;
    std::vector<double> ours;
    std::vector<double> floor;
    for (int s = 0; s < kStores; ++s) {
        auto journal = journal::Journal::open(folder / ("store" + std::to_string(s) + ".db"));
        SQLite::Database bare((folder / ("bare" + std::to_string(s) + ".db")).string(),
                              SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        bare.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL");
        bare.exec("CREATE TABLE row (id TEXT PRIMARY KEY, body TEXT NOT NULL) STRICT");
        SQLite::Statement insert(bare, "INSERT INTO row VALUES (?, ?)");
        for (int i = 0; i < kTimes; ++i) {
            const CheckIn payload{DiarySite::Hands, static_cast<Level>(i % 4), {Circumstance::Heat}};
            ours.push_back(wallMs([&] {
                const auto done = journal.value().append(
                    {"", "p1", {build::day("2026-03-05"), {1200}}, 1'772'692'200'000 + i, "", payload});
                if (!done)
                    throw std::runtime_error(done.error().message);
            }));
            floor.push_back(wallMs([&] {
                insert.bind(1, "0123456789abcdef0123456789ab" + std::to_string(1000 + i));
                insert.bind(2, std::string(120, 'x'));
                insert.exec();
                insert.reset();
            }));
        }
    }
    show("check-in-ms", median(ours));
    show("bare-insert-ms", median(floor));
}

/// On one thread and on two, turn by turn, the best of five: what else runs on the machine only ever slows down.
void rehearsing()
{
    rehearsal::Request r;
    r.people = 60;
    r.days = 365;
    std::array best{1e9, 1e9};
    for (int turn = 0; turn < 5; ++turn)
        for (const int threads : {1, 2}) {
            r.threads = threads;
            double& ms = best.at(static_cast<std::size_t>(threads - 1));
            ms = std::min(ms, wallMs([&] { sink = sink + rehearsal::rehearse(r).ok(); }));
        }
    show("rehearsal-1-thread-days-per-s", r.people * r.days / (best[0] / 1000));
    show("rehearsal-2-threads-days-per-s", r.people * r.days / (best[1] / 1000));
    // A person-day costs the same however many the people; with the years it costs more: each day reads the whole
    // diary.
    r.threads = 1;
    for (const auto& [people, days, name] : {std::tuple{15, 365, "rehearsal-15-people-1-year-us-a-person-day"},
                                             {60, 365, "rehearsal-60-people-1-year-us-a-person-day"},
                                             {240, 365, "rehearsal-240-people-1-year-us-a-person-day"},
                                             {60, 1460, "rehearsal-60-people-4-years-us-a-person-day"}}) {
        r.people = people;
        r.days = days;
        show(name, 1000 * processorMs(3, [&] { sink = sink + rehearsal::rehearse(r).ok(); }) / (people * days));
    }
}

} // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::fprintf(stderr, "usage: bench FOLDER     on the disk that stores are kept on; --spells prints the data of "
                             "the fits of a year\n");
        return 2;
    }
    if (std::string_view(argv[1]) == "--spells") {
        std::printf("left,right\n");
        for (const auto& s : spells(kOfAYear))
            std::printf(s.right ? "%g,%g\n" : "%g,\n", s.left, s.right.value_or(0));
        return 0;
    }
    assessing();
    fitting();
    storing(argv[1]);
    rehearsing();
}
