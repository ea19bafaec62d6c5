#include "journal/Journal.h"

#include "codec/CleanText.h"
#include "codec/FactJson.h"
#include "journal/Copies.h"
#include "journal/OwnFile.h"
#include "journal/People.h"
#include "journal/Rows.h"
#include "journal/Schema.h"
#include "journal/StoreError.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdint>
#include <fmt/format.h>
#include <optional>
#include <sqlite3.h>
#include <thread>

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
Result<Done> notEmptied(const std::filesystem::path& file, bool mayMake)
{
    const auto copies = copiesOf(file);
    if (!copies)
        return unreadableStore(file, copies.error().message);
    if (copies->empty())
        return Done{};
    if (mayMake)
        if (auto made = createOwn(file); !made)
            return unreadableStore(file, made.error().message);
    return damagedStore(file, "it is gone or empty, yet there are copies of it");
}

enum class Purpose { Write, WriteExisting, Read };

/// Whether what lies there can be a store, before SQLite touches it: it would write over a tiny file of any kind.
Result<Lies> canBeStore(const std::filesystem::path& file, Purpose purpose)
{
    constexpr std::uintmax_t kLeastStore = 512; // bytes of SQLite's smallest page
    auto lies = whatLiesAt(file);
    if (!lies)
        return unreadableStore(file, lies.error().message);
    if (*lies == Lies::Folder || *lies == Lies::Other)
        return unreadableStore(file, *lies == Lies::Folder ? "it is a folder" : "it is no regular file");
    if (*lies == Lies::Nothing || *lies == Lies::EmptyFile)
        if (auto fresh = notEmptied(file, purpose != Purpose::Read); !fresh)
            return fresh.error();
    if (*lies == Lies::Nothing && purpose != Purpose::Write)
        return missingStore(file);
    std::error_code failed;
    if (*lies == Lies::File && std::filesystem::file_size(file, failed) < kLeastStore && !failed)
        return foreignFile(file);
    return failed ? Result<Lies>(unreadableStore(file, failed.message())) : lies;
}

/// A file as it was when reading it began.
struct Stamp {
    std::optional<Identity> identity;
    std::uintmax_t size = 0;
    std::filesystem::file_time_type changed;
    bool operator==(const Stamp&) const = default;
};

Stamp stampOf(const std::filesystem::path& file)
{
    std::error_code failed;
    const auto identity = identityOf(file);
    return {identity, identity ? std::filesystem::file_size(file, failed) : 0,
            identity ? std::filesystem::last_write_time(file, failed) : std::filesystem::file_time_type()};
}

/// How a store is opened for reading without a change to any file (sqlite.org/uri.html).
struct ReadWay {
    std::string query;
    bool alone = false;    ///< no locks are taken: what was read counts only if nobody wrote meanwhile
    bool ownIndex = false; ///< the index of a log that was left behind is made in memory
};

ReadWay readWayFor(const std::filesystem::path& file)
{
    const auto log = stampOf(beside(file, "-wal"));
    if (!log.identity || (log.size == 0 && !identityOf(beside(file, "-shm"))))
        return {"?mode=ro&immutable=1", true};
    if (identityOf(beside(file, "-shm")))
        return {"?mode=ro&readonly_shm=1"};
    return {"?mode=ro&vfs=unix-none", true, true};
}

std::string uriOf(const std::filesystem::path& file)
{
    std::string out = "file:";
    for (const char c : file.string())
        if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') ||
            std::string_view("/._-").find(c) != std::string_view::npos)
            out += c;
        else
            out += fmt::format("%{:02x}", static_cast<unsigned char>(c));
    return out;
}

/// Also after a failure: a statement left half way would hold the lock.
struct ResetAfter {
    SQLite::Statement& statement;
    ~ResetAfter() { statement.tryReset(); }
};

/// Tries again while the attempt asks for it, as long as SQLite itself waits for a lock. A lock that SQLite has waited
/// for already is no reason to.
template <class Try>
auto patiently(const Try& attempt)
{
    constexpr int kPauseMs = 20;
    for (int waited = 0;; waited += kPauseMs) {
        bool again = false;
        auto got = attempt(again);
        if (!again || waited >= kBusyMs)
            return got;
        std::this_thread::sleep_for(std::chrono::milliseconds(kPauseMs));
    }
}

} // namespace

struct Journal::Impl {
    std::filesystem::path file; ///< as it was named, for what is said
    std::filesystem::path at;   ///< where it lies
    SQLite::Database db;
    std::unique_ptr<SQLite::Statement> insert;
    std::optional<Identity> identity;             ///< of the file that is open
    std::optional<Identity> logIdentity;          ///< of its log, where there is one
    std::optional<std::array<Stamp, 2>> mustStay; ///< of file and log, where they are read without locks

    std::optional<int64_t> versionRead; ///< of what readAll() found

    // No lock of the library's own about every call: a journal is used by one thread at a time.
    Impl(std::filesystem::path named, std::filesystem::path lies, const std::string& uri, int flags)
        : file(std::move(named)), at(std::move(lies)), db(uri, flags | SQLite::OPEN_NOMUTEX, kBusyMs)
    {
    }

    void remember()
    {
        identity = identityOf(at);
        logIdentity = identityOf(beside(at, "-wal"));
    }

    /// Whether the names still lead to the files that are open. Facts written to others would be gone with them.
    [[nodiscard]] std::optional<Error> replaced()
    {
        int moved = 0;
        (void)::sqlite3_file_control(db.getHandle(), "main", SQLITE_FCNTL_HAS_MOVED, &moved);
        if (moved != 0 || identityOf(at) != identity || (logIdentity && identityOf(beside(at, "-wal")) != logIdentity))
            return replacedStore(file);
        return std::nullopt;
    }

    /// A number that stays the same until another connection has written.
    [[nodiscard]] int64_t version() { return db.execAndGet("PRAGMA data_version").getInt64(); }

    [[nodiscard]] std::array<Stamp, 2> stamps() const { return {stampOf(at), stampOf(beside(at, "-wal"))}; }
    [[nodiscard]] bool changedMeanwhile() const { return mustStay && stamps() != *mustStay; }

    [[nodiscard]] Result<std::vector<Fact>> readAll();

    [[nodiscard]] bool hasTable() { return db.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() > 0; }

    void add(const Row& row)
    {
        if (!insert)
            insert = std::make_unique<SQLite::Statement>(db, kInsertRow);
        const ResetAfter reset{*insert};
        bindRow(*insert, row);
        insert->exec();
    }

    void addAll(const std::vector<Fact>& facts, std::string& id)
    {
        for (const Fact& fact : facts) {
            id = fact.id;
            add(rowOf(fact));
        }
    }

    /// Ids where there are none, and every fact fit to be kept.
    std::optional<Error> makeReady(std::vector<Fact>& facts)
    {
        for (Fact& fact : facts) {
            if (fact.id.empty())
                fact.id = drawId();
            codec::cleanTexts(fact);
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

Result<Journal> Journal::openAs(const std::filesystem::path& file, bool mustBeThere)
{
    const auto real = behindLinks(file);
    if (!real)
        return unreadableStore(file, real.error().message);
    if (auto fit = canBeStore(*real, mustBeThere ? Purpose::WriteExisting : Purpose::Write); !fit)
        return Error{fit.error().code, file.string(), fit.error().message};
    if (auto made = createOwn(*real); !made)
        return unreadableStore(file, made.error().message);
    const auto at = std::filesystem::absolute(*real);
    try {
        auto impl = std::make_unique<Impl>(file, at, at.string(), SQLite::OPEN_READWRITE);
        if (sqlite3_db_readonly(impl->db.getHandle(), "main") == 1)
            return readOnlyStore(file);
        // Before any pragma writes: a file that is not ours stays as it is, with its rights.
        if (auto ours = recognise(impl->db, file, kSchemaVersion); !ours)
            return ours.error();
        for (const char* suffix : {"", "-wal", "-shm"})
            closeToOthers(beside(at, suffix));
        prepareConnection(impl->db);
        if (auto ready = bringUpToDate(impl->db, *real, migrations()); !ready)
            return ready.error();
        impl->remember();
        if (auto replaced = impl->replaced())
            return *replaced;
        return Journal(std::move(impl));
    } catch (const SQLite::Exception& e) {
        return storeError(file, e);
    }
}

Result<Journal> Journal::open(const std::filesystem::path& file) { return openAs(file, false); }

Result<Journal> Journal::openExisting(const std::filesystem::path& file) { return openAs(file, true); }

Result<Journal> Journal::openToRead(const std::filesystem::path& file)
{
    const auto real = behindLinks(file);
    if (!real)
        return unreadableStore(file, real.error().message);
    if (auto fit = canBeStore(*real, Purpose::Read); !fit)
        return Error{fit.error().code, file.string(), fit.error().message};
    const auto at = std::filesystem::absolute(*real);
    return patiently([&](bool& again) -> Result<Journal> {
        const std::array<Stamp, 2> before{stampOf(at), stampOf(beside(at, "-wal"))};
        try {
            const ReadWay way = readWayFor(at);
            auto impl =
                std::make_unique<Impl>(file, at, uriOf(at) + way.query, SQLite::OPEN_READONLY | SQLite::OPEN_URI);
            if (way.alone)
                impl->mustStay = before;
            if (way.ownIndex)
                impl->db.exec("PRAGMA locking_mode = EXCLUSIVE");
            impl->db.exec("PRAGMA temp_store = MEMORY");
            if (auto ours = recognise(impl->db, file, kSchemaVersion); !ours)
                return ours.error();
            impl->remember();
            return Journal(std::move(impl));
        } catch (const SQLite::Exception& e) {
            const bool changed = before != std::array<Stamp, 2>{stampOf(at), stampOf(beside(at, "-wal"))};
            again = changed && (e.getErrorCode() & 0xff) != SQLITE_BUSY;
            return changed ? busyStore(file) : storeError(file, e);
        }
    });
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
        if (auto replaced = m_impl->replaced())
            return *replaced;
        std::optional<SQLite::Transaction> together; // one fact alone is a transaction already
        if (facts.size() > 1)
            together.emplace(m_impl->db, SQLite::TransactionBehavior::IMMEDIATE);
        m_impl->addAll(facts, at);
        if (together)
            together->commit();
        if (auto replaced = m_impl->replaced()) // just now
            return *replaced;
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
        if (auto replaced = m_impl->replaced())
            return *replaced;
        SQLite::Transaction transaction(m_impl->db, SQLite::TransactionBehavior::IMMEDIATE);
        m_impl->db.exec("DELETE FROM fact");
        m_impl->addAll(ready, at);
        transaction.commit();
        if (auto replaced = m_impl->replaced())
            return *replaced;
    } catch (const SQLite::Exception& e) {
        return m_impl->failure(e, at);
    }
    return Done{};
}

Result<std::filesystem::path> Journal::keepCopy(std::string_view reason)
{
    if (auto replaced = m_impl->replaced())
        return *replaced;
    return journal::keepCopy(m_impl->db, m_impl->at, reason);
}

/// All of the log brought into the file, and the log overwritten. What the file held in the same places is then
/// overwritten as well. Refused while another program reads or writes.
Result<Done> Journal::wipeLog()
{
    SQLite::Database& db = m_impl->db;
    const Error busy{"store-busy", m_impl->file.string(),
                     "another program is using it, so that its log still holds what was deleted; close that program "
                     "and delete again"};
    if (SQLite::Statement restart(db, "PRAGMA wal_checkpoint(RESTART)");
        restart.executeStep() && restart.getColumn(0).getInt() != 0)
        return busy;
    const auto before = m_impl->version();
    SQLite::Transaction nobodyWrites(db, SQLite::TransactionBehavior::IMMEDIATE);
    if (m_impl->version() != before)
        return busy;
    return overwrite(beside(m_impl->at, "-wal"));
}

Result<Done> Journal::forget(const std::string& person)
{
    try {
        if (auto replaced = m_impl->replaced())
            return *replaced;
        {
            SQLite::Statement remove(m_impl->db, "DELETE FROM fact WHERE person = ?");
            remove.bind(1, person);
            remove.exec();
        }
        // secure_delete wiped the cells and pages; they have to reach the file before it is made shorter.
        if (auto wiped = wipeLog(); !wiped)
            return wiped;
        m_impl->db.exec("VACUUM");
        if (auto wiped = wipeLog(); !wiped)
            return wiped;
        m_impl->db.exec("PRAGMA wal_checkpoint(TRUNCATE)");
    } catch (const SQLite::Exception& e) {
        return storeError(m_impl->file, e);
    }
    const auto copies = copiesOf(m_impl->at);
    if (!copies)
        return copies.error();
    for (const auto& copy : *copies)
        if (auto gone = wipe(copy); !gone)
            return gone;
    return Done{};
}

Result<Done> Journal::destroy(const std::filesystem::path& file)
{
    const auto real = behindLinks(file);
    if (!real)
        return real.error();
    auto doomed = copiesOf(*real);
    if (!doomed)
        return doomed.error();
    auto& paths = doomed.value();
    for (std::size_t i = 0, copies = paths.size(); i < copies; ++i)
        for (const std::string_view suffix : {"-wal", "-shm", "-journal"})
            paths.push_back(beside(paths[i], suffix));
    // What the notices of a desktop remember goes too; its keys tell of days and sites.
    for (const std::string_view suffix : kCompanions)
        paths.push_back(beside(*real, suffix));
    paths.push_back(*real);
    if (*real != file)
        paths.push_back(file);
    for (const auto& path : paths)
        if (auto gone = wipe(path); !gone)
            return gone;
    return Done{};
}

Result<std::vector<Fact>> Journal::Impl::readAll()
{
    std::vector<Fact> out;
    try {
        if (!hasTable())
            return out; // an empty file, opened to be read
        versionRead = version();
        const SQLite::Transaction snapshot(db);
        // The index of ids is a second account of the rows: a row lost from the table alone shows here.
        const auto indexed = db.execAndGet("SELECT count(*) FROM fact INDEXED BY sqlite_autoindex_fact_1").getInt64();
        out.reserve(static_cast<std::size_t>(std::clamp<std::int64_t>(indexed, 0, kMostAhead)));
        SQLite::Statement select(db, kSelectRows);
        FactReader reader;
        while (select.executeStep()) {
            auto fact = reader.factAt(select);
            if (!fact && fact.error().code == "fact-newer")
                return newerFact(file, fact.error());
            if (!fact)
                return damagedStore(file, fmt::format("fact {}: {}", fact.error().input, fact.error().message));
            out.push_back(std::move(fact.value()));
        }
        if (indexed != static_cast<int64_t>(out.size()))
            return damagedStore(file, fmt::format("{} facts found where {} are listed", out.size(), indexed));
    } catch (const SQLite::Exception& e) {
        return changedMeanwhile() ? busyStore(file) : storeError(file, e);
    }
    if (changedMeanwhile())
        return busyStore(file);
    return out;
}

Result<std::vector<Fact>> Journal::readAll() const
{
    auto read = m_impl->readAll();
    if (read || !m_impl->changedMeanwhile())
        return read;
    return patiently([&](bool& again) -> Result<std::vector<Fact>> { // this one reads the file as it was
        const auto opened = openToRead(m_impl->file);
        if (!opened)
            return opened.error();
        auto facts = opened->m_impl->readAll();
        again = !facts && opened->m_impl->changedMeanwhile();
        return facts;
    });
}

bool Journal::changedElsewhere() const
{
    try {
        return m_impl->versionRead && m_impl->version() != *m_impl->versionRead;
    } catch (const SQLite::Exception&) { // the next reading or writing says why
        return false;
    }
}

Health Journal::check() const
{
    Health health;
    try {
        if (!m_impl->hasTable())
            return {true, 0, {}};
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
    if (m_impl->changedMeanwhile())
        health.problems.assign(1, busyStore(m_impl->file).message);
    health.ok = health.problems.empty();
    return health;
}

} // namespace firstdew::journal
