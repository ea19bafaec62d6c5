#include "linux/DesktopClockFormat.h"

namespace firstdew::linuxside {

DesktopClockFormat::DesktopClockFormat(const QDBusConnection& bus)
    : m_setting(
          QStringLiteral("clock-format"), [this](const QVariant& value) { take(value); }, bus)
{
}

void DesktopClockFormat::take(const QVariant& value)
{
    const auto hours = value == QVariant(QStringLiteral("12h"))   ? ports::Hours::Twelve
                       : value == QVariant(QStringLiteral("24h")) ? ports::Hours::TwentyFour
                                                                  : ports::Hours::AsLocale;
    if (hours == m_hours)
        return;
    m_hours = hours;
    if (m_changed)
        m_changed();
}

} // namespace firstdew::linuxside
