#include "situation/AppLock.h"

#include <catch2/catch.hpp>

using namespace firstdew::situation;

namespace {

constexpr Instant kNoon{1'774'000'000'000, 5'000'000};
constexpr LockFacts kWanted{true, true, false};

Instant after(long long wallMs, long long steadyMs) { return {kNoon.wallMs + wallMs, kNoon.monotonicMs + steadyMs}; }
Instant after(long long ms) { return after(ms, ms); }

LockState atWork() { return afterConfirming({}, kNoon); }

} // namespace

TEST_CASE("a start asks for the owner, and once confirmed nobody is asked while the app stays in front")
{
    CHECK(guard({}, kWanted, kNoon) == Guard::Locked);
    for (const long long ms : {0LL, kAwayMs, 30 * 86'400'000LL})
        CHECK(guard(atWork(), kWanted, after(ms)) == Guard::Open);
    CHECK(guard({}, {false, true, false}, kNoon) == Guard::Open);
}

TEST_CASE("whoever comes back within a minute goes on, and is asked for after it")
{
    const LockState away = afterLeaving(atWork(), kNoon);
    CHECK(guard(away, kWanted, after(kAwayMs - 1)) == Guard::Open);
    CHECK(guard(away, kWanted, after(kAwayMs)) == Guard::Locked); // also where the window can still be seen
    CHECK(guard(afterReturn(away, after(kAwayMs - 1)), kWanted, after(kAwayMs)) == Guard::Open);
    const LockState back = afterReturn(away, after(kAwayMs));
    CHECK(guard(back, kWanted, after(kAwayMs)) == Guard::Locked);
    // To leave again shortly does not make it good, nor does it put off the time.
    CHECK(guard(afterReturn(afterLeaving(back, after(kAwayMs + 5)), after(kAwayMs + 9)), kWanted, after(kAwayMs + 9)) ==
          Guard::Locked);
    CHECK(afterLeaving(away, after(kAwayMs - 1)) == away);
    CHECK(guard(afterConfirming(back, after(kAwayMs)), kWanted, after(kAwayMs)) == Guard::Open);
}

TEST_CASE("a phone that slept, a clock set forward and a clock that went back all ask for the owner")
{
    const LockState away = afterLeaving(atWork(), kNoon);
    CHECK(guard(afterReturn(away, after(kAwayMs, 10)), kWanted, after(kAwayMs, 10)) == Guard::Locked);
    CHECK(guard(afterReturn(away, after(10, kAwayMs)), kWanted, after(10, kAwayMs)) == Guard::Locked);
    CHECK(guard(afterReturn(away, after(-1, 10)), kWanted, after(-1, 10)) == Guard::Locked);
    CHECK(guard(afterReturn(away, after(10, -1)), kWanted, after(10, -1)) == Guard::Locked);
}

TEST_CASE("the time in the system's own dialog is no time away, and what follows it is")
{
    const LockState asked = afterLeaving({}, kNoon);
    const LockState confirmed = afterConfirming(asked, after(5 * kAwayMs));
    CHECK(guard(afterReturn(confirmed, after(5 * kAwayMs + 1)), kWanted, after(5 * kAwayMs + 1)) == Guard::Open);
    CHECK(guard(confirmed, kWanted, after(6 * kAwayMs)) == Guard::Locked);
}

TEST_CASE("no lock stands before a session from its beginning until its end is written down")
{
    for (const bool confirmed : {false, true})
        for (const bool left : {false, true})
            for (const long long ms : {-kAwayMs, 0LL, kAwayMs - 1, kAwayMs, 90 * kAwayMs})
                for (const bool wanted : {false, true})
                    for (const bool canAsk : {false, true}) {
                        const LockState state{confirmed, left ? std::optional(kNoon) : std::nullopt};
                        CHECK(guard(state, {wanted, canAsk, true}, after(ms)) != Guard::Locked);
                    }
    // The session alone is shown to whoever was not confirmed, and once it is written down they are asked for.
    CHECK(guard({}, {true, true, true}, kNoon) == Guard::SessionOnly);
    const LockState back = afterReturn(afterLeaving(atWork(), kNoon), after(kAwayMs));
    CHECK(guard(back, {true, true, true}, after(kAwayMs)) == Guard::SessionOnly);
    CHECK(guard(back, kWanted, after(2 * kAwayMs)) == Guard::Locked);
    CHECK(guard(atWork(), {true, true, true}, kNoon) == Guard::Open);
}

TEST_CASE("a system that cannot ask locks nobody out, and that is said")
{
    CHECK(guard({}, {true, false, false}, kNoon) == Guard::Unguarded);
    CHECK(guard({}, {true, false, true}, kNoon) == Guard::Unguarded);
    CHECK(guard({}, {false, false, false}, kNoon) == Guard::Open);
}
