#pragma once

#include "facts/Result.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <filesystem>
#include <span>

namespace firstdew::journal {

/// Marks a SQLite file as ours (`PRAGMA application_id`): "fdew".
inline constexpr int kApplicationId = 0x66646577;

/// The step from version `to` - 1 to version `to`. Steps are written once and never edited afterwards.
struct Migration {
    int to = 0;
    const char* sql = "";
    /// After `sql`, within the same transaction, which is undone where this refuses.
    facts::Result<facts::Done> (*rewrite)(SQLite::Database& db, const std::filesystem::path& file) = nullptr;
};

/// Every step from an empty file to kSchemaVersion, in order.
[[nodiscard]] std::span<const Migration> migrations();

/// Whether `db` may be touched at all: ours, or empty. Refused: a SQLite file that is not ours, a version above
/// `newest`.
[[nodiscard]] facts::Result<facts::Done> recognise(SQLite::Database& db, const std::filesystem::path& file, int newest);

/// Brings `db` up to the last of `steps`, each step all or nothing. Before the first step of a store that
/// already holds something, a copy is kept beside it (see Copies). Refused: whatever `recognise` refuses.
[[nodiscard]] facts::Result<facts::Done> bringUpToDate(SQLite::Database& db, const std::filesystem::path& file,
                                                       std::span<const Migration> steps);

} // namespace firstdew::journal
