#pragma once

#include "facts/Result.h"
#include "print/PdfFile.h"
#include "summary/Contents.h"

#include <QImage>
#include <QString>

namespace firstdew::print {

/// Loads the typefaces of the program. Call it once, before the first page. Needs a QGuiApplication.
void loadTypefaces();
/// Loads the Arabic typeface if `text` needs it. It is separate because it is large and few people need it.
void loadTypefacesFor(const QString& text);

/// Writes the prescriber's page as PDF/A-1b with embedded fonts, and a second one with details and the sessions.
/// What the first has no room for goes to the second, or to one between them. The file appears complete or not at all,
/// and only its owner can read it. Returns the number of pages. Errors: the file cannot be written.
[[nodiscard]] facts::Result<int> writeSummary(const summary::Contents& contents, Paper paper, const QString& file);

/// The first page as a picture of that width in pixels, with its margins.
[[nodiscard]] QImage previewOf(const summary::Contents& contents, Paper paper, int width);

} // namespace firstdew::print
