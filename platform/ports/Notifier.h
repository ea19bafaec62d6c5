#pragma once

#include "facts/LocalDate.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace firstdew::ports {

/// An answer that a notice offers as a button.
struct NoticeAction {
    std::string id;
    std::string label;
};

/// One reminder as the system shows it.
struct Notice {
    std::string key; ///< stable for each cause and day; shown at most once
    std::string title;
    std::string text;
    std::vector<NoticeAction> actions = {};
    /// When it became due. A reminder that was put off becomes due again later, and is then shown again.
    facts::LocalTime since = {};
    /// It is shown long after it became due; several late ones are shown as one notice.
    bool late = false;
};

/// A reminder for later, which the system itself shows at its time, also with the app closed.
struct PlannedNotice {
    Notice notice;
    facts::LocalTime at;
};

/// An answer that the person gave on a notice while the app was closed.
struct NoticeAnswer {
    std::string key;
    std::string answer; ///< the token of a level, or later (put off by an hour)
    facts::LocalTime at;
};

/// A site that the check-in asks about.
struct AskedSite {
    std::string site; ///< its word in keys
    std::string name;
    std::optional<facts::LocalDate> answered = {}; ///< the day of the report that answers it, if that is today
    bool operator==(const AskedSite&) const = default;
};

/// The keys of all causes that hold today, with the times at which they are to be shown.
using Standing = std::map<std::string, facts::LocalTime>;

/// Shows reminders that are due and withdraws those that are done.
class Notifier {
public:
    virtual ~Notifier() = default;
    /// Makes the visible notices agree with `due`: shows new keys, withdraws those that are gone, leaves the others
    /// alone. A visible notice also stays while its cause is among `standing`, for example in quiet hours or after the
    /// clock was set back. Notices shown by an earlier run of the program, even one that crashed, count as shown.
    virtual void show(const std::vector<Notice>& due, const Standing& standing) = 0;

    /// The sites that a check-in asks about, for a system that asks on its home screen. Its answers come with those of
    /// notices. It holds from the next show() on.
    virtual void ask(std::vector<AskedSite>) {}

    /// Whether the system takes reminders ahead of time; if not, plan() does nothing.
    [[nodiscard]] virtual bool plansAhead() const { return false; }
    /// Plans all reminders still to come. Record answers() first: a reminder that was put off would come at its old
    /// time.
    virtual void plan(std::vector<PlannedNotice>) {}
    /// Answers not dropped yet, oldest first. After recording them, call dropAnswers() with their number.
    [[nodiscard]] virtual std::vector<NoticeAnswer> answers() { return {}; }
    virtual void dropAnswers(std::size_t) {}
};

} // namespace firstdew::ports
