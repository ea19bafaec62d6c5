#pragma once

#include "facts/LocalDate.h"
#include "facts/Result.h"

#include <QSize>
#include <QString>
#include <QStringList>
#include <optional>

namespace firstdew::app {

/// What the command line asks of the app.
struct Options {
    QString store;
    QString page = QStringLiteral("today");
    QSize size{390, 844};
    QString theme;
    QString language;
    double textScale = 0; ///< 0: as the person chose
    QString screenshot;
    bool selfTest = false;
    QString pictures;      ///< folder for a picture of every page of the self-test
    bool remind = false;   ///< show what is due and end, without a window
    bool watch = false;    ///< with remind: stay and look each minute
    bool ownStore = false; ///< the record of this account, none was named
    std::optional<facts::LocalTime> testNow;
    double testSpeed = 1;
};

/// Reads the arguments after the program's name. The test options are refused unless `testing`.
[[nodiscard]] facts::Result<Options> optionsFrom(const QStringList& arguments, bool testing);
/// Whether the test options may be used (FIRSTDEW_TEST=1).
[[nodiscard]] bool testing();
/// The same, or nothing after saying on standard error what is wrong with them.
[[nodiscard]] std::optional<Options> optionsOrSay(const QStringList& arguments);

} // namespace firstdew::app
