#pragma once

#include "facts/Payloads.h"
#include "print/PdfFile.h"

#include <optional>
#include <string>

namespace firstdew::print {

/// A care sheet as it is handed over on paper.
struct HandoutContents {
    facts::CareSheet sheet;
    facts::AgeGroup age = facts::AgeGroup::Child;
    std::string name;                      ///< whom it is for; empty: a line to write on
    std::optional<facts::LocalDate> start; ///< day 1 of the course; without it the days are counted
    bool operator==(const HandoutContents&) const = default;
};

/// One page: limits, days to tick, drawings of a session, when to stop, whom to call, and the sheet as a QR code. Long
/// texts are set smaller, so that everything stays on it.
void paintHandout(QPainter& painter, QSizeF size, const HandoutContents& contents);

/// Writes that page as a PDF. Returns the number of pages. Errors: the file cannot be written.
[[nodiscard]] facts::Result<int> writeHandout(const HandoutContents& contents, Paper paper, const QString& file);

/// The page as a picture of that width in pixels, with its margins.
[[nodiscard]] QImage previewOf(const HandoutContents& contents, Paper paper, int width);

} // namespace firstdew::print
