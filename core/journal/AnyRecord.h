#pragma once

#include "facts/Fact.h"
#include "facts/Result.h"

#include <filesystem>
#include <string>
#include <vector>

namespace firstdew::journal {

using namespace facts;

/// The facts of a file, whatever it is: a store, a record as JSON, or a back-up that `passphrase` opens. The content
/// decides, not the name. A store is opened to read alone. Refused: what the readers of these three refuse, and a file
/// that is none of them (not-a-record).
[[nodiscard]] Result<std::vector<Fact>> readAnyRecord(const std::filesystem::path& file,
                                                      const std::string& passphrase = {});

/// Files in the largest folder of records.
inline constexpr std::size_t kMostRecordFiles = 10'000;

/// The files of a folder in the order of their names, without hidden ones and what lies beside a store. Refused: a
/// folder that cannot be read (folder-unreadable) or holds more than kMostRecordFiles (folder-too-full).
[[nodiscard]] Result<std::vector<std::filesystem::path>> recordFilesIn(const std::filesystem::path& folder);

} // namespace firstdew::journal
