#pragma once

#include "KeepValues.h"
#include "ports/Sharer.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "facts/Result.h"
#endif

#include <QCoreApplication>
#include <QString>
#include <functional>

namespace firstdew::viewmodels {

/// Files that leave the app: made in a folder of its own, then handed to another program or saved where the person
/// chooses. Only the latest one is kept there.
class Outgoing {
    Q_DECLARE_TR_FUNCTIONS(Outgoing)

public:
    /// Its message says what became of the file, in a sentence; empty where the person chose no place.
    using Told = std::function<void(const ui::FileResult&)>;
    using Saver = std::function<void(const QString& file, Told told)>;

    Outgoing(QString folder, ports::Sharer& sharer) : m_folder(std::move(folder)), m_sharer(sharer) {}
    /// Who asks where to put a copy of a file, and puts it there.
    void useSaver(Saver saver) { m_saver = std::move(saver); }

    /// The path for a new file of that name; the one before is removed.
    [[nodiscard]] facts::Result<QString> fresh(const QString& name) const;
    /// Hands the file to the system; whether a program took it.
    [[nodiscard]] bool share(const QString& file) const;
    /// The same. If no program takes it, asks where to save it.
    void handOver(const QString& file, const Told& told) const;
    /// Asks where to save the file.
    void save(const QString& file, const Told& told) const;
    /// Removes the latest file.
    void drop() const;

private:
    QString m_folder;
    ports::Sharer& m_sharer;
    Saver m_saver;
};

/// What is told of a file that could not be written.
[[nodiscard]] ui::FileResult refused(const facts::Error& error);

} // namespace firstdew::viewmodels
