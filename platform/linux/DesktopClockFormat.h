#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "ports/ClockFormat.h"
#endif

#include <QDBusConnection>
#include <QDBusMessage>
#include <QObject>

namespace firstdew::linuxside {

/// The desktop's setting "12 or 24 hours", by its portal (org.freedesktop.portal.Settings). The answer comes later, so
/// that the start waits for nobody; until then, and where there is no such setting, the locale counts.
class DesktopClockFormat : public QObject, public ports::ClockFormat {
    Q_OBJECT

public:
    explicit DesktopClockFormat(QDBusConnection bus = QDBusConnection::sessionBus());
    [[nodiscard]] ports::Hours hours() const override { return m_hours; }
    void onChange(std::function<void()> changed) override { m_changed = std::move(changed); }

private slots:
    void onSetting(const QDBusMessage& message);

private:
    void take(const QVariant& value);

    QDBusConnection m_bus;
    ports::Hours m_hours = ports::Hours::AsLocale;
    std::function<void()> m_changed;
};

} // namespace firstdew::linuxside
