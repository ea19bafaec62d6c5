#include "Led.h"

#include <catch2/catch.hpp>

#include <QFile>

#include <algorithm>

using namespace firstdew;
using namespace firstdew::facts;
using namespace firstdew::tests;

namespace {

/// The record as it lies on the disk, its log included.
QByteArray bytesOf(const Led& s)
{
    QByteArray all;
    for (const char* name : {"/record.db", "/record.db-wal"})
        if (QFile file(s.folder.path() + name); file.open(QIODevice::ReadOnly))
            all += file.readAll();
    return all;
}

/// Somebody who has a machine, and answered no health question yet.
void settleIn(Led& s)
{
    REQUIRE(s.store.append(Machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Mains, {}}));
    REQUIRE(s.store.append(SiteUse{Site::Feet, true}));
    REQUIRE(s.store.append(Person{"Alma", LocalDate::parse("1990-04-23"), {}, {}, {}}));
}

/// To the end of practice, by the large button and the clock.
void practiseThrough(Led& s)
{
    for (int i = 0; i < 200 && s.bath.page() == ui::BathPage::Run; ++i)
        if (s.bath.running().main != ui::MainButton::None && !s.bath.running().timed)
            s.bath.primary();
        else
            s.pass(5);
}

} // namespace

TEST_CASE("A whole practice leaves the record as it was, tells nobody to turn anything up, and shows outside the app "
          "nothing")
{
    Led s;
    settleIn(s);
    const bool under = GENERATE(false, true);
    s.bath.chooseSite(under ? ui::Site::Hands : ui::Site::Feet);
    s.bath.chooseWay(under ? ui::WayOfWorking::HandsUnder : ui::WayOfWorking::FreeHand);
    const auto before = bytesOf(s);
    const auto facts = s.store.allFacts().size();
    s.bath.practise();
    CHECK(s.bath.page() == ui::BathPage::PracticeStart);
    // The gate is closed, and practice says so.
    CHECK(s.bath.practiceBar() == "You could not start a real session today: The health questions are due. Leave the "
                                  "machine off until they are answered.");
    s.bath.beginPractice();
    REQUIRE(s.bath.page() == ui::BathPage::Run);
    CHECK(s.bath.running().kind == ui::StepKind::CheckList);
    CHECK_FALSE(s.bath.running().list.isEmpty());
    CHECK(s.awake.on);
    s.bath.primary();
    CHECK(s.bath.running().sentence.startsWith("Practice: the machine stays off."));
    s.bath.primary();
    if (!under) {
        CHECK(s.bath.running().sentence.startsWith("Practice: no current."));
        s.bath.primary();
        REQUIRE(s.bath.running().kind == ui::StepKind::Hold);
        CHECK(
            s.bath.practiceLength().startsWith("In a real session this takes 15 minute")); // common practice, no source
        s.bath.reading(30); // above the limit: the alarm is part of what is learned
        CHECK(s.voice.alarms.size() == 1);
        s.bath.reading(8);
    }
    practiseThrough(s);
    CHECK(s.bath.page() == ui::BathPage::PracticeOver);
    CHECK_FALSE(s.awake.on);
    for (const char* prompt : {"switch-on-direct", "switch-on-pulsed", "raise-slowly", "raise-by-remote"})
        CHECK(std::ranges::count(s.voice.said, prompt) == 0);
    CHECK(std::ranges::count(s.voice.said, "practice-raise") == 2);
    CHECK(std::ranges::count(s.voice.said, "done") == 1);
    CHECK(s.outside.shown.empty());
    s.bath.leavePractice();
    CHECK(s.bath.page() == ui::BathPage::Choose);
    CHECK_FALSE(s.bath.practice());
    CHECK(s.store.allFacts().size() == facts);
    CHECK(bytesOf(s) == before);
    CHECK(s.store.diary().running({19 * 60}) == nullptr);
}

TEST_CASE("Practice that nobody looked at for a while is over, and asks nothing about a machine")
{
    Led s;
    settleIn(s);
    s.bath.practise();
    s.bath.beginPractice();
    s.bath.primary();
    s.bath.primary();
    s.bath.primary();
    REQUIRE(s.bath.running().kind == ui::StepKind::Hold);
    s.clock.ms += 60'000;
    QEventLoop turned;
    QObject::connect(&s.bath, &viewmodels::BathModel::changed, &turned, &QEventLoop::quit);
    turned.exec();
    CHECK(s.bath.page() == ui::BathPage::PracticeStart);
    CHECK(s.voice.alarms.empty());
    CHECK(s.store.diary().ledSessions.empty());
}

TEST_CASE("A session asked for in the middle of practice ends the practice, and a session that runs lets none begin")
{
    Led s;
    s.begin();
    s.bath.practise();
    CHECK(s.bath.page() == ui::BathPage::Run);
    CHECK_FALSE(s.bath.practice());
    s.bath.stop();
    s.bath.practise(); // it is to be written down first
    CHECK_FALSE(s.bath.practice());
    s.bath.leave();
    s.bath.practise();
    s.bath.beginPractice();
    REQUIRE(s.bath.practice());
    s.bath.askFor(ui::Site::Hands);
    CHECK_FALSE(s.bath.practice());
    CHECK(s.bath.page() == ui::BathPage::Choose);
    CHECK_FALSE(s.awake.on);
}
