#pragma once

#include <functional>
#include <string>

namespace firstdew::ports {

/// Has the system's own voice speak a text into a sound file.
class ClipMaker {
public:
    virtual ~ClipMaker() = default;
    /// Calls `answer` later, in the caller's thread, with whether `file` was written: false where there is no voice for
    /// that language. A system that fails may not answer at all. One text at a time; a further call, or drop(), forgets
    /// the one before.
    virtual void speak(const std::string& language, const std::string& text, const std::string& file,
                       std::function<void(bool)> answer) = 0;
    virtual void drop() = 0;
};

} // namespace firstdew::ports
