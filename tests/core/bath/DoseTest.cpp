#include "bath/Dose.h"

#include "bath/Trace.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <rapidcheck.h>

using namespace firstdew::bath;

namespace {

// Two phases of ten minutes at 10 and at 8 mA, each raised and lowered within a minute: 110 and 88 mA·min by hand.
const std::vector<TracePoint> kTwoPhases{{0, 0},   {60, 10}, {660, 10}, {720, 0},
                                         {780, 0}, {840, 8}, {1440, 8}, {1500, 0}};

Dose doseFrom(const std::vector<TracePoint>& trace, Site site, double limit = 20, std::optional<double> area = {})
{
    REQUIRE_FALSE(refusalOfTrace(trace));
    return doseOf(readingsOf(trace, site, Side::Right), site, {limit},
                  area ? std::optional(SquareCentimetres{*area}) : std::nullopt);
}

double netOf(const Dose& dose, Limb limb)
{
    for (const auto& l : dose.byLimb)
        if (l.limb == limb)
            return l.net().mAmin;
    return std::nan("");
}

} // namespace

TEST_CASE("charge by phase and net charge by limb, worked by hand")
{
    const auto dose = doseFrom(kTwoPhases, Site::Hands);
    CHECK(dose.charge.mAmin == Approx(198));
    CHECK(inMillicoulombs(dose.charge).mC == Approx(198 * 60)); // 1 mA for 1 s is 1 mC by definition of the coulomb
    REQUIRE(dose.byPhase.size() == 2);
    CHECK(dose.byPhase[0].charge.mAmin == Approx(110));
    CHECK(dose.byPhase[0].length.s == 720);
    CHECK(dose.byPhase[1].charge.mAmin == Approx(88));
    CHECK(dose.byPhase[1].polarity == -dose.byPhase[0].polarity);
    CHECK(dose.byPhase[1].length.s == 720); // the minute of the swap is no part of it
    CHECK(dose.peak.mA == 10);
    CHECK(netOf(dose, Limb::RightHand) == Approx(22));
    CHECK(netOf(dose, Limb::LeftHand) == Approx(-22));
}

TEST_CASE("hand + foot: each side has its own two phases")
{
    auto trace = kTwoPhases;
    for (const auto& p : kTwoPhases)
        if (p.second > 0)
            trace.push_back({p.second + 1500, p.mA / 2});
    const auto dose = doseFrom(trace, Site::HandFoot);
    REQUIRE(dose.byPhase.size() == 4);
    CHECK(dose.byPhase[1].side == Side::Right);
    CHECK(dose.byPhase[2].side == Side::Left);
    CHECK(netOf(dose, Limb::RightHand) == Approx(22));
    CHECK(netOf(dose, Limb::RightFoot) == Approx(-22));
    CHECK(netOf(dose, Limb::LeftHand) == Approx(11));
    CHECK(netOf(dose, Limb::LeftFoot) == Approx(-11));
}

TEST_CASE("time above the limit ends where the line crosses it")
{
    const auto dose = doseFrom({{0, 0}, {60, 12}, {120, 18}, {180, 12}, {240, 0}}, Site::Feet, 15);
    REQUIRE(dose.overLimit.size() == 1);
    CHECK(dose.overLimit[0].fromSecond == Approx(90));
    CHECK(dose.overLimit[0].toSecond == Approx(150));
    CHECK(dose.overLimit[0].peak.mA == 18);
    CHECK(doseFrom({{0, 0}, {60, 15}, {120, 0}}, Site::Feet, 15).overLimit.empty()); // at the limit is not above it
    const auto twice = doseFrom({{0, 16}, {10, 0}, {20, 17}, {30, 16}}, Site::Feet, 15);
    REQUIRE(twice.overLimit.size() == 2);
    CHECK(twice.overLimit[1].toSecond == Approx(30));
}

TEST_CASE("density is the peak over the contact area")
{
    CHECK(doseFrom(kTwoPhases, Site::Armpits, 30, 50).peakDensity == Approx(0.2));
    CHECK_FALSE(doseFrom(kTwoPhases, Site::Armpits, 30).peakDensity);
}

TEST_CASE("two readings at one second are a jump, and no charge")
{
    CHECK(doseFrom({{0, 0}, {0, 10}, {60, 10}, {60, 0}}, Site::Feet).charge.mAmin == Approx(10));
}

TEST_CASE("no line joins readings across an interruption, a pause at zero or two runs of the script")
{
    const auto at = [](long long minute, int stretch) {
        return MeterReading{minute * 60'000, {10}, 1, 1, {}, stretch};
    };
    CHECK(chargeOf(std::vector{at(1, 1), at(2, 1)}).mAmin == Approx(10));
    CHECK(chargeOf(std::vector{at(1, 1), at(2, 1), at(7, 2), at(8, 2)}).mAmin == Approx(20));
}

TEST_CASE("a trace that cannot be is refused at its point")
{
    const auto refused = [](double second, double mA) {
        const auto wrong = refusalOfTrace(std::vector<TracePoint>{{0, 0}, {60, 10}, {second, mA}});
        REQUIRE(wrong);
        CHECK(wrong->point == 2);
        CHECK_FALSE(wrong->error.message.empty());
        return wrong->error.code;
    };
    const double nan = std::nan("");
    const double inf = std::numeric_limits<double>::infinity();
    CHECK(refused(59, 10) == "time-goes-back");
    CHECK(refused(nan, 10) == "time-not-a-number");
    CHECK(refused(-1, 10) == "time-out-of-range");
    CHECK(refused(1e9, 10) == "time-out-of-range");
    CHECK(refused(120, nan) == "reading-not-a-number");
    CHECK(refused(120, inf) == "reading-not-a-number");
    CHECK(refused(120, -0.1) == "reading-negative");
    CHECK(refused(120, 1e9) == "reading-implausible");
}

TEST_CASE("what a nurse would ask about a trace")
{
    using D = std::vector<TraceDoubt>;
    const auto doubts = [](const std::vector<TracePoint>& t, Site site = Site::Hands) {
        return doubtsOf(readingsOf(t, site, Side::Right), site);
    };
    std::vector<TracePoint> everyMinute;
    for (int phase = 0; phase < 2; ++phase)
        for (int minute = 0; minute <= 12; ++minute)
            everyMinute.push_back({60.0 * (15 * phase + minute), minute == 0 || minute == 12 ? 0.0 : 10.0});
    CHECK(doubts(everyMinute).empty());
    CHECK(doubts(everyMinute, Site::HandFoot) == D{TraceDoubt::TooFewPhases});
    auto cut = everyMinute;
    cut.pop_back();
    cut.erase(cut.begin());
    CHECK(doubts(cut) == D{TraceDoubt::BeginsAboveZero, TraceDoubt::EndsAboveZero});
    auto almost = everyMinute;
    almost.front().mA = almost.back().mA = 0.5;
    CHECK(doubts(almost) == D{TraceDoubt::BeginsAboveZero, TraceDoubt::EndsAboveZero});
    auto paused = everyMinute;
    paused[5].mA = 0;
    CHECK(doubts(paused) == D{TraceDoubt::TooManyPhases});
    CHECK(doubts(kTwoPhases) == D{TraceDoubt::LongGap});
    // one polarity for longer than a phase with the longest raising and lowering: 10 minutes and twice 3
    const auto oneStretch = [](int minutes) {
        std::vector<TracePoint> out{{0, 0}};
        for (int minute = 1; minute < minutes; ++minute)
            out.push_back({60.0 * minute, 10});
        out.push_back({60.0 * minutes, 0});
        return out;
    };
    CHECK(doubts(oneStretch(16)) == D{TraceDoubt::TooFewPhases});
    CHECK(doubts(oneStretch(17)) == D{TraceDoubt::TooFewPhases, TraceDoubt::NoSwap});
    // What came before a pause does not count, and the longest time is allowed to the second.
    const auto after = [&](int seconds) {
        std::vector<TracePoint> out{{0, 0}, {60, 10}, {120, 0}, {180, 0}};
        for (int s = 60; s < seconds; s += 60)
            out.push_back({180.0 + s, 10});
        out.push_back({180.0 + seconds, 0});
        return doubts(out);
    };
    const auto plan = firstdew::protocol::phasesFor(Site::Hands);
    const int longest = plan.hold.s + 2 * firstdew::protocol::kMostAllowance.s;
    CHECK(after(longest).empty());
    CHECK(after(longest + 1) == D{TraceDoubt::NoSwap});
    CHECK(doubts({}).empty());
    CHECK(doubts({{0, 0}}) == D{TraceDoubt::TooFewPhases});
}

TEST_CASE("of any trace: phases add up to the whole, what enters leaves, nothing is above its peak")
{
    CHECK(rc::check([](const std::vector<std::pair<unsigned char, unsigned char>>& raw) {
        std::vector<TracePoint> trace;
        double second = 0;
        for (const auto& [wait, level] : raw)
            trace.push_back({second += wait, level % 3 == 0 ? 0.0 : level % 40});
        for (const Site site : allOf<Site>()) {
            const auto dose = doseFrom(trace, site, 15);
            double sum = 0;
            double whole = 0;
            double net = 0;
            for (const auto& p : dose.byPhase)
                sum += p.charge.mAmin;
            for (std::size_t i = 1; i < trace.size(); ++i) // the rule by itself: trapezoids, phases or not
                whole += (trace[i].mA + trace[i - 1].mA) / 2 * (trace[i].second - trace[i - 1].second) / 60;
            for (const auto& l : dose.byLimb)
                net += l.net().mAmin;
            RC_ASSERT(std::abs(sum - whole) < 1e-6);
            RC_ASSERT(std::abs(dose.charge.mAmin - whole) < 1e-6);
            RC_ASSERT(std::abs(net) < 1e-6);
            for (const auto& o : dose.overLimit) {
                RC_ASSERT(o.fromSecond <= o.toSecond);
                RC_ASSERT(o.peak.mA > 15 && o.peak <= dose.peak);
            }
        }
    }));
}

TEST_CASE("no charge is counted between phases, or from a reading back to an earlier one")
{
    const MeterReading at{0, {10}, 1, 1, {}, 1};
    auto later = at;
    later.atMs = 60'000;
    CHECK(chargeOf(std::vector{at, later}).mAmin == Approx(10));
    CHECK(chargeOf(std::vector{later, at}).mAmin == 0);
    auto none = at;
    none.phase = 0;
    const auto dose = doseOf(std::vector{none, none, at, later}, Site::Hands, {20}, {});
    REQUIRE(dose.byPhase.size() == 1);
    CHECK(dose.byPhase[0].phase == 1);
}

TEST_CASE("hand and foot of the left come first where that side was treated first")
{
    std::vector<TracePoint> trace;
    for (int phase = 0; phase < 4; ++phase)
        for (const double mA : {0.0, 5.0, 5.0, 0.0})
            trace.push_back({60.0 * static_cast<double>(trace.size()), mA});
    for (const Side first : {Side::Left, Side::Right}) {
        const auto readings = readingsOf(trace, Site::HandFoot, first);
        REQUIRE(readings.back().phase == 4);
        for (const MeterReading& r : readings)
            CHECK((r.side == first) == (r.phase <= 2));
    }
}

TEST_CASE("current that flows for longer than a phase leaves the swap in doubt, whatever comes after")
{
    std::vector<TracePoint> trace{{0, 0}};
    for (int minute = 1; minute <= 30; ++minute)
        trace.push_back({60.0 * minute, 10});
    trace.push_back({1860, 0});
    trace.push_back({1920, 0});
    trace.push_back({1980, 0});
    trace.push_back({2040, 8});
    trace.push_back({2100, 0});
    const auto doubts = doubtsOf(readingsOf(trace, Site::Hands, Side::Right), Site::Hands);
    CHECK(std::ranges::find(doubts, TraceDoubt::NoSwap) != doubts.end());
    CHECK(std::ranges::find(doubts, TraceDoubt::LongGap) == doubts.end());
    // A pause at zero is no gap, however long.
    const std::vector<TracePoint> pause{{0, 0}, {60, 5}, {120, 0}, {600, 0}, {660, 0}};
    const auto of = doubtsOf(readingsOf(pause, Site::Hands, Side::Right), Site::Hands);
    CHECK(std::ranges::find(of, TraceDoubt::LongGap) == of.end());
}

TEST_CASE("two minutes without a reading are no gap, and a moment more is one")
{
    const auto doubted = [](double second) { // our own choice: one minute's reading left out
        const std::vector<TracePoint> trace{{0, 0}, {60, 10}, {60 + second, 10}, {240 + second, 0}};
        const auto readings = readingsOf(trace, Site::Hands, Side::Right);
        const auto doubts = doubtsOf(std::span(readings).first(3), Site::Hands);
        return std::ranges::find(doubts, TraceDoubt::LongGap) != doubts.end();
    };
    CHECK_FALSE(doubted(120));
    CHECK(doubted(120.001));
}

TEST_CASE("the most that a meter can show is a reading of a trace, and a long wait before the first one is a gap")
{
    CHECK_FALSE(refusalOfTrace(std::vector<TracePoint>{{0, 0}, {60, 100}}));
    CHECK(refusalOfTrace(std::vector<TracePoint>{{0, 0}, {60, 100.1}}));
    const std::vector<TracePoint> late{{0, 0}, {130, 10}, {190, 0}};
    const auto doubts = doubtsOf(readingsOf(late, Site::Hands, Side::Right), Site::Hands);
    CHECK(std::ranges::find(doubts, TraceDoubt::LongGap) != doubts.end());
    const auto dose = doseFrom(kTwoPhases, Site::Hands);
    REQUIRE(dose.byLimb.size() == 2); // the first one first, whatever the polarity
    CHECK(dose.byLimb[0].limb == Limb::RightHand);
    CHECK(dose.byLimb[1].limb == Limb::LeftHand);
}
