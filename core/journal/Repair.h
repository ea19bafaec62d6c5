#pragma once

#include "journal/Journal.h"

namespace firstdew::journal {

struct Repaired {
    std::size_t facts = 0;       ///< in the store now
    std::size_t fromCopy = 0;    ///< of them out of the last whole copy alone
    std::filesystem::path aside; ///< where the damaged file lies now; empty where nothing was wrong
};

/// Makes a damaged store usable again: what can still be read of it, each fact by its own check sum, together with the
/// last whole copy kept beside it, goes into a new file; the damaged one is set aside as it is. Facts that are in
/// neither are lost: a back-up may still hold them. Refused, with nothing changed: a store that was never ours or is
/// newer, and one of which neither the file nor a copy gives anything.
[[nodiscard]] Result<Repaired> repair(const std::filesystem::path& file);

} // namespace firstdew::journal
