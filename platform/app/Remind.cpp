#include "Remind.h"

#include "Appearance.h"
#include "Reminding.h"
#include "SystemClock.h"
#include "linux/DesktopNotifier.h"
#include "linux/OneWindow.h"
#include "words/Names.h"

#include <QCoreApplication>
#include <QDBusConnectionInterface>
#include <QDBusMessage>
#include <QFileInfo>
#include <QLocale>
#include <QProcess>
#include <QTextStream>
#include <QTranslator>

namespace firstdew::app {

namespace {
constexpr int kMinuteMs = 60'000;
constexpr int kUpdateMs = 5'000;
const QString kPath = QStringLiteral("/org/firstdew/Reminders");
} // namespace

UpdateRequests::UpdateRequests(QDBusConnection bus)
{
    bus.registerObject(kPath, this, QDBusConnection::ExportScriptableSlots);
}

void UpdateRequests::send(const QDBusConnection& bus, const QString& name)
{
    bus.call(
        QDBusMessage::createMethodCall(name, kPath, QStringLiteral("org.firstdew.Reminders"), QStringLiteral("Update")),
        QDBus::Block, kUpdateMs);
}

int remind(const Options& options, QCoreApplication& program)
{
    const QDBusConnection bus = QDBusConnection::sessionBus();
    if (!bus.isConnected()) {
        QTextStream(stderr) << "firstdew: no session bus, so no reminder can be shown\n";
        return 1;
    }
    if (!QFileInfo::exists(options.store)) // nothing recorded, nothing due; reminding creates no store
        return 0;
    const QString name = linuxside::nameFor(kReminders, options.store);
    const auto taken = bus.interface()->registerService(name, QDBusConnectionInterface::DontQueueService,
                                                        QDBusConnectionInterface::AllowReplacement);
    if (!taken.isValid() || taken.value() != QDBusConnectionInterface::ServiceRegistered) {
        UpdateRequests::send(bus, name);
        return 0;
    }
    // When the app is opened it takes over.
    QObject::connect(bus.interface(), &QDBusConnectionInterface::serviceUnregistered, &program,
                     [&](const QString& lost) {
                         if (lost == name)
                             QCoreApplication::quit();
                     });

    SystemClock clock(options.testNow, options.testSpeed);
    viewmodels::Store store(clock, options.store.toStdString());
    if (!store.isOpen()) {
        QTextStream(stderr) << "firstdew: " << options.store << ": " << store.errorText() << '\n';
        if (!options.watch)
            return 1;
    }
    viewmodels::Appearance::Asked asked;
    asked.language = options.language;
    const viewmodels::Appearance appearance(store, asked);
    QTranslator translator;
    if (translator.load(QStringLiteral(":/i18n/firstdew_") + appearance.language()))
        QCoreApplication::installTranslator(&translator);
    QLocale::setDefault(words::localeFor(appearance.language()));
    linuxside::DesktopNotifier notifier(linuxside::DesktopNotifier::stateFor(options.store));
    Reminding reminding(store, notifier);
    const auto endWhenAnswered = [&] {
        if (!options.watch && !notifier.anyUp())
            QCoreApplication::quit();
    };
    QObject::connect(&notifier, &linuxside::DesktopNotifier::answered, &reminding, &Reminding::answer);
    QObject::connect(&notifier, &linuxside::DesktopNotifier::closed, &program, endWhenAnswered);
    QObject::connect(&store, &viewmodels::Store::changed, &program, endWhenAnswered, Qt::QueuedConnection);
    QObject::connect(&reminding, &Reminding::wanted, &program, [&](const QString& place) {
        QProcess::startDetached(QCoreApplication::applicationFilePath(),
                                {QStringLiteral("--store"), options.store, QStringLiteral("--page"), place});
    });
    const auto update = [&] {
        if (QFileInfo::exists(options.store)) {
            store.reopen(); // the command line may have written to it or replaced it
            return;
        }
        notifier.show({}, {});
        QCoreApplication::quit();
    };
    const UpdateRequests requests(bus);
    QObject::connect(&requests, &UpdateRequests::asked, &program, update);
    QTimer each;
    QObject::connect(&each, &QTimer::timeout, &program, update);
    each.start(kMinuteMs);
    if (!options.watch && !notifier.anyUp())
        return 0;
    return QCoreApplication::exec();
}

} // namespace firstdew::app
