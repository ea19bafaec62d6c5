#include "FaultyVfs.h"

#include "Scratch.h"
#include "core/RandomFacts.h"
#include "core/Tally.h"
#include "journal/BackUp.h"
#include "journal/Copies.h"
#include "journal/Import.h"
#include "journal/Repair.h"

#include <catch2/catch.hpp>
#include <functional>

// The ways out of trouble break off themselves: at every write, sync and truncation, with a disk that fails once or is
// full from then on.

using namespace firstdew;
using namespace firstdew::journal;
using testing::Fault;
using testing::FaultyVfs;
using testing::Scratch;

namespace {

std::vector<Fact> inOrder(unsigned seed, int count)
{
    auto facts = testing::RandomFacts(seed).many(count);
    for (std::size_t i = 0; i < facts.size(); ++i)
        facts[i].recordedMs = static_cast<long long>(i);
    return facts;
}

void ruin(const std::filesystem::path& file)
{
    auto bytes = testing::contentOf(file);
    const auto page = static_cast<std::ptrdiff_t>(bytes.size() / 4096 / 2 * 4096);
    std::fill_n(bytes.begin() + page, 4096, '\xa5');
    testing::writeTo(file, bytes);
}

/// `make` a store, let `act` on it break at the n-th operation, and `judge` what is there by whether it said it was
/// done; for every n until nothing breaks any more.
void breakEvery(std::string_view what, const std::function<void(const std::filesystem::path&)>& make,
                const std::function<bool(const std::filesystem::path&)>& act,
                const std::function<void(const std::filesystem::path&, bool done)>& judge)
{
    int broken = 0;
    for (const Fault fault : {Fault::Once, Fault::FullStays})
        for (int n = 1, struck = 1; struck != 0; ++n) {
            const Scratch scratch;
            make(scratch / "store.db");
            bool done = false;
            {
                const FaultyVfs disk(fault, n);
                done = act(scratch / "store.db");
                struck = disk.struck() ? 1 : 0;
            }
            INFO(what << ", operation " << n);
            judge(scratch / "store.db", done);
            if (struck == 0)
                CHECK(done);
            broken += struck;
        }
    CHECK(broken > 20);
    testing::tally("writes, syncs and truncations broken", broken);
}

std::vector<Fact> contentOf(const std::filesystem::path& store)
{
    auto facts = Journal::openExisting(store)->readAll();
    REQUIRE(facts.ok());
    return facts.value();
}

} // namespace

TEST_CASE("a repair that breaks off leaves the damaged store, and can be had again", "[fault]")
{
    const auto facts = inOrder(41, 120);
    const std::vector<Fact> copied(facts.begin(), facts.begin() + 80);
    const auto make = [&](const std::filesystem::path& file) {
        auto journal = Journal::open(file);
        REQUIRE(journal.value().appendAll(copied).ok());
        REQUIRE(journal.value().keepCopy("before-import").ok());
        REQUIRE(journal.value().appendAll({facts.begin() + 80, facts.end()}).ok());
        const auto closed = std::move(journal.value());
    };
    breakEvery(
        "repair", [&](const auto& file) { make(file), ruin(file); }, [](const auto& file) { return repair(file).ok(); },
        [&](const auto& file, bool done) {
            if (!done) // the file is there all the time, and never another that looks whole
                REQUIRE_FALSE(Journal::openExisting(file)->check().ok);
            REQUIRE(repair(file).ok());
            const auto now = contentOf(file);
            for (const Fact& fact : copied)
                REQUIRE(std::ranges::find(now, fact) != now.end());
            for (const Fact& fact : now)
                REQUIRE(std::ranges::find(facts, fact) != facts.end());
        });
}

TEST_CASE("a restore that breaks off leaves the record as it was or as it comes, whole", "[fault]")
{
    const auto before = inOrder(42, 60);
    const auto after = inOrder(43, 70);
    const auto make = [&](const std::filesystem::path& file) {
        REQUIRE(Journal::open(file).value().appendAll(before).ok());
    };
    const auto act = [&](const std::filesystem::path& file) { return restore(file, after).ok(); };
    breakEvery("restore", make, act,
               [&](const auto& file, bool done) { CHECK(contentOf(file) == (done ? after : before)); });
    breakEvery(
        "restore over a damaged store", [&](const auto& file) { make(file), ruin(file); }, act,
        [&](const auto& file, bool done) {
            if (!done) {
                REQUIRE(std::filesystem::exists(file));
                REQUIRE_FALSE(Journal::openExisting(file)->check().ok);
                REQUIRE(restore(file, after).ok());
            }
            CHECK(contentOf(file) == after);
        });
}

TEST_CASE("an import that breaks off adds nothing, and can be had again", "[fault]")
{
    const auto facts = inOrder(44, 60);
    const std::vector<Fact> before(facts.begin(), facts.begin() + 30);
    std::vector<codec::Incoming> incoming;
    for (const Fact& fact : facts)
        incoming.push_back({fact, "x.json", 1});
    const auto act = [&](const std::filesystem::path& file) {
        auto journal = Journal::openExisting(file);
        return journal.ok() && importInto(journal.value(), incoming).ok();
    };
    breakEvery(
        "import", [&](const auto& file) { REQUIRE(Journal::open(file).value().appendAll(before).ok()); }, act,
        [&](const auto& file, bool done) {
            CHECK(contentOf(file) == (done ? facts : before));
            REQUIRE(act(file));
            CHECK(contentOf(file) == facts);
        });
}
