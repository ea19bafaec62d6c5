#pragma once

#include "linux/DesktopSetting.h"

#include <functional>
#include <optional>

namespace firstdew::linuxside {

/// How large and how strong the desktop wants words: its settings text-scaling-factor and contrast.
class DesktopSight {
public:
    explicit DesktopSight(QDBusConnection bus = QDBusConnection::sessionBus()) : m_bus(std::move(bus)) {}
    /// `hear` is told the factor of text sizes, and whether more contrast is wanted, once they are known and on every
    /// change. Where nobody answers it is told 1 and false.
    void follow(std::function<void(double textScale, bool contrast)> hear);

private:
    QDBusConnection m_bus;
    double m_scale = 1;
    bool m_contrast = false;
    std::function<void(double, bool)> m_hear;
    std::optional<DesktopSetting> m_scaling, m_wanted;
};

} // namespace firstdew::linuxside
