#pragma once

namespace firstdew::ports {

/// Vibration, felt by a hand on the phone or through the board under it.
class Haptics {
public:
    virtual ~Haptics() = default;
    /// Whether the device can vibrate.
    [[nodiscard]] virtual bool present() const = 0;
    /// One short pulse.
    virtual void pulse() = 0;
    /// A light tick that says that a touch was taken. Not felt where the person switched touch feedback off.
    virtual void tick() = 0;
    /// Starts a strong vibration that ends by itself within a few seconds. Another call starts it again.
    virtual void alarm() = 0;
    /// Ends a running alarm.
    virtual void still() = 0;
};

} // namespace firstdew::ports
