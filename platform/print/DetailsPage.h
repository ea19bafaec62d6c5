#pragma once

#include "print/PaperSheet.h"
#include "summary/Contents.h"

namespace firstdew::print {

/// The page for whoever wants more: health and prescription, charge and check-ins for each site, every session.
void paintDetailsPage(QPainter& painter, QSizeF size, const summary::Contents& contents);

} // namespace firstdew::print
