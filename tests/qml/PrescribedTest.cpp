#include "Fingers.h"

#include "summary/Contents.h"

using namespace firstdew;
using namespace firstdew::tests;

namespace {

struct Home {
    Home() { qputenv("HOME", folder.path().toUtf8()); }
    ~Home() { qputenv("HOME", before); }
    Home(const Home&) = delete;
    Home& operator=(const Home&) = delete;
    QByteArray before = qgetenv("HOME");
    QTemporaryDir folder;
};

/// What the nurse's screen shows once the form is filled in by taps.
QImage codeOnNursesScreen()
{
    Interface nurse({390, 6000}, "light", [](const QString&) {});
    nurse.context.sheet.begin();
    REQUIRE(nurse.show("MakeSheetPage"));
    press(nurse, "Both hands");
    press(nurse, "Direct current");
    press(nurse, "Days I choose");
    press(nurse, "3");
    press(nurse, "8");
    nurse.context.sheet.stepDirect(-11);
    nurse.context.sheet.setWho("Nurse Invented");
    nurse.context.sheet.setContact("555 0100");
    press(nurse, "Hand it over");
    return nurse.settled().copy(0, 0, 390, 700);
}

/// Somebody who has a machine, and whose health questions were answered.
void begin(Interface& home)
{
    home.store.append(Person{"Alma", LocalDate::parse("1990-04-23"), {}, {}, {}});
    home.store.append(Machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Cells, {}});
    home.store.append(Interface::answered({}));
}

/// Begins a session with both hands and a helper, by what the pages call.
void lead(viewmodels::BathModel& bath)
{
    bath.chooseSite(ui::Site::Hands);
    bath.chooseWay(ui::WayOfWorking::Helper);
    bath.goOn();
    bath.setSmallCuts(ui::SmallCuts::No);
    bath.setAntiperspirant(ui::LastAntiperspirant::No);
    bath.setShaved(ui::LastShave::No);
    for (const auto& line : bath.preparation())
        bath.tick(line.item);
    bath.start();
    bath.primary(); // machine on, direct current, at zero
    bath.primary();
}

Session sessionWith(double peak)
{
    Session s;
    s.site = Site::Hands;
    s.waveform = Waveform::Direct;
    s.peak = Milliamps{peak};
    s.completed = true;
    return s;
}

const situation::SiteSituation& hands(const Interface& home) { return home.store.situation().sites.front(); }

} // namespace

TEST_CASE("From the nurse's form by the camera to a prescribed course that runs, and a summary of plan and done")
{
    const Home folder;
    const QImage code = codeOnNursesScreen();
    Interface home({390, 2400}, "light", [](const QString&) {});
    begin(home);
    home.camera.there = true;
    REQUIRE(home.show("CareSheetPage"));
    press(home, "Scan the code");
    home.camera.show(code);
    REQUIRE_FALSE(home.scan.looking());
    CHECK(shows(home, "Both hands: a course of 3 session"));
    press(home, "Use this care sheet");

    // Day 1 is today, and Today calls for it.
    const LocalDate today = home.store.diary().today;
    REQUIRE(home.store.situation().sites.size() == 1);
    CHECK(hands(home).advice == situation::Advice::DoCourseSession);
    CHECK(home.show("Today"));
    CHECK(button(home, "Start now") != nullptr);

    // The session is led under the prescribed limit: above it the alarm sounds.
    lead(home.bath);
    REQUIRE(home.bath.page() == ui::BathPage::Run);
    home.bath.reading(8.5);
    CHECK_FALSE(home.bath.running().alarm);
    home.bath.reading(9.5);
    CHECK(home.bath.running().alarm);
    home.bath.reading(8.5);
    CHECK_FALSE(home.bath.running().alarm);
    home.bath.stop();
    home.bath.leave();
    REQUIRE(home.store.append(sessionWith(9)));
    CHECK(hands(home).advice != situation::Advice::DoCourseSession);
    CHECK(hands(home).nextSession == today + 2); // day 3

    const auto contents = summary::contentsFor(home.store.diary(), today - 30);
    REQUIRE(contents.sites.size() == 1);
    CHECK(contents.sites.front().sessionsPlanned == 3);
    CHECK(contents.sites.front().courseDone == 1);
    CHECK(contents.overLimit.size() == 1);
    REQUIRE(contents.careSheets.size() == 1);
    CHECK(contents.careSheets.front().sheet.contact == "555 0100");
}
