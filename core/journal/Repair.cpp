#include "journal/Repair.h"

#include "journal/Copies.h"
#include "journal/OwnFile.h"
#include "journal/People.h"
#include "journal/ReplaceDamaged.h"
#include "journal/Rows.h"
#include "journal/StoreError.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>
#include <sqlite3.h>

namespace firstdew::journal {

using std::filesystem::path;

namespace {

/// A working copy of a file and its log, for reading without touching the evidence; gone afterwards.
class Scratch {
public:
    Scratch(const path& of, const path& store) : m_path(beside(store, ".repairing.copy"))
    {
        for (const char* suffix : {"", "-wal"}) {
            std::error_code failed;
            const auto lies = whatLiesAt(beside(of, suffix));
            if (lies && *lies == Lies::Nothing)
                continue;
            m_made = lies && m_made &&
                     std::filesystem::copy_file(beside(of, suffix), beside(m_path, suffix),
                                                std::filesystem::copy_options::overwrite_existing, failed) &&
                     !failed;
        }
        closeToOthers(m_path);
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    ~Scratch()
    {
        for (const char* suffix : {"", "-wal", "-shm", "-journal"})
            (void)wipe(beside(m_path, suffix));
    }
    [[nodiscard]] const path& file() const { return m_path; }
    [[nodiscard]] bool made() const { return m_made; }

private:
    path m_path;
    bool m_made = true;
};

/// Anything else, say a full disk, says nothing of the file: to go on then would be to give up what it holds.
bool isDamage(const SQLite::Exception& e)
{
    const int code = e.getErrorCode() & 0xff;
    return code == SQLITE_CORRUPT || code == SQLITE_NOTADB;
}

bool isDamage(const Error& e) { return e.code == "store-damaged" || e.code == "store-foreign"; }

/// The rows that still read well, met from one end of the table until the file stops giving any.
/// `newer` becomes the error of one that is whole and cannot be read by this version.
void salvageFrom(SQLite::Database& db, const std::string& select, std::vector<Fact>& into, std::optional<Error>& newer)
{
    try {
        SQLite::Statement rows(db, select);
        FactReader reader;
        while (rows.executeStep())
            if (auto fact = reader.factAt(rows))
                into.push_back(std::move(fact.value()));
            else if (fact.error().code == "fact-newer")
                newer = fact.error();
    } catch (const SQLite::Exception& e) {
        if (!isDamage(e))
            throw;
        // What lies behind the damage is tried from the other end.
    }
}

Error cannotCopy(const path& file)
{
    return {"file-failed", file.string(),
            "a working copy could not be made; nothing was changed, make room and try again"};
}

Result<std::vector<Fact>> salvage(const path& file)
{
    std::vector<Fact> forward;
    std::vector<Fact> backward;
    std::optional<Error> newer;
    const auto lies = whatLiesAt(file);
    if (!lies)
        return lies.error();
    if (*lies == Lies::Nothing || *lies == Lies::EmptyFile)
        return forward;
    const Scratch scratch(file, file);
    if (!scratch.made())
        return cannotCopy(file);
    try {
        SQLite::Database db(scratch.file().string(), SQLite::OPEN_READWRITE);
        salvageFrom(db, kSelectRows, forward, newer);
        salvageFrom(db, std::string(kSelectRows) + " DESC", backward, newer);
    } catch (const SQLite::Exception& e) {
        if (!isDamage(e))
            return storeError(file, e);
    }
    // What cannot be read here must not be lost by a repair.
    if (newer)
        return newerFact(file, *newer);
    std::set<std::string> known;
    for (const Fact& fact : forward)
        known.insert(fact.id);
    std::ranges::reverse(backward);
    for (Fact& fact : backward)
        if (known.insert(fact.id).second)
            forward.push_back(std::move(fact));
    return forward;
}

/// Copies, the latest first, back to where the record was last replaced by another: older ones are of that other one.
Result<std::vector<path>> usableCopies(const path& file)
{
    auto all = copiesOf(file);
    if (!all)
        return all;
    std::vector<std::pair<std::filesystem::file_time_type, path>> found;
    const std::string store = file.filename().string();
    for (const path& copy : *all) {
        if (copy.extension() != ".copy" || !reasonOf(copy.filename().string(), store).starts_with("before-"))
            continue;
        std::error_code failed;
        found.emplace_back(std::filesystem::last_write_time(copy, failed), copy);
        if (failed)
            return Error{"file-failed", copy.string(),
                         "cannot be looked at (" + failed.message() + "); nothing was changed, try again"};
    }
    std::ranges::sort(found, std::greater<>());
    std::vector<path> out;
    for (const auto& [when, copy] : found) {
        if (reasonOf(copy.filename().string(), store) == "before-restore")
            break;
        out.push_back(copy);
    }
    return out;
}

Result<std::vector<Fact>> lastWholeCopy(const path& file)
{
    const auto copies = usableCopies(file);
    if (!copies)
        return copies.error();
    for (const path& copy : *copies) {
        const Scratch scratch(copy, file);
        if (!scratch.made())
            return cannotCopy(copy);
        const auto journal = Journal::openToRead(scratch.file()); // as it is, also of an earlier version
        auto facts = journal ? journal->readAll() : Result<std::vector<Fact>>(journal.error());
        if (!facts && !isDamage(facts.error()))
            return facts.error();
        if (facts && journal->check().ok)
            return facts;
    }
    return std::vector<Fact>{};
}

/// Facts of the copy that the store lacks, under the persons whose facts the store holds: a copy of an earlier version
/// may call them otherwise.
void addFromCopy(std::vector<Fact>& facts, std::vector<Fact>& copied)
{
    std::map<std::string, std::string> personOf;
    std::map<std::string, std::string> renamed;
    for (const Fact& fact : facts)
        personOf.emplace(fact.id, fact.person);
    for (const Fact& fact : copied)
        if (const auto known = personOf.find(fact.id); known != personOf.end() && isEarlierId(fact.person))
            renamed.emplace(fact.person, known->second);
    for (Fact& fact : copied) {
        if (personOf.contains(fact.id))
            continue;
        if (const auto name = renamed.find(fact.person); name != renamed.end())
            fact.person = name->second;
        facts.push_back(std::move(fact));
    }
}

} // namespace

Result<Repaired> repair(const path& named)
{
    const auto real = behindLinks(named);
    if (!real)
        return real.error();
    const path& file = *real;
    {
        const auto present = Journal::openExisting(file);
        if (!present && present.error().code != "store-damaged")
            return present.error();
        if (present)
            if (const Health health = present->check(); health.ok)
                return Repaired{static_cast<std::size_t>(health.facts), 0, {}};
    }
    auto read = salvage(file);
    if (!read)
        return read.error();
    auto& facts = read.value();
    const std::size_t salvaged = facts.size();
    auto copied = lastWholeCopy(file);
    if (!copied)
        return copied.error();
    addFromCopy(facts, copied.value());
    if (facts.empty())
        return damagedStore(named, "nothing can be read of it or of a copy");
    std::ranges::stable_sort(facts, {}, &Fact::recordedMs);
    renameEarlierPersons(facts);
    const auto aside = replaceDamaged(file, facts);
    if (!aside)
        return aside.error();
    return Repaired{facts.size(), facts.size() - salvaged, *aside};
}

} // namespace firstdew::journal
