#pragma once

#include "print/PaperSheet.h"
#include "summary/Contents.h"

namespace firstdew::print {

/// The page that is read in ninety seconds: a verdict, what the reader is asked to do, skin and current, then each
/// site.
void paintFrontPage(QPainter& painter, QSizeF size, const summary::Contents& contents);

} // namespace firstdew::print
