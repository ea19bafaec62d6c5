#include "journal/AnyRecord.h"

#include "Scratch.h"

#include <catch2/catch.hpp>
#include <fstream>

using namespace firstdew::journal;
using firstdew::testing::Scratch;
namespace fs = std::filesystem;

TEST_CASE("the files of a folder come in order, without what is hidden or lies beside a store")
{
    const Scratch scratch;
    const fs::path folder = scratch / "records";
    fs::create_directories(folder / "within");
    for (const char* name : {"b.json", "a.db", "a.db-wal", "a.db-shm", "a.db.copy", ".hidden", "c.pgp"})
        std::ofstream(folder / name) << "x";
    const auto files = recordFilesIn(folder);
    REQUIRE(files.ok());
    CHECK(*files == std::vector<fs::path>{folder / "a.db", folder / "b.json", folder / "c.pgp"});
    CHECK(recordFilesIn(folder / "nowhere").error().code == "folder-unreadable");
}
