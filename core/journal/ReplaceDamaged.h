#pragma once

#include "journal/Journal.h"

namespace firstdew::journal {

/// Puts a new store with `facts` in the place of a damaged one, which is kept with its log in `<file>.damaged.copy`
/// (with a number where that is taken), so that nothing is lost that somebody may still read from it. Whenever it
/// breaks off, the one store or the other stands there whole. Returns where the damaged one is kept.
[[nodiscard]] Result<std::filesystem::path> replaceDamaged(const std::filesystem::path& file,
                                                           const std::vector<Fact>& facts);

} // namespace firstdew::journal
