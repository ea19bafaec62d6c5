#pragma once

#include "facts/Result.h"

#include <QImage>
#include <QSizeF>
#include <QString>
#include <functional>
#include <vector>

class QPainter;

namespace firstdew::print {

enum class Paper { A4, Letter };

/// The paper that printers here have.
[[nodiscard]] Paper paperHere();

/// The area within the margins, in dots of kDpi.
[[nodiscard]] QSizeF sizeOf(Paper paper);

/// Paints one page on an area of that size, in dots of kDpi.
using Painting = std::function<void(QPainter&, QSizeF)>;

/// Writes pages as PDF/A-1b with embedded fonts, in the language of the default locale. The file appears complete or
/// not at all, and only its owner can read it. Returns the number of pages. Errors: the file cannot be written.
[[nodiscard]] facts::Result<int> writePages(const std::vector<Painting>& pages, const QString& title, Paper paper,
                                            const QString& file);

/// A page as a picture of that width in pixels, with its margins.
[[nodiscard]] QImage pictureOf(const Painting& page, Paper paper, int width);

} // namespace firstdew::print
