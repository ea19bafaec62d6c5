#include "journal/Journal.h"

#include "codec/FactJson.h"
#include "journal/Copies.h"
#include "journal/OwnFile.h"
#include "journal/Rows.h"
#include "journal/Schema.h"
#include "journal/StoreError.h"

#include <algorithm>
#include <cstdint>
#include <fmt/format.h>
#include <optional>
#include <sqlite3.h>

namespace firstdew::journal {

namespace {

constexpr int kBusyMs = 2000;
constexpr std::int64_t kMostAhead = 100'000; // facts that room is made for before one is read

void prepareConnection(SQLite::Database& db)
{
    db.exec("PRAGMA journal_mode = WAL");
    db.exec("PRAGMA synchronous = FULL");
    db.exec("PRAGMA foreign_keys = ON");
    db.exec("PRAGMA secure_delete = ON");
    db.exec("PRAGMA temp_store = MEMORY"); // VACUUM must not leave a plain copy in a temporary folder
}

/// No file, or one with nothing in it, where a store was once: a record that begins anew without a word would be taken
/// for the old one. It stands there empty from then on, to be repaired from the copies like one that was cut to
/// nothing.
std::optional<Error> emptied(const std::filesystem::path& file)
{
    if (copiesOf(file).empty())
        return std::nullopt;
    if (auto made = createOwn(file); !made)
        return unreadableStore(file, made.error().message);
    return damagedStore(file, "it is gone or empty, yet there are copies of it");
}

/// What must not be taken for a new store: SQLite would write over a tiny file of any kind.
std::optional<Error> notEmptyForNew(const std::filesystem::path& file)
{
    std::error_code ec;
    const auto size = std::filesystem::file_size(file, ec);
    if (!ec && size > 0 && size < 512)
        return foreignFile(file);
    return ec || size == 0 ? emptied(file) : std::nullopt;
}

/// Also after a failure: a statement left half way would hold the lock.
struct ResetAfter {
    SQLite::Statement& statement;
    ~ResetAfter() { statement.tryReset(); }
};

} // namespace

struct Journal::Impl {
    std::filesystem::path file;
    SQLite::Database db;
    std::unique_ptr<SQLite::Statement> insert;
    std::unique_ptr<SQLite::Statement> draw; // of ids

    // No lock of the library's own about every call: a journal is used by one thread at a time.
    explicit Impl(std::filesystem::path at)
        : file(std::move(at)), db(file, SQLite::OPEN_READWRITE | SQLite::OPEN_NOMUTEX, kBusyMs)
    {
    }

    std::string freshId()
    {
        if (!draw)
            draw = std::make_unique<SQLite::Statement>(db, "SELECT lower(hex(randomblob(16)))");
        const ResetAfter reset{*draw};
        draw->executeStep();
        return draw->getColumn(0).getString();
    }

    void add(const Row& row)
    {
        if (!insert)
            insert = std::make_unique<SQLite::Statement>(db, kInsertRow);
        const ResetAfter reset{*insert};
        bindRow(*insert, row);
        insert->exec();
    }

    void addAll(const std::vector<Fact>& facts, std::string& at)
    {
        for (const Fact& fact : facts) {
            at = fact.id;
            add(rowOf(fact));
        }
    }

    /// Ids where there are none, and every fact fit to be kept.
    std::optional<Error> makeReady(std::vector<Fact>& facts)
    {
        for (Fact& fact : facts) {
            if (fact.id.empty())
                fact.id = freshId();
            if (auto kept = codec::canBeKept(fact); !kept)
                return kept.error();
        }
        return std::nullopt;
    }

    [[nodiscard]] Error failure(const SQLite::Exception& e, const std::string& id) const
    {
        if ((e.getErrorCode() & 0xff) == SQLITE_CONSTRAINT)
            return {"id-known", id, "a fact of this id is recorded already; nothing was recorded twice"};
        return storeError(file, e);
    }
};

Journal::Journal(std::unique_ptr<Impl> impl) : m_impl(std::move(impl)) {}
Journal::Journal(Journal&&) noexcept = default;
Journal& Journal::operator=(Journal&&) noexcept = default;
Journal::~Journal() = default;

Result<Journal> Journal::open(const std::filesystem::path& file)
{
    std::error_code ec;
    if (std::filesystem::is_directory(file, ec))
        return unreadableStore(file, "it is a folder");
    if (auto refused = notEmptyForNew(file))
        return *refused;
    if (auto made = createOwn(file); !made)
        return unreadableStore(file, made.error().message);
    for (const char* suffix : {"", "-wal", "-shm"})
        closeToOthers(file.string() + suffix);
    try {
        auto impl = std::make_unique<Impl>(std::filesystem::absolute(file));
        impl->file = file;
        if (sqlite3_db_readonly(impl->db.getHandle(), "main") == 1)
            return readOnlyStore(file);
        // Before any pragma writes: a file that is not ours stays as it is.
        if (auto ours = recognise(impl->db, file, kSchemaVersion); !ours)
            return ours.error();
        prepareConnection(impl->db);
        if (auto ready = bringUpToDate(impl->db, file, migrations()); !ready)
            return ready.error();
        return Journal(std::move(impl));
    } catch (const SQLite::Exception& e) {
        return storeError(file, e);
    }
}

Result<Journal> Journal::openExisting(const std::filesystem::path& file)
{
    std::error_code ec;
    if (!std::filesystem::exists(file, ec))
        return ec ? unreadableStore(file, ec.message()) : emptied(file).value_or(missingStore(file));
    if (std::filesystem::is_regular_file(file, ec) && std::filesystem::file_size(file, ec) == 0)
        return emptied(file).value_or(foreignFile(file));
    return open(file);
}

Result<std::string> Journal::append(Fact fact)
{
    std::vector<Fact> one;
    one.push_back(std::move(fact));
    auto ids = appendAll(std::move(one));
    if (!ids)
        return ids.error();
    return std::move(ids.value().front());
}

Result<std::vector<std::string>> Journal::appendAll(std::vector<Fact> facts)
{
    std::string at;
    try {
        if (auto unfit = m_impl->makeReady(facts))
            return *unfit;
        std::optional<SQLite::Transaction> together; // one fact alone is a transaction already
        if (facts.size() > 1)
            together.emplace(m_impl->db, SQLite::TransactionBehavior::IMMEDIATE);
        m_impl->addAll(facts, at);
        if (together)
            together->commit();
    } catch (const SQLite::Exception& e) {
        return m_impl->failure(e, at);
    }
    std::vector<std::string> ids;
    ids.reserve(facts.size());
    for (Fact& fact : facts)
        ids.push_back(std::move(fact.id));
    return ids;
}

Result<Done> Journal::replaceAll(const std::vector<Fact>& facts)
{
    std::string at;
    try {
        auto ready = facts;
        if (auto unfit = m_impl->makeReady(ready))
            return *unfit;
        SQLite::Transaction transaction(m_impl->db, SQLite::TransactionBehavior::IMMEDIATE);
        m_impl->db.exec("DELETE FROM fact");
        m_impl->addAll(ready, at);
        transaction.commit();
    } catch (const SQLite::Exception& e) {
        return m_impl->failure(e, at);
    }
    return Done{};
}

Result<std::filesystem::path> Journal::keepCopy(std::string_view reason)
{
    return journal::keepCopy(m_impl->db, m_impl->file, reason);
}

Result<Done> Journal::forget(const std::string& person)
{
    try {
        SQLite::Statement remove(m_impl->db, "DELETE FROM fact WHERE person = ?");
        remove.bind(1, person);
        remove.exec();
        remove.reset();
        // secure_delete wiped the cells; this also drops their pages, and the log that may still hold them.
        m_impl->db.exec("VACUUM");
        SQLite::Statement checkpoint(m_impl->db, "PRAGMA wal_checkpoint(TRUNCATE)");
        if (checkpoint.executeStep() && checkpoint.getColumn(0).getInt() != 0)
            return Error{"store-busy", m_impl->file.string(),
                         "is in use by another program, so that its log still holds what was deleted; close it and "
                         "delete again"};
    } catch (const SQLite::Exception& e) {
        return storeError(m_impl->file, e);
    }
    for (const auto& copy : copiesOf(m_impl->file))
        if (auto gone = wipe(copy); !gone)
            return gone;
    return Done{};
}

Result<Done> Journal::destroy(const std::filesystem::path& file)
{
    auto doomed = copiesOf(file);
    // The last one is what the notices of a desktop remember; its keys tell of days and sites.
    for (const char* suffix : {"-wal", "-shm", "-journal", "", ".notices"})
        doomed.emplace_back(file.string() + suffix);
    for (const auto& path : doomed)
        if (auto gone = wipe(path); !gone)
            return gone;
    return Done{};
}

Result<std::vector<Fact>> Journal::readAll() const
{
    std::vector<Fact> out;
    try {
        const SQLite::Transaction snapshot(m_impl->db);
        // The index of ids is a second account of the rows: a row lost from the table alone shows here.
        const auto indexed =
            m_impl->db.execAndGet("SELECT count(*) FROM fact INDEXED BY sqlite_autoindex_fact_1").getInt64();
        out.reserve(static_cast<std::size_t>(std::clamp<std::int64_t>(indexed, 0, kMostAhead)));
        SQLite::Statement select(m_impl->db, kSelectRows);
        FactReader reader;
        while (select.executeStep()) {
            auto fact = reader.factAt(select);
            if (!fact && fact.error().code == "fact-newer")
                return newerFact(m_impl->file, fact.error());
            if (!fact)
                return damagedStore(m_impl->file, fmt::format("fact {}: {}", fact.error().input, fact.error().message));
            out.push_back(std::move(fact.value()));
        }
        if (indexed != static_cast<int64_t>(out.size()))
            return damagedStore(m_impl->file, fmt::format("{} facts found where {} are listed", out.size(), indexed));
    } catch (const SQLite::Exception& e) {
        return storeError(m_impl->file, e);
    }
    return out;
}

Health Journal::check() const
{
    Health health;
    try {
        SQLite::Statement integrity(m_impl->db, "PRAGMA integrity_check(20)");
        while (integrity.executeStep())
            if (const auto line = integrity.getColumn(0).getString(); line != "ok")
                health.problems.push_back(line);
        SQLite::Statement select(m_impl->db, kSelectRows);
        FactReader reader;
        while (select.executeStep()) {
            ++health.facts;
            if (auto fact = reader.factAt(select); !fact)
                health.problems.push_back(fmt::format("fact {}: {}", fact.error().input, fact.error().message));
        }
    } catch (const SQLite::Exception& e) {
        health.problems.push_back(storeError(m_impl->file, e).message);
    }
    health.ok = health.problems.empty();
    return health;
}

} // namespace firstdew::journal
