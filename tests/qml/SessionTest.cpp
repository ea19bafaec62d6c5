#include "Fingers.h"

#include <QKeyEvent>

using namespace firstdew;
using namespace firstdew::tests;

TEST_CASE("With both hands under, a tap anywhere and any key stop")
{
    const bool key = GENERATE(false, true);
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("under"));
    REQUIRE(ui.bath.running().exits == firstdew::ui::Exits::TapAnywhere);
    ui.settled();
    if (key) {
        QKeyEvent press(QEvent::KeyPress, Qt::Key_A, Qt::NoModifier, "a");
        QCoreApplication::sendEvent(ui.window, &press);
    } else {
        tap(ui, {195, 300});
    }
    CHECK(ui.bath.page() == firstdew::ui::BathPage::After);
}

TEST_CASE("Where dry hands are asked for, the buttons work and a tap beside them stops nothing")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("under-dry"));
    REQUIRE(ui.bath.running().kind == firstdew::ui::StepKind::SwitchOn);
    ui.settled();
    tap(ui, {195, 100});
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Run);
    QQuickItem* confirmed = button(ui, "On, at zero, direct current");
    REQUIRE(confirmed != nullptr);
    tap(ui, onScreen(confirmed).center());
    CHECK(ui.bath.running().kind == firstdew::ui::StepKind::Announce);
}

TEST_CASE("The running page names site and waveform, and after a restart it shows the list that the voice speaks of")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    CHECK(shows(ui, "Direct current"));
    CHECK(shows(ui, "Both feet"));
    CHECK_FALSE(shows(ui, "Warm tap water"));
    QQuickItem* out = button(ui, "I took them out");
    REQUIRE(out != nullptr);
    tap(ui, onScreen(out).center());
    REQUIRE(ui.bath.running().kind == firstdew::ui::StepKind::CheckList);
    CHECK(shows(ui, "Warm tap water"));
    QQuickItem* again = button(ui, "All checked, begin");
    REQUIRE(again != nullptr);
    tap(ui, onScreen(again).center());
    CHECK(ui.bath.running().kind == firstdew::ui::StepKind::SwitchOn);
}

TEST_CASE("An interrupted session is followed by the skin question like a finished one")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("after"));
    QQuickItem* keep = button(ui, "Keep in the diary");
    REQUIRE(keep != nullptr);
    CHECK_FALSE(keep->isEnabled());
    CHECK(shows(ui, "Look at your skin and say how it is."));
}

TEST_CASE("The running page says that nothing can be heard, as long as that is so")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    REQUIRE(ui.voice.tellSilence);
    CHECK_FALSE(shows(ui, "You cannot hear Firstdew"));
    ui.voice.tellSilence(true);
    CHECK(shows(ui, "You cannot hear Firstdew right now. Watch the screen, or stop."));
    ui.voice.tellSilence(false);
    CHECK_FALSE(shows(ui, "You cannot hear Firstdew"));
}

TEST_CASE("The level above which the skin is to be watched stands beside the limit, in the choice and while it runs")
{
    Interface ui({390, 844}, "light");
    Machine machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Cells, {}};
    machine.pad = SquareCentimetres{24};
    REQUIRE(ui.store.append(machine));
    const QString sentence = "Watch your skin above 4.8 mA."; // 0.2 mA/cm² over the pad
    REQUIRE(ui.showBath("screening"));
    ui.bath.back();
    ui.bath.chooseSite(firstdew::ui::Site::Armpits);
    CHECK(shows(ui, sentence));
    ui.bath.chooseSite(firstdew::ui::Site::Feet); // 20 mA is less than that for an adult's feet
    CHECK_FALSE(shows(ui, "Watch your skin"));
    REQUIRE(ui.showBath("armpits"));
    CHECK(shows(ui, sentence));
}

TEST_CASE("The number pad writes the decimal sign of the language and reads it back")
{
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    {
        Interface ui({390, 844}, "light");
        REQUIRE(ui.showBath("run"));
        QQuickItem* enter = button(ui, "Enter");
        REQUIRE(enter != nullptr);
        tap(ui, onScreen(enter).center());
        for (const char* key : {"7", ",", "5"}) {
            QQuickItem* pressed = button(ui, key);
            REQUIRE(pressed != nullptr);
            tap(ui, onScreen(pressed).center());
        }
        enter = button(ui, "Enter");
        REQUIRE(enter != nullptr);
        tap(ui, onScreen(enter).center());
        ui.settled();
        CHECK(ui.bath.running().meter.lastReading == 7.5);
    }
    QLocale::setDefault(before);
}
