#include "facts/Fact.h"

#include <string_view>
#include <unordered_set>

namespace firstdew::facts {

std::vector<std::string> personsIn(std::span<const Fact> facts)
{
    std::vector<std::string> out;
    std::unordered_set<std::string_view> seen;
    for (const Fact& f : facts)
        if (seen.insert(f.person).second)
            out.push_back(f.person);
    return out;
}

} // namespace firstdew::facts
