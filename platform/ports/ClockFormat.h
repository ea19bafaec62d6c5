#pragma once

#include <functional>

namespace firstdew::ports {

/// How the person's clock counts the hours.
enum class Hours {
    AsLocale, ///< the system has no setting of its own for it
    Twelve,
    TwentyFour
};

class ClockFormat {
public:
    virtual ~ClockFormat() = default;
    [[nodiscard]] virtual Hours hours() const = 0;
    /// `changed` is called in the main thread when hours() answers otherwise.
    virtual void onChange(std::function<void()> changed) = 0;
};

} // namespace firstdew::ports
