#pragma once

#include <cstdlib>
#include <fstream>
#include <string_view>

namespace firstdew::testing {

/// How much a test tried, for the table in tests/bench/README.md (tests/figures.py): a line in the file that
/// FIRSTDEW_TALLY names, nothing where it names none.
inline void tally(std::string_view what, long long tried)
{
    if (const char* file = std::getenv("FIRSTDEW_TALLY"))
        std::ofstream(file, std::ios::app) << what << '\t' << tried << '\n';
}

} // namespace firstdew::testing
