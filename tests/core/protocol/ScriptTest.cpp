#include "protocol/Script.h"

#include <catch2/catch.hpp>

using namespace firstdew::protocol;

namespace {

ScriptRequest request(Site site, WayOfWorking way = WayOfWorking::FreeHand)
{
    ScriptRequest q;
    q.site = site;
    q.waveform = site == Site::Armpits ? Waveform::Pulsed : Waveform::Direct;
    q.way = way;
    q.limit = {20};
    return q;
}

} // namespace

TEST_CASE("phases and treated time of each kind of session")
{
    // common practice, no source
    CHECK(scriptFor(request(Site::Hands))->holdTotal().s == 20 * 60);
    CHECK(scriptFor(request(Site::Feet))->holdTotal().s == 30 * 60);
    CHECK(scriptFor(request(Site::HandFoot))->holdTotal().s == 40 * 60);
    CHECK(scriptFor(request(Site::Armpits))->holdTotal().s == 20 * 60);
    CHECK(phasesFor(Site::HandFoot).phases == 4);
}

TEST_CASE(
    "between two holds the current is lowered, then polarity is swapped or the side changed, then it is raised again")
{
    for (const auto site : allOf<Site>())
        for (const auto way : allOf<WayOfWorking>()) {
            const auto script = scriptFor(request(site, way));
            REQUIRE(script);
            std::vector<StepKind> kinds;
            for (const Step& s : script->steps)
                if (s.kind != StepKind::Announce)
                    kinds.push_back(s.kind);
            std::vector<StepKind> want{StepKind::CheckList};
            for (int phase = 1; phase <= phasesFor(site).phases; ++phase) {
                if (phase > 1)
                    want.push_back(site == Site::HandFoot && phase == 3 ? StepKind::MoveSide : StepKind::Swap);
                want.insert(want.end(), {StepKind::Raise, StepKind::Hold, StepKind::Lower});
            }
            want.push_back(StepKind::Finish);
            CHECK(kinds == want);
        }
}

TEST_CASE("each limb gets both polarities for the same time")
{
    for (const auto site : allOf<Site>()) {
        const auto script = scriptFor(request(site));
        int net[3] = {0, 0, 0};
        for (const Step& s : script->steps)
            if (s.kind == StepKind::Hold)
                net[s.side ? 1 + static_cast<int>(*s.side) : 0] += s.polarity * s.length.s;
        for (const int n : net)
            CHECK(n == 0);
    }
}

TEST_CASE("the side chosen first comes first")
{
    auto q = request(Site::HandFoot);
    q.firstSide = Side::Left;
    const auto script = scriptFor(q);
    CHECK(script->steps[1].side == Side::Left);
    CHECK(script->steps[script->steps.size() - 2].side == Side::Right);
}

TEST_CASE("with both hands under water every step is timed; the default allowances are 60, 20 and 45 s")
{
    const auto script = scriptFor(request(Site::Hands, WayOfWorking::HandsUnder));
    REQUIRE(script);
    for (std::size_t i = 1; i + 1 < script->steps.size(); ++i)
        CHECK(script->steps[i].timed);
    CHECK_FALSE(script->steps.front().timed);
    const auto length = [&](StepKind kind) {
        for (const Step& s : script->steps)
            if (s.kind == kind)
                return s.length.s;
        return 0;
    };
    CHECK(length(StepKind::Raise) == 60);
    CHECK(length(StepKind::Lower) == 20);
    CHECK(length(StepKind::Swap) == 45);
}

TEST_CASE("a script refuses direct current at armpits, a limit above the table and impossible allowances")
{
    auto q = request(Site::Armpits);
    q.waveform = Waveform::Direct;
    CHECK(scriptFor(q).error().code == "armpits-pulsed-only");
    q = request(Site::Hands);
    q.limit = {25};
    CHECK(scriptFor(q).error().code == "limit-out-of-range");
    q.limit = {0};
    CHECK(scriptFor(q).error().code == "limit-out-of-range");
    q = request(Site::Hands);
    q.raise = {19};
    CHECK(scriptFor(q).error().code == "allowance-out-of-range");
    q.raise = {181};
    CHECK(scriptFor(q).error().code == "allowance-out-of-range");
}

TEST_CASE("only a session of the hands leaves no free hand")
{
    // common practice, no source
    CHECK(waysFor(Site::Hands) == std::vector{WayOfWorking::HandsUnder, WayOfWorking::Helper});
    for (const auto site : {Site::Feet, Site::HandFoot, Site::Armpits})
        CHECK(waysFor(site) == std::vector{WayOfWorking::FreeHand, WayOfWorking::Helper});
}
