#pragma once

#include <optional>
#include <string>

namespace firstdew::ports {

/// A step of the running session, shown outside the app.
struct SessionStep {
    std::string title;
    std::string text;
    std::optional<long long> endWallMs; ///< end, ms since 1970 UTC; nullopt if the step waits for the person
    bool operator==(const SessionStep&) const = default;
};

/// Shows the running session and its countdown outside the app. This keeps the system from ending the app.
class SessionNotice {
public:
    virtual ~SessionNotice() = default;
    /// Shows or updates the notice. If the system refuses, the session continues without it.
    virtual void show(const SessionStep& step) = 0;
    virtual void over() = 0;
};

} // namespace firstdew::ports
