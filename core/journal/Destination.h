#pragma once

#include "facts/Result.h"

#include <filesystem>

namespace firstdew::journal {

/// Whether an export or another file made from `store` (may be empty) may be written to `out`. Refused: a store of any
/// name, also by a link, and whatever belongs to one, there or to come; what is no regular file; and, unless `replace`,
/// a file that is there.
[[nodiscard]] facts::Result<facts::Done> mayWriteTo(const std::filesystem::path& out,
                                                    const std::filesystem::path& store, bool replace);

/// The same for a folder of files: refused where `out` is a file, a store's name or a companion's.
[[nodiscard]] facts::Result<facts::Done> mayFillFolder(const std::filesystem::path& out,
                                                       const std::filesystem::path& store);

} // namespace firstdew::journal
