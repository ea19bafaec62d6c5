#pragma once

#include "linux/DesktopSetting.h"

#include <functional>
#include <optional>

namespace firstdew::linuxside {

/// Whether the desktop shows motion, as its setting enable-animations says.
class DesktopMotion {
public:
    explicit DesktopMotion(QDBusConnection bus = QDBusConnection::sessionBus()) : m_bus(std::move(bus)) {}
    /// `hear` is told true where nothing is to move, now and on every change. Where nobody answers it is told false.
    void follow(std::function<void(bool still)> hear);

private:
    QDBusConnection m_bus;
    std::optional<DesktopSetting> m_setting;
};

} // namespace firstdew::linuxside
