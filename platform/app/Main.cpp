#include "AppContext.h"
#include "Options.h"
#include "Reminding.h"
#include "SelfTest.h"
#include "System.h"
#include "SystemClock.h"
#include "Tokens.h"
#include "controls/Router.h"
#include "print/SummaryPdf.h"
#include "theme/Theme.h"
#include "words/Names.h"
#include "words/Prompts.h"

#include <QFont>
#include <QGuiApplication>
#include <QLocale>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTranslator>
#include <QtQml/qqmlextensionplugin.h>
#include <memory>

Q_IMPORT_QML_PLUGIN(FirstdewPlugin)

using namespace firstdew;

namespace {

void useTypefaces()
{
    print::loadTypefaces();
    print::loadTypefacesFor(words::languageName(QStringLiteral("ar"))); // anybody may type Arabic letters
    QFont font(QStringLiteral("Inter"));
    font.setFamilies({QStringLiteral("Inter"), QStringLiteral("Noto Sans Arabic")});
    font.setHintingPreference(QFont::PreferNoHinting); // as on a phone
    QGuiApplication::setFont(font);
}

viewmodels::Appearance::Asked appearanceFrom(const app::Options& o)
{
    viewmodels::Appearance::Asked a;
    a.theme = facts::fromToken<diary::Theme>(o.theme.toStdString());
    a.language = o.language;
    a.place = o.page.toStdString();
    a.version = QStringLiteral(FIRSTDEW_VERSION);
    a.textScale = o.textScale;
    a.width = o.size.width();
    a.height = o.size.height();
    return a;
}

/// Voice and tones for the way of working that is chosen.
ports::VoiceChoice voiceChoice(const viewmodels::AppContext& context)
{
    using diary::Cues;
    const Cues cues = context.bath.cues();
    const bool own = context.plan.voice() == ui::VoiceChoice::Device;
    return {cues == Cues::Both || cues == Cues::Voice, cues == Cues::Both || cues == Cues::Tones,
            own ? context.appearance.language().toStdString() : std::string(),
            [](const std::string& prompt) { return words::promptText(prompt).toStdString(); },
            context.appearance.language().toStdString()};
}

/// Brings the window to the front, at that place unless it is empty.
void comeToFront(QQuickWindow& window, const QString& place)
{
    if (!place.isEmpty()) {
        const auto where = viewmodels::valueOf(viewmodels::kPlaceTokens, place.toStdString(), ui::Place::Today);
        QMetaObject::invokeMethod(&window, "arrive", Q_ARG(QVariant, static_cast<int>(where)));
    }
    window.raise();
    window.requestActivate();
}

/// Puts the interface into the person's language and reading direction. Returns false if `current` already is that
/// language.
bool translate(QTranslator& translator, QQmlEngine& engine, const QString& language, QString& current)
{
    if (language == current)
        return false;
    current = language;
    print::loadTypefacesFor(words::languageName(language));
    QCoreApplication::removeTranslator(&translator);
    if (translator.load(QStringLiteral(":/i18n/firstdew_") + language))
        QCoreApplication::installTranslator(&translator);
    QLocale::setDefault(words::localeFor(language));
    QGuiApplication::setLayoutDirection(QLocale().textDirection());
    engine.retranslate();
    return true;
}

/// The app's own folder for the last summary made.
QString outgoingFolder()
{
    return QStandardPaths::writableLocation(QStandardPaths::CacheLocation) + QStringLiteral("/outgoing");
}

/// Files are chosen, check-ins felt, the owner asked for, notch and bars kept free and hours counted as the system has
/// it.
void followSystem(app::System& system, const app::Options& options, viewmodels::AppContext& context)
{
    context.keep.useChooser(system.fileChooser());
    context.caseload.useChooser(system.fileChooser());
    context.feelCheckIns(system.haptics());
    context.announce.use(system.announcer());
    context.lock.use(system.ownerCheck());
    QObject::connect(
        qGuiApp, &QGuiApplication::applicationStateChanged, &context.lock,
        [&context](Qt::ApplicationState state) { context.lock.setInFront(state == Qt::ApplicationActive); });
    viewmodels::Appearance& appearance = context.appearance;
    const auto keepFree = [&system, &options, &appearance] {
        const auto [left, top, right, bottom] = system.safeArea().insets();
        appearance.keepFree(options.testInsets.value_or(QMarginsF(left, top, right, bottom)));
    };
    const auto countHours = [&system, &appearance] {
        switch (system.clockFormat().hours()) {
        case ports::Hours::AsLocale: return appearance.countHours(words::Hours::AsLocale);
        case ports::Hours::Twelve: return appearance.countHours(words::Hours::Twelve);
        case ports::Hours::TwentyFour: return appearance.countHours(words::Hours::TwentyFour);
        }
    };
    system.safeArea().onChange(keepFree);
    system.clockFormat().onChange(countHours);
    keepFree();
    countHours();
}

/// The system's way back goes through goBack() of the window, as Escape does. While that has nothing to leave, the
/// system itself leaves the app, and can show beforehand where that leads.
void followBack(app::System& system, QQmlEngine& engine, QQuickWindow& window)
{
    auto* router = engine.singletonInstance<controls::Router*>(qmlTypeId("Firstdew", 1, 0, "Router"));
    QObject::connect(router, &controls::Router::backLeads, &system, &app::System::takeBack);
    QObject::connect(&system, &app::System::backWanted, &window,
                     [&window] { QMetaObject::invokeMethod(&window, "goBack"); });
    system.takeBack(window.property("canGoBack").toBool());
}

/// What comes in moves, and words are as large and as strong, as the system asks. Tests are free of timing: there
/// nothing moves. Where the start asked for a size, that counts.
void lookAsAsked(app::System& system, viewmodels::Appearance& appearance, const app::Options& options)
{
    if (!options.testNow)
        system.hearOfMotion([&appearance](bool still) { appearance.setStill(still); });
    if (options.textScale <= 0)
        system.hearOfSight([&appearance](double scale, bool contrast) { appearance.see(scale, contrast); });
}

/// Lets the system show reminders with the app closed if the person wants that.
void remindWhenClosed(app::System& system, const viewmodels::Store& store)
{
    const auto& settings = store.diary().reminderSettings;
    system.remindWhenClosed(settings && settings->on);
}

void nameProgram()
{
    QCoreApplication::setApplicationName(QStringLiteral("firstdew"));
    QCoreApplication::setApplicationVersion(QStringLiteral(FIRSTDEW_VERSION));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Firstdew"));
}

} // namespace

int main(int argc, char** argv)
{
    if (const auto code = app::System::withoutWindow(argc, argv))
        return *code;
    nameProgram();
    QGuiApplication program(argc, argv);

    const auto options = app::optionsOrSay(program.arguments().mid(1));
    if (!options)
        return 2;
    if (options->selfTest)
        app::watchWarnings();
    app::System system(*options);
    const bool forPictures = options->selfTest || !options->screenshot.isEmpty();
    if (!forPictures)
        if (const auto code = system.yieldToOpenWindow())
            return *code;
    useTypefaces();

    app::SystemClock clock(options->testNow, options->testSpeed);
    viewmodels::Store store(clock, options->store.toStdString());
    viewmodels::Appearance appearance(store, appearanceFrom(*options));
    viewmodels::BathModel bath(store, {system.voice(), system.wakeGuard(), system.haptics(), system.sessionNotice(),
                                       [&system] { return system.screenReader(); }, &system.announcer()});
    viewmodels::ScanModel scan(system.codeCamera());
    viewmodels::SummaryModel summary(store, system.sharer(), system.opener(), outgoingFolder());
    viewmodels::AppContext context(store, appearance, bath, summary, scan);
    followSystem(system, *options, context);
    const auto chooseVoice = [&] { system.voice().choose(voiceChoice(context)); };
    QObject::connect(&bath, &viewmodels::BathModel::changed, &bath, chooseVoice); // also emitted when the store changes
    chooseVoice();

    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/"));
    context.giveTo(engine);
    QTranslator translator;
    QString language;
    translate(translator, engine, appearance.language(), language);
    QObject::connect(&appearance, &viewmodels::Appearance::changed, &engine, [&] {
        if (!translate(translator, engine, appearance.language(), language))
            return;
        system.languageChanged();
        chooseVoice();
    });
    QQmlComponent component(&engine, QUrl(QStringLiteral("qrc:/Firstdew/AppWindow.qml")));
    const std::unique_ptr<QObject> made(component.create());
    auto* window = qobject_cast<QQuickWindow*>(made.get());
    if (window == nullptr) {
        qWarning("%s", qPrintable(component.errorString()));
        return 1;
    }
    followBack(system, engine, *window);
    if (options->selfTest)
        return app::selfTest(*window, appearance, options->pictures) == 0 ? 0 : 1;
    if (!options->screenshot.isEmpty())
        return app::screenshot(*window, options->screenshot) ? 0 : 1;
    if (options->testFirstFrame)
        app::announceFirstFrame(*window);

    lookAsAsked(system, appearance, *options);
    const auto front = [window](const QString& place) { comeToFront(*window, place); };
    app::Reminding reminding(store, system.notifier());
    QObject::connect(&reminding, &app::Reminding::wanted, window, front);
    QObject::connect(&system, &app::System::opened, window, front);
    QObject::connect(&system, &app::System::answered, &reminding, &app::Reminding::answer);
    QObject::connect(&system, &app::System::updateWanted, &store, &viewmodels::Store::reload);
    QObject::connect(&store, &viewmodels::Store::changed, &engine, [&] { remindWhenClosed(system, store); });
    remindWhenClosed(system, store);
    return QGuiApplication::exec();
}
