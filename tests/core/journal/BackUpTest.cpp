#include "journal/BackUp.h"

#include "Scratch.h"
#include "codec/RecordJson.h"
#include "core/RandomFacts.h"
#include "journal/Copies.h"
#include "journal/Repair.h"
#include "journal/ReplaceDamaged.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <catch2/catch.hpp>

using namespace firstdew;
using namespace firstdew::journal;
using testing::Scratch;

namespace {

constexpr unsigned kFew = 1024; // rounds: the tests guess nothing
const std::string kWord = "correct horse, Ünïcode";

std::string fileNames(const Scratch& scratch)
{
    std::string out;
    for (const auto& entry : std::filesystem::directory_iterator(scratch.path()))
        out += entry.path().filename().string() + " ";
    return out;
}

/// Every byte of every file in the folder.
std::string everything(const Scratch& scratch)
{
    std::string out;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(scratch.path()))
        out += testing::contentOf(entry.path());
    return out;
}

/// An exit status of a shell command.
int shell(const std::string& command) { return std::system(command.c_str()); }

} // namespace

TEST_CASE("a back-up opens with its passphrase alone")
{
    const Scratch scratch;
    const auto facts = testing::RandomFacts(3).many(50);
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.value().appendAll(facts).ok());
    const auto sealed = backUp(*journal, kWord, kFew);
    REQUIRE(sealed.ok());
    CHECK(*openBackUp("b.pgp", *sealed, kWord) == facts);
    CHECK(sealed->find("check-in") == std::string::npos);
    CHECK(openBackUp("b.pgp", *sealed, "Correct horse").error().code == "passphrase-wrong");
    CHECK(openBackUp("b.pgp", *sealed, "").error().code == "passphrase-wrong");
    CHECK(backUp(*journal, "", kFew).error().code == "passphrase-empty");
}

TEST_CASE("a back-up cut anywhere or with any byte changed is refused")
{
    const auto sealed = *seal(codec::recordJson(testing::RandomFacts(4).many(2)), kWord, kFew);
    for (std::size_t length = 0; length < sealed.size(); ++length)
        CHECK_FALSE(openBackUp("b.pgp", sealed.substr(0, length), kWord).ok());
    for (std::size_t at = 0; at < sealed.size(); ++at)
        for (const char flip : {'\x01', '\x80'}) {
            std::string bad = sealed;
            bad[at] = static_cast<char>(bad[at] ^ flip);
            INFO("byte " << at);
            CHECK_FALSE(openBackUp("b.pgp", bad, kWord).ok());
        }
    // What follows the lengths is random, and must not be taken for packets that make up for a wrong one.
    for (int i = 0; i < 100; ++i) {
        std::string bad = *seal(codec::recordJson(testing::RandomFacts(4).many(2)), kWord, kFew);
        const auto at = static_cast<std::size_t>(15 + i % 3);
        bad[at] = static_cast<char>(bad[at] ^ 1);
        CHECK_FALSE(openBackUp("b.pgp", bad, kWord).ok());
    }
    CHECK_FALSE(openBackUp("b.pgp", codec::recordJson({}), kWord).ok());
    CHECK_FALSE(openBackUp("b.pgp", *seal("{}", kWord, kFew), kWord).ok());
}

TEST_CASE("gpg opens what we seal, and we open what gpg seals")
{
    const Scratch scratch;
    const std::string home = "GNUPGHOME=" + scratch.path().string() + " ";
    const std::string gpg =
        home + "gpg --batch --quiet --pinentry-mode loopback --passphrase-file " + (scratch / "word").string() + " ";
    testing::writeTo(scratch / "word", kWord);
    const auto plain = codec::recordJson(testing::RandomFacts(5).many(200));

    testing::writeTo(scratch / "ours.pgp", *seal(plain, kWord));
    REQUIRE(shell(gpg + "-o " + (scratch / "ours.json").string() + " -d " + (scratch / "ours.pgp").string() +
                  " 2>/dev/null") == 0);
    CHECK(testing::contentOf(scratch / "ours.json") == plain);

    testing::writeTo(scratch / "theirs.json", plain);
    REQUIRE(shell(gpg + "--symmetric " + (scratch / "theirs.json").string()) == 0);
    const auto back = unseal(testing::contentOf(scratch / "theirs.json.gpg"), kWord);
    REQUIRE(back.ok());
    CHECK(*back == plain);

    // Without integrity protection anybody could have changed it.
    std::filesystem::remove(scratch / "theirs.json.gpg");
    REQUIRE(shell(gpg + "--cipher-algo 3DES --rfc2440 --disable-mdc --symmetric " + (scratch / "theirs.json").string() +
                  " 2>/dev/null") == 0);
    (void)shell(home + "gpgconf --kill all");
    const auto bare = testing::contentOf(scratch / "theirs.json.gpg");
    REQUIRE(bare.at(15) == '\xc9'); // after the passphrase's packet: encrypted data of the old kind, tag 9
    CHECK(unseal(bare, kWord).error().code == "back-up-damaged");
}

TEST_CASE("restoring replaces the record and keeps the one before")
{
    const Scratch scratch;
    const auto before = testing::RandomFacts(6).many(20);
    const auto after = testing::RandomFacts(7).many(30);
    REQUIRE(Journal::open(scratch / "store.db").value().appendAll(before).ok());
    const auto restored = restore(scratch / "store.db", after);
    REQUIRE(restored.ok());
    CHECK(restored->facts == 30);
    CHECK(*Journal::openExisting(scratch / "store.db")->readAll() == after);
    CHECK(*Journal::openExisting(restored->kept)->readAll() == before);
}

TEST_CASE("restoring into nothing makes the store")
{
    const Scratch scratch;
    const auto facts = testing::RandomFacts(8).many(20);
    const auto restored = restore(scratch / "store.db", facts);
    REQUIRE(restored.ok());
    CHECK(restored->kept.empty());
    CHECK(*Journal::openExisting(scratch / "store.db")->readAll() == facts);
}

TEST_CASE("restoring over a damaged store sets it aside; over a foreign file it is refused")
{
    const Scratch scratch;
    const auto facts = testing::RandomFacts(9).many(20);
    REQUIRE(Journal::open(scratch / "store.db").value().appendAll(testing::RandomFacts(10).many(200)).ok());
    auto bytes = testing::contentOf(scratch / "store.db");
    bytes.resize(bytes.size() / 2);
    testing::writeTo(scratch / "store.db", bytes);
    const auto restored = restore(scratch / "store.db", facts);
    REQUIRE(restored.ok());
    CHECK(restored->kept == scratch / "store.db.damaged.copy");
    CHECK(testing::contentOf(restored->kept).size() == bytes.size());
    CHECK(*Journal::openExisting(scratch / "store.db")->readAll() == facts);

    testing::writeTo(scratch / "letter.txt", "Dear doctor");
    CHECK(restore(scratch / "letter.txt", facts).error().code == "store-foreign");
    CHECK(testing::contentOf(scratch / "letter.txt") == "Dear doctor");
}

TEST_CASE("the log of a store set aside goes with it, and is not read into the new one")
{
    const Scratch scratch;
    std::string log;
    {
        auto journal = Journal::open(scratch / "store.db");
        REQUIRE(journal.value().appendAll(testing::RandomFacts(12).many(50)).ok());
        log = testing::contentOf(scratch / "store.db-wal");
        REQUIRE_FALSE(log.empty());
    }
    auto bytes = testing::contentOf(scratch / "store.db");
    for (std::size_t at = 5000; at < bytes.size(); at += 100)
        bytes[at] = static_cast<char>(bytes[at] ^ 0x55);
    // Of two logs on one base, this one would undo the damage; its own salt makes SQLite pass it over here.
    testing::writeTo(scratch / "store.db", bytes);
    log[40] = static_cast<char>(log[40] ^ 0x55);
    testing::writeTo(scratch / "store.db-wal", log);
    const auto facts = testing::RandomFacts(13).many(20);
    REQUIRE(restore(scratch / "store.db", facts).ok());
    CHECK_FALSE(std::filesystem::exists(scratch / "store.db-wal"));
    CHECK(*Journal::openExisting(scratch / "store.db")->readAll() == facts);
}

TEST_CASE("a forgotten person is in no byte of any file, and the others are all there")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.ok());
    std::vector<Fact> others;
    for (int i = 0; i < 300; ++i) {
        others.push_back(
            {fmt::format("o{}", i), "p2", {LocalDate(20000 + i), {0}}, 1, "", Question{"ordinary question"}});
        REQUIRE(journal.value()
                    .appendAll({{"", "p1", {LocalDate(20000 + i), {0}}, 1, "", Question{"Marigold Vespertine"}},
                                others.back()})
                    .ok());
    }
    REQUIRE(journal.value().keepCopy("before-import").ok());
    REQUIRE(everything(scratch).find("Marigold") != std::string::npos);
    REQUIRE(journal.value().forget("p1").ok());
    CHECK(everything(scratch).find("Marigold") == std::string::npos);
    CHECK(everything(scratch).find("\"p1\"") == std::string::npos);
    CHECK(copiesOf(scratch / "store.db")->empty());
    CHECK(*journal->readAll() == others);
    CHECK(journal->check().ok);
}

TEST_CASE("while another program reads, what is forgotten may still stand in the log, and that is said")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.value().appendAll(testing::RandomFacts(14).many(20)).ok());
    {
        SQLite::Database other((scratch / "store.db").string(), SQLite::OPEN_READWRITE);
        const SQLite::Transaction reading(other);
        SQLite::Statement select(other, "SELECT id FROM fact");
        REQUIRE(select.executeStep());
        CHECK(journal.value().forget("p1").error().code == "store-busy");
    }
    CHECK(journal.value().forget("p1").ok());
    CHECK(journal->check().ok);
}

TEST_CASE("a second damaged store is kept beside the first")
{
    const Scratch scratch;
    const auto facts = testing::RandomFacts(14).many(20);
    for (const char* name : {"store.db.damaged.copy", "store.db.damaged-2.copy"}) {
        testing::writeTo(scratch / "store.db", name);
        CHECK(*replaceDamaged(scratch / "store.db", facts) == scratch / name);
        CHECK(testing::contentOf(scratch / name) == name);
        CHECK(*Journal::openExisting(scratch / "store.db")->readAll() == facts);
    }
    CHECK_FALSE(replaceDamaged(scratch / "none.db", facts).ok());
    CHECK(copiesOf(scratch / "none.db")->empty());
}

TEST_CASE("a destroyed store leaves no file behind, and spares its neighbours")
{
    const Scratch scratch;
    {
        auto journal = Journal::open(scratch / "store.db");
        REQUIRE(journal.value().appendAll(testing::RandomFacts(11).many(20)).ok());
        REQUIRE(journal.value().keepCopy("before-import").ok());
    }
    testing::writeTo(scratch / "store.db.txt", "mine");
    testing::writeTo(scratch / "store.db.notices", "{}"); // keys of reminders name days and sites
    REQUIRE(Journal::destroy(scratch / "store.db").ok());
    CHECK(fileNames(scratch) == "store.db.txt ");
    CHECK(Journal::destroy(scratch / "store.db").ok());
}

TEST_CASE("a store that cannot be read is not sealed as if it were whole")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.value().appendAll(testing::RandomFacts(15).many(3)).ok());
    {
        SQLite::Database db((scratch / "store.db").string(), SQLite::OPEN_READWRITE);
        REQUIRE(db.exec("UPDATE fact SET recorded_ms = recorded_ms + 1") == 3);
    }
    CHECK(backUp(*journal, kWord, kFew).error().code == "store-damaged");
}

TEST_CASE("a back-up that holds one id twice with different contents is refused by its line")
{
    const Fact one{"a1", "p1", {LocalDate(20000), {0}}, 1, "", Question{"one"}};
    Fact other = one;
    other.payload = Question{"another"};
    const auto refused = openBackUp("b.pgp", *seal(codec::recordJson(std::vector{one, other}), kWord, kFew), kWord);
    REQUIRE_FALSE(refused.ok());
    CHECK(refused.error().code == "id-known");
    CHECK(refused.error().input == "b.pgp, line 3, id");
    CHECK(openBackUp("b.pgp", *seal(codec::recordJson(std::vector{one, one}), kWord, kFew), kWord)->size() == 1);
}

TEST_CASE("what is sealed opens with its passphrase, and one too long to open it with is refused")
{
    for (const std::size_t length : {1, 100, 255, 256, 1000}) {
        const std::string word(length, 'w');
        const auto sealed = seal("{}", word, kFew);
        INFO(length);
        if (length > 255) {
            REQUIRE_FALSE(sealed.ok());
            CHECK(sealed.error().code == "passphrase-too-long");
        } else {
            CHECK(*unseal(*sealed, word) == "{}");
        }
    }
}

TEST_CASE("a restore that cannot be done says why and changes nothing")
{
    const Scratch scratch;
    const auto facts = testing::RandomFacts(16).many(5);
    CHECK(restore(scratch / "no-such-folder" / "store.db", facts).error().code == "store-unreadable");

    auto bad = facts;
    bad.at(2).payload = Question{"\xff"};
    CHECK(restore(scratch / "store.db", bad).error().code == "field-invalid");
    REQUIRE(Journal::open(scratch / "store.db").value().replaceAll(facts).ok());
    CHECK(restore(scratch / "store.db", bad).error().code == "field-invalid");
    CHECK(*Journal::openExisting(scratch / "store.db")->readAll() == facts);

    // The record before has to be kept first.
    std::filesystem::remove(scratch / "store.db.before-restore.copy");
    std::filesystem::create_directories(scratch / "store.db.before-restore.copy" / "inside");
    CHECK(restore(scratch / "store.db", {}).error().code == "file-failed");
    CHECK(*Journal::openExisting(scratch / "store.db")->readAll() == facts);
    std::filesystem::remove_all(scratch / "store.db.before-restore.copy");

    auto bytes = testing::contentOf(scratch / "store.db");
    std::fill(bytes.begin() + 4096, bytes.end(), '\xa5');
    testing::writeTo(scratch / "store.db", bytes);
    CHECK(restore(scratch / "store.db", bad).error().code == "field-invalid");
    CHECK(testing::contentOf(scratch / "store.db") == bytes);
    CHECK(fileNames(scratch) == "store.db ");
}

TEST_CASE("a store that is gone or empty while copies of it are there does not begin anew, and is repaired from them "
          "or restored")
{
    const Scratch scratch;
    const auto before = testing::RandomFacts(17).many(5);
    const auto make = [&] {
        auto journal = Journal::open(scratch / "store.db");
        REQUIRE(journal.value().replaceAll(before).ok());
        REQUIRE(journal.value().keepCopy("before-import").ok());
    };
    const bool gone = GENERATE(false, true);
    const auto empty = [&] {
        testing::writeTo(scratch / "store.db", "");
        for (const char* file : {"store.db", "store.db-wal", "store.db-shm"})
            if (gone || file != std::string_view("store.db"))
                std::filesystem::remove(scratch / file);
        CHECK(Journal::open(scratch / "store.db").error().code == "store-damaged");
        if (gone)
            std::filesystem::remove(scratch / "store.db");
        CHECK(Journal::openExisting(scratch / "store.db").error().code == "store-damaged");
    };
    make(), empty();
    const auto repaired = repair(scratch / "store.db");
    REQUIRE(repaired.ok());
    CHECK(repaired->fromCopy == before.size());
    CHECK(Journal::openExisting(scratch / "store.db")->readAll()->size() == before.size());

    empty();
    if (gone)
        std::filesystem::remove(scratch / "store.db");
    const auto after = testing::RandomFacts(18).many(7);
    REQUIRE(restore(scratch / "store.db", after).ok());
    CHECK(*Journal::openExisting(scratch / "store.db")->readAll() == after);
}

TEST_CASE("a copy that cannot be put in its place is told, and the store goes on")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.value().appendAll(testing::RandomFacts(19).many(5)).ok());
    std::filesystem::create_directories(scratch / "store.db.before-import.copy" / "inside");
    const auto inTheWay = journal.value().keepCopy("before-import");
    CHECK(inTheWay.error().code == "file-failed");
    CHECK(inTheWay.error().input == (scratch / "store.db.before-import.copy").string());
    std::filesystem::create_directories(scratch / "store.db.before-restore.copy.part" / "inside");
    CHECK(journal.value().keepCopy("before-restore").ok()); // an unfinished copy has a name of its own
    CHECK(journal.value().keepCopy("no/such").error().code == "file-missing");
    CHECK(journal->check().ok);
}

TEST_CASE("where a copy cannot be removed, forgetting says so")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    std::filesystem::create_directory(scratch / "store.db.before-import.copy");
    CHECK(journal.value().forget("p1").error().code == "file-failed");
    CHECK(Journal::destroy(scratch / "store.db").error().input == (scratch / "store.db.before-import.copy").string());
    CHECK(std::filesystem::exists(scratch / "store.db"));
}

TEST_CASE("while another program writes, nothing is forgotten, and that is said")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.value().append({"", "p1", {LocalDate(20000), {0}}, 1, "", Question{"one"}}).ok());
    SQLite::Database other((scratch / "store.db").string(), SQLite::OPEN_READWRITE);
    {
        const SQLite::Transaction writing(other, SQLite::TransactionBehavior::IMMEDIATE);
        CHECK(journal.value().forget("p1").error().code == "store-busy");
    }
    CHECK(journal->readAll()->size() == 1);
}
