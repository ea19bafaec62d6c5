#pragma once

#include "facts/Result.h"

#include <filesystem>
#include <string>
#include <string_view>

// Files that only their owner may read, written whole or not at all.
namespace firstdew::journal {

/// The name of a file kept beside another: "record.db" and ".copy" give "record.db.copy".
[[nodiscard]] std::filesystem::path beside(const std::filesystem::path& file, std::string_view suffix);

/// Makes an empty file of mode 0600 if there is none, whatever the umask. Refused: no permission, no such folder.
[[nodiscard]] facts::Result<facts::Done> createOwn(const std::filesystem::path& file);

/// Takes every right of group and others away; a file that is not there is left so.
void closeToOthers(const std::filesystem::path& file);

/// Forces the file's content and its folder's entry to disk.
[[nodiscard]] facts::Result<facts::Done> forceToDisk(const std::filesystem::path& file);

/// Puts `content` in place of `file` at once: after a crash there is the old file or the new one, never half of it.
[[nodiscard]] facts::Result<facts::Done> replaceFile(const std::filesystem::path& file, std::string_view content);

/// Overwrites a file with zeros and removes it; one that is not there is done already. What a flash drive keeps of
/// earlier blocks is out of reach.
[[nodiscard]] facts::Result<facts::Done> wipe(const std::filesystem::path& file);

/// The whole file, up to `most` bytes; larger is refused.
[[nodiscard]] facts::Result<std::string> readFile(const std::filesystem::path& file, std::size_t most);

} // namespace firstdew::journal
