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
    LocalTime at;    ///< when it is to be shown; never inside quiet hours
    LocalDate since; ///< day from which the cause stands
    std::string key; ///< stable for one cause and day, e.g. "check-in:hands:2026-03-05"
};

/// The day's reminders that are not done or dismissed. A notice that is up may stay while its cause is among them.
struct TodaysReminders {
    std::vector<Reminder> due;      ///< to be shown now: those of `standing` whose time has come, none in quiet hours
    std::vector<Reminder> standing; ///< whether or not their time has come, or is one of quiet
};

/// Both are empty while a session runs.
[[nodiscard]] TodaysReminders todaysReminders(const Diary& diary, MinuteOfDay now);

/// Reminders whose time has come by `now` of the diary's day and which are not done, dismissed or snoozed past it.
[[nodiscard]] std::vector<Reminder> dueReminders(const Diary& diary, MinuteOfDay now);

/// The next 28 days' reminders from `now` on, earliest first, at most 60.
[[nodiscard]] std::vector<Reminder> upcomingReminders(const Diary& diary, MinuteOfDay now);

} // namespace firstdew::situation

namespace firstdew::facts {
FIRSTDEW_WORDS(situation::ReminderKind, "check-in", "course-session", "top-up-due", "first-dew", "skin-check", "cells",
               "screening", "hdss", "prescriber-review", "back-up");
} // namespace firstdew::facts
