#pragma once

#include "facts/LocalDate.h"

namespace firstdew::ports {

/// The only source of time in the app.
class Clock {
public:
    virtual ~Clock() = default;
    /// Day and minute on the person's clock, in the zone of the device.
    [[nodiscard]] virtual facts::LocalTime localNow() const = 0;
    /// The present instant, for events of a running session.
    [[nodiscard]] virtual facts::Instant instant() const = 0;
};

} // namespace firstdew::ports
