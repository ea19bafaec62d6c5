#include "Store.h"
#include "Application.h"
#include "ports/Clock.h"
#include "situation/Reminders.h"

#include <catch2/catch.hpp>

#include <QTemporaryDir>

#include <array>

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
    CHECK(k.store.diary().running() != nullptr);
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
