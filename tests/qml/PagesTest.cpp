#include "Interface.h"
#include "theme/Theme.h"
#include "words/Sentences.h"

#include <algorithm>

#include <QFontMetricsF>
#include <QHash>
#include <QKeyEvent>
#include <QQmlContext>
#include <QQmlExpression>
#include <QRegularExpression>
#include <QSet>
#include <QTranslator>
#include <QtQml/qqmlextensionplugin.h>

#include <cmath>
#include <sqlite3.h>

Q_IMPORT_QML_PLUGIN(FirstdewPlugin)

using namespace firstdew;
using namespace firstdew::tests;

namespace {

constexpr double kTarget = 48;         // product requirement, device-independent pixels
constexpr double kContrast = 4.5;      // WCAG 2.2, success criterion 1.4.3
constexpr double kRunningTarget = 96;  // product requirements for the running session
constexpr double kRunningContrast = 7; // WCAG 2.2, success criterion 1.4.6
constexpr double kRounding = 0.5;
constexpr double kShortLine = 190; // left of a line of 320 beside a tick within a card; a longer word has to be broken

/// What runs beside a current is read and touched from further away.
bool running(const QString& page) { return page == "Bath:run" || page == "Bath:alarm" || page == "Bath:under"; }

QColor inkOf(QQuickItem* item) { return item->property(isFace(item) ? "ink" : "color").value<QColor>(); }

/// Relative luminance, WCAG 2.2 definition.
double luminance(const QColor& c)
{
    const auto linear = [](double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(c.redF()) + 0.7152 * linear(c.greenF()) + 0.0722 * linear(c.blueF());
}

double contrast(const QColor& a, const QColor& b)
{
    const double la = luminance(a);
    const double lb = luminance(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

/// The commonest colour behind a text, taken from the picture itself.
QColor behind(const QImage& picture, QRectF where)
{
    QHash<QRgb, int> count;
    const QRect r = where.toRect().adjusted(-1, -1, 1, 1).intersected(picture.rect());
    for (int y = r.top(); y <= r.bottom(); ++y)
        for (int x = r.left(); x <= r.right(); ++x)
            ++count[picture.pixel(x, y)];
    QRgb most = 0;
    int times = 0;
    for (auto i = count.cbegin(); i != count.cend(); ++i)
        if (i.value() > times) {
            most = i.key();
            times = i.value();
        }
    return QColor(most);
}

/// The part of an item that is on the screen: what its scrolling ancestors cut off is not.
QRectF seenOf(QQuickItem* item, QQuickWindow* window)
{
    QRectF seen = onScreen(item).intersected(QRectF(QPointF(), window->size()));
    for (QQuickItem* p = item->parentItem(); p != nullptr; p = p->parentItem())
        if (p->clip())
            seen = seen.intersected(onScreen(p));
    return seen;
}

/// Everything to touch or to read that notch or bars would cover.
void nothingUnderTheEdges(Interface& ui, const QRectF& free, const std::string& where)
{
    ui.settled();
    int seen = 0;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (!isButton(item) && !isText(item))
            return;
        const QRectF part = seenOf(item, ui.window);
        if (part.width() < 1 || part.height() < 1)
            return;
        ++seen;
        if (!free.adjusted(-kRounding, -kRounding, kRounding, kRounding).contains(part))
            FAIL_CHECK(where << ": " << nameOf(item) << " at " << part.x() << ',' << part.y() << ' ' << part.width()
                             << 'x' << part.height());
    });
    INFO(where);
    CHECK(seen > 0);
}

} // namespace

TEST_CASE("Nothing to touch or to read lies under a notch or the system's bars, on any page and sheet")
{
    struct Phone {
        QSize size;
        QMarginsF edges;
        Qt::LayoutDirection direction;
    };
    for (const Phone& phone :
         {Phone{{390, 844}, {0, 47, 0, 34}, Qt::LeftToRight}, Phone{{844, 390}, {59, 0, 40, 21}, Qt::LeftToRight},
          Phone{{844, 390}, {59, 0, 40, 21}, Qt::RightToLeft}}) {
        Interface ui(phone.size, "light", 1, phone.direction);
        ui.appearance.keepFree(phone.edges);
        const QRectF free = QRectF(QPointF(), phone.size).marginsRemoved(phone.edges);
        const std::string how = phone.size.width() > 400 ? " on its side" : "";
        for (const QString& page : pages()) {
            REQUIRE(ui.show(page));
            nothingUnderTheEdges(ui, free, page.toStdString() + how);
        }
        REQUIRE(ui.show("Today"));
        auto* router = ui.router();
        for (const auto sheet : {ui::Part::NotNowSheetPart, ui::Part::TroubleSheetPart}) {
            emit router->sheet(sheet);
            nothingUnderTheEdges(ui, free, "a sheet" + how);
            REQUIRE(router->closeTopSheet());
        }
    }
}

TEST_CASE("Backgrounds reach under a notch and the system's bars")
{
    Interface ui({390, 844}, "light");
    ui.appearance.keepFree({0, 47, 0, 34});
    REQUIRE(ui.show("Today"));
    QImage picture = ui.settled();
    CHECK(picture.pixelColor(200, 4) == Theme::instance()->paper());
    CHECK(picture.pixelColor(200, 840) == Theme::instance()->card()); // the bar of the places
    REQUIRE(ui.show("Bath:alarm"));
    picture = ui.settled();
    CHECK(picture.pixelColor(200, 4) == Theme::alarm());
    CHECK(picture.pixelColor(200, 840) == Theme::alarm());
}

TEST_CASE("Whether the way back leads anywhere is known beforehand, on every page")
{
    Interface ui({390, 844}, "light");
    auto* router = ui.router();
    QList<bool> told;
    QObject::connect(router, &controls::Router::backLeads, [&](bool leads) { told << leads; });
    const auto leads = [&] { return ui.window->property("canGoBack").toBool(); };
    const auto goesBack = [&] {
        QVariant handled;
        QMetaObject::invokeMethod(ui.window, "goBack", Q_RETURN_ARG(QVariant, handled));
        return handled.toBool();
    };
    for (const QString& page : pages()) {
        REQUIRE(ui.show(page));
        ui.settled();
        INFO(page.toStdString());
        const bool running = ui.bath.busy();
        for (int steps = 0; steps < 20 && leads(); ++steps) {
            CHECK(goesBack());
            ui.settled();
            if (running && ui.bath.busy()) { // its own exits alone lead out
                CHECK(leads());
                ui.bath.stop();
            }
        }
        CHECK_FALSE(leads());
        CHECK_FALSE(goesBack());
    }
    CHECK(told.contains(true));
    CHECK_FALSE(told.constLast());
    REQUIRE(ui.show("Today")); // nothing lies over the lock
    emit router->sheet(ui::Part::TroubleSheetPart);
    ui.settled();
    CHECK(leads());
    CHECK(told.constLast());
    CHECK(goesBack());
    ui.settled();
    CHECK_FALSE(leads());
}

TEST_CASE("The contrast formula gives the values of its definition")
{
    // WCAG 2.2: black on white is 21:1. #767676 on white is the well-known 4.54:1 (common knowledge, no source page).
    CHECK(contrast(Qt::black, Qt::white) == Approx(21.0));
    CHECK(contrast(QColor("#767676"), Qt::white) == Approx(4.54).margin(0.01));
}

TEST_CASE("Text on every page stands out from what is behind it in both themes")
{
    for (const char* theme : {"light", "dark"}) {
        Interface ui({390, 2400}, theme);
        int seen = 0;
        for (const QString& page : pages()) {
            REQUIRE(ui.show(page));
            const QImage picture = ui.settled();
            visit(ui.window->contentItem(), [&](QQuickItem* item) {
                const QRectF where = onScreen(item);
                if (!isText(item) || !QRectF(picture.rect()).contains(where) || where.height() < 4)
                    return;
                ++seen;
                const QColor ink = inkOf(item);
                const double ratio = contrast(ink, behind(picture, where));
                if (ratio < (running(page) ? kRunningContrast : kContrast))
                    FAIL_CHECK(theme << ' ' << page.toStdString() << ": " << nameOf(item) << " has " << ratio);
            });
        }
        CHECK(seen > 150);
    }
}

TEST_CASE("Where there are several people, every page and the running session say whose they are")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.store.addPerson(Person{"Berta", LocalDate::parse("1992-05-01"), {}, {}, {}}));
    ui.fillFor("Berta");
    // Of all of them, or of somebody whose record is elsewhere.
    const QStringList ofNobodyHere{"About",         "People",       "MovePage",   "Caseload",   "CasePage",
                                   "MakeSheetPage", "HandOverPage", "Lock:asked", "Lock:wrong", "Lock:dialog"};
    for (const QString& page : pages()) {
        if (ofNobodyHere.contains(page))
            continue;
        REQUIRE(ui.show(page));
        ui.settled();
        bool said = false;
        visit(ui.window->contentItem(), [&](QQuickItem* item) {
            said = said ||
                   (isText(item) &&
                    item->property("text").toString().replace(QChar(0xa0), QChar(' ')).split(" · ").contains("Berta"));
        });
        if (!said)
            FAIL_CHECK(page.toStdString() << " does not say whose it is");
    }
}

TEST_CASE("What is said before a bath names the level that the session first asks for")
{
    Interface ui({390, 844}, "light");
    ui.store.append(Session{Site::Feet,
                            Waveform::Direct,
                            Milliamps{19},
                            Milliamps{18.5},
                            true,
                            Comfort::Comfortable,
                            {},
                            {},
                            "",
                            "",
                            ""},
                    LocalTime::parse("2026-03-10T18:00"));
    REQUIRE(ui.showBath("run"));
    const QString first = ui.bath.running().meter.target;
    CHECK(plain(first) == "17 mA"); // 3 mA under the limit of 20
    CHECK(plain(ui.bath.adviceText()).contains("18.5 mA was comfortable"));
    CHECK(ui.bath.adviceText().contains("Start at " + first));
}

TEST_CASE("Everything that can be touched is large enough and has a name")
{
    Interface ui({320, 568}, "light");
    int seen = 0;
    for (const QString& page : pages()) {
        REQUIRE(ui.show(page));
        ui.settled();
        visit(ui.window->contentItem(), [&](QQuickItem* item) {
            if (!isButton(item) && !item->inherits("QQuickTextField"))
                return;
            ++seen;
            // Seven days share one line of 320: their height is full, their width what is left of it.
            const double high = running(page) ? kRunningTarget : kTarget;
            const double least = item->property("gap").isValid() ? 36 : high;
            if (item->width() < least - kRounding || item->height() < high - kRounding)
                FAIL_CHECK(page.toStdString()
                           << ": " << nameOf(item) << " is " << item->width() << " x " << item->height());
            QObject* accessible = nullptr;
            for (QObject* child : item->children())
                if (child->inherits("QQuickAccessibleAttached"))
                    accessible = child;
            if (accessible == nullptr || accessible->property("name").toString().isEmpty())
                FAIL_CHECK(page.toStdString() << ": " << nameOf(item) << " has no name");
        });
    }
    CHECK(seen > 100);
}

TEST_CASE("With the keyboard alone everything is reached, comes into view, and shows where the keyboard is")
{
    Interface ui({320, 568}, "light");
    int seen = 0;
    const auto tab = [&] {
        for (const auto type : {QEvent::KeyPress, QEvent::KeyRelease}) {
            QKeyEvent event(type, Qt::Key_Tab, Qt::NoModifier, "\t");
            QCoreApplication::sendEvent(ui.window, &event);
        }
        ui.settled();
        return ui.window->activeFocusItem();
    };
    for (const QString& page : pages()) {
        if (page == "Bath:under")
            continue; // there any key stops the session
        REQUIRE(ui.show(page));
        ui.window->requestActivate();
        ui.settled();
        QSet<QQuickItem*> missing;
        visit(ui.window->contentItem(), [&](QQuickItem* item) {
            if (item->isEnabled() && (isButton(item) || item->inherits("QQuickTextField")))
                missing.insert(item);
        });
        QSet<QQuickItem*> met;
        for (QQuickItem* item = tab(); item != nullptr && !met.contains(item); item = tab()) {
            met.insert(item);
            missing.remove(item);
            ++seen;
            const QImage now = ui.window->grabWindow();
            const QRectF where = onScreen(item);
            if (!QRectF(now.rect()).adjusted(-1, -1, 1, 1).contains(where.center()))
                FAIL_CHECK(page.toStdString() << ": " << nameOf(item) << " stays out of view at " << where.top());
            // The edge of what has the keyboard is not what it is without it.
            item->setFocus(false, Qt::OtherFocusReason);
            ui.settled();
            const QRect edge = where.adjusted(-4, -4, 4, 4).toRect().intersected(now.rect());
            if (now.copy(edge) == ui.window->grabWindow().copy(edge))
                FAIL_CHECK(page.toStdString()
                           << ": " << nameOf(item) << " looks the same with the keyboard and without");
            item->forceActiveFocus(Qt::TabFocusReason);
        }
        for (QQuickItem* item : missing)
            FAIL_CHECK(page.toStdString() << ": " << nameOf(item) << " is not reached with the keyboard");
    }
    CHECK(seen > 150);
}

TEST_CASE("What is made after the first picture moves nothing in it")
{
    const double scale = GENERATE(1.0, 2.0);
    INFO("text " << scale);
    Interface ui({390, 844}, "light", scale);
    const auto drawn = [&] {
        return QQmlExpression(qmlContext(ui.window), ui.window, "Router.drawn").evaluate().toBool();
    };
    const auto texts = [&] {
        QMultiHash<QString, QRectF> out;
        visit(ui.window->contentItem(), [&](QQuickItem* item) {
            if (isText(item))
                out.insert(item->property("text").toString(), onScreen(item));
        });
        return out;
    };
    (void)ui.window->grabWindow();
    REQUIRE_FALSE(drawn());
    const auto first = texts();
    CHECK(first.contains("Wet"));
    for (int i = 0; i < 40 && !drawn(); ++i)
        (void)ui.settled();
    REQUIRE(drawn());
    ui.settled();
    const auto later = texts();
    CHECK(later.size() > first.size());
    for (auto i = first.cbegin(); i != first.cend(); ++i) {
        INFO(i.key().toStdString());
        const auto now = later.values(i.key());
        CHECK(std::any_of(now.begin(), now.end(),
                          [&](const QRectF& r) { return r.topLeft() == i->topLeft() && r.height() == i->height(); }));
    }
}

TEST_CASE("With the on-screen keyboard up, what is written in stays in view")
{
    constexpr int kKeyboard = 300;
    Interface ui({360, 720}, "light");
    REQUIRE(ui.show("WeighPage"));
    ui.settled();
    QQuickItem* last = nullptr;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (item->inherits("QQuickTextField"))
            last = item;
    });
    REQUIRE(last != nullptr);
    last->forceActiveFocus();
    ui.settled();
    ui.window->setProperty("keyboardHeight", kKeyboard);
    ui.settled();
    const QRectF where = onScreen(last);
    CHECK(where.top() >= 0);
    CHECK(where.bottom() <= 720 - kKeyboard);
}

TEST_CASE("What could not be saved is said at once, over whatever sheet is open")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.show("Today"));
    ui.settled();
    const auto run = [&](const char* script) {
        return QQmlExpression(qmlContext(ui.window), ui.window, script).evaluate();
    };
    const auto shows = [&](const QString& title) {
        ui.settled();
        bool there = false;
        visit(ui.window->contentItem(),
              [&](QQuickItem* item) { there = there || (isText(item) && item->property("text") == title); });
        return there;
    };
    const int day17 = LocalDate::parse("2026-03-17")->daysSince1970();
    const QString day = ui.appearance.phrases()->dayFull(day17);
    const QString trouble = "That could not be saved";
    run("Router.openDaySheet(Store.today - 3)");
    REQUIRE(shows(day));
    CHECK_FALSE(shows(trouble));

    sqlite3* other = nullptr; // a program that writes and does not come to an end
    REQUIRE(sqlite3_open((ui.folder.path() + "/record.db").toUtf8(), &other) == SQLITE_OK);
    REQUIRE(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr) == SQLITE_OK);
    const auto before = ui.store.allFacts().size();
    CHECK_FALSE(run("TodayModel.checkIn(DiarySite.Hands, Level.Wet, Store.today - 3)").toBool());
    CHECK(ui.store.allFacts().size() == before);
    CHECK(shows(trouble));
    CHECK(shows(day));
    sqlite3_close(other);

    CHECK(run("TodayModel.checkIn(DiarySite.Hands, Level.Wet, Store.today - 3)").toBool());
    CHECK(ui.store.allFacts().size() == before + 1);
}

TEST_CASE("No field or button lies over another")
{
    // What scrolls together is compared; a bar over what scrolls is meant.
    const auto scroller = [](QQuickItem* item) {
        while (item != nullptr && !item->inherits("QQuickFlickable"))
            item = item->parentItem();
        return item;
    };
    for (const QSize size : {QSize(320, 568), QSize(390, 844)}) {
        Interface ui(size, "light");
        int seen = 0;
        for (const QString& page : pages()) {
            REQUIRE(ui.show(page));
            ui.settled();
            std::vector<QQuickItem*> controls;
            visit(ui.window->contentItem(), [&](QQuickItem* item) {
                if (isButton(item) || item->inherits("QQuickTextField"))
                    controls.push_back(item);
            });
            for (std::size_t a = 0; a < controls.size(); ++a)
                for (std::size_t b = a + 1; b < controls.size(); ++b) {
                    if (scroller(controls[a]) != scroller(controls[b]) || controls[a]->isAncestorOf(controls[b]))
                        continue;
                    ++seen;
                    const QRectF both = onScreen(controls[a]).intersected(onScreen(controls[b]));
                    if (both.width() > 1 && both.height() > 1)
                        FAIL_CHECK(page.toStdString() << ": " << nameOf(controls[a]) << " and " << nameOf(controls[b]));
                }
        }
        CHECK(seen > 300);
    }
}

TEST_CASE("Nothing runs off the screen at twice the text size, in either direction")
{
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft}) {
        Interface ui({320, 568}, "light", 2, direction);
        for (const QString& page : pages()) {
            REQUIRE(ui.show(page));
            ui.settled();
            visit(ui.window->contentItem(), [&](QQuickItem* item) {
                if (!isText(item) && !isButton(item))
                    return;
                const QRectF where = onScreen(item);
                const bool cut = item->property("truncated").toBool();
                if (where.left() < -1 || where.right() > 321 || cut)
                    FAIL_CHECK(page.toStdString() << (direction == Qt::RightToLeft ? " rtl: " : ": ") << nameOf(item)
                                                  << " from " << where.left() << " to " << where.right());
            });
        }
    }
}

TEST_CASE(
    "No word that fits a line is broken on the smallest screen but at its hyphens, in any language and twice as large")
{
    for (const QString& language : words::languages())
        for (const double scale : {1.0, 2.0}) {
            QTranslator translator;
            REQUIRE(translator.load(":/i18n/firstdew_" + language));
            needApplication();
            QCoreApplication::installTranslator(&translator);
            QLocale::setDefault(words::localeFor(language));
            Interface ui({320, 568}, "light", scale, QLocale().textDirection());
            int seen = 0;
            for (const QString& page : pages()) {
                REQUIRE(ui.show(page));
                ui.settled();
                visit(ui.window->contentItem(), [&](QQuickItem* item) {
                    if (!isText(item) || !wraps(item))
                        return;
                    const QFontMetricsF metrics(item->property("font").value<QFont>());
                    const QStringList parts = item->property("text").toString().split(
                        QRegularExpression("[\\s\u00ad/-]"), Qt::SkipEmptyParts);
                    // A hair too narrow is not seen in the widths, but in a line more than there are words.
                    const bool allFit = std::all_of(parts.begin(), parts.end(), [&](const QString& word) {
                        return metrics.horizontalAdvance(word) <= kShortLine;
                    });
                    if (item->isVisible() && allFit &&
                        item->property("lineCount").toInt() > std::max<qsizetype>(1, parts.size()))
                        FAIL_CHECK(language.toStdString()
                                   << " at " << scale << ", " << page.toStdString() << ": "
                                   << parts.join(' ').toStdString() << " in more lines than words");
                    for (const QString& word : parts) {
                        ++seen;
                        const double needs = metrics.horizontalAdvance(word);
                        if (needs > roomOf(item) + 1 && needs <= kShortLine)
                            FAIL_CHECK(language.toStdString() << " at " << scale << ", " << page.toStdString() << ": "
                                                              << word.toStdString() << " in " << nameOf(item));
                    }
                });
            }
            CHECK(seen > 500);
            QCoreApplication::removeTranslator(&translator);
        }
    QLocale::setDefault(words::localeFor("en"));
}

TEST_CASE("Every caution is shown, one directly below the other, in whatever room there is")
{
    for (const QSize size : {QSize(320, 568), QSize(390, 844), QSize(844, 390)}) {
        Interface ui(size, "light");
        REQUIRE(ui.show("About"));
        ui.settled();
        const QStringList wanted = words::cautions();
        REQUIRE(wanted.size() == 7); // as many as the domain lists
        std::vector<QRectF> places;
        visit(ui.window->contentItem(), [&](QQuickItem* item) {
            if (isText(item) && wanted.contains(item->property("text").toString()))
                places.push_back(onScreen(item));
        });
        REQUIRE(places.size() == 7);
        for (std::size_t k = 1; k < places.size(); ++k) {
            const double between = places[k].top() - places[k - 1].bottom();
            INFO(size.width() << " x " << size.height() << ", caution " << k + 1);
            CHECK(between >= 0);
            CHECK(between < 40);
        }
    }
}

// Not a test: pictures of the steps of a bath, and of the lock with its notice, to be looked at. Run with "[.pictures]"
// and FIRSTDEW_PICTURES=FOLDER, FIRSTDEW_LANGUAGE=en|de|es|fr|pt_BR|ar, FIRSTDEW_SIZE=390x844, FIRSTDEW_SCALE=1,
// FIRSTDEW_THEME=light|dark.
TEST_CASE("Pictures of a bath", "[.pictures]")
{
    needApplication();
    const QString language = qEnvironmentVariable("FIRSTDEW_LANGUAGE", "en");
    const InLanguage spoken(language);
    const QStringList size = qEnvironmentVariable("FIRSTDEW_SIZE", "390x844").split('x');
    const double scale = qEnvironmentVariable("FIRSTDEW_SCALE", "1").toDouble();
    Interface ui({size[0].toInt(), size[1].toInt()}, qEnvironmentVariable("FIRSTDEW_THEME", "light"), scale,
                 QLocale().textDirection());
    REQUIRE(ui.show("SettingsPage"));
    emit ui.router()->sheet(ui::Part::UnguardedSheetPart);
    CHECK(ui.settled().save(qEnvironmentVariable("FIRSTDEW_PICTURES") + "/unguarded.png"));
    for (const QString& page : pages())
        if (page.contains(':')) {
            REQUIRE(ui.show(page));
            const QString name = page.startsWith("Bath:") ? page.mid(5) : page.toLower().replace(':', '-');
            CHECK(ui.settled().save(qEnvironmentVariable("FIRSTDEW_PICTURES") + "/" + name + ".png"));
        }
}
