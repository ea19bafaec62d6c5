#pragma once

#include "facts/Result.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <filesystem>
#include <string_view>
#include <vector>

namespace firstdew::journal {

/// Keeps the store as it stands in `<file>.<reason>.copy` beside it, readable by the owner alone, and on disk
/// before this returns. An earlier copy for the same reason is replaced only once the new one is whole.
[[nodiscard]] facts::Result<std::filesystem::path> keepCopy(SQLite::Database& db, const std::filesystem::path& file,
                                                            std::string_view reason);

/// The copies kept beside a store, by name.
[[nodiscard]] std::vector<std::filesystem::path> copiesOf(const std::filesystem::path& file);

} // namespace firstdew::journal
