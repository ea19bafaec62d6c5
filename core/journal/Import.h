#pragma once

#include "journal/Incoming.h"
#include "journal/Journal.h"

namespace firstdew::journal {

struct Imported {
    std::size_t added = 0;
    int known = 0;
    std::filesystem::path kept; ///< the store as it stood before; empty where it held nothing or nothing was added
};

/// Adds what is new of `incoming` (see planImport for a dry run), all or nothing, after keeping a copy of the store
/// beside it.
[[nodiscard]] Result<Imported> importInto(Journal& journal, const std::vector<Incoming>& incoming);

} // namespace firstdew::journal
