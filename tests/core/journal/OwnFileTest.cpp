#include "journal/OwnFile.h"

#include "Scratch.h"

#include <catch2/catch.hpp>
#include <sys/stat.h>

using namespace firstdew;
using namespace firstdew::journal;
using testing::Scratch;

TEST_CASE("a file is replaced whole and for its owner alone")
{
    const Scratch scratch;
    testing::writeTo(scratch / "a", "before");
    ::chmod((scratch / "a").c_str(), 0644);
    REQUIRE(replaceFile(scratch / "a", "after").ok());
    CHECK(testing::contentOf(scratch / "a") == "after");
    struct stat s{};
    REQUIRE(::stat((scratch / "a").c_str(), &s) == 0);
    CHECK((s.st_mode & 0777U) == 0600);
    CHECK_FALSE(std::filesystem::exists(scratch / "a.part"));
}

TEST_CASE("what cannot be written leaves no half of itself")
{
    const Scratch scratch;
    std::filesystem::create_directory(scratch / "folder");
    testing::writeTo(scratch / "folder" / "inside", "x");
    CHECK(replaceFile(scratch / "folder", "content").error().code == "file-failed");
    CHECK_FALSE(std::filesystem::exists(scratch / "folder.part"));
    CHECK(replaceFile(scratch / "no" / "file", "content").error().code == "file-missing");
    // A device that is always full.
    CHECK(replaceFile("/dev/full/x", "content").error().code == "file-failed");
}

TEST_CASE("rights that are missing are told")
{
    const Scratch scratch;
    ::chmod(scratch.path().c_str(), 0755);
    testing::writeTo(scratch / "a", "mine");
    ::chmod((scratch / "a").c_str(), 0600);
    const testing::Unprivileged nobody;
    CHECK(readFile(scratch / "a", 100).error().code == "file-failed");
    CHECK(wipe(scratch / "a").error().code == "file-failed");
    CHECK(createOwn(scratch / "b").error().code == "file-failed");
    CHECK(replaceFile(scratch / "b", "x").error().code == "file-failed");
    CHECK(forceToDisk(scratch / "a").error().code == "file-failed");
}

TEST_CASE("a file too large to be the right one is not read into memory")
{
    const Scratch scratch;
    testing::writeTo(scratch / "a", std::string(3'000'000, 'x'));
    CHECK(readFile(scratch / "a", 3'000'000).ok());
    CHECK(readFile(scratch / "a", 2'000'000).error().code == "file-too-large");
    CHECK(readFile(scratch.path(), 100).error().code == "file-failed");
}
