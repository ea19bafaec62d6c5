#pragma once

#include "bath/Engine.h"

#include <span>

namespace firstdew::bath
{

/// Charge of the readings in one run: straight line between readings of a phase, zero outside. mA·min.
[[nodiscard]] MilliampMinutes chargeOf(std::span<const MeterReading> readings);

} // namespace firstdew::bath
