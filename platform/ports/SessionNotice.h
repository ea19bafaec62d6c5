#pragma once

#include <optional>
#include <string>

namespace firstdew::ports {

/// A step of the running session, for somebody who looks at the phone and not at the app.
struct SessionStep {
    std::string title;
    std::string text;
    std::optional<long long>
        endWallMs; ///< when it ends, ms since 1970 UTC; nothing for a step that waits for the person
    bool operator==(const SessionStep&) const = default;
};

/// Shows outside the app that a session runs, with its countdown, and so keeps the system from ending the app.
class SessionNotice {
public:
    virtual ~SessionNotice() = default;
    /// Shows it, or brings what is shown up to date. Where the system refuses, the session goes on without.
    virtual void show(const SessionStep& step) = 0;
    virtual void over() = 0;
};

} // namespace firstdew::ports
