#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "ports/FileChooser.h"
#endif

#include <QDBusConnection>
#include <QObject>
#include <QStringList>
#include <QVariantMap>

namespace firstdew::linuxside {

/// The desktop's own file chooser, by its portal (org.freedesktop.portal.FileChooser). The portal also gives access to
/// the one chosen file where the program may use no other.
class PortalChooser : public QObject, public ports::FileChooser {
    Q_OBJECT

public:
    explicit PortalChooser(QDBusConnection bus = QDBusConnection::sessionBus()) : m_bus(std::move(bus)) {}
    ~PortalChooser() override;
    [[nodiscard]] bool choose(const std::string& title, const std::string& endings, Chosen chosen) override;
    [[nodiscard]] bool chooseFolder(const std::string& title, Chosen chosen) override;
    [[nodiscard]] bool save(const std::string& title, std::vector<ports::OutFile> files, Saved saved) override;

private slots:
    void onResponse(uint code, const QVariantMap& results);

private:
    /// What the person answered: the files' names, nullopt where nothing was chosen, or an error.
    using Answer = std::function<void(facts::Result<std::optional<QStringList>>)>;
    /// Calls the chooser's method; false where there is none. An earlier request is dropped.
    bool ask(const QString& method, const std::string& title, QVariantMap options, Answer answer);
    [[nodiscard]] bool open(const std::string& title, const QVariantMap& options, Chosen chosen);
    /// Listens to the answer of that request, and no longer to the one before.
    void listenTo(const QString& request);

    QDBusConnection m_bus;
    QString m_request;
    int m_count = 0;
    Answer m_answer;
};

} // namespace firstdew::linuxside
