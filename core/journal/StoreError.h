#pragma once

#include "facts/Result.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <filesystem>

namespace firstdew::journal {

/// What SQLite said, as an error that names the file and the remedy. Codes: store-missing, store-foreign,
/// store-newer, store-damaged, store-unreadable, store-read-only, store-replaced, store-busy, disk-full, id-known,
/// store-failed.
[[nodiscard]] facts::Error storeError(const std::filesystem::path& file, const SQLite::Exception& e);

[[nodiscard]] facts::Error missingStore(const std::filesystem::path& file);
[[nodiscard]] facts::Error foreignFile(const std::filesystem::path& file);
[[nodiscard]] facts::Error damagedStore(const std::filesystem::path& file, const std::string& what);
[[nodiscard]] facts::Error unreadableStore(const std::filesystem::path& file, const std::string& why);
[[nodiscard]] facts::Error readOnlyStore(const std::filesystem::path& file);
/// The file was deleted or replaced while it was open: what is written to it now would be lost.
[[nodiscard]] facts::Error replacedStore(const std::filesystem::path& file);
[[nodiscard]] facts::Error busyStore(const std::filesystem::path& file);
[[nodiscard]] facts::Error newerStore(const std::filesystem::path& file, int version);
/// The store can be read, but a fact in it is of a kind that this version does not know: `what` it says.
[[nodiscard]] facts::Error newerFact(const std::filesystem::path& file, const facts::Error& what);

} // namespace firstdew::journal
