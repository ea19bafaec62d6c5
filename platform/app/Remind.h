#pragma once

#include "Options.h"

#include <QCoreApplication>

namespace firstdew::app {

/// The program with the app closed: shows what is due, stays while a notice is up to take its answer, and ends; with
/// `watch` it stays and looks each minute. Ends at once where the app or another of its kind already looks.
int remind(const Options& options, QCoreApplication& program);

/// The name on the session bus of whoever looks after the reminders of that record: one at a time.
[[nodiscard]] QString remindersName(const QString& record);

} // namespace firstdew::app
