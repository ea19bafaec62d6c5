#include "Interface.h"

#include <QKeyEvent>
#include <QMouseEvent>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

void tap(Interface& ui, QPointF at)
{
    for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        const bool up = type == QEvent::MouseButtonRelease;
        QMouseEvent event(type, at, ui.window->mapToGlobal(at), Qt::LeftButton, up ? Qt::NoButton : Qt::LeftButton,
                          Qt::NoModifier);
        QCoreApplication::sendEvent(ui.window, &event);
    }
}

QQuickItem* button(Interface& ui, const QString& text)
{
    QQuickItem* found = nullptr;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && item->property("text") == text)
            found = item;
    });
    return found;
}

bool shows(Interface& ui, const QString& part)
{
    bool found = false;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        found = found || (isText(item) && item->property("text").toString().contains(part));
    });
    return found;
}

} // namespace

TEST_CASE("With both hands under, a tap anywhere and any key stop")
{
    const bool key = GENERATE(false, true);
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("under"));
    REQUIRE(ui.bath.running()["under"].toBool());
    ui.settled();
    if (key) {
        QKeyEvent press(QEvent::KeyPress, Qt::Key_A, Qt::NoModifier, "a");
        QCoreApplication::sendEvent(ui.window, &press);
    } else {
        tap(ui, {195, 300});
    }
    CHECK(ui.bath.page() == "after");
}

TEST_CASE("Where dry hands are asked for, the buttons work and a tap beside them stops nothing")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("under-dry"));
    REQUIRE(ui.bath.running()["kind"] == "switch-on");
    ui.settled();
    tap(ui, {195, 100});
    CHECK(ui.bath.page() == "run");
    QQuickItem* confirmed = button(ui, "On, at zero, direct current");
    REQUIRE(confirmed != nullptr);
    tap(ui, onScreen(confirmed).center());
    CHECK(ui.bath.running()["kind"] == "announce");
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
    REQUIRE(ui.bath.running()["kind"] == "check-list");
    CHECK(shows(ui, "Warm tap water"));
    QQuickItem* again = button(ui, "All checked, begin");
    REQUIRE(again != nullptr);
    tap(ui, onScreen(again).center());
    CHECK(ui.bath.running()["kind"] == "switch-on");
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
