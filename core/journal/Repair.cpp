#include "journal/Repair.h"

#include "journal/Copies.h"
#include "journal/ReplaceDamaged.h"
#include "journal/Rows.h"
#include "journal/StoreError.h"

#include <algorithm>
#include <fmt/format.h>
#include <set>
#include <sqlite3.h>

namespace firstdew::journal {

using std::filesystem::path;

namespace {

/// A working copy of a file and its log, for reading without touching the evidence; gone afterwards.
class Scratch {
public:
    Scratch(const path& of, const path& beside) : m_path(beside.string() + ".repairing.copy")
    {
        std::error_code ec;
        for (const char* suffix : {"", "-wal"})
            if (std::filesystem::exists(of.string() + suffix, ec))
                m_made = std::filesystem::copy_file(of.string() + suffix, m_path.string() + suffix,
                                                    std::filesystem::copy_options::overwrite_existing, ec) &&
                         m_made;
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    ~Scratch() { (void)Journal::destroy(m_path); }
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
    if (std::error_code ec; std::filesystem::file_size(file, ec) == 0)
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
std::vector<path> usableCopies(const path& file)
{
    auto copies = copiesOf(file);
    std::erase_if(copies, [](const path& p) {
        return p.extension() != ".copy" || p.string().find(".damaged") != std::string::npos;
    });
    std::ranges::sort(copies, std::greater<>(), [](const path& p) {
        std::error_code ec;
        return std::filesystem::last_write_time(p, ec);
    });
    const auto replaced =
        std::ranges::find_if(copies, [](const path& p) { return p.string().ends_with(".before-restore.copy"); });
    copies.erase(replaced, copies.end());
    return copies;
}

Result<std::vector<Fact>> lastWholeCopy(const path& file)
{
    for (const path& copy : usableCopies(file)) {
        const Scratch scratch(copy, file);
        if (!scratch.made())
            return cannotCopy(copy);
        const auto journal = Journal::openExisting(scratch.file());
        auto facts = journal ? journal->readAll() : Result<std::vector<Fact>>(journal.error());
        if (!facts && !isDamage(facts.error()))
            return facts.error();
        if (facts && journal->check().ok)
            return facts;
    }
    return std::vector<Fact>{};
}

} // namespace

Result<Repaired> repair(const path& file)
{
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
    std::set<std::string> known;
    for (const Fact& fact : facts)
        known.insert(fact.id);
    auto copied = lastWholeCopy(file);
    if (!copied)
        return copied.error();
    for (Fact& fact : copied.value())
        if (!known.contains(fact.id))
            facts.push_back(std::move(fact));
    if (facts.empty())
        return damagedStore(file, "nothing can be read of it or of a copy");
    std::ranges::stable_sort(facts, {}, &Fact::recordedMs);
    const auto aside = replaceDamaged(file, facts);
    if (!aside)
        return aside.error();
    return Repaired{facts.size(), facts.size() - salvaged, *aside};
}

} // namespace firstdew::journal
