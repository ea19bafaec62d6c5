#include "bath/Tick.h"

#include <algorithm>

namespace firstdew::bath {

int untilNextTick(const State& state)
{
    constexpr long long kSecondMs = 1000;
    return static_cast<int>(std::min<long long>(kTickMs, kSecondMs - state.stepElapsedMs % kSecondMs));
}

} // namespace firstdew::bath
