#include "Options.h"
#include "Remind.h"
#include "System.h"
#include "camera/QtCodeCamera.h"
#include "linux/DesktopClockFormat.h"
#include "linux/DesktopHaptics.h"
#include "linux/DesktopMotion.h"
#include "linux/DesktopNotifier.h"
#include "linux/DesktopSessionNotice.h"
#include "linux/DesktopSharer.h"
#include "linux/DesktopSight.h"
#include "linux/OneWindow.h"
#include "linux/PamOwnerCheck.h"
#include "linux/PhoneShell.h"
#include "linux/PortalChooser.h"
#include "linux/ReaderAnnouncer.h"
#include "linux/ReminderTimer.h"
#include "linux/ScreenReader.h"
#include "ports/Absent.h"
#include "sound/QtVoice.h"

#include <QDBusConnectionInterface>
#include <QStandardPaths>
#include <QTextStream>

#include <algorithm>
#include <string_view>
#include <sys/stat.h>

namespace firstdew::app {

struct System::Inside {
    Options options;
    sound::QtVoice voice{QCoreApplication::applicationDirPath() + QStringLiteral("/" FIRSTDEW_SPEAKER),
                         options.testSpeed};
    linuxside::ReaderAnnouncer announcer;
    linuxside::DesktopWakeGuard wakeGuard;
    linuxside::DesktopSharer sharer;
    linuxside::DesktopOpener opener;
    linuxside::PortalChooser fileChooser;
    linuxside::DesktopHaptics haptics;
    linuxside::DesktopMotion motion;
    linuxside::DesktopSight sight;
    camera::QtCodeCamera codeCamera;
    linuxside::DesktopSessionNotice sessionNotice;
    ports::AbsentSafeArea safeArea;
    linuxside::DesktopClockFormat clockFormat;
    linuxside::PamOwnerCheck ownerCheck;
    std::optional<linuxside::DesktopNotifier> notifier;
    std::optional<UpdateRequests> requests;
    linuxside::OneWindow window;
    linuxside::PhoneKeyboard keyboard;

    explicit Inside(const Options& o) : options(o), window(o.store) {}
};

System::System(const Options& options) : m_inside(std::make_unique<Inside>(options))
{
    connect(&m_inside->window, &linuxside::OneWindow::wanted, this, &System::opened);
    connect(&m_inside->sessionNotice, &linuxside::DesktopSessionNotice::opened, this,
            [this] { emit opened(QStringLiteral("bath")); });
    if (linuxside::isPhoneShell())
        m_inside->keyboard.follow();
}

System::~System() = default;

std::optional<int> System::withoutWindow(int argc, char** argv)
{
    ::umask(S_IRWXG | S_IRWXO); // what the app writes is for its owner alone
    if (std::none_of(argv + 1, argv + argc, [](const char* a) { return std::string_view(a) == "--remind"; })) {
        linuxside::preparePhoneShell();
        return std::nullopt;
    }
    QCoreApplication program(argc, argv); // needs no display
    QCoreApplication::setApplicationName(QStringLiteral("firstdew"));
    const auto options = optionsOrSay(program.arguments().mid(1));
    return options ? remind(*options, program) : 2;
}

std::optional<int> System::yieldToOpenWindow()
{
    using linuxside::OneWindow;
    switch (m_inside->window.claim(m_inside->options.pageAsked ? m_inside->options.page : QString())) {
    case OneWindow::Claim::Granted: return std::nullopt;
    case OneWindow::Claim::HandedOver: return 0;
    case OneWindow::Claim::Refused:
        QTextStream(stderr) << "firstdew: " << m_inside->options.store
                            << " is already open in another window, which does not answer; close that one first\n";
        return 1;
    }
    Q_UNREACHABLE();
}

ports::Voice& System::voice() { return m_inside->voice; }
ports::Announcer& System::announcer() { return m_inside->announcer; }
ports::WakeGuard& System::wakeGuard() { return m_inside->wakeGuard; }
ports::Sharer& System::sharer() { return m_inside->sharer; }
ports::CodeCamera& System::codeCamera() { return m_inside->codeCamera; }
ports::Opener& System::opener() { return m_inside->opener; }
ports::FileChooser& System::fileChooser() { return m_inside->fileChooser; }
ports::Haptics& System::haptics() { return m_inside->haptics; }
ports::SessionNotice& System::sessionNotice() { return m_inside->sessionNotice; }
ports::SafeArea& System::safeArea() { return m_inside->safeArea; }
ports::ClockFormat& System::clockFormat() { return m_inside->clockFormat; }
ports::OwnerCheck& System::ownerCheck() { return m_inside->ownerCheck; }
void System::takeBack(bool) {} // it comes as a key
bool System::screenReader() const { return linuxside::screenReaderIsOn(QDBusConnection::sessionBus()); }
void System::hearOfMotion(std::function<void(bool still)> hear) { m_inside->motion.follow(std::move(hear)); }
void System::hearOfSight(std::function<void(double textScale, bool contrast)> hear)
{
    m_inside->sight.follow(std::move(hear));
}
// A visible notice keeps its language; the next one is in the new language.
void System::languageChanged() {}

ports::Notifier& System::notifier()
{
    if (!m_inside->notifier) {
        QDBusConnection bus = QDBusConnection::sessionBus();
        if (bus.isConnected()) // from here on this program shows the reminders
            bus.interface()->registerService(linuxside::nameFor(kReminders, m_inside->options.store),
                                             QDBusConnectionInterface::ReplaceExistingService);
        m_inside->notifier.emplace(linuxside::DesktopNotifier::stateFor(m_inside->options.store));
        connect(&*m_inside->notifier, &linuxside::DesktopNotifier::answered, this, &System::answered);
        m_inside->requests.emplace(bus);
        connect(&*m_inside->requests, &UpdateRequests::asked, this, &System::updateWanted);
    }
    return *m_inside->notifier;
}

void System::remindWhenClosed(bool wanted)
{
    if (!m_inside->options.ownStore)
        return; // a record that was named is not this account's own
    linuxside::ReminderTimer timer(QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation),
                                   QCoreApplication::applicationFilePath(), m_inside->options.store);
    if ((!wanted || !timer.isSet()) && !timer.set(wanted))
        qWarning("reminders with the app closed could not be switched %s", wanted ? "on" : "off");
}

} // namespace firstdew::app
