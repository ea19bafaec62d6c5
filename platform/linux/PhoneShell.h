#pragma once

#include <QDBusConnection>
#include <QObject>

namespace firstdew::linuxside {

/// Whether the desktop is a phone's own, as XDG_CURRENT_DESKTOP names it (freedesktop.org, Desktop Entry
/// Specification).
[[nodiscard]] bool isPhoneShell();

/// Settles with Qt what a window on a phone needs. Call before the application is made; what the person has set stays.
/// Does nothing on other desktops.
void preparePhoneShell();

/// Brings the phone's keyboard while a text field has the focus, and takes it away after that. Qt speaks none of the
/// protocols by which the shell would learn of it (Qt 6.4), or has it come with every touch (Qt 6.8).
class PhoneKeyboard : public QObject {
    Q_OBJECT

public:
    explicit PhoneKeyboard(QDBusConnection bus = QDBusConnection::sessionBus(), QObject* parent = nullptr);

    /// Follows the focus from now on. Call it once, where isPhoneShell().
    void follow();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void followFocus();
    void ask(bool visible);

    QDBusConnection m_bus;
    bool m_visible = false;
};

} // namespace firstdew::linuxside
