#pragma once

#include "ports/Clock.h"

#include <QElapsedTimer>
#include <optional>

namespace firstdew::app {

/// The device's clock. Tests may set the local time it starts from and the speed of the session clock.
class SystemClock final : public ports::Clock {
public:
    explicit SystemClock(std::optional<facts::LocalTime> start = {}, double sessionSpeed = 1);
    [[nodiscard]] facts::LocalTime localNow() const override;
    [[nodiscard]] facts::Instant instant() const override;

private:
    std::optional<facts::LocalTime> m_start;
    double m_speed;
    long long m_wallStartMs;
    QElapsedTimer m_since;
};

} // namespace firstdew::app
