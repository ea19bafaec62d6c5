#pragma once

#include <string>

namespace firstdew::ports {

/// Has a screen reader say what somebody who sees the screen would notice by looking.
class Announcer {
public:
    enum class Urgency { InTurn, AtOnce };

    virtual ~Announcer() = default;
    /// Whether a screen reader is on. While it is, it speaks the prompts of a session in the place of the app's voice.
    [[nodiscard]] virtual bool listens() const = 0;
    virtual void announce(const std::string& text, Urgency urgency) = 0;
    /// Another page is on the screen. Does nothing where a screen reader tells that by itself.
    virtual void page(const std::string& title) = 0;
};

} // namespace firstdew::ports
