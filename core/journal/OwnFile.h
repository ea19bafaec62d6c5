#pragma once

#include "facts/Result.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

// Files that only their owner may read, written whole or not at all.
namespace firstdew::journal {

/// The name of a file kept beside another: "record.db" and ".copy" give "record.db.copy".
[[nodiscard]] std::filesystem::path beside(const std::filesystem::path& file, std::string_view suffix);

/// The file that a path leads to: where its last part is a symbolic link, what the link names, else the path itself.
/// Files kept beside a store lie beside the file, not beside the link.
[[nodiscard]] facts::Result<std::filesystem::path> behindLinks(const std::filesystem::path& file);

/// What lies at a path. Refused: a look that fails for another reason than that nothing is there. A failed look is no
/// answer.
enum class Lies { Nothing, EmptyFile, File, Folder, Other };
[[nodiscard]] facts::Result<Lies> whatLiesAt(const std::filesystem::path& file);

/// A file as the system tells it from others, whatever its names.
struct Identity {
    unsigned long long device = 0;
    unsigned long long inode = 0;
    bool operator==(const Identity&) const = default;
};
/// Nothing where there is no such file or it cannot be looked at.
[[nodiscard]] std::optional<Identity> identityOf(const std::filesystem::path& file);

/// The first of "name.ext", "name-2.ext", "name-3.ext" … that is not there, so that nothing is replaced.
[[nodiscard]] facts::Result<std::filesystem::path> freeName(const std::filesystem::path& wanted);

/// Makes an empty file of mode 0600 if there is none, whatever the umask. Refused: no permission, no such folder.
[[nodiscard]] facts::Result<facts::Done> createOwn(const std::filesystem::path& file);

/// Takes every right of group and others away; a file that is not there is left so.
void closeToOthers(const std::filesystem::path& file);

/// Forces the file's content and its folder's entry to disk.
[[nodiscard]] facts::Result<facts::Done> forceToDisk(const std::filesystem::path& file);

/// Puts `content` in place of `file` at once: after a crash there is the old file or the new one, never half of it.
/// Refused: what is there and no regular file.
[[nodiscard]] facts::Result<facts::Done> replaceFile(const std::filesystem::path& file, std::string_view content);
/// The same for a file that is not there yet. Refused: one that is, whenever it came (file-exists).
[[nodiscard]] facts::Result<facts::Done> writeNewFile(const std::filesystem::path& file, std::string_view content);

/// Makes a folder of mode 0700, whatever the umask. Refused: anything of that name.
[[nodiscard]] facts::Result<facts::Done> makeOwnFolder(const std::filesystem::path& folder);

/// Makes such a folder if there is none, and wipes the files in one that is there.
[[nodiscard]] facts::Result<facts::Done> emptyOwnFolder(const std::filesystem::path& folder);

/// Moves `from` to `to`; what `to` held is overwritten with zeros before it goes.
[[nodiscard]] facts::Result<facts::Done> moveWiping(const std::filesystem::path& from, const std::filesystem::path& to);

/// Overwrites the whole length of a file with zeros, forced to disk; a file that is not there is done already.
[[nodiscard]] facts::Result<facts::Done> overwrite(const std::filesystem::path& file);

/// Overwrites a file with zeros and removes it; one that is not there is done already. A link is removed and what it
/// names left alone. What a flash drive keeps of earlier blocks is out of reach.
[[nodiscard]] facts::Result<facts::Done> wipe(const std::filesystem::path& file);

/// The whole file, up to `most` bytes; larger is refused.
[[nodiscard]] facts::Result<std::string> readFile(const std::filesystem::path& file, std::size_t most);

} // namespace firstdew::journal
