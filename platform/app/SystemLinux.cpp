#include "Options.h"
#include "Remind.h"
#include "System.h"
#include "linux/DesktopHaptics.h"
#include "linux/DesktopNotifier.h"
#include "linux/DesktopSharer.h"
#include "linux/ReminderTimer.h"
#include "ports/Absent.h"
#include "sound/QtVoice.h"

#include <QDBusConnectionInterface>
#include <QFile>
#include <QStandardPaths>

#include <algorithm>
#include <string_view>

namespace firstdew::app {

struct System::Inside {
    Options options;
    sound::QtVoice voice{QCoreApplication::applicationDirPath() + QStringLiteral("/" FIRSTDEW_SPEAKER)};
    linuxside::DesktopWakeGuard wakeGuard;
    linuxside::DesktopSharer sharer;
    linuxside::DesktopOpener opener;
    linuxside::DesktopHaptics haptics;
    /// Nothing here ends a program that is not in front, and a notice of the desktop has no countdown: one that stood
    /// still would say what is no longer true.
    ports::AbsentSessionNotice sessionNotice;
    std::optional<linuxside::DesktopNotifier> notifier;
    std::optional<LookRequests> requests;
};

System::System(const Options& options) : m_inside(std::make_unique<Inside>()) { m_inside->options = options; }
System::~System() = default;

std::optional<int> System::withoutWindow(int argc, char** argv)
{
    if (std::none_of(argv + 1, argv + argc, [](const char* a) { return std::string_view(a) == "--remind"; }))
        return std::nullopt;
    QCoreApplication program(argc, argv); // needs no display
    QCoreApplication::setApplicationName(QStringLiteral("firstdew"));
    const auto options = optionsOrSay(program.arguments().mid(1));
    return options ? remind(*options, program) : 2;
}

ports::Voice& System::voice() { return m_inside->voice; }
ports::WakeGuard& System::wakeGuard() { return m_inside->wakeGuard; }
ports::Sharer& System::sharer() { return m_inside->sharer; }
ports::Opener& System::opener() { return m_inside->opener; }
ports::Haptics& System::haptics() { return m_inside->haptics; }
ports::SessionNotice& System::sessionNotice() { return m_inside->sessionNotice; }
// A notice that is up stays in the language in which it was shown; the next one is in the new.
void System::speak() {}

ports::Notifier& System::notifier()
{
    if (!m_inside->notifier) {
        QDBusConnection bus = QDBusConnection::sessionBus();
        if (bus.isConnected()) // from here on this program looks after the reminders
            bus.interface()->registerService(remindersName(m_inside->options.store),
                                             QDBusConnectionInterface::ReplaceExistingService);
        m_inside->notifier.emplace(linuxside::DesktopNotifier::stateFor(m_inside->options.store));
        connect(&*m_inside->notifier, &linuxside::DesktopNotifier::answered, this, &System::answered);
        m_inside->requests.emplace(bus);
        connect(&*m_inside->requests, &LookRequests::asked, this, &System::lookWanted);
    }
    return *m_inside->notifier;
}

void System::remindWhenClosed(bool wanted)
{
    if (!m_inside->options.ownStore)
        return; // another account's record, or one being tried out
    linuxside::ReminderTimer timer(QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation),
                                   QCoreApplication::applicationFilePath(), m_inside->options.store);
    if ((!wanted || !timer.isSet()) && !timer.set(wanted))
        qWarning("reminders with the app closed could not be %s", wanted ? "set up" : "taken down");
}

} // namespace firstdew::app
