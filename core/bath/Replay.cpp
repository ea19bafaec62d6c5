#include "bath/Absence.h"

#include <algorithm>
#include <fmt/format.h>

namespace firstdew::bath {

namespace {

bool running(const State& s) { return s.phase == Phase::Running && s.step > 0; }

Before beforeOf(const BathPrepared& p)
{
    return {p.runsBefore.value_or(0), p.chargeBefore.value_or(MilliampMinutes{})};
}

State stopped(State s)
{
    Turn turn{std::move(s), s.last};
    turn.stop();
    return std::move(turn.s);
}

/// Another order of steps led that session: it is over, and what the meter showed is kept.
State endedWithReadings(State s, std::span<const BathEvent> events)
{
    for (const BathEvent& e : events) {
        s.last = {e.wallMs, e.monotonicMs};
        if (e.event == BathEventKind::Raised)
            ++s.stretch;
        if (e.event == BathEventKind::Reading && e.reading && plausible(*e.reading))
            s.interrupted.push_back({e.monotonicMs - events.front().monotonicMs, *e.reading, 0, 0, {}, s.stretch});
    }
    s.phase = Phase::Stopped;
    s.stoppedBy = StoppedBy::OtherVersion;
    s.current = Current::Unknown;
    return s;
}

} // namespace

Result<protocol::Script> scriptOf(const BathPrepared& p)
{
    return protocol::scriptFor(
        {p.site, p.waveform, p.age, p.swap, p.way, p.firstSide, p.limit, p.raise, p.lower, p.swapping, p.hold});
}

BathPrepared preparationOf(const State& state, std::string bath)
{
    const protocol::ScriptRequest& q = state.script.request;
    BathPrepared p;
    p.bath = std::move(bath);
    p.site = q.site;
    p.waveform = q.waveform;
    p.age = q.age;
    p.swap = q.swap;
    p.way = q.way;
    p.firstSide = q.firstSide;
    p.limit = q.limit;
    p.target = state.wanted;
    p.raise = q.raise;
    p.lower = q.lower;
    p.swapping = q.swapping;
    p.hold = q.hold;
    p.steps = protocol::kSteps;
    p.runsBefore = state.before.runs;
    p.chargeBefore = state.before.charge;
    return p;
}

Result<State> replay(const BathPrepared& prepared, std::span<const BathEvent> events)
{
    const bool same = prepared.steps == protocol::kSteps;
    BathPrepared known = prepared;
    if (!same && known.way == WayOfWorking::HandsUnder)
        known.way = WayOfWorking::Helper; // may not be open to that person any more
    const auto script = scriptOf(known);
    if (!script)
        return script.error();
    State s = bath::prepared(*script, prepared.target.value_or(prepared.limit), beforeOf(prepared));
    if (!same)
        return endedWithReadings(std::move(s), events);
    for (std::size_t i = 0; i < events.size(); ++i) {
        const BathEvent& e = events[i];
        const auto take = [&] {
            return advance(s, {e.event, e.reading, e.meanwhile}, {e.wallMs, e.monotonicMs}, kGapMs);
        };
        auto next = take();
        if (!next && running(s)) {
            // It was taken all the same: by a session read back before, which waited for a word just here.
            awaitMeanwhile(s);
            next = take();
        }
        if (!next)
            return Error{"bath-not-replayable", fmt::format("event {}", i),
                         "the kept events of this session do not follow from each other; machine off, and log what was "
                         "done by hand"};
        s = std::move(next.value().state);
    }
    if (s.pressed) // the app ended before the stop was taken back
        s = stopped(std::move(s));
    if (running(s))
        awaitMeanwhile(s);
    return s;
}

namespace {

/// The led sessions of today that treated skin which `site` treats, too.
std::vector<State> ledToday(const diary::Diary& diary, Site site)
{
    std::vector<State> led;
    for (const auto& [id, one] : diary.ledSessions)
        if (one.prepared && one.on == diary.today && shareSkin(one.prepared->site, site))
            if (auto state = replay(*one.prepared, one.events))
                led.push_back(std::move(*state));
    return led;
}

Before sumWithLogged(std::span<const State> led, const diary::Diary& diary, Site site)
{
    Before sum = sumOf(led);
    // One that was logged without being led, such as one without the phone, began with current once.
    for (const auto& e : diary.sessions)
        if (e.happened.date == diary.today && !diary.ledSessions.contains(e.payload.bath) &&
            shareSkin(e.payload.site, site)) {
            ++sum.runs;
            sum.charge.mAmin += e.payload.charge.value_or(MilliampMinutes{}).mAmin;
        }
    return sum;
}

} // namespace

Before earlierToday(const diary::Diary& diary, Site site) { return sumWithLogged(ledToday(diary, site), diary, site); }

bool enoughToday(const diary::Diary& diary, Site site)
{
    const auto led = ledToday(diary, site);
    const Before sum = sumWithLogged(led, diary, site);
    if (sum.runs > kMostRestarts)
        return true;
    return std::ranges::any_of(led, [&](const State& s) { return enoughForToday(prepared(s.script, s.planned, sum)); });
}

Result<protocol::LimitAnswer> mayPrepare(const diary::Diary& diary, Site site, Waveform waveform, WayOfWorking way,
                                         protocol::Phone phone)
{
    if (enoughToday(diary, site))
        return Error{"enough-for-today", "site", "the skin had enough for one day; the next session is for tomorrow"};
    return protocol::mayBegin(diary, site, waveform, way, std::nullopt, phone);
}

} // namespace firstdew::bath
