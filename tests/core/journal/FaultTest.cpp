#include "FaultyVfs.h"

#include "Scratch.h"
#include "core/RandomFacts.h"
#include "core/Tally.h"
#include "journal/BackUp.h"
#include "journal/Copies.h"
#include "journal/Journal.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <algorithm>
#include <array>
#include <catch2/catch.hpp>
#include <set>
#include <sys/wait.h>
#include <unistd.h>

using namespace firstdew;
using namespace firstdew::facts;
using journal::Journal;
using testing::Fault;
using testing::FaultyVfs;
using testing::Scratch;

namespace {

/// A check-in, and a session from its preparation to its log, as the app appends them.
std::vector<Fact> life()
{
    std::vector<Fact> out;
    const auto add = [&out](auto payload) {
        out.push_back(
            {fmt::format("fact{:02}", out.size()), "p1", {LocalDate(20600), {1100}}, 1772692200000, "", payload});
    };
    add(CheckIn{DiarySite::Feet, Level::Clammy, {Circumstance::Heat}});
    BathPrepared prepared;
    prepared.bath = "b1";
    prepared.site = Site::Feet;
    prepared.limit = {20};
    add(prepared);
    int n = 0;
    for (const auto kind : {BathEventKind::Begin, BathEventKind::Raised, BathEventKind::Reading, BathEventKind::Reading,
                            BathEventKind::Lowered, BathEventKind::Swapped, BathEventKind::Stop}) {
        BathEvent event;
        event.bath = "b1";
        event.sequence = n++;
        event.event = kind;
        if (kind == BathEventKind::Reading)
            event.reading = Milliamps{12.5};
        add(event);
    }
    Session session;
    session.site = Site::Feet;
    session.bath = "b1";
    session.note = std::string(9000, 'n'); // more than a page
    add(session);
    return out;
}

/// Facts whose append was acknowledged. A refused one is tried once more, as a person would.
std::vector<Fact> live(const std::filesystem::path& file, bool again)
{
    std::vector<Fact> acknowledged;
    auto journal = Journal::open(file);
    if (!journal && again)
        journal = Journal::open(file);
    if (!journal)
        return acknowledged;
    for (const Fact& fact : life()) {
        auto done = journal.value().append(fact);
        if (!done) {
            CHECK_FALSE(done.error().message.empty());
            CHECK(std::set<std::string>{"disk-full", "store-failed"}.contains(done.error().code));
            if (again) {
                done = journal.value().append(fact);
                INFO(done.ok() << " " << (done.ok() ? "" : done.error().message));
                CHECK(done.ok());
            }
        }
        if (done)
            acknowledged.push_back(fact);
    }
    return acknowledged;
}

/// Every acknowledged fact is there once and in order; beside them at most the ones that were tried.
void everythingAcknowledgedIsThere(const std::filesystem::path& file, const std::vector<Fact>& acknowledged)
{
    const auto journal = Journal::open(file);
    REQUIRE(journal.ok());
    const auto health = journal->check();
    CHECK(health.ok);
    const auto there = journal->readAll();
    REQUIRE(there.ok());
    const auto tried = life();
    CHECK(std::ranges::all_of(*there, [&](const Fact& f) { return std::ranges::find(tried, f) != tried.end(); }));
    auto next = there->begin();
    for (const Fact& fact : acknowledged) {
        next = std::find(next, there->end(), fact);
        REQUIRE(next != there->end());
        ++next;
    }
    std::set<std::string> ids;
    for (const Fact& fact : *there)
        CHECK(ids.insert(fact.id).second);
}

/// Breaks the n-th operation for every n until a whole life passes unharmed; returns how many were broken.
int breakEvery(Fault fault, bool again)
{
    for (int n = 1;; ++n) {
        const Scratch scratch;
        std::vector<Fact> acknowledged;
        bool struck = false;
        {
            const FaultyVfs disk(fault, n);
            acknowledged = live(scratch / "store.db", again);
            struck = disk.struck();
            if (fault == Fault::PowerLoss)
                disk.loseWhatWasNotSynced();
        }
        INFO("operation " << n);
        everythingAcknowledgedIsThere(scratch / "store.db", acknowledged);
        if (again)
            CHECK(acknowledged.size() == life().size());
        if (!struck) {
            CHECK(acknowledged.size() == life().size());
            testing::tally("writes, syncs and truncations broken", n - 1);
            return n - 1;
        }
    }
}

} // namespace

TEST_CASE("whichever write, sync or truncation fails, nothing acknowledged is lost and the next try succeeds",
          "[fault]")
{
    CHECK(breakEvery(Fault::Once, true) > 30);
}

TEST_CASE("a disk full for a moment or for good loses nothing acknowledged", "[fault]")
{
    CHECK(breakEvery(Fault::FullOnce, true) > 30);
    CHECK(breakEvery(Fault::FullStays, false) > 30);
}

TEST_CASE("a power loss at any moment, with all that was not synced, loses nothing acknowledged", "[fault]")
{
    CHECK(breakEvery(Fault::PowerLoss, false) > 30);
}

namespace {

/// Another process that holds a lock on the store until it is let go.
class Holder {
public:
    Holder(const std::filesystem::path& file, const char* statement)
    {
        REQUIRE(::pipe(m_held.data()) == 0);
        REQUIRE(::pipe(m_free.data()) == 0);
        m_child = ::fork();
        REQUIRE(m_child >= 0);
        if (m_child == 0)
            hold(file, statement);
        char byte = 0;
        REQUIRE(::read(m_held[0], &byte, 1) == 1);
    }
    Holder(const Holder&) = delete;
    Holder& operator=(const Holder&) = delete;
    ~Holder()
    {
        const char byte = 0;
        CHECK(::write(m_free[1], &byte, 1) == 1);
        int status = 0;
        CHECK(::waitpid(m_child, &status, 0) == m_child);
        CHECK(status == 0);
        for (const int end : {m_held[0], m_held[1], m_free[0], m_free[1]})
            ::close(end);
    }

private:
    [[noreturn]] void hold(const std::filesystem::path& file, const char* statement)
    {
        char byte = 0;
        try {
            SQLite::Database db(file.string(), SQLite::OPEN_READWRITE);
            db.exec(statement);
            if (::write(m_held[1], &byte, 1) != 1 || ::read(m_free[0], &byte, 1) != 1)
                ::_exit(2);
        } catch (const SQLite::Exception&) {
            ::_exit(3);
        }
        ::_exit(0);
    }

    std::array<int, 2> m_held{};
    std::array<int, 2> m_free{};
    pid_t m_child = 0;
};

} // namespace

TEST_CASE("a store that another process holds is refused with what to do, and works once it is free", "[fault]")
{
    const Scratch scratch;
    {
        auto journal = Journal::open(scratch / "store.db");
        REQUIRE(journal.ok());
        {
            const Holder writing(scratch / "store.db", "BEGIN IMMEDIATE");
            const auto refused = journal.value().append(life()[0]);
            REQUIRE_FALSE(refused.ok());
            CHECK(refused.error().code == "store-busy");
            CHECK(journal->readAll()->empty());
        }
        CHECK(journal.value().append(life()[0]).ok());
    }
    {
        const Holder alone(scratch / "store.db", "PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE");
        const auto refused = Journal::openExisting(scratch / "store.db");
        REQUIRE_FALSE(refused.ok());
        CHECK(refused.error().code == "store-busy");
    }
    CHECK(Journal::openExisting(scratch / "store.db")->readAll()->size() == 1);
}

namespace {

enum class Outcome { Whole, Refused, Wrong };

/// What a damaged file is taken for: never for facts other than those that were written.
Outcome outcomeOf(const std::filesystem::path& file, const std::vector<Fact>& written, bool prefixWillDo)
{
    const auto journal = Journal::openExisting(file);
    if (!journal)
        return journal.error().message.empty() ? Outcome::Wrong : Outcome::Refused;
    const auto facts = journal->readAll();
    if (!facts)
        return facts.error().code == "store-damaged" ? Outcome::Refused : Outcome::Wrong;
    if (*facts == written)
        return Outcome::Whole;
    const bool prefix = facts->size() <= written.size() && std::equal(facts->begin(), facts->end(), written.begin());
    return prefixWillDo && prefix ? Outcome::Whole : Outcome::Wrong;
}

struct Sample {
    std::vector<Fact> facts;
    std::string bytes;
    std::string log; ///< of facts not yet carried into the file
};

Sample sampleStore(int facts, bool inLog)
{
    const Scratch scratch;
    Sample out;
    out.facts = testing::RandomFacts(77).many(facts);
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.value().appendAll(out.facts).ok());
    if (!inLog) {
        const auto closed = std::move(journal.value());
    }
    out.bytes = testing::contentOf(scratch / "store.db");
    out.log = inLog ? testing::contentOf(scratch / "store.db-wal") : "";
    return out;
}

} // namespace

TEST_CASE("a store cut anywhere is whole or refused, never silently wrong", "[fault]")
{
    Sample sample = sampleStore(150, false);
    const std::size_t page = 4096;
    REQUIRE(sample.bytes.size() > 8 * page);
    int refused = 0;
    int tried = 0;
    for (std::size_t length = 1; length < sample.bytes.size(); length += page / 4 - 1) {
        const Scratch scratch;
        testing::writeTo(scratch / "store.db", std::string_view(sample.bytes).substr(0, length));
        INFO("cut to " << length);
        ++tried;
        const auto outcome = outcomeOf(scratch / "store.db", sample.facts, false);
        CHECK(outcome != Outcome::Wrong);
        refused += outcome == Outcome::Refused;
    }
    CHECK(refused > 20);
    testing::tally("stores cut", tried);
}

TEST_CASE("a store with bytes flipped in every page is whole or refused, never silently wrong", "[fault]")
{
    const Sample sample = sampleStore(150, false);
    int refused = 0;
    int tried = 0;
    for (std::size_t at = 0; at < sample.bytes.size(); at += 61) { // prime to the page: every part of a page is met
        const Scratch scratch;
        std::string bytes = sample.bytes;
        bytes[at] = static_cast<char>(bytes[at] ^ (at % 2 == 0 ? 0x01 : 0x40));
        testing::writeTo(scratch / "store.db", bytes);
        INFO("byte " << at);
        ++tried;
        const auto outcome = outcomeOf(scratch / "store.db", sample.facts, false);
        CHECK(outcome != Outcome::Wrong);
        refused += outcome == Outcome::Refused;
    }
    CHECK(refused > 100);
    testing::tally("stores with a byte flipped", tried);
}

TEST_CASE("a damaged log costs at most the latest facts, never gives wrong ones", "[fault]")
{
    const Sample sample = sampleStore(60, true);
    REQUIRE(sample.log.size() > 4096);
    int tried = 0;
    for (std::size_t at = 0; at < sample.log.size(); at += 211) {
        const Scratch scratch;
        std::string log = sample.log;
        log[at] = static_cast<char>(log[at] ^ 0x10);
        testing::writeTo(scratch / "store.db", sample.bytes);
        testing::writeTo(scratch / "store.db-wal", at % 3 == 0 ? std::string(sample.log, 0, at) : log);
        INFO("byte " << at << " of the log");
        ++tried;
        CHECK(outcomeOf(scratch / "store.db", sample.facts, true) != Outcome::Wrong);
    }
    testing::tally("logs cut or with a byte flipped", tried);
}
