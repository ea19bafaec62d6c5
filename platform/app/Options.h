#pragma once

#include "facts/LocalDate.h"
#include "facts/Result.h"

#include <QMarginsF>
#include <QSize>
#include <QString>
#include <QStringList>
#include <optional>

namespace firstdew::app {

/// The options of the command line.
struct Options {
    QString store;
    QString page = QStringLiteral("today");
    bool pageAsked = false;
    QSize size{390, 844};
    QString theme;
    QString language;
    double textScale = 0; ///< 0: as chosen in the app
    QString screenshot;
    bool selfTest = false;
    QString pictures;      ///< folder for the pictures of the self-test
    bool remind = false;   ///< show due reminders and end, without a window
    bool watch = false;    ///< with remind: stay and check each minute
    bool ownStore = false; ///< no record was named: that of this account
    std::optional<facts::LocalTime> testNow;
    double testSpeed = 1;
    std::optional<QMarginsF> testInsets; ///< kept free at the sides of the window, as a phone's notch and bars want it
    bool testFirstFrame = false;         ///< print when the first frame with the check-in was shown
};

/// Reads the arguments after the program's name. The test options are refused unless `testing`.
[[nodiscard]] facts::Result<Options> optionsFrom(const QStringList& arguments, bool testing);
/// Whether the test options may be used (FIRSTDEW_TEST=1).
[[nodiscard]] bool testing();
/// The same; prints an error and returns nullopt.
[[nodiscard]] std::optional<Options> optionsOrSay(const QStringList& arguments);

} // namespace firstdew::app
