#pragma once

#include "ports/Opener.h"
#include "ports/Sharer.h"
#include "ports/WakeGuard.h"

#include <QDBusConnection>

namespace firstdew::linuxside {

/// The desktop's portal asks the person which program is to take the file (org.freedesktop.portal.OpenURI); without a
/// portal xdg-open gives it to the usual one.
class DesktopSharer : public ports::Sharer {
public:
    explicit DesktopSharer(QDBusConnection bus = QDBusConnection::sessionBus()) : m_bus(std::move(bus)) {}
    [[nodiscard]] bool share(const std::string& file, const std::string& mimeType) override;

private:
    QDBusConnection m_bus;
};

/// The same without the question: the file or folder opens in the program that the person uses for such.
class DesktopOpener : public ports::Opener {
public:
    explicit DesktopOpener(QDBusConnection bus = QDBusConnection::sessionBus()) : m_bus(std::move(bus)) {}
    [[nodiscard]] bool open(const std::string& path) override;

private:
    QDBusConnection m_bus;
};

/// Inhibits the screen saver through org.freedesktop.ScreenSaver; without that service it does nothing.
class DesktopWakeGuard : public ports::WakeGuard {
public:
    explicit DesktopWakeGuard(QDBusConnection bus = QDBusConnection::sessionBus()) : m_bus(std::move(bus)) {}
    void keepAwake(bool on) override;

private:
    QDBusConnection m_bus;
    unsigned m_cookie = 0;
};

} // namespace firstdew::linuxside
