#pragma once

#include "facts/LocalDate.h"

#include <cstddef>
#include <string>
#include <vector>

namespace firstdew::ports
{

/// What can be answered right on a notice.
struct NoticeAction {
    std::string id;
    std::string label;
};

/// One reminder as the system shows it.
struct Notice {
    std::string key; ///< stable per cause and day; shown at most once
    std::string title;
    std::string text;
    std::vector<NoticeAction> actions = {};
    /// When it became due; one that was put off comes back later than that, and only then is shown again.
    facts::LocalTime since = {};
};

/// A reminder for later, which the system itself shows at its time with the app closed.
struct PlannedNotice {
    Notice notice;
    facts::LocalTime at;
};

/// What the person answered on a notice while the app was closed.
struct NoticeAnswer {
    std::string key;
    std::string answer; ///< dry, clammy, or later (put off by an hour)
    facts::LocalTime at;
};

/// Shows what is due, and takes back what is done.
class Notifier
{
public:
    virtual ~Notifier() = default;
    /// Makes what is shown agree with `due`: new keys are shown, those gone are withdrawn, the others left alone.
    /// Holds over restarts and after a crash: what an earlier run of the program showed counts as shown.
    virtual void show(const std::vector<Notice>& due) = 0;

    /// Whether the system takes reminders ahead of time; where it does not, plan() does nothing.
    [[nodiscard]] virtual bool plansAhead() const { return false; }
    /// All reminders still to come. Take answers() first: one that was put off would come at its old time again.
    virtual void plan(std::vector<PlannedNotice>) {}
    /// Answers not taken yet, oldest first. Once they are in the record: taken(how many).
    [[nodiscard]] virtual std::vector<NoticeAnswer> answers() { return {}; }
    virtual void taken(std::size_t) {}
};

} // namespace firstdew::ports
