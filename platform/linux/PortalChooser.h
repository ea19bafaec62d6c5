#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "ports/FileChooser.h"
#endif

#include <QDBusConnection>
#include <QObject>
#include <QVariantMap>

namespace firstdew::linuxside {

/// The desktop's own file chooser, by its portal (org.freedesktop.portal.FileChooser). The portal also gives access to
/// the one chosen file where the program may read no other.
class PortalChooser : public QObject, public ports::FileChooser {
    Q_OBJECT

public:
    explicit PortalChooser(QDBusConnection bus = QDBusConnection::sessionBus()) : m_bus(std::move(bus)) {}
    ~PortalChooser() override;
    [[nodiscard]] bool choose(const std::string& title, const std::string& endings, Chosen chosen) override;
    [[nodiscard]] bool chooseFolder(const std::string& title, Chosen chosen) override;

private slots:
    void onResponse(uint code, const QVariantMap& results);

private:
    /// Listens to the answer of that request, and no longer to the one before.
    void listenTo(const QString& request);
    [[nodiscard]] bool ask(const std::string& title, QVariantMap options, Chosen chosen);

    QDBusConnection m_bus;
    QString m_request;
    int m_count = 0;
    Chosen m_chosen;
};

} // namespace firstdew::linuxside
