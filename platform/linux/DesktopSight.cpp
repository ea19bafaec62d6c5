#include "linux/DesktopSight.h"

#include <utility>

namespace firstdew::linuxside {

void DesktopSight::follow(std::function<void(double textScale, bool contrast)> hear)
{
    m_hear = std::move(hear);
    const auto scaled = [this](const QVariant& value) {
        bool is = false;
        const double factor = value.toDouble(&is);
        m_scale = is && factor > 0 ? factor : 1;
        m_hear(m_scale, m_contrast);
    };
    const auto wanted = [this](const QVariant& value) {
        m_contrast = value.toInt() == 1; // 0: as it is, 1: more
        m_hear(m_scale, m_contrast);
    };
    m_scaling.emplace(QStringLiteral("text-scaling-factor"), scaled, m_bus);
    m_wanted.emplace(QStringLiteral("contrast"), wanted, m_bus, QStringLiteral("org.freedesktop.appearance"));
}

} // namespace firstdew::linuxside
