#include "bath/Slip.h"

#include "bath/PassTime.h"

#include <algorithm>

namespace firstdew::bath {

namespace {

/// It was said aloud when Stop was pressed.
Result<Outcome> stopForGood(Turn& turn)
{
    turn.stop();
    std::erase_if(turn.effects, [](const Effect& e) { return e.kind == EffectKind::Say; });
    turn.s.last = turn.now;
    return turn.finish(Event{BathEventKind::Stop, {}, {}});
}

} // namespace

Seconds stopsIn(const State& s, Instant now)
{
    if (!s.pressed)
        return {};
    const long long left = kSlipMs - unseen(*s.pressed, now);
    return {static_cast<int>(std::clamp((left + 999) / 1000, 0LL, kSlipMs / 1000))};
}

void pressStop(Turn& turn)
{
    turn.s.pressed = turn.now;
    turn.changed = true;
    if (turn.s.alarm)
        turn.emit(EffectKind::AlarmOff); // sounded again if the stop is taken back
    turn.sayStopped();
}

Result<Outcome> takeWhileStopping(Turn& turn, const Event& event)
{
    if (event.kind == BathEventKind::Stop || unseen(*turn.s.pressed, turn.now) >= kSlipMs)
        return stopForGood(turn);
    switch (event.kind) {
    case BathEventKind::Tick:
    case BathEventKind::Away:
    case BathEventKind::StopPressed: return turn.finish(std::nullopt);
    default: break;
    }
    State goesOn = turn.s;
    goesOn.pressed.reset();
    const bool only = event.kind == BathEventKind::StopTakenBack;
    auto outcome = advance(goesOn, only ? Event{BathEventKind::Tick, {}, {}} : event, turn.now, turn.late);
    if (!outcome)
        return outcome;
    auto& keep = outcome.value().keep;
    keep.insert(keep.begin(), {{BathEventKind::StopTakenBack, {}, {}}, turn.now});
    outcome.value().state.kept = turn.now;
    return outcome;
}

} // namespace firstdew::bath
