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

} // namespace firstdew::journal
