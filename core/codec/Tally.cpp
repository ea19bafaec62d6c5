#include "codec/Tally.h"

#include <algorithm>
#include <set>
#include <string_view>

namespace firstdew::codec {

Tally tallyOf(std::span<const Fact> facts)
{
    Tally out;
    out.people = static_cast<int>(personsIn(facts).size());
    out.entries = static_cast<int>(facts.size());
    std::set<std::string_view> replaced;
    for (const Fact& f : facts)
        if (!f.corrects.empty())
            replaced.insert(f.corrects);
    for (const Fact& f : facts) {
        const bool checkIn = std::holds_alternative<CheckIn>(f.payload);
        const bool session = std::holds_alternative<Session>(f.payload);
        if ((!checkIn && !session) || replaced.contains(f.id))
            continue;
        ++(checkIn ? out.checkIns : out.sessions);
        out.last = out.last ? std::max(*out.last, f.happened.date) : f.happened.date;
    }
    return out;
}

} // namespace firstdew::codec
