#include "journal/Repair.h"

#include "Scratch.h"
#include "core/RandomFacts.h"
#include "core/Tally.h"
#include "journal/Copies.h"
#include "journal/Rows.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <chrono>

using namespace firstdew;
using namespace firstdew::facts;
using namespace firstdew::journal;
using testing::Scratch;

namespace {

/// A store of many pages with some facts in a copy kept beside it.
std::vector<Fact> fill(const std::filesystem::path& file, bool withCopy)
{
    auto facts = testing::RandomFacts(21).many(300);
    for (std::size_t i = 0; i < facts.size(); ++i)
        facts[i].recordedMs = static_cast<long long>(i);
    auto journal = Journal::open(file);
    REQUIRE(journal.value().appendAll({facts.begin(), facts.begin() + 200}).ok());
    if (withCopy)
        REQUIRE(journal.value().keepCopy("before-import").ok());
    REQUIRE(journal.value().appendAll({facts.begin() + 200, facts.end()}).ok());
    return facts;
}

/// Overwrites page `number` (from 1) with noise.
void ruinPage(const std::filesystem::path& file, std::size_t number)
{
    auto bytes = testing::contentOf(file);
    REQUIRE(bytes.size() >= number * 4096);
    std::fill_n(bytes.begin() + static_cast<std::ptrdiff_t>((number - 1) * 4096), 4096, '\xa5');
    testing::writeTo(file, bytes);
}

bool within(const std::vector<Fact>& some, const std::vector<Fact>& all)
{
    return std::ranges::all_of(some, [&](const Fact& f) { return std::ranges::find(all, f) != all.end(); });
}

} // namespace

/// Changes the body of one check-in to `body`, sealed as a version that knows it would.
void writeAsNewer(const std::filesystem::path& file, const std::string& id, const std::string& body)
{
    SQLite::Database db(file.string(), SQLite::OPEN_READWRITE);
    SQLite::Statement select(
        db, "SELECT person, kind, happened_day, happened_minute, recorded_ms, corrects FROM fact WHERE id = ?");
    select.bind(1, id);
    REQUIRE(select.executeStep());
    const auto text = [&](int i) { return select.getColumn(i).getString(); };
    const auto whole = [&](int i) { return static_cast<long long>(select.getColumn(i).getInt64()); };
    const Row row{id, text(0), text(1), whole(2), whole(3), whole(4), text(5), body};
    SQLite::Statement update(db, "UPDATE fact SET body = ?, seal = ? WHERE id = ?");
    update.bind(1, body);
    update.bind(2, static_cast<int64_t>(row.seal()));
    update.bind(3, id);
    REQUIRE(update.exec() == 1);
}

TEST_CASE("what only a newer version can read is refused as such, and no repair drops it")
{
    const Scratch scratch;
    const auto file = scratch / "store.db";
    std::string id;
    {
        auto journal = Journal::open(file);
        REQUIRE(journal.value()
                    .append({"", "p1", {LocalDate(20000), {0}}, 1, "", CheckIn{DiarySite::Feet, Level::Wet, {}}})
                    .ok());
        id = *journal.value().append(
            {"", "p1", {LocalDate(20001), {0}}, 2, "", CheckIn{DiarySite::Feet, Level::Clammy, {}}});
    }
    writeAsNewer(file, id, R"({"level":"clammy","site":"feet","with":["moonlight"]})");
    const auto before = testing::contentOf(file);
    const auto read = Journal::openExisting(file)->readAll();
    REQUIRE_FALSE(read.ok());
    CHECK(read.error().code == "store-newer");
    CHECK(read.error().message.find(id) != std::string::npos);
    const auto repaired = repair(file);
    REQUIRE_FALSE(repaired.ok());
    CHECK(repaired.error().code == "store-newer");
    CHECK(testing::contentOf(file) == before);
}

TEST_CASE("a whole store is left alone")
{
    const Scratch scratch;
    const auto facts = fill(scratch / "store.db", true);
    const auto before = testing::contentOf(scratch / "store.db");
    const auto repaired = repair(scratch / "store.db");
    REQUIRE(repaired.ok());
    CHECK(repaired->facts == facts.size());
    CHECK(repaired->aside.empty());
    CHECK(testing::contentOf(scratch / "store.db") == before);
}

TEST_CASE("whichever page is ruined, what a copy holds comes back, and nothing that was never recorded", "[fault]")
{
    std::size_t pages = 0;
    {
        const Scratch scratch;
        fill(scratch / "store.db", false);
        pages = std::filesystem::file_size(scratch / "store.db") / 4096;
    }
    int repairedPages = 0;
    for (std::size_t page = 2; page <= pages; ++page) {
        const Scratch scratch;
        const auto facts = fill(scratch / "store.db", true);
        ruinPage(scratch / "store.db", page);
        INFO("page " << page << " of " << pages);
        const auto repaired = repair(scratch / "store.db");
        REQUIRE(repaired.ok());
        const auto now = Journal::openExisting(scratch / "store.db")->readAll();
        REQUIRE(now.ok());
        CHECK(within(*now, facts));
        CHECK(within({facts.begin(), facts.begin() + 200}, *now));
        CHECK(now->size() == repaired->facts);
        if (!repaired->aside.empty()) {
            ++repairedPages;
            CHECK(std::filesystem::exists(repaired->aside));
        }
        CHECK_FALSE(std::filesystem::exists(scratch / "store.db.repairing.copy"));
    }
    CHECK(repairedPages > 10);
    testing::tally("pages ruined", static_cast<long long>(pages) - 1);
}

TEST_CASE("without a copy, a ruined page costs its own facts and no others", "[fault]")
{
    int lossy = 0;
    for (std::size_t page = 4;; ++page) { // 1 to 3: the schema and the roots of table and index
        const Scratch scratch;
        const auto facts = fill(scratch / "store.db", false);
        if (page > std::filesystem::file_size(scratch / "store.db") / 4096)
            break;
        ruinPage(scratch / "store.db", page);
        INFO("page " << page);
        const auto repaired = repair(scratch / "store.db");
        REQUIRE(repaired.ok());
        CHECK(repaired->facts > 270);
        CHECK(repaired->fromCopy == 0);
        CHECK(within(*Journal::openExisting(scratch / "store.db")->readAll(), facts));
        lossy += repaired->facts < facts.size();
    }
    CHECK(lossy > 10);
}

TEST_CASE("a record that a restore replaced does not come back by a repair")
{
    const Scratch scratch;
    const auto facts = fill(scratch / "store.db", true);
    {
        REQUIRE(Journal::openExisting(scratch / "store.db").value().keepCopy("before-restore").ok());
    }
    const auto pages = std::filesystem::file_size(scratch / "store.db") / 4096;
    ruinPage(scratch / "store.db", pages / 2);
    const auto repaired = repair(scratch / "store.db");
    REQUIRE(repaired.ok());
    CHECK(repaired->fromCopy == 0);
}

TEST_CASE("where nothing can be read, nothing is changed")
{
    const Scratch scratch;
    testing::writeTo(scratch / "letter.txt", std::string(600, 'x'));
    CHECK(repair(scratch / "letter.txt").error().code == "store-foreign");
    CHECK(repair(scratch / "none.db").error().code == "store-missing");
    fill(scratch / "store.db", false);
    auto bytes = testing::contentOf(scratch / "store.db");
    bytes.resize(4096);
    testing::writeTo(scratch / "store.db", bytes);
    const auto refused = repair(scratch / "store.db");
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.error().code == "store-damaged");
    CHECK(testing::contentOf(scratch / "store.db") == bytes);
    CHECK(copiesOf(scratch / "store.db")->empty());
}

TEST_CASE("a repair for which no working copy can be made changes nothing")
{
    const Scratch scratch;
    fill(scratch / "store.db", false);
    ruinPage(scratch / "store.db", 5);
    const auto before = testing::contentOf(scratch / "store.db");
    std::filesystem::create_directories(scratch / "store.db.repairing.copy" / "inside");
    const auto refused = repair(scratch / "store.db");
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.error().code == "file-failed");
    CHECK(refused.error().message.find("working copy") != std::string::npos);
    CHECK(testing::contentOf(scratch / "store.db") == before);
}

TEST_CASE("a copy that cannot be read, or only by a newer version, is not passed over in silence")
{
    const Scratch scratch;
    const auto facts = fill(scratch / "store.db", true);
    ruinPage(scratch / "store.db", 5);
    const auto before = testing::contentOf(scratch / "store.db");
    const auto copy = scratch / "store.db.before-import.copy";
    {
        SQLite::Database db(copy.string(), SQLite::OPEN_READWRITE);
        db.exec("PRAGMA user_version = 99");
    }
    CHECK(repair(scratch / "store.db").error().code == "store-newer");
    std::filesystem::remove(copy);
    std::filesystem::create_directory(copy);
    const auto unread = repair(scratch / "store.db");
    REQUIRE_FALSE(unread.ok());
    CHECK(unread.error().code == "file-failed");
    CHECK(unread.error().input == copy.string());
    CHECK(testing::contentOf(scratch / "store.db") == before);
}

TEST_CASE("a damaged copy is passed over for an older whole one, and one that was set aside is none")
{
    const Scratch scratch;
    const auto facts = fill(scratch / "store.db", true);
    const auto whole = scratch / "store.db.before-import.copy";
    std::filesystem::copy_file(whole, scratch / "store.db.later.copy");
    ruinPage(scratch / "store.db.later.copy", 4);
    REQUIRE(Journal::open(scratch / "store.db.damaged.copy").value().replaceAll(testing::RandomFacts(22).many(5)).ok());
    for (const char* name : {"store.db.later.copy", "store.db.damaged.copy"})
        std::filesystem::last_write_time(scratch / name,
                                         std::filesystem::last_write_time(whole) + std::chrono::hours(1));
    auto bytes = testing::contentOf(scratch / "store.db");
    bytes.resize(4096); // nothing can be had of the store itself
    testing::writeTo(scratch / "store.db", bytes);
    const auto repaired = repair(scratch / "store.db");
    REQUIRE(repaired.ok());
    CHECK(repaired->facts == 200);
    CHECK(repaired->fromCopy == 200);
    CHECK(within(*Journal::openExisting(scratch / "store.db")->readAll(), facts));
}

TEST_CASE("a repair that finds no room for what it read leaves the damaged store")
{
    const Scratch scratch;
    fill(scratch / "store.db", true);
    ruinPage(scratch / "store.db", 5);
    const auto before = testing::contentOf(scratch / "store.db");
    std::filesystem::create_directories(scratch / "store.db.fresh.copy.part" / "inside");
    CHECK_FALSE(repair(scratch / "store.db").ok());
    CHECK(testing::contentOf(scratch / "store.db") == before);
    CHECK_FALSE(std::filesystem::exists(scratch / "store.db.damaged.copy"));
}
