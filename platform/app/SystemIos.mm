// Not built by anybody yet: there are no Apple tools here (see ios/AppleNotifier.h).
#include "Reminding.h"
#include "System.h"

#include "ios/AppleClipMaker.h"
#include "ios/AppleDevice.h"
#include "ios/AppleFileChooser.h"
#include "ios/AppleNotifier.h"
#include "ios/AppleOwnerCheck.h"
#include "ios/AppleShortcuts.h"
#include "sound/QtVoice.h"
#include "ports/Absent.h"
#include "words/Sentences.h"

#include <QFile>
#include <QGuiApplication>
#include <QStandardPaths>
#include <optional>

namespace firstdew::app {

namespace {

std::map<std::string, std::string> buttonWords()
{
    return {{"dry", words::levelName(facts::Level::Dry).toStdString()}, {"clammy", words::levelName(facts::Level::Clammy).toStdString()},
            {"wet", words::levelName(facts::Level::Wet).toStdString()}, {"dripping", words::levelName(facts::Level::Dripping).toStdString()},
            {"start", Reminding::tr("Start").toStdString()}, {"later", Reminding::tr("Later").toStdString()}};
}

std::string bed()
{
    QFile file(QStringLiteral(":/firstdew/sounds/bed.wav"));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

} // namespace

struct System::Inside {
    sound::QtVoice voice;
    iosside::AppleAnnouncer announcer;
    iosside::AppleWakeGuard wakeGuard{bed()};
    iosside::AppleSharer sharer;
    iosside::AppleOpener opener;
    ports::AbsentCodeCamera codeCamera; ///< a picture of the code is read from a file here
    iosside::AppleFileChooser fileChooser;
    iosside::AppleHaptics haptics;
    /// The audio session keeps the app alive; a countdown outside it would need a second program, in Swift.
    ports::AbsentSessionNotice sessionNotice;
    iosside::AppleSafeArea safeArea;
    iosside::AppleClockFormat clockFormat;
    iosside::AppleOwnerCheck ownerCheck;
    std::optional<iosside::AppleNotifier> notifier;
};

System::System(const Options&) : m_inside(std::make_unique<Inside>())
{
    iosside::coverWhenLeft();
    m_inside->voice.makeClips(std::make_unique<iosside::AppleClipMaker>(),
                              QStandardPaths::writableLocation(QStandardPaths::CacheLocation) + QStringLiteral("/voice"));
    iosside::hearOfShortcuts([this](const std::string& place) {
        // After the window that it is for, where the shortcut started the app.
        QMetaObject::invokeMethod(this, [this, place] { emit opened(QString::fromStdString(place)); }, Qt::QueuedConnection);
    });
}
System::~System() = default;

std::optional<int> System::withoutWindow(int, char**) { return std::nullopt; }
// The system itself opens a second start in the window that there is.
std::optional<int> System::yieldToOpenWindow() { return std::nullopt; }
// The system itself keeps the planned reminders.
void System::remindWhenClosed(bool) {}

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
void System::takeBack(bool) {} // there is no such way out of an app

bool System::screenReader() const { return m_inside->announcer.listens(); }
// It may have been changed while the app was left.
void System::hearOfMotion(std::function<void(bool still)> hear)
{
    hear(iosside::stillWanted());
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [hear](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive)
            hear(iosside::stillWanted());
    });
}

// Nobody asks this system yet: the size chosen in Settings alone counts.
void System::hearOfSight(std::function<void(double textScale, bool contrast)>) {}

void System::languageChanged()
{
    if (m_inside->notifier)
        m_inside->notifier->speak(buttonWords());
}

ports::Notifier& System::notifier()
{
    if (!m_inside->notifier)
        m_inside->notifier.emplace(buttonWords(), [this](const std::string& place) {
            // From the system's thread to ours.
            QMetaObject::invokeMethod(this, [this, place] { emit opened(QString::fromStdString(place)); }, Qt::QueuedConnection);
        });
    return *m_inside->notifier;
}

} // namespace firstdew::app
