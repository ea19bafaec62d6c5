#include "SummaryModel.h"

#include "journal/OwnFile.h"
#include "print/SummaryPdf.h"
#include "words/Errors.h"
#include "words/Names.h"

#include <QDir>
#include <QMimeDatabase>
#include <QPointer>
#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

namespace {
constexpr int kMostDays = 3660;

} // namespace

SummaryModel::SummaryModel(Store& store, ports::Sharer& sharer, ports::Opener& opener, QString folder)
    : m_store(store), m_sharer(sharer), m_opener(opener), m_folder(std::move(folder))
{
    connect(&store, &Store::changed, this, &SummaryModel::changed);
}

int SummaryModel::days() const { return m_store.diary().preferences.summaryDays; }

void SummaryModel::setDays(int days)
{
    if (days != this->days())
        m_store.append(diary::summaryDaysPreference(days));
}

QList<ui::QuestionLine> SummaryModel::questions() const
{
    QList<ui::QuestionLine> out;
    for (const auto& e : m_store.diary().questions)
        out << ui::QuestionLine{text(e.id), text(e.payload.text)};
    return out;
}

summary::Contents SummaryModel::contents() const
{
    const int back = std::clamp(days(), 1, kMostDays);
    return summary::contentsFor(m_store.diary(), m_store.situation().today - (back - 1));
}

QImage SummaryModel::page(int width) const { return print::previewOf(contents(), print::paperHere(), width); }

void SummaryModel::say(const QString& message)
{
    m_message = message;
    emit messageChanged();
}

void SummaryModel::dropCopy()
{
    (void)journal::emptyOwnFolder(m_folder.toStdString());
    m_file.clear();
    say({});
}

bool SummaryModel::make()
{
    // The page before may still be open in another program, but it is no longer handed out.
    if (const auto ready = journal::emptyOwnFolder(m_folder.toStdString()); !ready) {
        say(words::errorSentence(ready.error()));
        return false;
    }
    const LocalDate to = m_store.situation().today;
    const QString file =
        QDir(m_folder).filePath(QStringLiteral("firstdew-summary-%1.pdf").arg(QString::fromStdString(to.iso())));
    const auto written = print::writeSummary(contents(), print::paperHere(), file);
    m_file = written ? file : QString();
    if (!written)
        say(words::errorSentence(written.error()));
    return written.ok();
}

void SummaryModel::share()
{
    if (!make())
        return;
    if (m_sharer.share(m_file.toStdString(), "application/pdf"))
        say(tr("Handed over."));
    else
        saveMade();
}

void SummaryModel::save()
{
    if (make())
        saveMade();
}

void SummaryModel::saveMade()
{
    if (!m_saver)
        return say({});
    m_saver(m_file, [self = QPointer(this)](const ui::FileResult& result) {
        if (!self)
            return;
        if (result.ok)
            self->say(tr("Saved as %1.").arg(words::asWritten(result.where.toStdString())));
        else
            self->say(result.message); // empty if the person chose no place
    });
}

bool SummaryModel::handOver(const QString& file)
{
    return m_sharer.share(file.toStdString(), QMimeDatabase().mimeTypeForFile(file).name().toStdString());
}

bool SummaryModel::open(const QString& path) { return m_opener.open(path.toStdString()); }

void SummaryModel::ask(const QString& question)
{
    if (!question.trimmed().isEmpty())
        m_store.append(Question{question.trimmed().toStdString()});
}

void SummaryModel::takeBack(const QString& id) { m_store.retract(id.toStdString(), "taken back"); }

} // namespace firstdew::viewmodels
