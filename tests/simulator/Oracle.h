#pragma once

#include "bath/Engine.h"
#include "situation/Reminders.h"

#include <map>
#include <set>
#include <stdexcept>
#include <string>
#include <vector>

// What must hold whatever happens to the phone. It knows nothing of how the app is made.
namespace firstdew::simulator {

using namespace facts;

struct Broken : std::runtime_error {
    using std::runtime_error::runtime_error;
};

inline void mustHold(bool holds, const std::string& what)
{
    if (!holds)
        throw Broken(what);
}

/// No acknowledged fact is lost or doubled, and nothing is there that nobody recorded.
struct Ledger {
    std::vector<Fact> acknowledged;
    std::set<std::string> tried; ///< ids of facts that may be there or not

    void compare(const std::vector<Fact>& there) const
    {
        std::set<std::string> ids;
        auto next = acknowledged.begin();
        for (const Fact& fact : there) {
            mustHold(ids.insert(fact.id).second, "a fact is there twice: " + fact.id);
            if (next != acknowledged.end() && fact == *next)
                ++next;
            else
                mustHold(tried.contains(fact.id), "a fact that nobody recorded, or in another order: " + fact.id);
        }
        mustHold(next == acknowledged.end(),
                 "an acknowledged fact is lost: " + (next == acknowledged.end() ? "" : next->id));
    }
};

/// No reminder is shown twice for one cause and time, or during a session, and none is missed that the system allowed.
struct Watcher {
    std::map<std::string, std::set<LocalTime>> shown; ///< by key
    long long count = 0;

    void sees(const situation::Reminder& r, bool sessionRuns)
    {
        mustHold(!sessionRuns, "a reminder during a session: " + r.key);
        mustHold(shown[r.key].insert(r.at).second, "a reminder shown twice: " + r.key);
        ++count;
    }
    void missesNothing(const std::vector<situation::Reminder>& due) const
    {
        for (const auto& r : due)
            mustHold(shown.contains(r.key), "a reminder was missed: " + r.key + " at " + r.at.iso());
    }
};

/// Stands at the machine: nothing reaches a swap, a raise, a change of side or the end while current may flow.
struct Onlooker {
    bool mayFlow = false;

    void hears(const bath::Event& e)
    {
        using enum BathEventKind;
        if (e.kind == Lowered || e.kind == Begin || e.kind == SwitchedOn ||
            (e.kind == Resumed && e.meanwhile == Meanwhile::SwitchedOff))
            mayFlow = false;
        if (e.kind == Raised || (e.kind == Reading && e.reading->mA > 0) ||
            (e.kind == Resumed && e.meanwhile == Meanwhile::KeptRunning))
            mayFlow = true;
    }
    void sees(const bath::State& before, const bath::Event& e, const bath::State& after)
    {
        const bool was = mayFlow;
        hears(e);
        using enum protocol::StepKind;
        const auto is = after.script.steps[after.step].kind;
        const bool atZero = is == Swap || is == MoveSide || is == Finish || is == SwitchOn || is == Raise;
        if (after.step != before.step && atZero)
            mustHold(!(e.kind == BathEventKind::Reading ? was : mayFlow),
                     "a swap, raise or end while current may flow");
        if (after.step != before.step && (is == Swap || is == MoveSide || is == Finish))
            mustHold(e.kind != BathEventKind::Tick && e.kind != BathEventKind::Away,
                     "a swap or end by the clock alone");
        mustHold(after.phase != bath::Phase::Finished || !mayFlow, "over while current may flow");
        if (after.phase == bath::Phase::Running && is == Raise && after.current != bath::Current::Zero)
            mayFlow = true; // told to raise, the person may raise
        mustHold(after.current != bath::Current::Zero || after.phase == bath::Phase::Stopped || !mayFlow,
                 "taken for zero while current may flow");
    }
};

} // namespace firstdew::simulator
