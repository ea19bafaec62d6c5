#pragma once

#include "facts/LocalDate.h"

#include <cstddef>
#include <map>
#include <string>
#include <vector>

namespace firstdew::ports {

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
    /// Nobody looked when its time came: several such are one notice, not ten.
    bool late = false;
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

/// The keys of all causes that stand today, with the times at which they are to be shown.
using Standing = std::map<std::string, facts::LocalTime>;

/// Shows what is due, and takes back what is done.
class Notifier {
public:
    virtual ~Notifier() = default;
    /// Makes what is shown agree with `due`: new keys are shown, those gone are withdrawn, the others left alone. One
    /// that is up also stays while its cause is among `standing`: in hours that have become quiet, after a clock was
    /// set back. Holds over restarts and after a crash: what an earlier run of the program showed counts as shown.
    virtual void show(const std::vector<Notice>& due, const Standing& standing) = 0;

    /// Whether the system takes reminders ahead of time; where it does not, plan() does nothing.
    [[nodiscard]] virtual bool plansAhead() const { return false; }
    /// All reminders still to come. Take answers() first: one that was put off would come at its old time again.
    virtual void plan(std::vector<PlannedNotice>) {}
    /// Answers not taken yet, oldest first. Once they are in the record: taken(how many).
    [[nodiscard]] virtual std::vector<NoticeAnswer> answers() { return {}; }
    virtual void taken(std::size_t) {}
};

} // namespace firstdew::ports
