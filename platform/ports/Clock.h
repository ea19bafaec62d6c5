#pragma once

#include "facts/LocalDate.h"

namespace firstdew::ports {

/// The only way in which the time of day enters the app.
class Clock {
public:
    virtual ~Clock() = default;
    /// Day and minute on the person's own clock, in the zone the device is set to.
    [[nodiscard]] virtual facts::LocalTime localNow() const = 0;
    /// Now, for the events of a running session.
    [[nodiscard]] virtual facts::Instant instant() const = 0;
};

} // namespace firstdew::ports
