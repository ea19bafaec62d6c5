#pragma once

#include "facts/Fact.h"
#include "facts/Result.h"

#include <string>
#include <vector>

// Facts read from a file, before anything is done with them.
namespace firstdew::journal {

using namespace facts;

/// A fact and the line (from 1) of the file it was read from.
struct Incoming {
    Fact fact;
    std::string file;
    int line = 0;
};

/// "FILE, line N, field F" as the input of an error.
[[nodiscard]] Error errorAt(const std::string& file, int line, const Error& cause);

struct ImportPlan {
    std::vector<Fact> fresh; ///< to be added, in the order of the file
    int known = 0;           ///< recorded already, or twice in the file
};

/// What of `incoming` is new. A fact of a known id and the same content is a duplicate, as is one without an id whose
/// person, kind, moment and content are recorded. Refused: a known id with another content.
[[nodiscard]] Result<ImportPlan> planImport(const std::vector<Fact>& recorded, const std::vector<Incoming>& incoming);

} // namespace firstdew::journal
