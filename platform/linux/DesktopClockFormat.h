#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "ports/ClockFormat.h"
#endif
#include "linux/DesktopSetting.h"

namespace firstdew::linuxside {

/// The desktop's setting "12 or 24 hours". Until it is known, and where there is no such setting, the locale counts.
class DesktopClockFormat : public ports::ClockFormat {
public:
    explicit DesktopClockFormat(const QDBusConnection& bus = QDBusConnection::sessionBus());
    [[nodiscard]] ports::Hours hours() const override { return m_hours; }
    void onChange(std::function<void()> changed) override { m_changed = std::move(changed); }

private:
    void take(const QVariant& value);

    ports::Hours m_hours = ports::Hours::AsLocale;
    std::function<void()> m_changed;
    DesktopSetting m_setting;
};

} // namespace firstdew::linuxside
