#include "SelfTest.h"

#include "Appearance.h"
#include "Pages.h"
#include "words/Names.h"

#include <QGuiApplication>
#include <QImage>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTextStream>

#include <algorithm>
#include <chrono>

namespace firstdew::app {

namespace {

constexpr int kLeastFrames = 4;
constexpr int kMostFrames = 40;

QStringList seen;
QtMessageHandler before = nullptr;

void keep(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    // The offscreen platform warns of what it cannot do, which is no fault of a page.
    const bool ofPlatform = message.contains("This plugin does not support");
    if (type != QtDebugMsg && type != QtInfoMsg && !ofPlatform)
        seen << message;
    before(type, context, message);
}

/// Processes events until two frames in a row are the same.
QImage pictureAtRest(QQuickWindow& window)
{
    QImage last;
    for (int i = 0; i < kMostFrames; ++i) {
        QCoreApplication::processEvents();
        QImage now = window.grabWindow();
        if (i >= kLeastFrames && now == last)
            break;
        last = std::move(now);
    }
    return last;
}

bool showsButton(const QQuickItem& item, const QString& text)
{
    if (!item.isVisible())
        return false;
    if (item.inherits("QQuickAbstractButton") && item.property("text") == text)
        return true;
    const auto children = item.childItems();
    return std::any_of(children.begin(), children.end(), [&](const QQuickItem* c) { return showsButton(*c, text); });
}

} // namespace

void watchWarnings()
{
    if (before == nullptr)
        before = qInstallMessageHandler(keep);
}

int selfTest(QQuickWindow& window, viewmodels::Appearance& appearance, const QString& pictures)
{
    QTextStream out(stdout);
    const QStringList pages = pageNames();
    int failures = static_cast<int>(seen.size());
    for (const auto choice : {ui::ThemeChoice::Light, ui::ThemeChoice::Dark}) {
        const QString theme = choice == ui::ThemeChoice::Dark ? QStringLiteral("dark") : QStringLiteral("light");
        appearance.showTheme(choice);
        for (const QString& page : pages) {
            const auto warningsBefore = seen.size();
            const bool shown = showPage(window, page);
            const QImage picture = pictureAtRest(window);
            const bool good = shown && !picture.isNull() && seen.size() == warningsBefore;
            failures += good ? 0 : 1;
            if (!pictures.isEmpty())
                picture.save(QStringLiteral("%1/%2-%3.png").arg(pictures, page.toLower(), theme));
            out << (good ? "ok   " : "FAIL ") << page << ' ' << theme
                << Qt::endl; // seen even if the next page never comes
        }
    }
    out << pages.size() * 2 << " page loads, " << failures << " failures\n";
    return failures;
}

bool screenshot(QQuickWindow& window, const QString& file) { return pictureAtRest(window).save(file); }

void announceFirstFrame(QQuickWindow& window)
{
    // One button of the check-in stands for all of them.
    const QString level = words::levelName(facts::Level::Wet);
    auto* once = new QObject(&window);
    QObject::connect(&window, &QQuickWindow::frameSwapped, once, [&window, level, once] {
        const auto now = std::chrono::steady_clock::now().time_since_epoch();
        if (!showsButton(*window.contentItem(), level))
            return;
        QTextStream(stdout) << "first frame " << std::chrono::nanoseconds(now).count() << Qt::endl;
        once->deleteLater();
    });
}

} // namespace firstdew::app
