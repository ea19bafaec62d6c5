#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "ports/Haptics.h"
#endif

#include <QDBusConnection>
#include <QObject>
#include <optional>

namespace firstdew::linuxside {

/// Vibration by feedbackd, the feedback daemon of Linux phones (its D-Bus interface org.sigxcpu.Feedback). Where it is
/// not installed nothing is felt, which is said once.
class DesktopHaptics : public QObject, public ports::Haptics {
    Q_OBJECT

public:
    explicit DesktopHaptics(QDBusConnection bus = QDBusConnection::sessionBus(), QObject* parent = nullptr)
        : QObject(parent), m_bus(std::move(bus))
    {
    }
    [[nodiscard]] bool present() const override;
    void pulse() override;
    void tick() override;
    void alarm() override;
    void still() override;

private slots:
    void ended(uint id);

private:
    void trigger(const QString& event, int seconds, std::optional<int> round);
    void end(uint id);

    QDBusConnection m_bus;
    bool m_listening = false; ///< to what the daemon ends of itself
    /// Counts the alarms begun or ended, so that an answer that comes late is known to be of one that is over.
    int m_round = 0;
    std::optional<uint> m_alarm; ///< its number with the daemon, while it runs
    bool m_said = false;
};

} // namespace firstdew::linuxside
