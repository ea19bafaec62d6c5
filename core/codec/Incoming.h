#pragma once

#include "facts/Fact.h"
#include "facts/Result.h"

#include <string>
#include <vector>

// Facts read from a file, before anything is done with them.
namespace firstdew::codec {

using namespace facts;

/// A fact and the line (from 1) of the file it was read from.
struct Incoming {
    Fact fact;
    std::string file;
    int line = 0;
};

/// "FILE, line N, field F" as the input of an error.
[[nodiscard]] Error errorAt(const std::string& file, int line, const Error& cause);

} // namespace firstdew::codec
