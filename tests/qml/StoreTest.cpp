#include "Store.h"
#include "Application.h"
#include "Led.h"
#include "ports/Clock.h"
#include "situation/Reminders.h"

#include <catch2/catch.hpp>

#include <QTemporaryDir>

#include <array>
#include <filesystem>

using namespace firstdew;
using namespace firstdew::facts;

namespace {

struct StillClock final : ports::Clock {
    LocalTime localNow() const override { return *LocalTime::parse("2026-03-20T21:00"); }
    Instant instant() const override { return {1'774'000'000'000, 0}; }
};

struct Kept {
    bool application = (tests::needApplication(), true);
    QTemporaryDir folder;
    StillClock clock;
    viewmodels::Store store{clock, (folder.path() + "/record.db").toStdString()};
};

BathEvent eventOf(int sequence, BathEventKind kind)
{
    BathEvent e;
    e.bath = "b1";
    e.sequence = sequence;
    e.event = kind;
    return e;
}

} // namespace

TEST_CASE("While a session runs no check-in notice comes up, whatever of it was recorded without a new judgement")
{
    Kept k;
    REQUIRE(k.store.append(SiteUse{Site::Feet, true}));
    REQUIRE_FALSE(situation::todaysReminders(k.store.diary(), k.store.now().at).due.empty());
    BathPrepared prepared;
    prepared.bath = "b1";
    prepared.site = Site::Feet;
    REQUIRE(k.store.append(prepared));
    const Payload begin = eventOf(0, BathEventKind::Begin);
    REQUIRE(k.store.append({&begin, 1}, viewmodels::Store::Assess::Later));
    CHECK(k.store.diary().running(k.store.now().at) != nullptr);
    CHECK(situation::todaysReminders(k.store.diary(), k.store.now().at).due.empty());
}

TEST_CASE("What is appended together is in the record at once, and told of once")
{
    Kept k;
    int changed = 0;
    QObject::connect(&k.store, &viewmodels::Store::changed, [&] { ++changed; });
    const std::array<Payload, 2> both{SiteUse{Site::Hands, true}, SiteUse{Site::Feet, true}};
    REQUIRE(k.store.append(both));
    CHECK(k.store.diary().sitesInUse().size() == 2);
    CHECK(k.store.situation().sites.size() == 2);
    CHECK(changed == 1);
}

TEST_CASE("Of what is appended together all is kept or nothing")
{
    Kept k;
    int failed = 0;
    QObject::connect(&k.store, &viewmodels::Store::failed, [&] { ++failed; });
    const std::array<Payload, 2> one{Question{"May I swim?"}, Question{"\xff"}}; // no UTF-8
    CHECK_FALSE(k.store.append(one));
    CHECK(k.store.diary().questions.empty());
    CHECK(failed == 1);
    k.store.reopen();
    CHECK(k.store.diary().questions.empty());
}

namespace {

/// Puts another store into the place of the open one, as a repair by the command line does.
void replace(const Kept& k, const std::string& person)
{
    const std::filesystem::path other = k.folder.path().toStdString() + "/other.db";
    {
        auto journal = journal::Journal::open(other);
        REQUIRE(journal);
        REQUIRE(journal.value().append({"", person, *LocalTime::parse("2026-03-19T20:00"), 1'773'900'000'000, "",
                                        CheckIn{DiarySite::Hands, Level::Dry, {}}}));
    }
    for (const char* log : {"-wal", "-shm"}) // they belong to the file that goes
        std::filesystem::remove(k.store.file() + log);
    std::filesystem::rename(other, k.store.file());
}

} // namespace

TEST_CASE("A check-in goes into the record that took the place of the open one, and nothing of it is lost")
{
    Kept k;
    REQUIRE(k.store.append(SiteUse{Site::Hands, true}));
    replace(k, k.store.person().toStdString());
    REQUIRE(k.store.append(CheckIn{DiarySite::Hands, Level::Clammy, {}}));
    CHECK(k.store.diary().checkIns.size() == 2);
    k.store.reopen();
    CHECK(k.store.diary().checkIns.size() == 2);
    CHECK(k.store.diary().sitesInUse().size() == 1); // the choice of a site went with the file that was replaced
}

TEST_CASE("A record that is gone, or now somebody else's, is said to be so, and nothing is written into it")
{
    const bool gone = GENERATE(true, false);
    Kept k;
    REQUIRE(k.store.append(SiteUse{Site::Hands, true}));
    int failed = 0;
    QObject::connect(&k.store, &viewmodels::Store::failed, [&] { ++failed; });
    if (gone)
        std::filesystem::remove(k.store.file());
    else
        replace(k, "somebody-else");
    CHECK_FALSE(k.store.append(CheckIn{DiarySite::Hands, Level::Clammy, {}}));
    CHECK(failed == 1);
    CHECK(k.store.errorText().startsWith("The file with your record was moved, deleted or replaced"));
    CHECK(std::filesystem::exists(k.store.file()) != gone);
}

TEST_CASE("What another program records in the open record is seen, and what the app records itself is not read again")
{
    Kept k;
    REQUIRE(k.store.append(SiteUse{Site::Hands, true}));
    int changed = 0;
    QObject::connect(&k.store, &viewmodels::Store::changed, [&] { ++changed; });
    k.store.follow();
    CHECK(changed == 0);
    {
        auto other = journal::Journal::openExisting(k.store.file());
        REQUIRE(other);
        REQUIRE(other.value().append({"", k.store.person().toStdString(), *LocalTime::parse("2026-03-20T20:30"),
                                      1'774'000'000'001, "", CheckIn{DiarySite::Hands, Level::Clammy, {}}}));
    }
    k.store.follow();
    CHECK(changed == 1);
    CHECK(k.store.diary().checkIns.size() == 1);
    REQUIRE(k.store.append(CheckIn{DiarySite::Hands, Level::Wet, {}}));
    k.store.follow();
    CHECK(changed == 2);
}

TEST_CASE("A session that is killed as soon as it has begun is asked about")
{
    firstdew::tests::Led s;
    s.askToBegin();
    const viewmodels::Store afterTheKill(s.clock, s.store.file());
    CHECK(afterTheKill.diary().unwritten() != nullptr);
}
