#pragma once

#include "codec/Incoming.h"
#include "journal/Journal.h"
#include "journal/People.h"

namespace firstdew::journal {

struct ImportPlan {
    std::vector<Fact> fresh; ///< to be added, in the order of the file
    int known = 0;           ///< recorded already, or twice in the file
};

/// What of `incoming` is new. A fact of a known id and the same content is a duplicate, as is one without an id whose
/// person, kind, moment and content are recorded. Texts are cleaned (codec/CleanText), persons assigned (People.h).
/// Refused: a known id with another content, corrections that lead round in a circle, what assignPersons refuses.
[[nodiscard]] Result<ImportPlan> planImport(const std::vector<Fact>& recorded, std::vector<codec::Incoming> incoming,
                                            Doubtful doubtful = Doubtful::Refuse);

struct Imported {
    std::size_t added = 0;
    int known = 0;
    std::filesystem::path kept; ///< the store as it stood before; empty where it held nothing or nothing was added
};

/// Adds what is new of `incoming` (see planImport for a dry run), all or nothing, after keeping a copy of the store
/// beside it.
[[nodiscard]] Result<Imported> importInto(Journal& journal, std::vector<codec::Incoming> incoming,
                                          Doubtful doubtful = Doubtful::Refuse);

/// Adds what was planned before there was a store. Refused: a store that holds facts by now (store-busy).
[[nodiscard]] Result<Imported> importPlanned(Journal& journal, ImportPlan plan);

} // namespace firstdew::journal
