#include "Fingers.h"
#include "words/Names.h"

#include <QAccessible>
#include <QDeadlineTimer>
#include <QFontMetricsF>
#include <QQmlContext>
#include <QQmlExpression>
#include <QRegularExpression>
#include <QTranslator>

#include <algorithm>
#include <cmath>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

constexpr double kHair = 1;
const QStringList kSplit{"Today", "Diary", "Plan", "Settings"};

bool isMade(QQuickItem* item, const char* document)
{
    return QString::fromLatin1(item->metaObject()->className()).startsWith(QLatin1String(document) + "_QML");
}

bool isHeading(QQuickItem* item)
{
    for (QObject* child : item->children())
        if (child->inherits("QQuickAccessibleAttached"))
            return child->property("role").toInt() == QAccessible::Heading;
    return false;
}

/// What a page is made of.
std::vector<QRectF> blocks(Interface& ui)
{
    std::vector<QRectF> out;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if ((isMade(item, "Card") || isMade(item, "CheckInCard") || isMade(item, "DewCall") ||
             isMade(item, "LimitsCard") || isMade(item, "NextAction") || isMade(item, "WorkingCard") ||
             isMade(item, "PlanRow")) &&
            item->height() > 0)
            out.push_back(onScreen(item));
    });
    return out;
}

/// Says whether everything stands in one column, or in two beside each other.
int columns(const std::vector<QRectF>& all)
{
    std::vector<double> lefts;
    for (const auto& r : all)
        if (std::none_of(lefts.begin(), lefts.end(), [&](double x) { return std::abs(x - r.left()) < kHair; }))
            lefts.push_back(r.left());
    return static_cast<int>(lefts.size());
}

/// Sets the reading direction for its lifetime.
struct Reading {
    explicit Reading(Qt::LayoutDirection direction) { QGuiApplication::setLayoutDirection(direction); }
    ~Reading() { QGuiApplication::setLayoutDirection(Qt::LeftToRight); }
};

} // namespace

TEST_CASE("Pages have two columns from 840 on and one below, none of them wider than reads well")
{
    const auto [size, wanted] = GENERATE(table<QSize, int>(
        {{QSize(839, 1000), 1}, {QSize(840, 1000), 2}, {QSize(1024, 768), 2}, {QSize(1920, 1080), 2}}));
    INFO(size.width() << " x " << size.height());
    Interface ui(size, "light");
    ui.store.append(CheckIn{DiarySite::Hands, Level::Clammy, {}}, LocalTime::parse("2026-03-20T18:00"));
    for (const QString& page : kSplit) {
        INFO(page.toStdString());
        REQUIRE(ui.show(page));
        const auto all = blocks(ui);
        REQUIRE(all.size() > 2);
        CHECK(columns(all) == wanted);
        for (std::size_t a = 0; a < all.size(); ++a) {
            CHECK(all[a].width() <= Theme::kMeasure);
            CHECK(all[a].left() >= Theme::kMargin - kHair);
            CHECK(all[a].right() <= size.width() - Theme::kMargin + kHair);
            for (std::size_t b = a + 1; b < all.size(); ++b)
                CHECK(all[a].intersected(all[b]).height() < kHair);
        }
        // One below the other would be no second column.
        const auto top = std::min_element(all.begin(), all.end(), [](auto& a, auto& b) { return a.top() < b.top(); });
        CHECK((std::count_if(all.begin(), all.end(), [&](auto& r) {
                   return r.top() < top->bottom() && r.left() != top->left();
               }) > 0) == (wanted == 2));
    }
}

TEST_CASE("Two columns are mirrored where one reads from right to left")
{
    for (const QString& page : kSplit) {
        INFO(page.toStdString());
        std::vector<QRectF> shown[2];
        for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
            const Reading reading(direction);
            Interface ui({1024, 900}, "light", 1, direction);
            REQUIRE(ui.show(page));
            shown[direction] = blocks(ui);
        }
        REQUIRE(shown[0].size() == shown[1].size());
        for (std::size_t k = 0; k < shown[0].size(); ++k) {
            CHECK(std::abs(1024 - shown[1][k].right() - shown[0][k].left()) < kHair);
            CHECK(std::abs(shown[1][k].top() - shown[0][k].top()) < kHair);
        }
    }
}

TEST_CASE("Today has its answers on the side that one reads first, and the days ahead on the other")
{
    Interface ui({1024, 768}, "light");
    REQUIRE(ui.show("Today"));
    ui.settled();
    QQuickItem* wet = button(ui, "Wet");
    REQUIRE(wet != nullptr);
    CHECK(onScreen(wet).right() < 512);
    bool seen = false;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (!isMade(item, "OutlookStrip"))
            return;
        seen = true;
        CHECK(onScreen(item).left() > 512);
        CHECK(onScreen(item).bottom() < 768); // with nothing to scroll
    });
    CHECK(seen);
}

TEST_CASE("On a wide screen no line of any page is longer than reads well")
{
    Interface ui({1600, 900}, "light");
    for (const QString& page : pages()) {
        if (page.startsWith("Bath:run") || page.startsWith("Bath:practice-") || page == "Bath:alarm" ||
            page == "Bath:under")
            continue; // read from two metres
        REQUIRE(ui.show(page));
        ui.settled();
        visit(ui.window->contentItem(), [&](QQuickItem* item) {
            if ((isText(item) || isButton(item)) && item->width() > 0 &&
                (isText(item) && !isFace(item) ? item->property("paintedWidth").toDouble() : item->width()) >
                    Theme::kMeasure + kHair)
                FAIL_CHECK(page.toStdString() << ": " << nameOf(item) << " is " << item->width() << " wide");
        });
    }
}

TEST_CASE("Where the system asks for no motion, a page, a place and a sheet stand where they belong at once")
{
    Interface ui({390, 844}, "light");
    for (int i = 0; i < 5; ++i)
        ui.settled(); // what is made after the first picture is there
    ui.appearance.setStill(true);
    const auto run = [&](const char* script) {
        return QQmlExpression(qmlContext(ui.window), ui.window, script).evaluate();
    };
    const auto atRest = [&] {
        for (const char* name : {"pageAway", "placeAway", "placeFaint"})
            if (ui.window->property(name).toDouble() != 0)
                return false;
        return true;
    };
    // Asked before any event is looked at: in the same frame.
    run("Router.place(Place.Diary)");
    CHECK(atRest());
    run("Router.page(Part.AboutPart)");
    CHECK(atRest());
    QQuickItem* about = nullptr;
    visit(ui.window->contentItem(), [&](QQuickItem* item) { about = isMade(item, "About") ? item : about; });
    REQUIRE(about != nullptr);
    CHECK(onScreen(about).topLeft() == QPointF(0, 0));
    run("Router.back()");
    CHECK(atRest());
    run("Router.openDaySheet(Store.today - 3)");
    QObject* sheet = nullptr;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) { sheet = isMade(item, "LevelChoice") ? item : sheet; });
    REQUIRE(sheet != nullptr);
    const QRectF first = onScreen(qobject_cast<QQuickItem*>(sheet));
    QDeadlineTimer later(250);
    while (!later.hasExpired())
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    CHECK(onScreen(qobject_cast<QQuickItem*>(sheet)) == first);
}

TEST_CASE("A page comes from where it lies, within a fifth of a second, and takes touches all the while")
{
    const auto direction = GENERATE(Qt::LeftToRight, Qt::RightToLeft);
    const Reading reading(direction);
    const double way = direction == Qt::LeftToRight ? 1 : -1;
    Interface ui({390, 844}, "light", 1, direction);
    for (int i = 0; i < 5; ++i)
        ui.settled();
    ui.appearance.setStill(false);
    CHECK(ui.appearance.motion() > 0);
    CHECK(ui.appearance.motion() <= 200);
    const auto run = [&](const char* script) {
        return QQmlExpression(qmlContext(ui.window), ui.window, script).evaluate();
    };
    const auto page = [&](const char* document) {
        QQuickItem* found = nullptr;
        visit(ui.window->contentItem(), [&](QQuickItem* item) { found = isMade(item, document) ? item : found; });
        return found;
    };
    const auto rest = [&] {
        QDeadlineTimer patience(5000);
        while ((ui.window->property("pageAway").toDouble() != 0 || ui.window->property("placeAway").toDouble() != 0 ||
                ui.window->property("placeFaint").toDouble() != 0) &&
               !patience.hasExpired())
            QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
        return !patience.hasExpired();
    };
    run("Router.place(Place.Plan)");
    CHECK(ui.window->property("placeFaint").toDouble() == 1); // shows through, and does not move
    REQUIRE(rest());
    run("Router.page(Part.SettingsPart)");
    CHECK(ui.window->property("pageAway").toDouble() == 1); // at the edge that one reads to
    run("pageAway = 0.5");                                  // halfway, wherever the clock is
    QQuickItem* settings = page("Settings");
    REQUIRE(settings != nullptr);
    CHECK(settings->isEnabled());
    CHECK(onScreen(settings).left() * way > 0);
    // Pressed on its way, a line opens its page.
    QQuickItem* line = nullptr;
    visit(settings, [&](QQuickItem* item) { line = line == nullptr && isMade(item, "PlanRow") ? item : line; });
    REQUIRE(line != nullptr);
    tap(ui, onScreen(line).center());
    REQUIRE(rest());
    REQUIRE(page("MachinePage") != nullptr);
    CHECK(onScreen(page("MachinePage")).left() == 0);
    run("Router.back()");
    CHECK(ui.window->property("pageAway").toDouble() == -1); // what was left comes from the other side
    run("Router.back()");
    CHECK(ui.window->property("placeAway").toDouble() == -1);
    REQUIRE(rest());
}

TEST_CASE("Beside a current nothing moves: the number pad is there at once")
{
    Interface ui({390, 844}, "light");
    for (int i = 0; i < 5; ++i)
        ui.settled();
    ui.appearance.setStill(false);
    REQUIRE(ui.showBath("run"));
    QQuickItem* enter = button(ui, "Enter meter reading");
    REQUIRE(enter != nullptr);
    tap(ui, onScreen(enter).center());
    QQuickItem* seven = nullptr;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && item->property("text") == "7")
            seven = item;
    });
    REQUIRE(seven != nullptr);
    CHECK(QQmlExpression(qmlContext(ui.window), ui.window, "around.item.motion").evaluate().toInt() == 0);
    ui.settled();
    const QRectF first = onScreen(seven);
    CHECK(first.bottom() < 844);
    QDeadlineTimer later(250);
    while (!later.hasExpired())
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    CHECK(onScreen(seven) == first);
}

TEST_CASE("Beside each limit stands who set it and what it comes from")
{
    Interface ui({390, 2400}, "light");
    Machine machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Cells, {}};
    REQUIRE(ui.store.append(machine));
    REQUIRE(ui.store.append(SiteUse{Site::Armpits, true}));
    REQUIRE(ui.show("Plan"));
    CHECK(shows(ui, "Common practice, adults"));
    CHECK(shows(ui, "Enter height and weight, and the size of this skin counts as well."));
    CHECK(shows(ui, "No pad size is entered, so one pad counts as 24 cm²."));
    CHECK(shows(ui, "Kept low until the size of the pads is entered"));
    machine.pad = SquareCentimetres{30};
    REQUIRE(ui.store.append(machine));
    REQUIRE(ui.store.append(Person{"Alma", LocalDate::parse("1990-04-23"), Centimetres{170}, Kilograms{65}, {}}));
    CHECK(shows(ui, "One pad counts as 30 cm², as entered with the machine."));
    CHECK(shows(ui, "Watch your skin above 6 mA.")); // 0.2 mA/cm² over the pad
    // 0.87 % and 1.5 % of the smaller of both body surfaces: 1.752 m² (Mosteller) for 170 cm and 65 kg.
    CHECK(shows(ui, "The palm of a hand counts as 152 cm², by height and weight."));
    CHECK(shows(ui, "The sole of a foot counts as 263 cm², by height and weight."));
    CareSheet sheet;
    sheet.who = "Dr Vance";
    sheet.sites = {Site::Armpits};
    sheet.given = *LocalDate::parse("2026-03-19");
    sheet.pad = SquareCentimetres{20};
    sheet.pulsedLimit = Milliamps{8};
    REQUIRE(ui.store.append(sheet));
    CHECK(shows(ui, "Dr Vance"));
    CHECK(shows(ui, "One pad counts as 20 cm², as on the care sheet."));
    REQUIRE(ui.showBath("screening"));
    ui.bath.back();
    ui.bath.chooseSite(firstdew::ui::Site::Armpits);
    CHECK(shows(ui, "One pad counts as 20 cm², as on the care sheet."));
}

TEST_CASE("No heading breaks inside a word on the smallest screen, in any language, up to twice the text size")
{
    for (const QString& language : words::languages())
        for (const double scale : {1.0, 2.0}) {
            QTranslator translator;
            REQUIRE(translator.load(":/i18n/firstdew_" + language));
            needApplication();
            QCoreApplication::installTranslator(&translator);
            QLocale::setDefault(words::localeFor(language));
            {
                Interface ui({320, 568}, "light", scale, QLocale().textDirection());
                int seen = 0;
                for (const QString& page : pages()) {
                    REQUIRE(ui.show(page));
                    ui.settled();
                    visit(ui.window->contentItem(), [&](QQuickItem* item) {
                        if (!isText(item) || isFace(item) || !isHeading(item))
                            return;
                        ++seen;
                        const QFontMetricsF metrics(item->property("font").value<QFont>());
                        const QString text = item->property("text").toString();
                        for (const QString& word : text.split(QRegularExpression("[\\s\u00ad/-]"), Qt::SkipEmptyParts))
                            if (metrics.horizontalAdvance(word) > roomOf(item) + kHair)
                                FAIL_CHECK(language.toStdString()
                                           << " at " << scale << ", " << page.toStdString() << ": "
                                           << word.toStdString() << " needs " << metrics.horizontalAdvance(word)
                                           << " of " << roomOf(item));
                    });
                }
                CHECK(seen > 50);
            }
            QCoreApplication::removeTranslator(&translator);
        }
    QLocale::setDefault(words::localeFor("en"));
}

TEST_CASE("While current flows the meter can be entered without scrolling, on small phones and in any language")
{
    for (const QString& language : words::languages())
        for (const QSize size : {QSize(320, 568), QSize(360, 720), QSize(390, 844)}) {
            QTranslator translator;
            REQUIRE(translator.load(":/i18n/firstdew_" + language));
            needApplication();
            QCoreApplication::installTranslator(&translator);
            QLocale::setDefault(words::localeFor(language));
            for (const char* page : {"Bath:run", "Bath:alarm", "Bath:practice-hold"}) {
                Interface ui(size, "light", 1, QLocale().textDirection());
                REQUIRE(ui.show(page));
                ui.settled();
                const auto named = [&](const char* context, const char* name) {
                    QQuickItem* found = nullptr;
                    visit(ui.window->contentItem(), [&](QQuickItem* item) {
                        if (isButton(item) && QAccessible::queryAccessibleInterface(item)->text(QAccessible::Name) ==
                                                  QCoreApplication::translate(context, name))
                            found = item;
                    });
                    REQUIRE(found != nullptr);
                    return onScreen(found);
                };
                INFO(language.toStdString() << ", " << size.width() << " x " << size.height() << ", " << page);
                CHECK(named("BathMeter", "Meter shows less").bottom() <= named("BathExits", "It is unpleasant").top());
            }
            QCoreApplication::removeTranslator(&translator);
        }
    QLocale::setDefault(words::localeFor("en"));
}

TEST_CASE("No words run over the edge of their card on the smallest screen, in any language, up to twice the text size")
{
    for (const QString& language : words::languages())
        for (const double scale : {1.0, 2.0}) {
            QTranslator translator;
            REQUIRE(translator.load(":/i18n/firstdew_" + language));
            needApplication();
            QCoreApplication::installTranslator(&translator);
            QLocale::setDefault(words::localeFor(language));
            {
                Interface ui({320, 568}, "light", scale, QLocale().textDirection());
                for (const QString& page : pages()) {
                    if (page == "CareSheetPage" || page == "KeepPage")
                        continue; // a path is one word, as long as it likes
                    REQUIRE(ui.show(page));
                    ui.settled();
                    visit(ui.window->contentItem(), [&](QQuickItem* item) {
                        if (!isMade(item, "Card"))
                            return;
                        const QRectF card = onScreen(item);
                        visit(item, [&](QQuickItem* inside) {
                            if (!isText(inside) || isFace(inside))
                                return;
                            const QRectF where = onScreen(inside);
                            if (where.left() < card.left() - kHair || where.right() > card.right() + kHair)
                                FAIL_CHECK(language.toStdString()
                                           << " at " << scale << ", " << page.toStdString() << ": " << nameOf(inside));
                        });
                    });
                }
            }
            QCoreApplication::removeTranslator(&translator);
        }
    QLocale::setDefault(words::localeFor("en"));
}

TEST_CASE("A language chosen later is spoken at once, on pages already open")
{
    Interface ui({390, 2400}, "light");
    const auto texts = [&] {
        QStringList out;
        visit(ui.window->contentItem(), [&](QQuickItem* item) {
            if (isText(item))
                out << item->property("text").toString();
        });
        return out;
    };
    REQUIRE(ui.show("Plan"));
    ui.settled();
    REQUIRE(texts().contains("Hands"));
    REQUIRE(texts().contains("Days away"));
    QTranslator german;
    REQUIRE(german.load(":/i18n/firstdew_de"));
    QCoreApplication::installTranslator(&german);
    QLocale::setDefault(words::localeFor("de"));
    ui.appearance.setLanguage("de");
    ui.engine.retranslate();
    ui.settled();
    const QStringList now = texts();
    for (const char* word : {"Plan", "Hände", "Abwesend", "Heute"})
        CHECK(now.contains(QString::fromUtf8(word)));
    for (const char* word : {"Hands", "Days away", "Today"})
        CHECK_FALSE(now.contains(word));
    QCoreApplication::removeTranslator(&german);
    QLocale::setDefault(words::localeFor("en"));
}
