#pragma once

#include <functional>

namespace firstdew::ports {

/// What the system keeps for itself at each side of the window (notch, rounded corners, its bars), in
/// device-independent pixels; left and right as they are on the screen, whatever the reading direction.
struct Insets {
    double left = 0;
    double top = 0;
    double right = 0;
    double bottom = 0;
    bool operator==(const Insets&) const = default;
};

class SafeArea {
public:
    virtual ~SafeArea() = default;
    [[nodiscard]] virtual Insets insets() const = 0;
    /// `changed` is called in the main thread when insets() answers otherwise, for example after a turn of the phone.
    virtual void onChange(std::function<void()> changed) = 0;
};

} // namespace firstdew::ports
