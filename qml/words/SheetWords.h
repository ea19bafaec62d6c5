#pragma once

#include "protocol/SheetCourse.h"
#include "protocol/SheetEffect.h"

#include <QString>
#include <QStringList>

// A care sheet in words.
namespace firstdew::words {

/// What the sheet sets, a line a field: "Limit, direct: 12 mA". Who gave it, when and for which sites is left out.
[[nodiscard]] QStringList sheetLines(const facts::CareSheet& sheet);
/// "Limit, direct: 12 mA (now 10 mA)"; without the bracket where there is no sheet yet.
[[nodiscard]] QString sheetChange(protocol::SheetField field, const std::optional<facts::CareSheet>& before,
                                  const facts::CareSheet& after);

/// What is wrong with that field of a sheet for somebody of that age, and what to do; empty where nothing is.
[[nodiscard]] QString sheetProblem(protocol::SheetField field, const facts::CareSheet& sheet, facts::AgeGroup age);
/// "As usual: 20 mA", for a field that a sheet leaves open.
[[nodiscard]] QString asUsual(const QString& value);
[[nodiscard]] QString leftOpen();
[[nodiscard]] QString seconds(facts::Seconds length);
[[nodiscard]] QString squareCentimetres(facts::SquareCentimetres area);
/// "Both hands: 2 times 10 minutes"
[[nodiscard]] QString phasesOf(facts::Site site);

/// "Both hands: a course of 7 sessions begins today.", and whether another one ends by that.
[[nodiscard]] QString courseBegins(const protocol::PrescribedCourse& next);

} // namespace firstdew::words
