#pragma once

#include "print/PaperSheet.h"
#include "summary/Contents.h"

#include <span>

namespace firstdew::print {

/// Paints what there is to say of each site, one below the other: its words, and beside them its charts. If they do not
/// end above `foot`, the words are set closer, then the last sites are left out. Returns how many were painted.
std::size_t paintSites(Sheet& sheet, const summary::Contents& contents, std::span<const summary::SiteContents> sites,
                       double foot);

} // namespace firstdew::print
