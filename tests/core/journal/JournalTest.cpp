#include "journal/Journal.h"

#include "Scratch.h"
#include "core/RandomFacts.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <catch2/catch.hpp>
#include <rapidcheck.h>
#include <sys/stat.h>

using namespace firstdew;
using namespace firstdew::facts;
using journal::Journal;
using testing::Scratch;

namespace {

Fact checkIn(const char* day, Level level)
{
    return {"", "p1", {*LocalDate::parse(day), {480}}, 1772692200000, "", CheckIn{DiarySite::Hands, level, {}}};
}

unsigned modeOf(const std::filesystem::path& file)
{
    struct stat s {};
    REQUIRE(::stat(file.c_str(), &s) == 0);
    return s.st_mode & 0777U;
}

std::string codeOf(const Result<Journal>& opened) { return opened.ok() ? "opened" : opened.error().code; }

} // namespace

TEST_CASE("what was appended is there after opening again, in the order recorded")
{
    const Scratch scratch;
    std::string first;
    {
        auto journal = Journal::open(scratch / "store.db");
        REQUIRE(journal.ok());
        first = *journal.value().append(checkIn("2026-03-02", Level::Clammy));
        CHECK(first.size() == 32);
        REQUIRE(journal.value().append(checkIn("2026-03-01", Level::Dry)).ok());
    }
    const auto journal = Journal::openExisting(scratch / "store.db");
    REQUIRE(journal.ok());
    const auto facts = journal->readAll();
    REQUIRE(facts.ok());
    REQUIRE(facts->size() == 2);
    CHECK((*facts)[0].id == first);
    CHECK(std::get<CheckIn>((*facts)[0].payload).level == Level::Clammy);
    const auto health = journal->check();
    CHECK(health.ok);
    CHECK(health.facts == 2);
}

TEST_CASE("ten thousand random facts come back as they were", "[property]")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.ok());
    std::vector<Fact> all;
    CHECK(rc::check([&](unsigned long long seed) {
        // Small seeds come more than once; ids must not.
        const auto some = testing::RandomFacts(seed * 1000 + all.size() / 100).many(100);
        const auto ids = journal.value().appendAll(some);
        RC_ASSERT(ids.ok());
        all.insert(all.end(), some.begin(), some.end());
    }));
    const auto back = journal->readAll();
    REQUIRE(back.ok());
    CHECK(back->size() >= 10'000);
    CHECK(*back == all);
}

TEST_CASE("all or none is added, and a known id is never added twice")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.ok());
    Fact known = checkIn("2026-03-01", Level::Dry);
    known.id = "known";
    REQUIRE(journal.value().append(known).ok());
    const auto ids = journal.value().appendAll({checkIn("2026-03-02", Level::Dry), known});
    REQUIRE_FALSE(ids.ok());
    CHECK(ids.error().code == "id-known");
    CHECK(ids.error().input == "known");
    CHECK(journal->readAll()->size() == 1);
    CHECK(journal.value().append(checkIn("2026-03-02", Level::Dry)).ok());
}

TEST_CASE("what cannot be written down is refused and leaves the store as it was")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.ok());
    Fact fact = checkIn("2026-03-01", Level::Dry);
    const auto with = [&](auto payload) {
        fact.payload = std::move(payload);
        return journal.value().append(fact);
    };
    for (const double impossible : {std::nan(""), -1.0, 1e9}) {
        Session session;
        session.peak = Milliamps{impossible};
        CHECK_FALSE(with(session).ok());
    }
    CHECK_FALSE(with(Question{"\xff\xfe"}).ok());
    CHECK_FALSE(with(Hdss{DiarySite::Feet, 7}).ok());
    fact.happened.at.minute = 1440;
    CHECK_FALSE(with(Question{"when?"}).ok());
    fact.happened.at.minute = 0;
    fact.person = "";
    CHECK_FALSE(with(Question{"who?"}).ok());
    CHECK(journal->readAll()->empty());
}

TEST_CASE("the store and what SQLite keeps beside it are the owner's alone, whatever the umask")
{
    const Scratch scratch;
    const auto before = ::umask(0);
    auto journal = Journal::open(scratch / "store.db");
    ::umask(before);
    REQUIRE(journal.ok());
    REQUIRE(journal.value().append(checkIn("2026-03-01", Level::Dry)).ok());
    CHECK(modeOf(scratch / "store.db") == 0600);
    CHECK(modeOf(scratch / "store.db-wal") == 0600);
    CHECK(modeOf(scratch / "store.db-shm") == 0600);

    ::chmod((scratch / "store.db").c_str(), 0644);
    REQUIRE(Journal::open(scratch / "store.db").ok());
    CHECK(modeOf(scratch / "store.db") == 0600);
}

TEST_CASE("the file is set up to keep what it acknowledged")
{
    const Scratch scratch;
    REQUIRE(Journal::open(scratch / "store.db").ok());
    SQLite::Database db((scratch / "store.db").string(), SQLite::OPEN_READWRITE);
    CHECK(db.execAndGet("PRAGMA journal_mode").getString() == "wal");
    CHECK(db.execAndGet("PRAGMA user_version").getInt() == journal::kSchemaVersion);
    CHECK(db.execAndGet("SELECT strict FROM pragma_table_list WHERE name = 'fact'").getInt() == 1);
    CHECK_THROWS(db.exec("INSERT INTO fact(id, person, kind, happened_day, happened_minute, recorded_ms, body, seal) "
                         "VALUES('a', 'p1', 'x', 0, 0, 0, '{', 0)"));
}

TEST_CASE("two programs may hold the store at once")
{
    const Scratch scratch;
    auto one = Journal::open(scratch / "store.db");
    auto two = Journal::open(scratch / "store.db");
    REQUIRE(one.ok());
    REQUIRE(two.ok());
    REQUIRE(one.value().append(checkIn("2026-03-01", Level::Dry)).ok());
    REQUIRE(two.value().append(checkIn("2026-03-02", Level::Dry)).ok());
    CHECK(one->readAll()->size() == 2);
    CHECK(two->readAll()->size() == 2);
}

TEST_CASE("what another program writes while a store is opened to be read is read as well, and no reason to refuse")
{
    const Scratch scratch;
    REQUIRE(Journal::open(scratch / "store.db").value().append(checkIn("2026-03-05", Level::Dry)).ok());
    const auto reader = Journal::openToRead(scratch / "store.db");
    REQUIRE(reader.ok());
    auto writer = Journal::open(scratch / "store.db");
    REQUIRE(writer.value().append(checkIn("2026-03-06", Level::Clammy)).ok());
    const auto read = reader->readAll();
    REQUIRE(read.ok());
    CHECK(read->size() == 2);
    CHECK(writer.value().append(checkIn("2026-03-07", Level::Dry)).ok());
}

TEST_CASE("a file that is no store is refused and left untouched")
{
    const Scratch scratch;
    CHECK(codeOf(Journal::openExisting(scratch / "none.db")) == "store-missing");
    CHECK_FALSE(std::filesystem::exists(scratch / "none.db"));
    CHECK(codeOf(Journal::open(scratch.path())) == "store-unreadable");
    CHECK(codeOf(Journal::open(scratch / "no-such-folder" / "store.db")) == "store-unreadable");

    testing::writeTo(scratch / "letter.txt", std::string(5000, 'x'));
    CHECK(codeOf(Journal::open(scratch / "letter.txt")) == "store-foreign");
    CHECK(testing::contentOf(scratch / "letter.txt") == std::string(5000, 'x'));

    testing::writeTo(scratch / "empty.db", "");
    CHECK(codeOf(Journal::openToRead(scratch / "none.db")) == "store-missing");
    CHECK_FALSE(std::filesystem::exists(scratch / "none.db"));
    CHECK(Journal::openToRead(scratch / "empty.db")->readAll()->empty());
    CHECK(std::filesystem::file_size(scratch / "empty.db") == 0);
    CHECK(Journal::openExisting(scratch / "empty.db")->check().ok);
    testing::writeTo(scratch / "cut.db", "");
    testing::writeTo(scratch / "cut.db.before-import.copy", "whatever it is");
    CHECK(codeOf(Journal::open(scratch / "cut.db")) == "store-damaged");
    testing::writeTo(scratch / "tiny.txt", "x");
    CHECK(codeOf(Journal::open(scratch / "tiny.txt")) == "store-foreign");
    CHECK(testing::contentOf(scratch / "tiny.txt") == "x");

    {
        SQLite::Database other((scratch / "other.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        other.exec("CREATE TABLE address(name TEXT)");
    }
    const auto before = testing::contentOf(scratch / "other.db");
    CHECK(codeOf(Journal::open(scratch / "other.db")) == "store-foreign");
    CHECK(testing::contentOf(scratch / "other.db") == before);
}

TEST_CASE("rights that are missing are named")
{
    const Scratch scratch;
    {
        REQUIRE(Journal::open(scratch / "store.db").value().append(checkIn("2026-03-01", Level::Dry)).ok());
    }
    ::chmod(scratch.path().c_str(), 0755);
    ::chmod((scratch / "store.db").c_str(), 0444);
    {
        const testing::Unprivileged nobody;
        CHECK(codeOf(Journal::open(scratch / "store.db")) == "store-read-only");
        CHECK(codeOf(Journal::open(scratch / "new.db")) == "store-unreadable");
    }
    ::chmod((scratch / "store.db").c_str(), 0000);
    {
        const testing::Unprivileged nobody;
        CHECK(codeOf(Journal::open(scratch / "store.db")) == "store-unreadable");
    }
}

TEST_CASE("a wrong bit in a fact is found on reading and by the check")
{
    const Scratch scratch;
    {
        REQUIRE(Journal::open(scratch / "store.db").value().append(checkIn("2026-03-01", Level::Dry)).ok());
    }
    const auto sql = GENERATE(as<std::string>{}, "UPDATE fact SET happened_day = happened_day + 1",
                              "UPDATE fact SET body = replace(body, 'dry', 'wet')", "UPDATE fact SET person = 'p2'");
    {
        SQLite::Database db((scratch / "store.db").string(), SQLite::OPEN_READWRITE);
        REQUIRE(db.exec(sql) == 1);
    }
    const auto journal = Journal::openExisting(scratch / "store.db");
    REQUIRE(journal.ok());
    REQUIRE_FALSE(journal->readAll().ok());
    CHECK(journal->readAll().error().code == "store-damaged");
    CHECK_FALSE(journal->check().ok);
    CHECK(journal->check().problems.size() == 1);
}

TEST_CASE("a path that can be none is refused as such, and a record that cannot be kept replaces none")
{
    const Scratch scratch;
    CHECK(codeOf(Journal::openExisting(scratch / std::string(300, 'x').c_str())) == "store-unreadable");
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.value().append(checkIn("2026-03-01", Level::Dry)).ok());
    const auto before = *journal->readAll();
    Fact bad = checkIn("2026-03-02", Level::Dry);
    bad.payload = Hdss{DiarySite::Feet, 7};
    CHECK(journal.value().replaceAll({bad}).error().code == "field-invalid");
    Fact twice = checkIn("2026-03-02", Level::Dry);
    twice.id = "a1";
    CHECK(journal.value().replaceAll({twice, twice}).error().code == "id-known");
    CHECK(*journal->readAll() == before);
}
