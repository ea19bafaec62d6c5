#include "Interface.h"

#include <QKeyEvent>
#include <QTimer>

#include <cstdlib>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

/// The first visible item of that class, with that text if one is given.
QQuickItem* find(const Interface& ui, const char* type, const QString& text = {})
{
    QQuickItem* found = nullptr;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (found == nullptr && item->inherits(type) && (text.isEmpty() || item->property("text") == text))
            found = item;
    });
    return found;
}

QImage pictureOf(Interface& ui, QQuickItem* item) { return ui.settled().copy(onScreen(item).toRect()); }

/// The share of pixels whose colour clearly differs.
double unlike(const QImage& a, const QImage& b)
{
    constexpr int kClearly = 60;
    if (a.size() != b.size())
        return 1;
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            count += std::abs(qGray(a.pixel(x, y)) - qGray(b.pixel(x, y))) > kClearly ? 1 : 0;
    return count / static_cast<double>(a.width() * a.height());
}

/// Sets the reading direction for its lifetime.
struct Reading {
    explicit Reading(Qt::LayoutDirection direction) { QGuiApplication::setLayoutDirection(direction); }
    ~Reading() { QGuiApplication::setLayoutDirection(Qt::LeftToRight); }
};

} // namespace

TEST_CASE("A tap, Space or Enter gives a level once; a finger that slides away and other keys give none")
{
    const std::string way = GENERATE("finger", "space", "enter", "enter held down", "slides away", "another key");
    INFO(way);
    Interface ui({390, 1200}, "light"); // no level lies below the edge
    ui.settled();
    QQuickItem* wet = nullptr;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && item->property("text") == "Wet")
            wet = item;
    });
    REQUIRE(wet != nullptr);
    const auto given = [&] { return ui.store.diary().checkIns.size(); };
    const auto before = given();
    const auto mouse = [&](QEvent::Type type, QPointF at) {
        const bool up = type == QEvent::MouseButtonRelease;
        QMouseEvent event(type, at, ui.window->mapToGlobal(at),
                          type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton, up ? Qt::NoButton : Qt::LeftButton,
                          Qt::NoModifier);
        QCoreApplication::sendEvent(ui.window, &event);
    };
    const auto key = [&](Qt::Key key, int repeats = 0) {
        wet->forceActiveFocus(Qt::TabFocusReason);
        const auto send = [&](QEvent::Type type, bool repeat) {
            QKeyEvent event(type, key, Qt::NoModifier, {}, repeat);
            QCoreApplication::sendEvent(ui.window, &event);
        };
        send(QEvent::KeyPress, false);
        for (int i = 0; i < repeats; ++i)
            send(QEvent::KeyPress, true);
        send(QEvent::KeyRelease, false);
    };
    if (way == "finger" || way == "slides away") {
        const QPointF on = onScreen(wet).center();
        const QPointF off = way == "finger" ? on : on + QPointF(wet->width(), 0);
        mouse(QEvent::MouseButtonPress, on);
        CHECK(wet->property("down").toBool());
        mouse(QEvent::MouseMove, off);
        mouse(QEvent::MouseButtonRelease, off);
    } else if (way == "enter held down") {
        key(Qt::Key_Enter, 3);
    } else {
        key(way == "space" ? Qt::Key_Space : way == "enter" ? Qt::Key_Enter : Qt::Key_A);
    }
    CHECK_FALSE(wet->property("down").toBool());
    const bool meant = way != "slides away" && way != "another key";
    CHECK(given() == before + (meant ? 1 : 0));
}

TEST_CASE("A button partly below the lower edge of the page stays under the finger")
{
    const QString page = GENERATE("SoundPage", "SettingsPage");
    INFO(page.toStdString());
    constexpr int kShown = 12; // pixels of the button
    Interface ui({390, 844}, "light");
    REQUIRE(ui.show(page));
    ui.settled();
    QQuickItem* low = nullptr;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && onScreen(item).top() > 200 && onScreen(item).top() < 700)
            low = item;
    });
    REQUIRE(low != nullptr);
    ui.window->resize(390, static_cast<int>(onScreen(low).top() + kShown));
    ui.settled();
    const QPointF on(onScreen(low).center().x(), onScreen(low).top() + kShown / 2.0);
    const double top = onScreen(low).top();
    QTimer pressed; // starts with the click
    QObject::connect(low, SIGNAL(clicked()), &pressed, SLOT(start()));
    for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        QMouseEvent event(type, on, ui.window->mapToGlobal(on), Qt::LeftButton,
                          type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(ui.window, &event);
        if (type == QEvent::MouseButtonPress)
            CHECK(onScreen(low).top() == top);
    }
    CHECK(pressed.isActive());
}

TEST_CASE("Painted items are mirrored as soon as the reading direction changes")
{
    Interface ui({390, 2400}, "light");
    QQuickItem* bars = nullptr;
    for (int i = 0; i < 40 && bars == nullptr; ++i) {
        ui.settled();
        bars = find(ui, "firstdew::controls::OutlookBars");
    }
    REQUIRE(bars != nullptr);
    QQuickItem* why = find(ui, "QQuickAbstractButton", "Why?");
    REQUIRE(why != nullptr);
    const QImage barsBefore = pictureOf(ui, bars);
    const QImage whyBefore = pictureOf(ui, why);
    const Reading arabic(Qt::RightToLeft);
    const QImage barsNow = pictureOf(ui, bars);
    CHECK(unlike(barsNow, barsBefore.mirrored(true, false)) < 0.01);
    CHECK(unlike(barsNow, barsBefore) > 0.02);
    const QImage whyNow = pictureOf(ui, why);
    CHECK(whyNow.size() == whyBefore.size());
    CHECK(unlike(whyNow, whyBefore) > 0.02);
}

TEST_CASE("A visible button follows changes of theme and text size")
{
    Interface ui({390, 844}, "light");
    ui.settled();
    QQuickItem* wet = find(ui, "QQuickAbstractButton", "Wet");
    REQUIRE(wet != nullptr);
    const auto ink = wet->property("ink").value<QColor>();
    const double wide = wet->implicitWidth();
    const QImage light = pictureOf(ui, wet);
    ui.appearance.setTheme(ui::ThemeChoice::Dark);
    CHECK(wet->property("ink").value<QColor>() != ink);
    CHECK(pictureOf(ui, wet) != light);
    ui.appearance.setTextScale(2);
    ui.settled();
    CHECK(wet->implicitWidth() > wide);
}

TEST_CASE("A disabled button looks disabled even with an ink of its own")
{
    Interface ui({390, 844}, "light");
    ui.settled();
    QQuickItem* wet = find(ui, "QQuickAbstractButton", "Wet");
    REQUIRE(wet != nullptr);
    wet->setProperty("ink", QColor(Qt::red));
    CHECK(wet->property("ink").value<QColor>() == QColor(Qt::red));
    const QImage before = pictureOf(ui, wet);
    wet->setEnabled(false);
    CHECK(wet->property("ink").value<QColor>() == Theme::instance()->inkSoft());
    CHECK(pictureOf(ui, wet) != before);
}
