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
            if (way == WayOfWorking::HandsUnder && site != Site::Hands)
                continue;
            const auto script = scriptFor(request(site, way));
            REQUIRE(script);
            std::vector<StepKind> kinds;
            for (const Step& s : script->steps)
                if (s.kind != StepKind::Announce && s.kind != StepKind::HandsOut)
                    kinds.push_back(s.kind);
            std::vector<StepKind> want{StepKind::CheckList, StepKind::SwitchOn};
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
    CHECK(script->steps[2].side == Side::Left);
    CHECK(script->steps[script->steps.size() - 2].side == Side::Right);
}

TEST_CASE("with both hands under water, steps done with dry hands wait for a tap, and the others are timed")
{
    const auto script = scriptFor(request(Site::Hands, WayOfWorking::HandsUnder));
    REQUIRE(script);
    std::vector<StepKind> waits;
    for (const Step& s : script->steps)
        if (!s.timed)
            waits.push_back(s.kind);
    using enum StepKind;
    CHECK(waits == std::vector{CheckList, SwitchOn, HandsOut, Swap, HandsOut, Finish});
    const auto length = [&](StepKind kind) {
        for (const Step& s : script->steps)
            if (s.kind == kind)
                return s.length.s;
        return 0;
    };
    CHECK(length(Announce) == 15);
    CHECK(length(Raise) == 60);
    CHECK(length(Lower) == 60);
}

TEST_CASE("the prompts fit the site, the machine and the way of working")
{
    const auto said = [](Site site, WayOfWorking way, PolaritySwap swap, StepKind kind) {
        auto q = request(site, way);
        q.swap = swap;
        const auto script = scriptFor(q);
        REQUIRE(script);
        for (const Step& s : script->steps)
            if (s.kind == kind)
                return s.prompt;
        return Prompt::Done;
    };
    using enum StepKind;
    const auto free = WayOfWorking::FreeHand;
    CHECK(said(Site::Feet, free, PolaritySwap::Leads, Swap) == Prompt::SwapLeads);
    CHECK(said(Site::Feet, free, PolaritySwap::Switch, Swap) == Prompt::FlipSwitch);
    CHECK(said(Site::Armpits, free, PolaritySwap::Leads, Swap) == Prompt::SoakPadsLeads);
    CHECK(said(Site::Armpits, free, PolaritySwap::Switch, Swap) == Prompt::SoakPadsSwitch);
    CHECK(said(Site::Armpits, free, PolaritySwap::Pads, Swap) == Prompt::SoakPadsExchange);
    CHECK(said(Site::Armpits, free, PolaritySwap::Leads, Hold) == Prompt::HoldPads);
    CHECK(said(Site::Armpits, free, PolaritySwap::Leads, Finish) == Prompt::TakePadsOff);
    CHECK(said(Site::Armpits, free, PolaritySwap::Leads, SwitchOn) == Prompt::SwitchOnPulsed);
    CHECK(said(Site::Feet, free, PolaritySwap::Leads, SwitchOn) == Prompt::SwitchOnDirect);
    CHECK(said(Site::Hands, WayOfWorking::HandsUnder, PolaritySwap::Leads, Raise) == Prompt::RaiseByRemote);
    CHECK(said(Site::Hands, WayOfWorking::HandsUnder, PolaritySwap::Leads, Lower) == Prompt::LowerByRemote);
    CHECK(said(Site::Hands, WayOfWorking::HandsUnder, PolaritySwap::Leads, Finish) == Prompt::DryAll);
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

TEST_CASE("a shorter session is shorter in its holds alone, and refused below half or above the whole")
{
    for (const auto site : allOf<Site>()) {
        const Seconds whole = phasesFor(site).hold;
        ScriptRequest q = request(site);
        const auto usual = scriptFor(q);
        q.hold = Seconds{whole.s / 2};
        const auto shorter = scriptFor(q);
        REQUIRE(shorter);
        REQUIRE(shorter->steps.size() == usual->steps.size());
        for (std::size_t i = 0; i < shorter->steps.size(); ++i) {
            Step step = shorter->steps[i];
            if (step.kind == StepKind::Hold) {
                CHECK(step.length == *q.hold);
                step.length = whole;
            }
            CHECK(step == usual->steps[i]);
        }
        for (const int wrong : {whole.s / 2 - 1, whole.s + 1, 0, -60}) {
            q.hold = Seconds{wrong};
            REQUIRE_FALSE(scriptFor(q));
            CHECK(scriptFor(q).error().code == "hold-out-of-range");
            CHECK(scriptFor(q).error().input == "hold");
        }
        q.hold = whole;
        CHECK(scriptFor(q)->steps == usual->steps);
    }
}

TEST_CASE("both hands under water need a remote control and an adult, and each refusal says what is safe instead")
{
    // a remote control or a helper: common practice, no source; adults only: our own choice
    using enum WayOfWorking;
    Machine plain;
    Machine remote;
    remote.remote = true;
    const auto hands = [](const Machine& m, AgeGroup age) { return waysFor(Site::Hands, m, age); };
    CHECK(hands(remote, AgeGroup::Adult) == std::vector<WayAnswer>{{Helper, {}}, {HandsUnder, {}}});
    CHECK(hands(plain, AgeGroup::Adult) == std::vector<WayAnswer>{{Helper, {}}, {HandsUnder, WayBar::NeedsRemote}});
    CHECK(hands(remote, AgeGroup::Child) == std::vector<WayAnswer>{{Helper, {}}, {HandsUnder, WayBar::AdultsOnly}});
    for (const auto site : {Site::Feet, Site::HandFoot, Site::Armpits})
        CHECK(waysFor(site, remote, AgeGroup::Adult) == std::vector<WayAnswer>{{FreeHand, {}}, {Helper, {}}});
    CHECK_FALSE(refusalOfWay(Site::Hands, HandsUnder, remote, AgeGroup::Adult));
    CHECK(refusalOfWay(Site::Hands, HandsUnder, plain, AgeGroup::Adult)->code == "way-needs-remote");
    CHECK(refusalOfWay(Site::Hands, HandsUnder, remote, AgeGroup::Child)->code == "way-adults-only");
    CHECK(refusalOfWay(Site::Feet, HandsUnder, remote, AgeGroup::Adult)->code == "way-not-for-site");
    CHECK(refusalOfWay(Site::Hands, FreeHand, remote, AgeGroup::Adult)->code == "way-not-for-site");
    auto child = request(Site::Hands, HandsUnder);
    child.age = AgeGroup::Child;
    child.limit = {10};
    CHECK(scriptFor(child).error().code == "way-adults-only");
    CHECK(scriptFor(request(Site::Armpits, HandsUnder)).error().code == "way-not-for-site");
}

TEST_CASE("both hands under water need a voice that speaks the person's language")
{
    // our own choice: nobody looks at the screen there, or taps
    using enum WayOfWorking;
    Machine remote;
    remote.remote = true;
    const auto bar = [&](Tongue tongue) {
        return barOf(Site::Hands, HandsUnder, remote, AgeGroup::Adult, {Touch::Plain, tongue});
    };
    for (const auto tongue : {Tongue::Recorded, Tongue::Device, Tongue::Reader})
        CHECK_FALSE(bar(tongue));
    CHECK(bar(Tongue::Foreign) == WayBar::NotSpoken);
    const Phone foreign{Touch::Plain, Tongue::Foreign};
    const auto refused = refusalOfWay(Site::Hands, HandsUnder, remote, AgeGroup::Adult, foreign);
    REQUIRE(refused);
    CHECK(refused->code == "way-not-spoken");
    CHECK(refused->message.find("ask somebody to stay beside you") != std::string::npos);
    // Where somebody looks at the screen, the language of the voice closes nothing.
    for (const auto site : allOf<Site>())
        for (const auto way : {FreeHand, Helper})
            CHECK(barOf(site, way, remote, AgeGroup::Adult, foreign) == barOf(site, way, remote, AgeGroup::Adult));
    CHECK(waysFor(Site::Hands, remote, AgeGroup::Adult, foreign) ==
          std::vector<WayAnswer>{{Helper, {}}, {HandsUnder, WayBar::NotSpoken}});
    CHECK(barOf(Site::Hands, HandsUnder, {}, AgeGroup::Adult, foreign) == WayBar::NeedsRemote);
}

TEST_CASE("who says the prompts: a screen reader, else recorded clips, else the device, else nobody for sure")
{
    for (int bits = 0; bits < 8; ++bits) {
        const Speakers s{(bits & 1) != 0, (bits & 2) != 0, (bits & 4) != 0};
        CAPTURE(bits);
        CHECK(tongueFor(s) == (s.reader     ? Tongue::Reader
                               : s.recorded ? Tongue::Recorded
                               : s.device   ? Tongue::Device
                                            : Tongue::Foreign));
    }
}

TEST_CASE("with a screen reader on, both hands under water need a helper")
{
    Machine remote;
    remote.remote = true;
    const auto refused =
        refusalOfWay(Site::Hands, WayOfWorking::HandsUnder, remote, AgeGroup::Adult, {Touch::ScreenReader});
    REQUIRE(refused);
    CHECK(refused->code == "way-screen-reader");
    CHECK(refused->message.find("ask somebody to stay beside you") != std::string::npos);
    CHECK_FALSE(refusalOfWay(Site::Hands, WayOfWorking::HandsUnder, remote, AgeGroup::Adult, {Touch::Plain}));
    CHECK_FALSE(refusalOfWay(Site::Hands, WayOfWorking::Helper, remote, AgeGroup::Adult, {Touch::ScreenReader}));
    CHECK_FALSE(refusalOfWay(Site::Feet, WayOfWorking::FreeHand, remote, AgeGroup::Adult, {Touch::ScreenReader}));
    // What is missing most is said first.
    CHECK(refusalOfWay(Site::Hands, WayOfWorking::HandsUnder, {}, AgeGroup::Adult, {Touch::ScreenReader})->code ==
          "way-needs-remote");
}
