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

/// "Both hands: a course of 7 sessions begins today.", and whether another one ends by that.
[[nodiscard]] QString courseBegins(const protocol::PrescribedCourse& next);

} // namespace firstdew::words
