#pragma once

#include "facts/Result.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <filesystem>
#include <string_view>
#include <vector>

// Files kept beside a store. They belong to it by their exact names: "<store>.<reason>.copy" with a reason of ours, so
// that a store called "anna" has no part in the copies of one called "anna.db".
namespace firstdew::journal {

/// Keeps the store as it stands in `<file>.<reason>.copy` beside it, readable by the owner alone, and on disk
/// before this returns. An earlier copy for the same reason is replaced only once the new one is whole, and is then
/// overwritten. Reasons: before-import, before-restore, before-version-N.
[[nodiscard]] facts::Result<std::filesystem::path> keepCopy(SQLite::Database& db, const std::filesystem::path& file,
                                                            std::string_view reason);

/// Why a copy called `name` was kept beside a store called `store`: "before-import", "damaged-2"; empty: it is none.
[[nodiscard]] std::string_view reasonOf(std::string_view name, std::string_view store);

/// The copies kept beside a store, by name, with what was left of copies that broke off. Refused: a folder that cannot
/// be read. There being no folder is no error.
[[nodiscard]] facts::Result<std::vector<std::filesystem::path>> copiesOf(const std::filesystem::path& file);

/// The files that SQLite keeps beside a store while it is open, and what a desktop's notices remember of it.
inline constexpr std::string_view kCompanions[] = {"-wal", "-shm", "-journal", ".notices"};

} // namespace firstdew::journal
