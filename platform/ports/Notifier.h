#pragma once

#include <string>
#include <vector>

namespace firstdew::ports
{

/// One reminder as the system shows it.
struct Notice {
    std::string key; ///< stable per cause and day; shown at most once
    std::string title;
    std::string text;
};

/// Shows what is due, and takes back what is done.
class Notifier
{
public:
    virtual ~Notifier() = default;
    /// Makes what is shown agree with `due`: new keys are shown, those gone are withdrawn, the others left alone.
    virtual void show(const std::vector<Notice>& due) = 0;
};

} // namespace firstdew::ports
