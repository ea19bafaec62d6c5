#include "facts/Fact.h"

#include <algorithm>
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

bool isBlank(std::string_view text)
{
    // UTF-8 of no-break space, the spaces and marks of U+2000 to U+200F, narrow no-break and ideographic space, and the
    // byte order mark.
    constexpr std::string_view kWide[] = {"\u00A0", "\u2000", "\u2001", "\u2002", "\u2003", "\u2004", "\u2005",
                                          "\u2006", "\u2007", "\u2008", "\u2009", "\u200A", "\u200B", "\u200C",
                                          "\u200D", "\u200E", "\u200F", "\u202F", "\u3000", "\uFEFF"};
    while (!text.empty()) {
        const auto wide = std::ranges::find_if(kWide, [&](std::string_view w) { return text.starts_with(w); });
        if (wide != std::end(kWide))
            text.remove_prefix(wide->size());
        else if (std::string_view(" \t\r\n\v\f").find(text.front()) != std::string_view::npos)
            text.remove_prefix(1);
        else
            return false;
    }
    return true;
}

} // namespace firstdew::facts
