#pragma once

#include "sound/Timeline.h"

#include <functional>
#include <memory>

namespace firstdew::sound {

/// Where a line is, in samples since it was opened.
struct Moment {
    long long heard = 0;      ///< is heard now
    long long changeable = 0; ///< the first one that can still be changed
};

/// A line to the person's output that is filled for minutes beforehand, so that it is heard on while the app cannot
/// act.
class LeadLine {
public:
    virtual ~LeadLine() = default;
    /// Begins to open, unless it is open. ready() says when it is.
    virtual void open() = 0;
    virtual void close() = 0;
    [[nodiscard]] virtual bool ready() const = 0;
    /// Lets `change` change what is heard from Moment::changeable on. Does nothing unless ready.
    virtual void change(const std::function<void(Timeline&, Moment)>& change) = 0;
    /// Calls `read` in the same way, and changes nothing.
    virtual void read(const std::function<void(const Timeline&, Moment)>& read) const = 0;
};

/// The system's own, or nullptr where the system has none. `told` is called in another thread with true when the line
/// is ready, and with false when it is lost or cannot be opened.
[[nodiscard]] std::unique_ptr<LeadLine> makeLeadLine(Timeline timeline, std::function<void(bool there)> told);

} // namespace firstdew::sound
