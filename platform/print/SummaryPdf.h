#pragma once

#include "facts/Result.h"
#include "summary/Contents.h"

#include <QString>

namespace firstdew::print {

enum class Paper { A4, Letter };

/// Loads the program's own typefaces; once, before the first page. Needs a QGuiApplication.
void loadTypefaces();
/// The same for the letters of `text` that those lack: Arabic ones, read by few, and large.
void loadTypefacesFor(const QString& text);

/// Writes the prescriber's page as PDF/A-1b with its fonts inside: one page, and a second for the sessions where the
/// first has no room for all. The file is put in place whole and is its owner's alone. Returns the number of pages.
/// Refused: a place that cannot be written.
[[nodiscard]] facts::Result<int> writeSummary(const summary::Contents& contents, Paper paper, const QString& file);

} // namespace firstdew::print
