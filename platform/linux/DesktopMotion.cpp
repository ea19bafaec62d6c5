#include "linux/DesktopMotion.h"

#include <utility>

namespace firstdew::linuxside {

void DesktopMotion::follow(std::function<void(bool still)> hear)
{
    const auto judge = [hear = std::move(hear)](const QVariant& value) { hear(value == QVariant(false)); };
    m_setting.emplace(QStringLiteral("enable-animations"), judge, m_bus);
}

} // namespace firstdew::linuxside
