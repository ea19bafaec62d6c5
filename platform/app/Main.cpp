#include "BathModel.h"
#include "Look.h"
#include "Options.h"
#include "Remind.h"
#include "Reminding.h"
#include "SelfTest.h"
#include "Store.h"
#include "SummaryModel.h"
#include "SystemClock.h"
#include "linux/DesktopNotifier.h"
#include "linux/DesktopSharer.h"
#include "linux/QtVoice.h"
#include "linux/ReminderTimer.h"
#include "print/SummaryPdf.h"

#include <QDBusConnectionInterface>
#include <QFont>
#include <QGuiApplication>
#include <QLocale>
#include <QQmlApplicationEngine>
#include <QQuickStyle>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTextStream>
#include <QTranslator>
#include <QtQml/qqmlextensionplugin.h>
#include <algorithm>
#include <string_view>

Q_IMPORT_QML_PLUGIN(FirstdewPlugin)

using namespace firstdew;

namespace {

void takeFonts()
{
    print::loadTypefaces();
    QFont font(QStringLiteral("Inter"));
    font.setFamilies({QStringLiteral("Inter"), QStringLiteral("Noto Sans Arabic")});
    QGuiApplication::setFont(font);
}

viewmodels::Look::Asked asked(const app::Options& o)
{
    viewmodels::Look::Asked a;
    a.theme = o.theme;
    a.language = o.language;
    a.page = o.page;
    a.version = QStringLiteral(FIRSTDEW_VERSION);
    a.textScale = o.textScale;
    a.width = o.size.width();
    a.height = o.size.height();
    a.still = !o.screenshot.isEmpty() || o.selfTest;
    return a;
}

/// Voice and tones as the person chose them in Plan.
linuxside::VoiceChoice voiceChoice(const viewmodels::Store& store)
{
    const std::string how = store.preference("sound").value_or("both");
    return {how == "both" || how == "voice", how == "both" || how == "tones"};
}

/// A tapped reminder brings the app to the front.
void comeToFront(QQmlApplicationEngine& engine, const QString& place)
{
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
    QMetaObject::invokeMethod(window, "go", Q_ARG(QVariant, place));
    window->raise();
    window->requestActivate();
}

/// Puts the interface into the person's language and direction, now and whenever another is chosen.
void speak(QTranslator& translator, QQmlApplicationEngine& engine, QString& spoken)
{
    const QString language = viewmodels::Look::instance()->language();
    if (language == spoken)
        return;
    spoken = language;
    QCoreApplication::removeTranslator(&translator);
    if (translator.load(QStringLiteral(":/i18n/firstdew_") + language))
        QCoreApplication::installTranslator(&translator);
    QLocale::setDefault(QLocale(language));
    QGuiApplication::setLayoutDirection(QLocale(language).textDirection());
    engine.retranslate();
}

/// The options, or nothing after saying what is wrong with them.
std::optional<app::Options> given(const QStringList& arguments)
{
    auto options = app::optionsFrom(arguments, qEnvironmentVariable("FIRSTDEW_TEST") == QLatin1String("1"));
    if (options)
        return std::move(options.value());
    QTextStream(stderr) << "firstdew: " << options.error().input.c_str() << ": " << options.error().message.c_str() << '\n';
    return std::nullopt;
}

/// Whether the first look at the arguments says that no window is wanted: a program without one needs no display.
bool windowless(int argc, char** argv)
{
    return std::any_of(argv + 1, argv + argc, [](const char* a) { return std::string_view(a) == "--remind"; });
}

int remind(int argc, char** argv)
{
    QCoreApplication program(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("firstdew"));
    const auto options = given(program.arguments().mid(1));
    return options ? app::remind(*options, program) : 2;
}

/// With the app closed the system looks for reminders, where the person wants them and the record is this account's own.
void keepReminding(const app::Options& options, const viewmodels::Store& store)
{
    if (!options.ownStore)
        return;
    linuxside::ReminderTimer timer(QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation), QCoreApplication::applicationFilePath(), options.store);
    const auto* settings = store.record().latest<facts::ReminderSettings>();
    const bool wanted = settings != nullptr && settings->payload.on;
    if (wanted != timer.isSet() && !timer.set(wanted))
        qWarning("reminders with the app closed could not be %s", wanted ? "set up" : "taken down");
}

} // namespace

int main(int argc, char** argv)
{
    if (windowless(argc, argv))
        return remind(argc, argv);
    QGuiApplication program(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("firstdew"));
    QCoreApplication::setApplicationVersion(QStringLiteral(FIRSTDEW_VERSION));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Firstdew"));

    const auto options = given(program.arguments().mid(1));
    if (!options)
        return 2;
    if (options->selfTest)
        app::watchWarnings();
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    takeFonts();

    app::SystemClock clock(options->testNow, options->testSpeed);
    viewmodels::Store store(clock, options->store.toStdString());
    viewmodels::Look look(asked(*options));
    linuxside::QtVoice voice;
    linuxside::DesktopWakeGuard wake;
    linuxside::DesktopSharer sharer;
    viewmodels::BathModel bath(store, voice, wake);
    viewmodels::SummaryModel summary(store, sharer, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
    const auto chooseVoice = [&] { voice.choose(voiceChoice(store)); };
    QObject::connect(&store, &viewmodels::Store::changed, &voice, chooseVoice);
    chooseVoice();

    QTranslator translator;
    QString spoken;
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/"));
    speak(translator, engine, spoken);
    QObject::connect(&look, &viewmodels::Look::changed, &engine, [&] { speak(translator, engine, spoken); });
    engine.load(QUrl(QStringLiteral("qrc:/Firstdew/Main.qml")));
    if (engine.rootObjects().isEmpty())
        return 1;
    if (options->selfTest)
        return app::selfTest(engine, options->pictures) == 0 ? 0 : 1;
    if (!options->screenshot.isEmpty())
        return app::screenshot(engine, options->screenshot) ? 0 : 1;
    QDBusConnection bus = QDBusConnection::sessionBus();
    if (bus.isConnected()) // from here on this program looks after the reminders
        bus.interface()->registerService(app::remindersName(options->store), QDBusConnectionInterface::ReplaceExistingService);
    keepReminding(*options, store);
    QObject::connect(&store, &viewmodels::Store::changed, &engine, [&] { keepReminding(*options, store); });
    linuxside::DesktopNotifier notifier(linuxside::DesktopNotifier::stateFor(options->store));
    app::Reminding reminding(store, notifier);
    QObject::connect(&notifier, &linuxside::DesktopNotifier::answered, &reminding, &app::Reminding::answer);
    QObject::connect(&reminding, &app::Reminding::wanted, &engine, [&](const QString& place) { comeToFront(engine, place); });
    return QGuiApplication::exec();
}
