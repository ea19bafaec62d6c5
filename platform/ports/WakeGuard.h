#pragma once

namespace firstdew::ports {

/// Keeps the screen on while a session runs.
class WakeGuard {
public:
    virtual ~WakeGuard() = default;
    virtual void keepAwake(bool on) = 0;
};

} // namespace firstdew::ports
