#include "Fingers.h"

#include "protocol/MayBegin.h"
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

    // The gate knows the prescribed limit.
    home.bath.chooseSite(ui::Site::Hands);
    const auto query = protocol::limitQueryFor(home.store.diary(), Site::Hands, Waveform::Direct);
    CHECK(protocol::limitFor(query).limit == Milliamps{9});
    REQUIRE(home.store.append(sessionWith(9)));
    CHECK(hands(home).advice != situation::Advice::DoCourseSession);
    CHECK(hands(home).nextSession == today + 2); // day 3

    const auto contents = summary::contentsFor(home.store.diary(), today - 30);
    REQUIRE(contents.sites.size() == 1);
    CHECK(contents.sites.front().sessionsPlanned == 3);
    CHECK(contents.sites.front().courseDone == 1);
    REQUIRE(contents.careSheets.size() == 1);
    CHECK(contents.careSheets.front().sheet.contact == "555 0100");
}
