#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which these bring in
#include "ports/Announcer.h"
#include "ports/ClockFormat.h"
#include "ports/CodeCamera.h"
#include "ports/FileChooser.h"
#include "ports/Haptics.h"
#include "ports/Notifier.h"
#include "ports/Opener.h"
#include "ports/OwnerCheck.h"
#include "ports/SafeArea.h"
#include "ports/SessionNotice.h"
#include "ports/Sharer.h"
#include "ports/Voice.h"
#include "ports/WakeGuard.h"
#endif

#include <QObject>

#include <functional>
#include <memory>
#include <optional>

namespace firstdew::app {

struct Options;

/// The services of the system that the app runs on; one file each for Linux, Android and iOS.
class System : public QObject {
    Q_OBJECT

public:
    explicit System(const Options& options);
    ~System() override;

    /// Runs the program without a window if the arguments ask for that, and returns its exit code; otherwise nullopt.
    [[nodiscard]] static std::optional<int> withoutWindow(int argc, char** argv);
    /// Claims the record for this window. If another window has it, that one is brought forward, and the result is the
    /// exit code of this program; otherwise nullopt.
    [[nodiscard]] std::optional<int> yieldToOpenWindow();

    [[nodiscard]] ports::Voice& voice();
    [[nodiscard]] ports::Announcer& announcer();
    [[nodiscard]] ports::WakeGuard& wakeGuard();
    [[nodiscard]] ports::Sharer& sharer();
    [[nodiscard]] ports::Opener& opener();
    [[nodiscard]] ports::FileChooser& fileChooser();
    [[nodiscard]] ports::Haptics& haptics();
    [[nodiscard]] ports::CodeCamera& codeCamera();
    [[nodiscard]] ports::SessionNotice& sessionNotice();
    [[nodiscard]] ports::SafeArea& safeArea();
    [[nodiscard]] ports::ClockFormat& clockFormat();
    [[nodiscard]] ports::OwnerCheck& ownerCheck();
    /// Whether the app takes the system's way back, because it has something to leave. backWanted() follows it.
    void takeBack(bool leads);
    /// Whether a screen reader is on and takes touches first.
    [[nodiscard]] bool screenReader() const;
    /// Tells whether the system asks for no motion, now and whenever that changes.
    void hearOfMotion(std::function<void(bool still)> hear);
    /// Tells how much larger than usual the system wants text, and whether it wants more contrast, now and whenever
    /// that changes.
    void hearOfSight(std::function<void(double textScale, bool contrast)> hear);
    /// Created by the first call, since a self-test or a screenshot shows no notices and asks for no permission.
    [[nodiscard]] ports::Notifier& notifier();
    /// Switches reminders with the app closed on or off. Does nothing where the system takes them ahead of time.
    void remindWhenClosed(bool wanted);
    /// Call after the language has changed: the system's own texts of the app follow.
    void languageChanged();

signals:
    /// The person answered the notice with that key; `action` is "default" if it was simply tapped.
    void answered(const QString& key, const QString& action);
    /// A notice or a second start wants the window in front, at that place, or as it is if that is empty.
    void opened(const QString& place);
    /// The person went back. Not emitted where that comes as a key.
    void backWanted();
    /// Another program asks to read the record and update the reminders.
    void updateWanted();

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

} // namespace firstdew::app
