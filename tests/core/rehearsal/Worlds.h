#pragma once

#include "rehearsal/World.h"

namespace firstdew::rehearsal {

/// The combined world of core/outlook/COSTS.md.
inline World combined()
{
    World w;
    w.falseWet = 0.002;
    w.hotRuns = 0.05;
    w.weekendGaps = 0.2;
    w.seasonAmplitude = 0.3;
    w.ar1 = 0.5;
    return w;
}

} // namespace firstdew::rehearsal
