#include "AppContext.h"
#include "Pages.h"
#include "SystemClock.h"
#include "journal/Journal.h"
#include "ports/Absent.h"
#include "print/SummaryPdf.h"

#include <QDir>
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QMouseEvent>
#include <QQmlApplicationEngine>
#include <QQmlComponent>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QtQml/qqmlextensionplugin.h>
#include <sqlite3.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <functional>

// How quick the interface is, each beside a floor measured in the same run: from the tap to the fact on disk, and the
// frames of ten years being dragged. Prints, asserts nothing: times belong to machines.

Q_IMPORT_QML_PLUGIN(FirstdewPlugin)

namespace {

using namespace firstdew;
using namespace firstdew::facts;

constexpr int kYears = 10;
constexpr int kTaps = 60;
constexpr int kFrames = 120;
constexpr int kFrameMs = 16;

struct Spread {
    double median = 0;
    double slow = 0; ///< 95 of 100 are quicker
};

Spread spreadOf(std::vector<double> ms)
{
    std::sort(ms.begin(), ms.end());
    return {ms[ms.size() / 2], ms[ms.size() * 95 / 100]};
}

Spread timed(int rounds, const std::function<void(int)>& what)
{
    std::vector<double> ms;
    QElapsedTimer clock;
    for (int i = 0; i < rounds; ++i) {
        clock.start();
        what(i);
        ms.push_back(static_cast<double>(clock.nsecsElapsed()) / 1e6);
    }
    return spreadOf(std::move(ms));
}

QElapsedTimer sinceTap;
double storedMs = -1;

/// Every database opened from here on says when a fact is through to the disk: one alone is stored without a COMMIT.
int watchStores(sqlite3* db, char**, const sqlite3_api_routines*)
{
    return sqlite3_trace_v2(
        db, SQLITE_TRACE_PROFILE,
        [](unsigned, void*, void* statement, void*) {
            if (QByteArray(sqlite3_sql(static_cast<sqlite3_stmt*>(statement))).startsWith("INSERT"))
                storedMs = static_cast<double>(sinceTap.nsecsElapsed()) / 1e6;
            return 0;
        },
        nullptr);
}

void print(const std::string& what, Spread spread)
{
    std::printf("%s-ms %.3f\n%s-95-ms %.3f\n", what.c_str(), spread.median, what.c_str(), spread.slow);
}

std::vector<Payload> tenYearsOf(DiarySite site, int day)
{
    const bool clammy = day % 13 == 0;
    std::vector<Payload> out{CheckIn{site, clammy ? Level::Clammy : Level::Dry, {}}};
    if (clammy)
        out.emplace_back(Session{site == DiarySite::Hands ? Site::Hands : Site::Feet,
                                 Waveform::Direct,
                                 Milliamps{15},
                                 Milliamps{14},
                                 true,
                                 Comfort::Comfortable,
                                 {},
                                 {},
                                 "",
                                 "",
                                 ""});
    return out;
}

/// Written straight into the journal: the interface is not there yet.
void fill(const std::string& file, LocalDate today)
{
    auto journal = journal::Journal::open(file);
    std::vector<Fact> facts;
    const auto add = [&](Payload payload, LocalDate date) {
        Fact f;
        f.person = "p1";
        f.happened = {date, LocalTime::parse("2026-03-20T19:00")->at};
        f.payload = std::move(payload);
        facts.push_back(std::move(f));
    };
    const LocalDate first = today - 365 * kYears;
    add(Person{"Alma", LocalDate::parse("1990-04-23"), {}, {}, {}}, first);
    add(Machine{"Invented", true, true, PolaritySwap::Leads, false, PowerSource::Mains, {}}, first);
    for (const Site site : {Site::Hands, Site::Feet})
        add(SiteUse{site, true}, first);
    for (int day = 0; day < 365 * kYears; ++day)
        for (const auto site : {DiarySite::Hands, DiarySite::Feet})
            for (auto& payload : tenYearsOf(site, day))
                add(std::move(payload), first + day);
    if (const auto kept = journal.value().appendAll(facts); !kept)
        std::printf("%s\n", kept.error().message.c_str());
}

QQuickItem* itemNamed(QQuickItem* root, const QString& text)
{
    for (QQuickItem* child : root->childItems()) {
        if (!child->isVisible())
            continue;
        if (child->inherits("QQuickAbstractButton") && child->property("text").toString() == text)
            return child;
        if (QQuickItem* found = itemNamed(child, text))
            return found;
    }
    return nullptr;
}

QQuickItem* itemOf(QQuickItem* root, const char* type)
{
    for (QQuickItem* child : root->childItems()) {
        if (!child->isVisible())
            continue;
        if (child->inherits(type))
            return child;
        if (QQuickItem* found = itemOf(child, type))
            return found;
    }
    return nullptr;
}

void mouse(QQuickWindow* window, QEvent::Type type, QPointF at)
{
    const auto buttons = type == QEvent::MouseButtonRelease ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, window->mapToGlobal(at.toPoint()),
                      type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton, buttons, Qt::NoModifier);
    static quint64 when = 1;
    event.setTimestamp(when += kFrameMs);
    QCoreApplication::sendEvent(window, &event);
}

void tap(QQuickWindow* window, QQuickItem* item)
{
    const QPointF at = item->mapToScene({item->width() / 2, item->height() / 2});
    mouse(window, QEvent::MouseButtonPress, at);
    mouse(window, QEvent::MouseButtonRelease, at);
}

QQuickWindow* show(QQuickWindow* window, const char* page)
{
    if (!app::showPage(*window, page))
        std::printf("%s is not shown\n", page);
    for (int i = 0; i < 5; ++i) {
        QCoreApplication::processEvents();
        window->grabWindow();
    }
    return window;
}

/// One row with the durability of the journal: a log written through to disk at each commit.
Spread bareInserts(const std::string& file)
{
    sqlite3* db = nullptr;
    sqlite3_open(file.c_str(), &db);
    sqlite3_exec(db,
                 "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; CREATE TABLE fact(id TEXT PRIMARY KEY, body TEXT)",
                 nullptr, nullptr, nullptr);
    const Spread spread = timed(kTaps, [&](int i) {
        const std::string row =
            "INSERT INTO fact VALUES('b" + std::to_string(i) + R"(', '{"site":"hands","level":"dry","with":[]}'))";
        sqlite3_exec(db, row.c_str(), nullptr, nullptr, nullptr);
    });
    sqlite3_close(db);
    return spread;
}

void benchTaps(QQuickWindow* window, const std::string& folder)
{
    show(window, "Today");
    const Spread bare = bareInserts(folder + "/bare.db");
    std::vector<double> stored;
    std::vector<double> shown;
    for (int i = 0; i < kTaps; ++i) {
        QQuickItem* change = itemNamed(window->contentItem(), "Undo");
        if (change != nullptr)
            tap(window, change);
        QCoreApplication::processEvents();
        QQuickItem* dry = itemNamed(window->contentItem(), "Dry");
        if (dry == nullptr)
            break;
        storedMs = -1;
        sinceTap.start();
        tap(window, dry);
        QCoreApplication::processEvents();
        window->grabWindow();
        if (storedMs < 0)
            continue;
        stored.push_back(storedMs);
        shown.push_back(static_cast<double>(sinceTap.nsecsElapsed()) / 1e6);
    }
    if (stored.size() < kTaps) {
        std::fprintf(stderr, "only %zu of %d taps stored a check-in\n", stored.size(), kTaps);
        std::exit(1);
    }
    print("bare-insert", bare);
    print("tap-stored", spreadOf(stored));
    print("tap-shown", spreadOf(shown));
}

/// A window of the same size that changes its colour.
Spread emptyFrames(QQmlEngine& engine, QSize size)
{
    QQmlComponent component(&engine);
    component.setData("import QtQuick\nWindow { visible: true; Rectangle { objectName: 'it'; anchors.fill: parent } }",
                      {});
    std::unique_ptr<QObject> made(component.create());
    auto* window = qobject_cast<QQuickWindow*>(made.get());
    window->resize(size);
    auto* it = window->findChild<QQuickItem*>("it");
    return timed(kFrames, [&](int i) {
        it->setProperty("color", QColor::fromHsv(i, 80, 200));
        QCoreApplication::processEvents();
        window->grabWindow();
    });
}

void benchFrames(QQuickWindow* window, QQmlEngine& engine)
{
    print("frame-empty", emptyFrames(engine, window->size()));
    for (const char* span : {"Year", "Quarter"}) {
        show(window, "Diary");
        tap(window, itemNamed(window->contentItem(), span));
        show(window, "Diary");
        QQuickItem* chart = itemOf(window->contentItem(), "firstdew::controls::DampnessChart");
        const QPointF start = chart->mapToScene({chart->width() / 4, chart->height() / 2});
        mouse(window, QEvent::MouseButtonPress, start);
        const int before = chart->property("back").toInt();
        const Spread frames = timed(kFrames, [&](int i) {
            mouse(window, QEvent::MouseMove, start + QPointF(i * 1.5, 0));
            QCoreApplication::processEvents();
            window->grabWindow();
        });
        mouse(window, QEvent::MouseButtonRelease, start);
        if (chart->property("back").toInt() == before) {
            std::fprintf(stderr, "the chart was not dragged\n");
            std::exit(1);
        }
        print(QString("frame-%1").arg(span).toLower().toStdString(), frames);
    }
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication program(argc, argv);
    print::loadTypefaces();
    // Where the caller says: a store is on a disk, and a folder for passing things may be memory.
    QTemporaryDir folder(program.arguments().value(1, QDir::tempPath()) + "/face-XXXXXX");
    const std::string file = (folder.path() + "/record.db").toStdString();
    app::SystemClock clock(LocalTime::parse("2026-03-20T19:00"));
    fill(file, clock.localNow().date);
    sqlite3_auto_extension(reinterpret_cast<void (*)()>(watchStores));
    viewmodels::Store store(clock, file);
    viewmodels::Appearance appearance(store, {diary::Theme::Light, "en", "today", "bench", 1, 390, 844});
    ports::AbsentVoice voice;
    ports::AbsentWakeGuard wake;
    ports::AbsentHaptics haptics;
    ports::AbsentSessionNotice notice;
    ports::AbsentSharer sharer;
    ports::AbsentOpener opener;
    viewmodels::BathModel bath(store, {voice, wake, haptics, notice});
    ports::AbsentCodeCamera camera;
    viewmodels::ScanModel scan(camera);
    viewmodels::SummaryModel summary(store, sharer, opener, folder.path() + "/outgoing");
    viewmodels::AppContext context(store, appearance, bath, summary, scan);
    QQmlApplicationEngine engine;
    context.giveTo(engine);
    engine.addImportPath("qrc:/");
    engine.load(QUrl("qrc:/Firstdew/AppWindow.qml"));
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    benchTaps(window, folder.path().toStdString());
    benchFrames(window, engine);
    return 0;
}
