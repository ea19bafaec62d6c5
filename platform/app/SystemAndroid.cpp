// Not built by anybody yet: there is no Qt for Android here. What it joins is tested on its own (tests/android).
#include "System.h"
#include "ports/Absent.h"

#include "android/AndroidDevice.h"
#include "android/AndroidFileChooser.h"
#include "android/AndroidNotifier.h"
#include "android/AndroidOwnerCheck.h"
#include "sound/QtVoice.h"
#include "words/Sentences.h"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QJniEnvironment>
#include <QStandardPaths>

#include <optional>

namespace firstdew::app {

struct System::Inside {
    androidside::JavaSide java{QJniEnvironment::javaVM(), QNativeInterface::QAndroidApplication::context()};
    sound::QtVoice voice;
    androidside::AndroidClipMaker* clipMaker = nullptr; ///< the voice owns it
    androidside::AndroidAnnouncer announcer{java};
    androidside::AndroidWakeGuard wakeGuard{java};
    androidside::AndroidSharer sharer{java};
    androidside::AndroidOpener opener{java};
    ports::AbsentCodeCamera codeCamera; ///< a picture of the code is read from a file here
    androidside::AndroidFileChooser fileChooser{
        java, QStandardPaths::writableLocation(QStandardPaths::CacheLocation).toStdString() + "/saving"};
    androidside::AndroidHaptics haptics{java};
    androidside::BathNotice sessionNotice{java};
    androidside::AndroidSafeArea safeArea{java};
    androidside::AndroidClockFormat clockFormat{java};
    androidside::AndroidOwnerCheck ownerCheck{java};
    std::optional<androidside::AndroidNotifier> notifier;
};

System::System(const Options&) : m_inside(std::make_unique<Inside>())
{
    // What is on the screen is nobody else's business once the app is left.
    if (const auto veiled = m_inside->java.ask("veil", nlohmann::json::object()); !veiled)
        qWarning("the list of recent apps may show what was on the screen: %s", veiled.error().message.c_str());
    auto clipMaker = std::make_unique<androidside::AndroidClipMaker>(m_inside->java);
    m_inside->clipMaker = clipMaker.get();
    const QString cache = QStandardPaths::writableLocation(QStandardPaths::CacheLocation);
    m_inside->voice.makeClips(std::move(clipMaker), cache + QStringLiteral("/voice"));
    m_inside->java.listen([this](const std::string& what) {
        // From Java's thread to ours.
        QMetaObject::invokeMethod(
            this,
            [this, what] {
                if (what == "stop")
                    m_inside->sessionNotice.stopPressed();
                else if (what == "back")
                    emit backWanted();
                else if (what == "spoken" || what == "unspoken")
                    m_inside->clipMaker->answered(what == "spoken");
                else if (what == "owner" || what == "no-owner")
                    m_inside->ownerCheck.answered(what == "owner");
                else if (what == "insets")
                    m_inside->safeArea.look();
                else
                    emit updateWanted();
            },
            Qt::QueuedConnection);
    });
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [this](Qt::ApplicationState state) {
        if (state != Qt::ApplicationActive)
            return;
        m_inside->fileChooser.lookForAnswer();
        m_inside->clockFormat.look(); // changed in the system's settings meanwhile
        const auto told = m_inside->java.ask("place", nlohmann::json::object());
        const std::string place = told ? told->value("place", "") : "";
        if (!place.empty())
            emit opened(QString::fromStdString(place));
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

void System::takeBack(bool leads)
{
    // Without it the system leaves the app at once, so that is worth a line.
    if (const auto told = m_inside->java.ask("back", {{"leads", leads}}); !told)
        qWarning("the way back may leave the app: %s", told.error().message.c_str());
}

bool System::screenReader() const { return m_inside->announcer.listens(); }

// It may have been changed while the app was left.
void System::hearOfMotion(std::function<void(bool still)> hear)
{
    const auto ask = [this, hear = std::move(hear)] {
        const auto told = m_inside->java.ask("still", nlohmann::json::object());
        hear(told && told->value("still", false));
    };
    ask();
    connect(qGuiApp, &QGuiApplication::applicationStateChanged, this, [ask](Qt::ApplicationState state) {
        if (state == Qt::ApplicationActive)
            ask();
    });
}

// Nobody asks this system yet: the size chosen in Settings alone counts.
void System::hearOfSight(std::function<void(double textScale, bool contrast)>) {}

void System::languageChanged()
{
    if (m_inside->notifier)
        m_inside->notifier->speak(words::noticeWords());
}

ports::Notifier& System::notifier()
{
    if (!m_inside->notifier) {
        m_inside->notifier.emplace(m_inside->java, words::noticeWords());
        m_inside->notifier->askLeave();
    }
    return *m_inside->notifier;
}

} // namespace firstdew::app
