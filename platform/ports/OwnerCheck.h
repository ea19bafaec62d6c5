#pragma once

#include <functional>
#include <string>

namespace firstdew::ports {

/// Has the system confirm by the device's own lock that its owner is there. The app keeps no secret for that.
class OwnerCheck {
public:
    enum class Verdict {
        Confirmed,
        Refused, ///< what was given was wrong
        Dropped, ///< the person or the system left off
        Unable,  ///< the system cannot tell, whatever is given
    };
    /// Called in the main thread; `done` also before ask() returned.
    struct Asking {
        /// The system asks through the app, in these words of its own: reply() answers. Not called where the system has
        /// a dialog of its own.
        std::function<void(const std::string& words, bool hidden)> prompt;
        /// The system tells the person something, in words of its own.
        std::function<void(const std::string& words)> tell;
        /// Called once, last.
        std::function<void(Verdict)> done;
    };

    virtual ~OwnerCheck() = default;
    /// Whether the device has a lock and the system can ask for it. May change while the app runs.
    [[nodiscard]] virtual bool available() const = 0;
    /// Asks. `why` is shown in the system's own dialog. What was asked before is dropped without a word.
    virtual void ask(const std::string& why, Asking asking) = 0;
    /// Answers the prompt. The text is wiped once it was handed on.
    virtual void reply(std::string /*secret*/) {}
    /// Leaves off. Nothing more is called.
    virtual void drop() {}
};

} // namespace firstdew::ports
