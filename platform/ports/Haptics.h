#pragma once

namespace firstdew::ports {

/// What a hand on the phone, or the board under it, feels.
class Haptics {
public:
    virtual ~Haptics() = default;
    /// Whether there is anything here that can vibrate.
    [[nodiscard]] virtual bool present() const = 0;
    /// One short pulse.
    virtual void pulse() = 0;
    /// Strong, at once; ends by itself within a few seconds. Called again, it begins anew.
    virtual void alarm() = 0;
    /// Ends an alarm that still runs.
    virtual void still() = 0;
};

} // namespace firstdew::ports
