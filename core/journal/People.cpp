#include "journal/People.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>
#include <sqlite3.h>
#include <unordered_map>

namespace firstdew::journal {

namespace {

bool isDrawn(std::string_view id)
{
    return id.size() == 32 && id.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

/// A name as it is compared: without white space around it, capitals of the English alphabet made small.
std::string plainName(std::string_view name)
{
    const auto from = name.find_first_not_of(" \t\r\n");
    if (from == std::string_view::npos)
        return {};
    std::string out(name.substr(from, name.find_last_not_of(" \t\r\n") - from + 1));
    for (char& c : out)
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
    return out;
}

bool differ(const Person& a, const Person& b)
{
    const std::string first = plainName(a.name);
    const std::string second = plainName(b.name);
    return (!first.empty() && !second.empty() && first != second) || (a.birth && b.birth && *a.birth != *b.birth);
}

/// Name and birth date are known of both and the same.
bool surelySame(const Person& a, const Person& b)
{
    return a.birth && a.birth == b.birth && !plainName(a.name).empty() && plainName(a.name) == plainName(b.name);
}

/// What a record says of who somebody is.
struct Known {
    std::vector<Person> said;
};

/// No account of the one agrees with any of the other. A name that was corrected later still agrees by the account
/// before.
bool differ(const Known& a, const Known& b)
{
    if (a.said.empty() || b.said.empty())
        return false;
    return std::ranges::all_of(a.said, [&](const Person& x) {
        return std::ranges::all_of(b.said, [&](const Person& y) { return differ(x, y); });
    });
}

bool surelySame(const Known& a, const Known& b)
{
    return std::ranges::any_of(a.said, [&](const Person& x) {
        return std::ranges::any_of(b.said, [&](const Person& y) { return surelySame(x, y); });
    });
}

using People = std::map<std::string, Known, std::less<>>;

void note(People& people, const Fact& fact)
{
    auto& known = people[fact.person];
    if (const auto* who = std::get_if<Person>(&fact.payload))
        known.said.push_back(*who);
}

class Assigning {
public:
    Assigning(const std::vector<Fact>& recorded, const std::vector<codec::Incoming>& incoming, Doubtful doubtful)
        : m_doubtful(doubtful)
    {
        for (const Fact& fact : recorded) {
            note(m_recorded, fact);
            m_owner.emplace(fact.id, fact.person);
        }
        for (const auto& item : incoming) {
            note(m_coming, item.fact);
            m_first.emplace(item.fact.person, &item);
            if (const auto owner = m_owner.find(item.fact.id); !item.fact.id.empty() && owner != m_owner.end())
                m_shares[item.fact.person].insert(owner->second);
        }
    }

    /// The person under whom the facts of `id` belong.
    Result<std::string> personFor(const std::string& id)
    {
        auto target = isEarlierId(id) ? forEarlier(id) : Result<std::string>(id);
        if (!target)
            return target;
        const auto present = m_recorded.find(*target);
        if (present == m_recorded.end() || !differ(m_coming.at(id), present->second))
            return target;
        if (m_doubtful == Doubtful::AsNewPerson)
            return drawId();
        return refusal(id, "person-differs",
                       "has another name or birth date than the person recorded under this id; nothing was added. "
                       "If this is somebody else, import them as a new person");
    }

private:
    Doubtful m_doubtful;
    People m_recorded;
    People m_coming;
    std::unordered_map<std::string_view, std::string_view> m_owner; ///< of each fact recorded
    std::map<std::string, const codec::Incoming*, std::less<>> m_first;
    std::map<std::string, std::set<std::string_view>, std::less<>> m_shares;

    Result<std::string> forEarlier(const std::string& id)
    {
        std::set<std::string> who;
        if (const auto shares = m_shares.find(id); shares != m_shares.end())
            who.insert(shares->second.begin(), shares->second.end());
        else
            for (const auto& [person, known] : m_recorded)
                if (surelySame(known, m_coming.at(id)))
                    who.insert(person);
        if (who.size() == 1)
            return *who.begin();
        if (m_recorded.empty() || (who.empty() && m_doubtful == Doubtful::AsNewPerson)) {
            const std::string& first = m_first.at(id)->fact.id;
            return isDrawn(first) && !m_recorded.contains(first) ? first : drawId();
        }
        return refusal(id, "person-unsure",
                       "is what earlier versions called the first person of every store, and nothing in the file says "
                       "that this is the person recorded here; nothing was added. If this is somebody else, import "
                       "them as a new person");
    }

    [[nodiscard]] Error refusal(const std::string& id, const char* code, const char* why) const
    {
        const codec::Incoming& first = *m_first.at(id);
        return codec::errorAt(first.file, first.line, {code, "person " + id, why});
    }
};

} // namespace

std::string drawId()
{
    unsigned char bytes[16];
    ::sqlite3_randomness(sizeof bytes, bytes);
    std::string out;
    for (const unsigned char byte : bytes)
        out += fmt::format("{:02x}", byte);
    return out;
}

bool isEarlierId(std::string_view person)
{
    return person.size() > 1 && person.front() == 'p' &&
           person.substr(1).find_first_not_of("0123456789") == std::string_view::npos;
}

void renameEarlierPersons(std::vector<Fact>& facts)
{
    std::map<std::string, std::string, std::less<>> names;
    for (Fact& fact : facts) {
        if (!isEarlierId(fact.person))
            continue;
        auto [known, fresh] = names.try_emplace(fact.person);
        if (fresh)
            known->second = isDrawn(fact.id) ? fact.id : drawId();
        fact.person = known->second;
    }
}

Result<std::vector<codec::Incoming>> assignPersons(const std::vector<Fact>& recorded,
                                                   std::vector<codec::Incoming> incoming, Doubtful doubtful)
{
    std::map<std::string, std::string, std::less<>> assigned;
    {
        Assigning assigning(recorded, incoming, doubtful);
        for (const auto& item : incoming) {
            if (assigned.contains(item.fact.person))
                continue;
            auto person = assigning.personFor(item.fact.person);
            if (!person)
                return person.error();
            assigned.emplace(item.fact.person, std::move(person.value()));
        }
    }
    for (auto& item : incoming)
        if (const auto& person = assigned.find(item.fact.person)->second; person != item.fact.person)
            item.fact.person = person;
    return incoming;
}

} // namespace firstdew::journal
