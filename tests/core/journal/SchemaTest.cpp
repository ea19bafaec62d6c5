#include "journal/Schema.h"

#include "Scratch.h"
#include "journal/Copies.h"
#include "journal/Journal.h"

#include <catch2/catch.hpp>
#include <sys/stat.h>

using namespace firstdew;
using namespace firstdew::journal;
using testing::Scratch;

namespace {

void fill(const std::filesystem::path& file)
{
    auto journal = Journal::open(file);
    REQUIRE(journal.ok());
    REQUIRE(journal.value().append({"", "p1", {LocalDate(20000), {0}}, 1, "", Question{"old"}}).ok());
}

std::vector<Migration> withSecond(const char* sql)
{
    std::vector<Migration> steps(migrations().begin(), migrations().end());
    steps.push_back({kSchemaVersion + 1, sql});
    return steps;
}

int versionOf(SQLite::Database& db) { return db.execAndGet("PRAGMA user_version").getInt(); }

} // namespace

TEST_CASE("an older store is brought forward, and a whole copy of the old one kept for the owner alone")
{
    const Scratch scratch;
    fill(scratch / "store.db");
    {
        SQLite::Database db((scratch / "store.db").string(), SQLite::OPEN_READWRITE);
        REQUIRE(bringUpToDate(db, scratch / "store.db", withSecond("ALTER TABLE fact ADD COLUMN zone TEXT")).ok());
        CHECK(versionOf(db) == kSchemaVersion + 1);
        CHECK(db.execAndGet("SELECT count(*) FROM fact WHERE zone IS NULL").getInt() == 1);
    }
    const auto copies = copiesOf(scratch / "store.db").value();
    REQUIRE(copies.size() == 1);
    CHECK(copies[0].filename() == "store.db.before-version-3.copy");
    struct stat s {};
    REQUIRE(::stat(copies[0].c_str(), &s) == 0);
    CHECK((s.st_mode & 0777U) == 0600);
    const auto old = Journal::openExisting(copies[0]);
    REQUIRE(old.ok());
    CHECK(old->readAll()->size() == 1);
}

TEST_CASE("a step that fails leaves the old store as it was")
{
    const Scratch scratch;
    fill(scratch / "store.db");
    {
        SQLite::Database db((scratch / "store.db").string(), SQLite::OPEN_READWRITE);
        CHECK_THROWS_AS(
            bringUpToDate(db, scratch / "store.db", withSecond("DROP TABLE fact; SELECT no_such_function()")).ok(),
            SQLite::Exception);
        CHECK(versionOf(db) == kSchemaVersion);
    }
    CHECK(Journal::openExisting(scratch / "store.db")->readAll()->size() == 1);
}

TEST_CASE("a newer store is refused, and nothing is changed in it")
{
    const Scratch scratch;
    fill(scratch / "store.db");
    {
        SQLite::Database db((scratch / "store.db").string(), SQLite::OPEN_READWRITE);
        db.exec("PRAGMA user_version = 99");
    }
    const auto before = testing::contentOf(scratch / "store.db");
    const auto opened = Journal::open(scratch / "store.db");
    REQUIRE_FALSE(opened.ok());
    CHECK(opened.error().code == "store-newer");
    CHECK(testing::contentOf(scratch / "store.db") == before);
    CHECK(copiesOf(scratch / "store.db")->empty());
}

TEST_CASE("an empty file becomes a store without a copy")
{
    const Scratch scratch;
    testing::writeTo(scratch / "store.db", "");
    REQUIRE(Journal::open(scratch / "store.db").ok());
    CHECK(copiesOf(scratch / "store.db")->empty());
}

TEST_CASE("without a copy of the old store no step is taken")
{
    const Scratch scratch;
    fill(scratch / "store.db");
    std::filesystem::create_directories(scratch / "store.db.before-version-3.copy" / "inside");
    SQLite::Database db((scratch / "store.db").string(), SQLite::OPEN_READWRITE);
    const auto steps = withSecond("ALTER TABLE fact ADD COLUMN zone TEXT");
    CHECK(bringUpToDate(db, scratch / "store.db", steps).error().code == "file-failed");
    CHECK(versionOf(db) == kSchemaVersion);
}

TEST_CASE("what is no store of ours is not brought forward")
{
    const Scratch scratch;
    SQLite::Database db((scratch / "other.db").string(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    db.exec("PRAGMA application_id = 7");
    CHECK(bringUpToDate(db, scratch / "other.db", migrations()).error().code == "store-foreign");
    db.exec("PRAGMA application_id = 0");
    db.exec("CREATE TABLE address(name TEXT)");
    CHECK(bringUpToDate(db, scratch / "other.db", migrations()).error().code == "store-foreign");
    CHECK(db.execAndGet("SELECT count(*) FROM sqlite_schema").getInt() == 1);
}
