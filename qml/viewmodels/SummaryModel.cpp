#include "SummaryModel.h"

#include "print/SummaryPdf.h"
#include "words/Errors.h"
#include "words/Names.h"

#include <QDir>
#include <QMimeDatabase>
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

void SummaryModel::share()
{
    const LocalDate to = m_store.situation().today;
    QDir().mkpath(m_folder);
    const QString file =
        QDir(m_folder).filePath(QStringLiteral("firstdew-summary-%1.pdf").arg(QString::fromStdString(to.iso())));
    const auto written = print::writeSummary(contents(), print::paperHere(), file);
    if (!written) {
        m_message = words::errorSentence(written.error());
    } else {
        m_file = file;
        m_message = m_sharer.share(file.toStdString(), "application/pdf")
                        ? tr("Saved as %1 and handed over.").arg(words::asWritten(file.toStdString()))
                        : tr("Saved as %1. Open it from there.").arg(words::asWritten(file.toStdString()));
    }
    emit messageChanged();
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
