#include "journal/OwnFile.h"

#include "Scratch.h"

#include <catch2/catch.hpp>
#include <csignal>
#include <sys/resource.h>
#include <sys/stat.h>

using namespace firstdew;
using namespace firstdew::journal;
using testing::Scratch;

namespace {

/// While it lives, no file of the process may grow past so many bytes: a disk that takes no more. Neither does the
/// report of the tests then, so that nothing is checked meanwhile.
class Room {
public:
    explicit Room(rlim_t bytes)
    {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        ::getrlimit(RLIMIT_FSIZE, &m_was);
        const rlimit less{bytes, m_was.rlim_max};
        ::setrlimit(RLIMIT_FSIZE, &less);
    }
    Room(const Room&) = delete;
    Room& operator=(const Room&) = delete;
    ~Room()
    {
        ::setrlimit(RLIMIT_FSIZE, &m_was);
        std::signal(SIGXFSZ, m_handler);
    }

private:
    rlimit m_was{};
    void (*m_handler)(int) = nullptr;
};

} // namespace

TEST_CASE("a file is replaced whole and for its owner alone")
{
    const Scratch scratch;
    testing::writeTo(scratch / "a", "before");
    ::chmod((scratch / "a").c_str(), 0644);
    REQUIRE(replaceFile(scratch / "a", "after").ok());
    CHECK(testing::contentOf(scratch / "a") == "after");
    struct stat s {};
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

TEST_CASE("where a write breaks off, the file before stands and no half is left")
{
    const Scratch scratch;
    testing::writeTo(scratch / "a", "before");
    const auto failed = [&] {
        const Room room(10);
        return replaceFile(scratch / "a", std::string(5000, 'x'));
    }();
    REQUIRE_FALSE(failed.ok());
    CHECK(failed.error().code == "file-failed");
    CHECK(failed.error().message.find("cannot be written") != std::string::npos);
    CHECK(testing::contentOf(scratch / "a") == "before");
    CHECK_FALSE(std::filesystem::exists(scratch / "a.part"));
}

TEST_CASE("what cannot be wiped is not removed either, so that nobody takes it for gone")
{
    const Scratch scratch;
    testing::writeTo(scratch / "a", std::string(5000, 'x'));
    const auto failed = [&] {
        const Room room(10);
        return wipe(scratch / "a");
    }();
    REQUIRE_FALSE(failed.ok());
    CHECK(failed.error().message.find("cannot be removed") != std::string::npos);
    CHECK(std::filesystem::exists(scratch / "a"));
    CHECK(wipe(scratch / "a").ok());
    CHECK_FALSE(std::filesystem::exists(scratch / "a"));
    CHECK(wipe(scratch / "a").ok()); // gone is gone
}

TEST_CASE("a file in a folder that cannot be changed is emptied of its content, and that it stays is told")
{
    const Scratch scratch;
    std::filesystem::create_directory(scratch / "folder");
    testing::writeTo(scratch / "folder" / "a", "mine");
    ::chmod((scratch / "folder" / "a").c_str(), 0666);
    ::chmod((scratch / "folder").c_str(), 0555);
    ::chmod(scratch.path().c_str(), 0755);
    const testing::Unprivileged nobody;
    CHECK(wipe(scratch / "folder" / "a").error().code == "file-failed");
    CHECK(testing::contentOf(scratch / "folder" / "a") == std::string(4, '\0'));
}

TEST_CASE("a folder of our own is made, and emptied of its files when it is there")
{
    const Scratch scratch;
    const auto folder = scratch / "cache" / "outgoing";
    REQUIRE(emptyOwnFolder(folder));
    struct stat s {};
    REQUIRE(::stat(folder.c_str(), &s) == 0);
    CHECK((s.st_mode & 0777) == 0700);
    REQUIRE(writeNewFile(folder / "a.pdf", "content"));
    REQUIRE(emptyOwnFolder(folder));
    CHECK(std::filesystem::is_directory(folder));
    CHECK(std::filesystem::is_empty(folder));
    REQUIRE(writeNewFile(scratch / "file", "content"));
    CHECK_FALSE(emptyOwnFolder(scratch / "file"));
    CHECK_FALSE(emptyOwnFolder("/proc/none/outgoing"));
}

TEST_CASE("what is no file on a disk cannot be forced to one")
{
    const auto failed = forceToDisk("/dev/null");
    REQUIRE_FALSE(failed.ok());
    CHECK(failed.error().code == "file-failed");
    CHECK(failed.error().message.find("forced to disk") != std::string::npos);
}

TEST_CASE("a folder that cannot be read is told when a file in it is to be forced to disk")
{
    const Scratch scratch;
    testing::writeTo(scratch / "a", "mine");
    ::chmod((scratch / "a").c_str(), 0644);
    ::chmod(scratch.path().c_str(), 0711);
    {
        const testing::Unprivileged nobody;
        CHECK(forceToDisk(scratch / "a").error().code == "file-failed");
    }
    CHECK(forceToDisk(scratch / "a").ok());
}

TEST_CASE("a file named without a folder lies in the present one")
{
    const Scratch scratch;
    const auto was = std::filesystem::current_path();
    std::filesystem::current_path(scratch.path());
    const bool done = replaceFile("a", "here").ok();
    std::filesystem::current_path(was);
    CHECK(done);
    CHECK(testing::contentOf(scratch / "a") == "here");
}

TEST_CASE("a file is made for its owner alone, and one that is there is left as it is")
{
    const Scratch scratch;
    REQUIRE(createOwn(scratch / "a").ok());
    struct stat s {};
    REQUIRE(::stat((scratch / "a").c_str(), &s) == 0);
    CHECK((s.st_mode & 0777U) == 0600);
    testing::writeTo(scratch / "a", "mine");
    CHECK(createOwn(scratch / "a").ok());
    CHECK(testing::contentOf(scratch / "a") == "mine");
    CHECK(createOwn(scratch / "no" / "a").error().code == "file-missing");
}
