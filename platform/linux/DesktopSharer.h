#pragma once

#include "ports/Sharer.h"
#include "ports/WakeGuard.h"

#include <QDBusConnection>

namespace firstdew::linuxside
{

/// The system's opener (xdg-open) takes the file.
class DesktopSharer : public ports::Sharer
{
public:
    [[nodiscard]] bool share(const std::string& file, const std::string& mimeType) override;
};

/// Inhibits the screen saver through org.freedesktop.ScreenSaver; without that service it does nothing.
class DesktopWakeGuard : public ports::WakeGuard
{
public:
    explicit DesktopWakeGuard(QDBusConnection bus = QDBusConnection::sessionBus());
    void keepAwake(bool on) override;

private:
    QDBusConnection m_bus;
    unsigned m_cookie = 0;
};

} // namespace firstdew::linuxside
