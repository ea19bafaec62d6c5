#include "SelfTest.h"

#include "Appearance.h"

#include <QDirIterator>
#include <QGuiApplication>
#include <QImage>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTextStream>

namespace firstdew::app {

namespace {

constexpr int kLeastFrames = 4;
constexpr int kMostFrames = 40;

QStringList seen;
QtMessageHandler before = nullptr;

void keep(QtMsgType type, const QMessageLogContext& context, const QString& message)
{
    // What the picture-only platform cannot do says nothing about the pages.
    const bool ofPlatform = message.contains("This plugin does not support");
    if (type != QtDebugMsg && type != QtInfoMsg && !ofPlatform)
        seen << message;
    before(type, context, message);
}

/// Lets bindings, loaders and layouts come to rest: until two frames are the same.
QImage settled(QQuickWindow& window)
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

} // namespace

void watchWarnings()
{
    if (before == nullptr)
        before = qInstallMessageHandler(keep);
}

QStringList warningsSeen() { return seen; }

int selfTest(QQuickWindow& window, viewmodels::Appearance& appearance, const QString& pictures)
{
    QTextStream out(stdout);
    QStringList pages;
    QDirIterator files(QStringLiteral(":/Firstdew/pages"), {QStringLiteral("*.qml")}, QDir::Files);
    while (files.hasNext())
        pages << QFileInfo(files.next()).baseName();
    pages.sort();

    int failures = static_cast<int>(seen.size());
    for (const auto choice : {ui::ThemeChoice::Light, ui::ThemeChoice::Dark}) {
        const QString theme = choice == ui::ThemeChoice::Dark ? QStringLiteral("dark") : QStringLiteral("light");
        appearance.showTheme(choice);
        for (const QString& page : pages) {
            const auto warningsBefore = seen.size();
            QVariant shown;
            QMetaObject::invokeMethod(&window, "showForTest", Q_RETURN_ARG(QVariant, shown), Q_ARG(QVariant, page));
            const QImage picture = settled(window);
            const bool good = shown.toBool() && !picture.isNull() && seen.size() == warningsBefore;
            failures += good ? 0 : 1;
            if (!pictures.isEmpty())
                picture.save(QStringLiteral("%1/%2-%3.png").arg(pictures, page.toLower(), theme));
            out << (good ? "ok   " : "FAIL ") << page << ' ' << theme << '\n';
        }
    }
    out << pages.size() * 2 << " page loads, " << failures << " failures\n";
    return failures;
}

bool screenshot(QQuickWindow& window, const QString& file) { return settled(window).save(file); }

} // namespace firstdew::app
