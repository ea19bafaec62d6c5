#pragma once

#include "print/PaperSheet.h"
#include "summary/Contents.h"

namespace firstdew::print {

/// The page that is read in ninety seconds: a verdict, what the reader is asked to do, skin and current, then each
/// site. Returns how many sites it had room for, from the first on.
std::size_t paintFrontPage(QPainter& painter, QSizeF size, const summary::Contents& contents);

} // namespace firstdew::print
