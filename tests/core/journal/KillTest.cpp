#include "Scratch.h"
#include "core/Tally.h"
#include "journal/Journal.h"

#include <array>
#include <catch2/catch.hpp>
#include <csignal>
#include <fmt/format.h>
#include <random>
#include <sys/wait.h>

using namespace firstdew;
using namespace firstdew::facts;
using journal::Journal;
using testing::Scratch;

namespace {

constexpr int kAtMost = 4; ///< facts of one life

/// The n-th fact of a scripted month, over and over: three check-ins a day, and a running session every third day.
Fact scripted(int n)
{
    const int day = n / 12;
    Fact fact{fmt::format("fact{:06}", n), "p1", {LocalDate(20500 + day), {480 + n % 12}},
              1'772'000'000'000LL + n,     "",   {}};
    const int slot = n % 12;
    if (slot < 3) {
        fact.payload = CheckIn{static_cast<DiarySite>(slot), static_cast<Level>(n % 4), {}};
    } else if (day % 3 == 0 && slot < 11) {
        BathEvent event;
        event.bath = fmt::format("bath{}", day);
        event.sequence = slot - 3;
        event.event = BathEventKind::Reading;
        event.reading = Milliamps{static_cast<double>(slot)};
        fact.payload = event;
    } else {
        Session session;
        session.site = Site::Feet;
        session.note = std::string(static_cast<std::size_t>(n % 700), 'n');
        fact.payload = session;
    }
    return fact;
}

/// The app's part: goes on with the fact `first`, and says so after each one that was acknowledged. That one may be
/// there: recorded, and the process killed before it could say so.
[[noreturn]] void live(const std::filesystem::path& file, int first, int acknowledge)
{
    auto journal = Journal::open(file);
    if (!journal)
        ::_exit(2);
    for (int n = first; n < first + kAtMost; ++n) {
        const auto done = journal.value().append(scripted(n));
        if (!done && !(n == first && done.error().code == "id-known"))
            ::_exit(4);
        if (::write(acknowledge, &n, sizeof n) != sizeof n)
            ::_exit(5);
    }
    for (;;) // on a busy machine whoever kills may be late, and the store must not grow without end
        ::pause();
}

/// Lets a process live until it has acknowledged `count` facts and `microseconds` more, kills it in whatever it is
/// doing then, and returns the last fact of which it said that it was recorded.
int killAfter(const std::filesystem::path& file, int first, int count, unsigned microseconds)
{
    std::array<int, 2> pipe{};
    REQUIRE(::pipe(pipe.data()) == 0);
    const pid_t child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        ::close(pipe[0]);
        live(file, first, pipe[1]);
    }
    ::close(pipe[1]);
    int last = -1;
    for (int i = 0; i < count && ::read(pipe[0], &last, sizeof last) == sizeof last; ++i) {
    }
    ::usleep(microseconds);
    ::kill(child, SIGKILL);
    while (::read(pipe[0], &last, sizeof last) == sizeof last) {
    }
    ::close(pipe[0]);
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFSIGNALED(status)); // killed, not given up with an error
    return last;
}

} // namespace

TEST_CASE("killed five hundred times, the store holds every acknowledged fact, none twice, and goes on", "[fault]")
{
    const Scratch scratch;
    std::mt19937 random(20260305);
    int last = -1;
    for (int kill = 0; kill < 500; ++kill) {
        const int acknowledged =
            killAfter(scratch / "store.db", last + 1, static_cast<int>(random() % 4), random() % 300);
        last = std::max(last, acknowledged);
        if (kill % 25 != 24)
            continue;
        const auto journal = Journal::openExisting(scratch / "store.db");
        REQUIRE(journal.ok());
        const auto facts = journal->readAll();
        REQUIRE(facts.ok());
        CHECK(static_cast<int>(facts->size()) > last);
        for (std::size_t i = 0; i < facts->size(); ++i)
            REQUIRE((*facts)[i] == scripted(static_cast<int>(i)));
        CHECK(journal->check().ok);
    }
    CHECK(last > 500);
    testing::tally("processes killed", 500);
}
