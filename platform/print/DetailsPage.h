#pragma once

#include "print/PaperSheet.h"
#include "summary/Contents.h"

namespace firstdew::print {

/// The sites from `first` on, those that the page before had no room for. Returns how many it has room for.
std::size_t paintSitesPage(QPainter& painter, QSizeF size, const summary::Contents& contents, std::size_t first);

/// The page for whoever wants more: the site from `first` on, if any; health and prescription, charge and check-ins for
/// each site, every session.
void paintDetailsPage(QPainter& painter, QSizeF size, const summary::Contents& contents, std::size_t first);

} // namespace firstdew::print
