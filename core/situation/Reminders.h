#pragma once

#include "situation/Assess.h"

#include <string>
#include <vector>

namespace firstdew::situation {

enum class ReminderKind {
    CheckIn,
    CourseSession,
    TopUpDue,
    FirstDew,
    SkinCheck,
    Cells,
    Screening,
    HdssDue,
    PrescriberReview,
    BackUp
};

struct Reminder {
    ReminderKind kind{};
    std::optional<DiarySite> site;
    LocalTime at;    ///< when to show it; never in quiet hours
    LocalDate since; ///< day on which the cause began
    std::string key; ///< the same for one cause and day, e.g. "check-in:hands:2026-03-05"
};

/// The reminders of the day that are neither done nor dismissed. A visible notice may stay while it is in `standing`.
struct TodaysReminders {
    std::vector<Reminder> due;      ///< those of `standing` to show now: their time has come; empty in quiet hours
    std::vector<Reminder> standing; ///< all of the day, whatever the time
};

/// Both are empty while a session runs.
[[nodiscard]] TodaysReminders todaysReminders(const Diary& diary, MinuteOfDay now);

/// The reminders to show at `now` on the diary's day: TodaysReminders::due.
[[nodiscard]] std::vector<Reminder> dueReminders(const Diary& diary, MinuteOfDay now);

/// The reminders after `now` within the next 28 days, earliest first, at most 60: of more, the latest check-ins go
/// first.
[[nodiscard]] std::vector<Reminder> upcomingReminders(const Diary& diary, MinuteOfDay now);

} // namespace firstdew::situation

namespace firstdew::facts {
FIRSTDEW_TOKENS(situation::ReminderKind, "check-in", "course-session", "top-up-due", "first-dew", "skin-check", "cells",
                "screening", "hdss", "prescriber-review", "back-up");
} // namespace firstdew::facts
