#include "journal/BackUp.h"
#include "journal/Copies.h"
#include "journal/OwnFile.h"

#include "Scratch.h"

#include <catch2/catch.hpp>
#include <functional>

// A store whose file is changed by others while it is open, and what is left of what was deleted.
using namespace firstdew;
using namespace firstdew::journal;
using testing::Scratch;

namespace {

namespace fs = std::filesystem;

Fact question(const char* text) { return {"", "ab", {LocalDate(20000), {0}}, 1, "", Question{text}}; }

} // namespace

TEST_CASE("a store that was deleted or replaced under an open one takes nothing more, and says so")
{
    const std::function<void(const fs::path&)> harms[] = {
        [](const fs::path& file) { fs::remove(file); },
        [](const fs::path& file) { fs::remove(beside(file, "-wal")); },
        [](const fs::path& file) {
            fs::copy_file(file, beside(file, ".other"));
            fs::rename(beside(file, ".other"), file);
        },
        [](const fs::path& file) { fs::rename(file, beside(file, ".elsewhere")); },
    };
    for (const auto& harm : harms) {
        const Scratch scratch;
        auto journal = Journal::open(scratch / "store.db");
        REQUIRE(journal.value().append(question("before")).ok());
        harm(scratch / "store.db");
        CHECK(journal.value().append(question("after")).error().code == "store-replaced");
        CHECK(journal.value().appendAll({question("a"), question("b")}).error().code == "store-replaced");
        CHECK(journal.value().replaceAll({question("c")}).error().code == "store-replaced");
        CHECK(journal.value().keepCopy("before-import").error().code == "store-replaced");
        CHECK(journal.value().forget("ab").error().code == "store-replaced");
    }
}

TEST_CASE("a store that only got a second name goes on")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    fs::create_hard_link(scratch / "store.db", scratch / "second");
    CHECK(journal.value().append(question("after")).ok());
}

TEST_CASE("a copy that another takes the place of is overwritten, and so is every copy when a person is forgotten")
{
    const Scratch scratch;
    auto journal = Journal::open(scratch / "store.db");
    REQUIRE(journal.value().append(question("Marigold Vespertine")).ok());
    const auto first = journal.value().keepCopy("before-import");
    fs::create_hard_link(*first, scratch / "peek"); // what stays readable on the disk under no name
    const auto second = journal.value().keepCopy("before-import");
    CHECK(testing::contentOf(scratch / "peek").find("Marigold") == std::string::npos);
    fs::create_hard_link(*second, scratch / "peek2");
    REQUIRE(journal.value().forget("ab").ok());
    CHECK(testing::contentOf(scratch / "peek2").find("Marigold") == std::string::npos);
    CHECK(copiesOf(scratch / "store.db")->empty());
}

TEST_CASE("copies belong to a store by exact names")
{
    for (const char* name : {"anna.before-import.copy", "anna.before-restore.copy", "anna.before-version-2.copy",
                             "anna.damaged.copy", "anna.damaged-3-wal.copy", "anna.before-import.copy.part",
                             "anna.before-import.copy.0123456789ab.part", "anna.repairing.copy-wal"})
        CHECK((reasonOf(name, "anna").empty() == std::string_view(name).ends_with("copy-wal")));
    for (const char* name :
         {"anna.db.before-import.copy", "anna.holiday.copy", "annabel.before-import.copy", "anna.before-version-.copy",
          "anna.damaged-x.copy", "anna.before-import.copy.zip", "anna", "anna.copy", "anna.before-import.copyright"})
        CHECK(reasonOf(name, "anna").empty());
}

TEST_CASE("a new back-up takes a name that nothing has, so that a fuller one is never replaced")
{
    const Scratch scratch;
    const auto wanted = scratch / "firstdew-2026-03-05.pgp";
    CHECK(*backUpName(wanted) == wanted);
    testing::writeTo(wanted, "fuller");
    CHECK(*backUpName(wanted) == scratch / "firstdew-2026-03-05-2.pgp");
    testing::writeTo(scratch / "firstdew-2026-03-05-2.pgp", "");
    CHECK(*backUpName(wanted) == scratch / "firstdew-2026-03-05-3.pgp");
    CHECK(writeNewFile(wanted, "emptier").error().code == "file-exists");
    CHECK(testing::contentOf(wanted) == "fuller");
}

TEST_CASE("what was sealed to unpack to more than the bound is refused")
{
    const auto sealed = seal(std::string(1'000'000, 'x'), "a long passphrase", 1024);
    CHECK(unseal(*sealed, "a long passphrase", 1'000'000).ok());
    CHECK(unseal(*sealed, "a long passphrase", 999'999).error().code == "back-up-too-large");
}
