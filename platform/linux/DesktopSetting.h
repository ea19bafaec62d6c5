#pragma once

#include <QDBusConnection>
#include <QDBusMessage>
#include <QObject>
#include <QVariant>

#include <functional>

namespace firstdew::linuxside {

/// One setting of the desktop's look, by its portal (org.freedesktop.portal.Settings), now and whenever it changes. The
/// answer comes later, so that the start waits for nobody.
class DesktopSetting : public QObject {
    Q_OBJECT

public:
    /// `hear` is told an invalid value where nobody answers or there is no such setting.
    DesktopSetting(QString key, std::function<void(const QVariant&)> hear, QDBusConnection bus,
                   QString group = QStringLiteral("org.gnome.desktop.interface"));

private slots:
    void onChanged(const QDBusMessage& message);

private:
    QString m_group, m_key;
    std::function<void(const QVariant&)> m_hear;
    QDBusConnection m_bus;
};

} // namespace firstdew::linuxside
