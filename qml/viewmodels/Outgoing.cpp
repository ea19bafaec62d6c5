#include "Outgoing.h"

#include "journal/OwnFile.h"
#include "words/Errors.h"
#include "words/Names.h"

#include <QDir>
#include <QMimeDatabase>

namespace firstdew::viewmodels {

facts::Result<QString> Outgoing::fresh(const QString& name) const
{
    // The file before may still be open in another program, but it is no longer handed out.
    if (const auto ready = journal::emptyOwnFolder(m_folder.toStdString()); !ready)
        return ready.error();
    return QDir(m_folder).filePath(name);
}

bool Outgoing::share(const QString& file) const
{
    return m_sharer.share(file.toStdString(), QMimeDatabase().mimeTypeForFile(file).name().toStdString());
}

void Outgoing::handOver(const QString& file, const Told& told) const
{
    if (share(file))
        told({true, true, tr("Handed over."), {}, file, false});
    else
        save(file, told);
}

void Outgoing::save(const QString& file, const Told& told) const
{
    if (!m_saver)
        return told({});
    m_saver(file, [told](ui::FileResult result) {
        if (result.ok)
            result.message = tr("Saved as %1.").arg(words::asWritten(result.where.toStdString()));
        told(result);
    });
}

void Outgoing::drop() const { (void)journal::emptyOwnFolder(m_folder.toStdString()); }

ui::FileResult refused(const facts::Error& error) { return {true, false, words::errorSentence(error), {}, {}, false}; }

} // namespace firstdew::viewmodels
