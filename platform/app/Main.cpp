#include "AppContext.h"
#include "Options.h"
#include "Reminding.h"
#include "SelfTest.h"
#include "System.h"
#include "SystemClock.h"
#include "Tokens.h"
#include "print/SummaryPdf.h"
#include "theme/Theme.h"
#include "words/Names.h"
#include "words/Prompts.h"
#include "words/Sentences.h"

#include <QFont>
#include <QFontInfo>
#include <QGuiApplication>
#include <QImage>
#include <QLibraryInfo>
#include <QLocale>
#include <QPainter>
#include <QQmlComponent>
#include <QQmlEngine>
#include <QQuickWindow>
#include <QStandardPaths>
#include <QTimer>
#include <QTranslator>
#include <QtQml/qqmlextensionplugin.h>
#include <chrono>
#include <future>
#include <memory>
#include <optional>
#include <vector>

Q_IMPORT_QML_PLUGIN(FirstdewPlugin)

using namespace firstdew;

namespace {

constexpr std::chrono::milliseconds kSoon(200); // after the first picture, as a rule

void takeFonts()
{
    print::loadTypefaces();
    QFont font(QStringLiteral("Inter"));
    font.setFamilies({QStringLiteral("Inter"), QStringLiteral("Noto Sans Arabic")});
    font.setHintingPreference(QFont::PreferNoHinting); // as on a phone; and shapes are read four times as fast
    QGuiApplication::setFont(font);
}

viewmodels::Appearance::Asked asked(const app::Options& o)
{
    viewmodels::Appearance::Asked a;
    a.theme = o.theme.toStdString();
    a.language = o.language;
    a.place = o.page.toStdString();
    a.version = QStringLiteral(FIRSTDEW_VERSION);
    a.textScale = o.textScale;
    a.width = o.size.width();
    a.height = o.size.height();
    return a;
}

/// Voice and tones as the person chose them in Plan; who has both hands under water is led aloud whatever was chosen.
ports::VoiceChoice voiceChoice(const viewmodels::AppContext& context)
{
    namespace SoundChoice = ui::SoundChoice;
    const auto chosen = context.plan.sound();
    const bool under = context.bath.way() == QLatin1String("hands-under");
    const auto how = chosen == SoundChoice::None && under ? SoundChoice::Both : chosen;
    const bool own = context.plan.voice() == ui::VoiceChoice::Device;
    return {how == SoundChoice::Both || how == SoundChoice::Voice,
            how == SoundChoice::Both || how == SoundChoice::Tones,
            own ? context.appearance.language().toStdString() : std::string(),
            [](const std::string& prompt) { return words::promptText(prompt).toStdString(); }};
}

/// A tapped reminder brings the app to the front.
void comeToFront(QQuickWindow& window, const QString& place)
{
    const auto where = viewmodels::valueOf(viewmodels::kPlaceTokens, place.toStdString(), ui::Place::Today);
    QMetaObject::invokeMethod(&window, "go", Q_ARG(QVariant, static_cast<int>(where)));
    window.raise();
    window.requestActivate();
}

/// Puts the interface into the person's language and direction, now and whenever another is chosen; false where it is
/// the same.
bool speak(QTranslator& translator, QQmlEngine& engine, const QString& language, QString& spoken)
{
    if (language == spoken)
        return false;
    spoken = language;
    print::loadTypefacesFor(words::languageName(language));
    QCoreApplication::removeTranslator(&translator);
    if (translator.load(QStringLiteral(":/i18n/firstdew_") + language))
        QCoreApplication::installTranslator(&translator);
    QLocale::setDefault(words::localeFor(language));
    QGuiApplication::setLayoutDirection(QLocale().textDirection());
    engine.retranslate();
    return true;
}

/// With the app closed the system looks for reminders where the person wants them.
void keepReminding(app::System& system, const viewmodels::Store& store)
{
    const auto* settings = store.record().latest<facts::ReminderSettings>();
    system.remindWhenClosed(settings != nullptr && settings->payload.on);
}

} // namespace

int main(int argc, char** argv)
{
    if (const auto code = app::System::withoutWindow(argc, argv))
        return *code;
    QCoreApplication::setApplicationName(QStringLiteral("firstdew"));
    QCoreApplication::setApplicationVersion(QStringLiteral(FIRSTDEW_VERSION));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Firstdew"));
    QGuiApplication program(argc, argv);

    const auto options = app::optionsOrSay(program.arguments().mid(1));
    if (!options)
        return 2;
    if (options->selfTest)
        app::watchWarnings();
    QQmlEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/"));
    takeFonts();

    app::SystemClock clock(options->testNow, options->testSpeed);
    viewmodels::Store store(clock, options->store.toStdString());
    viewmodels::Appearance appearance(store, asked(*options));
    app::System system(*options);
    viewmodels::BathModel bath(store, {system.voice(), system.wakeGuard(), system.haptics(), system.sessionNotice()});
    viewmodels::SummaryModel summary(store, system.sharer(), system.opener(),
                                     QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation));
    viewmodels::AppContext context(store, appearance, bath, summary);
    context.giveTo(engine);
    const auto chooseVoice = [&] { system.voice().choose(voiceChoice(context)); };
    QObject::connect(&bath, &viewmodels::BathModel::changed, &bath, chooseVoice); // and whenever the store does
    chooseVoice();

    QTranslator translator;
    QString spoken;
    speak(translator, engine, appearance.language(), spoken);
    QObject::connect(&appearance, &viewmodels::Appearance::changed, &engine, [&] {
        if (!speak(translator, engine, appearance.language(), spoken))
            return;
        system.speak();
        chooseVoice();
    });
    QQmlComponent pages(&engine, QUrl(QStringLiteral("qrc:/Firstdew/AppWindow.qml")));
    const std::unique_ptr<QObject> made(pages.create());
    auto* window = qobject_cast<QQuickWindow*>(made.get());
    if (window == nullptr) {
        qWarning("%s", qPrintable(pages.errorString()));
        return 1;
    }
    if (options->selfTest)
        return app::selfTest(*window, appearance, options->pictures) == 0 ? 0 : 1;
    if (!options->screenshot.isEmpty())
        return app::screenshot(*window, options->screenshot) ? 0 : 1;
    std::optional<app::Reminding> reminding;
    // What nobody waits for comes when the page is there.
    QTimer::singleShot(kSoon, &engine, [&] {
        // Few need these letters, but anybody may type them or have them in a name.
        print::loadTypefacesFor(words::languageName(QStringLiteral("ar")));
        keepReminding(system, store);
        QObject::connect(&store, &viewmodels::Store::changed, &engine, [&] { keepReminding(system, store); });
        reminding.emplace(store, system.notifier());
        QObject::connect(&system, &app::System::lookWanted, &store, &viewmodels::Store::reload);
        QObject::connect(&system, &app::System::answered, &*reminding, &app::Reminding::answer);
        QObject::connect(&*reminding, &app::Reminding::wanted, &engine,
                         [&, window](const QString& place) { comeToFront(*window, place); });
        QObject::connect(&system, &app::System::opened, &engine,
                         [&, window](const QString& place) { comeToFront(*window, place); });
    });
    return QGuiApplication::exec();
}
