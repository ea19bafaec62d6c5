#include "bath/Dose.h"
#include "bath/Engine.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <fuzzer/FuzzedDataProvider.h>

using namespace firstdew;
using namespace firstdew::bath;
using protocol::StepKind;

namespace {

void require(bool holds)
{
    if (!holds)
        std::abort();
}

BathPrepared preparation(FuzzedDataProvider& data)
{
    BathPrepared p;
    p.bath = "b";
    p.site = data.PickValueInArray({Site::Hands, Site::Feet, Site::HandFoot, Site::Armpits});
    p.waveform = data.PickValueInArray({Waveform::Direct, Waveform::Pulsed});
    p.age = data.PickValueInArray({AgeGroup::Adult, AgeGroup::Child});
    p.way = data.PickValueInArray({WayOfWorking::HandsUnder, WayOfWorking::FreeHand, WayOfWorking::Helper});
    p.limit = {static_cast<double>(data.ConsumeIntegralInRange<int>(0, 30))};
    p.swap = data.PickValueInArray({PolaritySwap::Leads, PolaritySwap::Switch, PolaritySwap::Pads});
    p.steps = protocol::kSteps;
    p.runsBefore = data.ConsumeIntegralInRange<int>(0, 3);
    p.raise = {data.ConsumeIntegralInRange<int>(10, 200)};
    p.lower = {data.ConsumeIntegralInRange<int>(10, 200)};
    p.target = Milliamps{data.ConsumeFloatingPointInRange<double>(-5, 50)};
    return p;
}

Event anyEvent(FuzzedDataProvider& data)
{
    Event e;
    e.kind = static_cast<BathEventKind>(
        data.ConsumeIntegralInRange<int>(0, static_cast<int>(allOf<BathEventKind>().size())));
    if (e.kind == BathEventKind::Reading && data.ConsumeBool())
        e.reading = Milliamps{data.ConsumeBool() ? data.ConsumeIntegralInRange<int>(-1, 120) / 2.0
                                                 : data.ConsumeFloatingPoint<double>()};
    if (e.kind == BathEventKind::Resumed && data.ConsumeBool())
        e.meanwhile = static_cast<Meanwhile>(data.ConsumeIntegralInRange<int>(0, 3));
    return e;
}

/// The two clocks of a phone: together, or each as it likes.
struct Clocks {
    Instant now{1'772'000'000'000, 5'000};
    bool together = true;

    void pass(FuzzedDataProvider& data)
    {
        const long long ms =
            data.PickValueInArray<long long>({0, 100, 500, 1'000, 9'000, 10'001, 20'000, 60'000, 90'001, 700'000});
        now.monotonicMs += ms;
        now.wallMs += ms;
        if (data.ConsumeIntegralInRange<int>(0, 15) != 0)
            return;
        together = false;
        now.wallMs += data.ConsumeIntegralInRange<long long>(-90'000'000, 90'000'000);
        if (data.ConsumeBool())
            now.monotonicMs = data.ConsumeIntegralInRange<long long>(0, 1'000'000); // started anew
    }
};

/// Somebody who watches machine and limbs, and knows nothing of the engine.
struct Onlooker {
    bool mayFlow = false;

    /// What is done at zero is reached on the person's word alone.
    void stepWent(const Event& e, const State& before, const State& after) const
    {
        using enum BathEventKind;
        const auto kind = after.script.steps[after.step].kind;
        if (after.step == before.step || (kind != StepKind::Swap && kind != StepKind::MoveSide &&
                                          kind != StepKind::Finish && kind != StepKind::SwitchOn))
            return;
        require(e.kind == Lowered || e.kind == Begin || e.kind == SwitchedOn ||
                (e.kind == Resumed && e.meanwhile == Meanwhile::SwitchedOff));
    }
    void saw(const Event& e, const State& after)
    {
        using enum BathEventKind;
        if (e.kind == Lowered || e.kind == Begin || e.kind == SwitchedOn ||
            (e.kind == Resumed && e.meanwhile == Meanwhile::SwitchedOff))
            mayFlow = false;
        const auto kind = after.script.steps[after.step].kind;
        const bool raising = kind == StepKind::Raise && after.current != Current::Zero;
        if (e.kind == Raised || raising || (e.kind == Reading && e.reading->mA > 0) ||
            (e.kind == Resumed && e.meanwhile == Meanwhile::KeptRunning))
            mayFlow = true;
    }
};

void holds(const State& s, Milliamps limit)
{
    require(s.step < s.script.steps.size());
    require(s.target().mA >= 0 && s.target() <= limit);
    require(remainingInStep(s).s >= 0 && remainingInAll(s).s >= remainingInStep(s).s);
    require(s.sessionMs >= 0 && s.stepElapsedMs >= 0);
    require(std::is_sorted(s.readings.begin(), s.readings.end(),
                           [](const MeterReading& a, const MeterReading& b) { return a.atMs < b.atMs; }));
    const auto dose = doseOf(s.readings, s.script.request.site, limit, SquareCentimetres{100});
    require(std::isfinite(dose.charge.mAmin) && dose.charge.mAmin >= 0);
}

/// Killed here, it comes back to the same step.
void comesBack(const BathPrepared& prepared, const std::vector<BathEvent>& kept, const State& s, bool clocksTogether)
{
    const auto back = replay(prepared, kept);
    if (!clocksTogether) // where clocks jump between ticks that nobody kept, refusing is the safe answer
        return require(back.ok() || !back.error().message.empty());
    require(back.ok());
    require(back->step == s.step && back->readings == s.readings && back->restarts == s.restarts);
    const bool asks = s.phase == Phase::Running && s.step > 0;
    require(back->phase == (s.pressed ? Phase::Stopped : asks ? Phase::AwaitingMeanwhile : s.phase));
}

} // namespace

/// Any order of events at any times: refused or taken, never with the leads touched under current, and come back to.
extern "C" int LLVMFuzzerTestOneInput(const uint8_t* bytes, size_t size)
{
    FuzzedDataProvider data(bytes, size);
    const BathPrepared p = preparation(data);
    const auto script = scriptOf(p);
    if (!script) {
        require(!script.error().message.empty());
        return 0;
    }
    State s = prepared(*script, *p.target, {*p.runsBefore, {}});
    Clocks clocks;
    s.last = s.kept = clocks.now;
    Onlooker onlooker;
    std::vector<BathEvent> kept;
    for (int n = 0; n < 200 && data.remaining_bytes() > 0; ++n) {
        const Event e = anyEvent(data);
        clocks.pass(data);
        const auto out = step(s, e, clocks.now);
        if (!out) {
            require(!out.error().message.empty());
            continue;
        }
        const State& t = out->state;
        holds(t, p.limit);
        onlooker.stepWent(e, s, t);
        const bool touched = e.kind == BathEventKind::Swapped || e.kind == BathEventKind::MovedSide;
        const bool over = s.pressed && t.phase == Phase::Stopped; // whatever was said came too late
        require(!touched || !onlooker.mayFlow || over);
        onlooker.saw(e, t);
        require(t.current != Current::Zero || !onlooker.mayFlow || over);
        for (const auto& [event, at] : out->keep) {
            BathEvent b;
            b.bath = p.bath, b.sequence = static_cast<int>(kept.size()), b.event = event.kind;
            b.reading = event.reading, b.meanwhile = event.meanwhile;
            b.wallMs = at.wallMs, b.monotonicMs = at.monotonicMs;
            kept.push_back(b);
        }
        s = t;
    }
    comesBack(p, kept, s, clocks.together);
    return 0;
}
