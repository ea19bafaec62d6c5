#pragma once

#include <functional>
#include <optional>
#include <string>

namespace firstdew::ports {

/// A step of the running session, shown outside the app. A locked screen shows it too, so it names no site, no current
/// and nothing else of the person's health.
struct SessionStep {
    std::string title;
    std::optional<long long> endWallMs = {}; ///< end, ms since 1970 UTC; nullopt if the step waits for the person
    std::string ends = {};                   ///< the end in words, where the system draws no countdown; may be empty
    std::string stop = {};                   ///< label of the button that stops the session
    bool operator==(const SessionStep&) const = default;
};

/// Shows the running session and its countdown outside the app. This keeps the system from ending the app.
class SessionNotice {
public:
    virtual ~SessionNotice() = default;
    /// Shows or updates the notice. If the system refuses, the session continues without it.
    virtual void show(const SessionStep& step) = 0;
    virtual void over() = 0;
    /// The app leads the session now. Called with every tick, so that a notice with a life of its own can call out when
    /// the app hangs.
    virtual void alive() {}
    /// `stop` is called on the app's thread when the person stops the session on the notice. Nothing else can be done
    /// there: nobody sees the meter from a locked screen.
    virtual void onStop(std::function<void()> stop) = 0;
};

} // namespace firstdew::ports
