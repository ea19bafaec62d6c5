#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which these bring in
#include "ports/Haptics.h"
#include "ports/Notifier.h"
#include "ports/Opener.h"
#include "ports/SessionNotice.h"
#include "ports/Sharer.h"
#include "ports/Voice.h"
#include "ports/WakeGuard.h"
#endif

#include <QObject>

#include <memory>
#include <optional>

namespace firstdew::app {

struct Options;

/// What the app takes from the system it runs on: one file each for Linux, Android and iOS.
class System : public QObject {
    Q_OBJECT

public:
    explicit System(const Options& options);
    ~System() override;

    /// Runs the program where it is wanted without a window, and gives its exit code; nothing where it is not.
    [[nodiscard]] static std::optional<int> withoutWindow(int argc, char** argv);

    [[nodiscard]] ports::Voice& voice(); ///< Qt's everywhere
    [[nodiscard]] ports::WakeGuard& wakeGuard();
    [[nodiscard]] ports::Sharer& sharer();
    [[nodiscard]] ports::Opener& opener();
    [[nodiscard]] ports::Haptics& haptics();
    [[nodiscard]] ports::SessionNotice& sessionNotice();
    /// Made at the first call: a self-test or a screenshot shows no notices and asks for no leave.
    [[nodiscard]] ports::Notifier& notifier();
    /// Has the system look for reminders with the app closed, or not; nothing to do where it takes them ahead of time.
    void remindWhenClosed(bool wanted);
    /// The person reads another language from now on: what the system itself shows of ours follows.
    void speak();

signals:
    /// The person answered the notice with that key; "default" where it was simply tapped.
    void answered(const QString& key, const QString& action);
    /// A notice that was answered with the app closed wants the app at that place.
    void opened(const QString& place);
    /// Something outside asks to look at the record and the reminders again.
    void lookWanted();

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

} // namespace firstdew::app
