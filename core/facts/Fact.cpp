#include "facts/Fact.h"

#include <algorithm>

namespace firstdew::facts {

std::vector<std::string> personsIn(std::span<const Fact> facts)
{
    std::vector<std::string> out;
    for (const Fact& f : facts)
        if (std::find(out.begin(), out.end(), f.person) == out.end())
            out.push_back(f.person);
    return out;
}

} // namespace firstdew::facts
