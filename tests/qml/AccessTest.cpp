#include "Fingers.h"
#include "Interface.h"
#include "theme/Theme.h"

#include <QAccessible>
#include <QKeyEvent>

#include <cmath>
#include <functional>

using namespace firstdew;
using namespace firstdew::tests;

// What a screen reader and a keyboard meet, over the interfaces that the systems' screen readers ask.
namespace {

constexpr double kGraphics = 3; // WCAG 2.2, success criterion 1.4.11

/// As if a screen reader were on, from the first page on.
struct Heard : Interface {
    template <class... A>
    explicit Heard(A... all) : Interface((needApplication(), QAccessible::setActive(true), all)...)
    {
    }
};

/// Of an item that has no place in the tree of accessibility: nothing.
QAccessibleInterface* met(QQuickItem* item) { return QAccessible::queryAccessibleInterface(item); }

QString nameIn(QQuickItem* item)
{
    auto* iface = met(item);
    return iface == nullptr ? QString() : iface->text(QAccessible::Name);
}

QList<QQuickItem*> all(Interface& ui, const std::function<bool(QQuickItem*)>& wanted)
{
    QList<QQuickItem*> out;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (wanted(item))
            out << item;
    });
    return out;
}

QQuickItem* named(Interface& ui, const QString& name)
{
    const auto found =
        all(ui, [&](QQuickItem* i) { return (isButton(i) || i->inherits("QQuickTextField")) && nameIn(i) == name; });
    return found.isEmpty() ? nullptr : found.constLast();
}

void key(Interface& ui, Qt::Key which, const QString& text = {})
{
    for (const auto type : {QEvent::ShortcutOverride, QEvent::KeyPress, QEvent::KeyRelease}) {
        QKeyEvent event(type, which, Qt::NoModifier, text);
        QCoreApplication::sendEvent(ui.window, &event);
    }
    ui.settled();
}

/// As a person does with the keyboard alone.
void press(Interface& ui, QQuickItem* button)
{
    REQUIRE(button != nullptr);
    button->forceActiveFocus(Qt::TabFocusReason);
    ui.settled();
    key(ui, Qt::Key_Return, "\r");
}

double luminance(const QColor& c)
{
    const auto linear = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

/// Relative luminances against each other, WCAG 2.2.
double contrast(const QColor& a, const QColor& b)
{
    const double x = luminance(a);
    const double y = luminance(b);
    return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

/// What scrolls on the page in front.
QQuickItem* scroller(Interface& ui)
{
    const auto found =
        all(ui, [](QQuickItem* i) { return i->inherits("QQuickFlickable") && i->property("most").toReal() > 0; });
    return found.isEmpty() ? nullptr : found.constLast();
}

} // namespace

TEST_CASE("Every chart says in words what it shows, and opens as a table")
{
    Heard ui(QSize{390, 844}, "light");
    int charts = 0;
    const auto look = [&](const std::string& where) {
        for (QQuickItem* item : all(ui, [](QQuickItem* i) {
                 return i->inherits("firstdew::controls::PaintedChart") ||
                        i->inherits("firstdew::controls::OutlookBars");
             })) {
            ++charts;
            INFO(where << ", " << nameIn(item).toStdString());
            CHECK_FALSE(nameIn(item).isEmpty());
            CHECK(met(item)->text(QAccessible::Description).size() > 5);
        }
    };
    REQUIRE(ui.show("Today"));
    look("Today");
    REQUIRE(ui.show("Diary"));
    for (const char* view : {"Month", "Quarter", "Year", "All"}) {
        press(ui, named(ui, view));
        look(view);
        QQuickItem* table = named(ui, "As a table");
        REQUIRE(table != nullptr);
        const auto lines = [&] {
            return all(ui,
                       [](QQuickItem* i) {
                           return met(i) != nullptr && met(i)->role() == QAccessible::StaticText &&
                                  i->property("modelData").isValid();
                       })
                .size();
        };
        const auto before = lines();
        press(ui, table);
        CHECK(lines() > before);
        CHECK(met(table)->state().checked);
        press(ui, table);
        CHECK_FALSE(met(table)->state().checked);
        CHECK(lines() == before);
    }
    CHECK(charts >= 8);
}

TEST_CASE("Levels and ranges are choices of which one is chosen, and the last seven days say their levels")
{
    Heard ui(QSize{390, 1400}, "light");
    REQUIRE(ui.show("Today"));
    ui.settled();
    QQuickItem* clammy = named(ui, "Clammy");
    CHECK(clammy == nullptr); // which site is part of the name
    // Both sites are checked in already or not: the sheet of a day has all four levels of each.
    ui.router()->openDaySheet(ui.store.todayNumber() - 1);
    ui.settled();
    int chosen = 0;
    const auto levels = all(ui, [](QQuickItem* i) { return nameIn(i).startsWith("Hands: ") && isButton(i); });
    REQUIRE(levels.size() >= 4);
    for (QQuickItem* level : levels) {
        CHECK(met(level)->role() == QAccessible::RadioButton);
        chosen += met(level)->state().checked;
    }
    CHECK(chosen == 1);
    key(ui, Qt::Key_Escape);
    const auto days =
        all(ui, [](QQuickItem* i) { return isButton(i) && nameIn(i).contains("Hands: Clammy. Feet, to fill in"); });
    CHECK(days.size() == 1);
    REQUIRE(ui.show("Diary"));
    ui.settled();
    QQuickItem* month = named(ui, "Month");
    REQUIRE(month != nullptr);
    CHECK(met(month)->role() == QAccessible::RadioButton);
    CHECK(met(month)->state().checked);
    CHECK_FALSE(met(named(ui, "Year"))->state().checked);
}

TEST_CASE("A sheet is a dialog with a name that takes the keyboard, keeps it, and gives it back to what opened it")
{
    Heard ui(QSize{390, 844}, "light");
    REQUIRE(ui.show("Diary"));
    QQuickItem* filter = named(ui, "Filter");
    press(ui, filter);
    const auto dialogs =
        all(ui, [](QQuickItem* i) { return met(i) != nullptr && met(i)->role() == QAccessible::Dialog; });
    REQUIRE(dialogs.size() == 1);
    QQuickItem* dialog = dialogs.constFirst();
    // Its name is told to a screen reader that is on, which nobody is here: reader_test.py hears it.
    for (int i = 0; i < 30; ++i) {
        QQuickItem* now = ui.window->activeFocusItem();
        REQUIRE(now != nullptr);
        CHECK(now->isVisible());
        INFO(i << ": " << nameOf(now));
        CHECK(dialog->isAncestorOf(now));
        key(ui, Qt::Key_Tab, "\t");
    }
    key(ui, Qt::Key_Escape);
    CHECK(ui.window->activeFocusItem() == filter);
    CHECK(filter->property("visualFocus").toBool());
}

TEST_CASE("The keyboard is never at something hidden: after a check-in, where a page opens and closes, and where a "
          "place changes")
{
    Heard ui(QSize{390, 1400}, "light");
    REQUIRE(ui.show("Today"));
    ui.settled();
    const auto there = [&](const char* after) {
        ui.settled();
        QQuickItem* now = ui.window->activeFocusItem();
        INFO(after);
        REQUIRE(now != nullptr);
        CHECK(now->isVisible());
        CHECK(now->activeFocusOnTab());
        return now;
    };
    const auto levels = all(ui, [](QQuickItem* i) { return nameIn(i).endsWith(": Wet") && isButton(i); });
    REQUIRE_FALSE(levels.isEmpty());
    press(ui, levels.constFirst());
    CHECK_FALSE(levels.constFirst()->isVisible());
    there("a check-in");
    QQuickItem* opener = named(ui, "Why?");
    if (opener == nullptr)
        opener = named(ui, "Summary for your prescriber");
    press(ui, opener);
    CHECK(there("a page")->window() == ui.window);
    CHECK_FALSE(opener->isVisible());
    key(ui, Qt::Key_Escape);
    CHECK(there("the page is closed") == opener);
    press(ui, opener);
    emit ui.router()->place(ui::Place::Plan);
    there("a place over an open page");
}

TEST_CASE("Arrow and page keys scroll a page and a sheet, and with the hands under every key stops")
{
    Heard ui(QSize{320, 568}, "light", 2);
    REQUIRE(ui.show("About"));
    QQuickItem* page = scroller(ui);
    REQUIRE(page != nullptr);
    const auto at = [](QQuickItem* what) { return what->property("contentY").toReal(); };
    key(ui, Qt::Key_Home);
    CHECK(at(page) == 0);
    key(ui, Qt::Key_Down);
    const double line = at(page);
    CHECK(line > 0);
    key(ui, Qt::Key_PageDown);
    CHECK(at(page) > line + 200);
    key(ui, Qt::Key_End);
    CHECK(at(page) == page->property("most").toReal());
    key(ui, Qt::Key_Up);
    CHECK(at(page) < page->property("most").toReal());
    key(ui, Qt::Key_Home);
    CHECK(at(page) == 0);

    REQUIRE(ui.show("Today"));
    emit ui.router()->sheet(ui::Part::NotNowSheetPart);
    QQuickItem* sheet = scroller(ui);
    REQUIRE(sheet != nullptr);
    REQUIRE(sheet != page);
    key(ui, Qt::Key_End);
    CHECK(at(sheet) == sheet->property("most").toReal());
    key(ui, Qt::Key_Escape);

    REQUIRE(ui.showBath("under"));
    ui.settled();
    key(ui, Qt::Key_Down);
    CHECK(ui.bath.stopsIn() > 0);
}

TEST_CASE("A sheet brings what gets the keyboard into view")
{
    Heard ui(QSize{320, 568}, "light", 2);
    REQUIRE(ui.show("Today"));
    emit ui.router()->sheet(ui::Part::NotNowSheetPart);
    ui.settled();
    for (int i = 0; i < 8; ++i) {
        key(ui, Qt::Key_Tab, "\t");
        QQuickItem* now = ui.window->activeFocusItem();
        REQUIRE(now != nullptr);
        INFO(nameOf(now));
        CHECK(QRectF(0, 0, 320, 568).contains(onScreen(now).center()));
    }
}

TEST_CASE("A field that is wrong says so itself, hidden letters have a name, and buttons of a site name it")
{
    Heard ui(QSize{390, 2000}, "light");
    REQUIRE(ui.show("WeighPage"));
    QQuickItem* before = named(ui, "Before, in milligrams");
    QQuickItem* after = named(ui, "After, in milligrams");
    REQUIRE(before != nullptr);
    REQUIRE(after != nullptr);
    before->setProperty("text", "900");
    after->setProperty("text", "100");
    ui.settled();
    // Qt passes this on as the description to a screen reader that is on; reader_test.py hears it.
    CHECK(after->property("placeholderText").toString().startsWith("It cannot weigh less"));
    after->setProperty("text", "1000");
    ui.settled();
    CHECK(after->property("placeholderText").toString().isEmpty());
    REQUIRE(ui.show("KeepPage"));
    int hidden = 0;
    for (QQuickItem* field : all(ui, [](QQuickItem* i) { return i->inherits("QQuickTextField"); })) {
        ++hidden;
        // Qt 6.4 gives the name of a field whose letters are hidden to nobody; what describes it begins with it.
        CHECK(field->property("placeholderText").toString().contains("assphrase"));
    }
    CHECK(hidden >= 2);
    REQUIRE(ui.show("Plan"));
    QStringList names;
    for (QQuickItem* button : all(ui, isButton))
        names << nameIn(button);
    for (const QString& name : names)
        if (names.count(name) > 1)
            FAIL_CHECK(name.toStdString() << " twice");
}

TEST_CASE("No two buttons of a page have the same name")
{
    Heard ui(QSize{390, 2400}, "light");
    int seen = 0;
    for (const char* page : {"Today", "Diary", "Plan", "Bath", "Settings", "KeepPage", "RemindersPage"}) {
        REQUIRE(ui.show(page));
        QStringList names;
        for (QQuickItem* button : all(ui, isButton)) {
            ++seen;
            names << nameIn(button) + met(button)->text(QAccessible::Description);
        }
        for (const QString& name : names)
            if (names.count(name) > 1)
                FAIL_CHECK(page << ": " << name.toStdString() << " twice");
    }
    CHECK(seen > 40);
}

TEST_CASE("The ring of the keyboard stands out from every ground and is like nothing chosen or main")
{
    for (const char* theme : {"light", "dark"}) {
        Heard ui(QSize{390, 844}, theme);
        const Theme& t = *Theme::instance();
        for (const QColor& ground : {t.paper(), t.card(), t.sunken(), t.nowWash(), t.dangerWash()})
            CHECK(contrast(t.focus(), ground) >= kGraphics);
        for (const QColor& other : {t.main(), t.now(), t.danger(), t.edge(), Theme::alarm()}) {
            const int apart = std::abs(t.focus().hsvHue() - other.hsvHue()) % 360;
            CHECK(std::min(apart, 360 - apart) >= 30);
        }
        CHECK(contrast(t.focus(), t.paper()) >= kGraphics); // its own halo, on whatever ground
    }
}

TEST_CASE(
    "Edges of what can be touched stand out, and with more contrast asked for words and edges are as strong as can be")
{
    for (const char* theme : {"light", "dark"}) {
        Heard ui(QSize{390, 844}, theme);
        const Theme& t = *Theme::instance();
        for (const QColor& ground : {t.paper(), t.card()})
            CHECK(contrast(t.edge(), ground) >= kGraphics);
        const double soft = contrast(t.inkSoft(), t.paper());
        ui.appearance.see(1, true);
        CHECK(contrast(t.inkSoft(), t.paper()) > soft);
        CHECK(contrast(t.inkSoft(), t.paper()) > 15);
        CHECK(contrast(t.edge(), t.card()) > 14);
        ui.appearance.see(1, false);
        CHECK(contrast(t.inkSoft(), t.paper()) == soft);
    }
}

TEST_CASE("Text is as large as the system wants it, beside what was chosen in the app, and never past what pages hold")
{
    Heard ui(QSize{390, 844}, "light", 0);
    const Theme& t = *Theme::instance();
    CHECK(t.textScale() == 1);
    ui.appearance.see(1.5, false);
    CHECK(t.textScale() == 1.5);
    CHECK(ui.appearance.textScale() == 1); // Settings shows what was chosen there
    ui.appearance.setTextScale(1.25);
    CHECK(t.textScale() == Approx(1.875));
    ui.appearance.see(3, false);
    CHECK(t.textScale() == 2);
}

TEST_CASE("A number above the limit says so in words")
{
    Heard ui(QSize{390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    press(ui, named(ui, "Enter the meter reading"));
    const auto says = [&](const char* text) {
        return !all(ui, [&](QQuickItem* i) {
                    return isText(i) && i->property("text").toString().startsWith(text);
                }).isEmpty();
    };
    key(ui, Qt::Key_9, "9");
    CHECK_FALSE(says("Above the limit"));
    key(ui, Qt::Key_9, "9");
    CHECK(says("Above the limit"));
}
