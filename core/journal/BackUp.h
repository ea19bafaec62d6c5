#pragma once

#include "journal/Journal.h"
#include "journal/OpenPgp.h"

namespace firstdew::journal {

/// The whole record (codec/RecordJson), encrypted. Refused: a passphrase of fewer than kLeastPassphrase characters, and
/// a record too large to be opened again (codec::kMostRecordBytes).
[[nodiscard]] Result<std::string> backUp(const Journal& journal, const std::string& passphrase,
                                         unsigned rounds = kPassphraseRounds);

/// The facts of a back-up; `file` names it in errors. Refused: what `unseal` and `codec::readRecordJson` refuse.
[[nodiscard]] Result<std::vector<Fact>> openBackUp(const std::string& file, std::string_view sealed,
                                                   const std::string& passphrase);

struct Restored {
    std::size_t facts = 0;
    std::filesystem::path kept; ///< the record as it stood before, or empty where there was none
};

/// Where a new back-up goes: `wanted`, or the same with a number where that name is taken. A back-up made before may
/// hold more than the store does now, so that none is ever replaced.
[[nodiscard]] Result<std::filesystem::path> backUpName(const std::filesystem::path& wanted);

/// Puts `facts` in the place of what the store holds, at once or not at all. A whole store is kept as a copy beside it
/// first; a damaged one is set aside as it is. Refused: a file that is no store.
[[nodiscard]] Result<Restored> restore(const std::filesystem::path& store, const std::vector<Fact>& facts);

} // namespace firstdew::journal
