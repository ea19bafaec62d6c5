#include "SummaryModel.h"

#include "print/SummaryPdf.h"
#include "words/Errors.h"
#include "words/Names.h"

#include <QPointer>
#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

namespace {
constexpr int kMostDays = 3660;
} // namespace

SummaryModel::SummaryModel(Store& store, ports::Sharer& sharer, ports::Opener& opener, QString folder)
    : m_store(store), m_opener(opener), m_outgoing(std::move(folder), sharer)
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
    m_outgoing.drop();
    m_file.clear();
    say({});
}

bool SummaryModel::make()
{
    const LocalDate to = m_store.situation().today;
    const auto file = m_outgoing.fresh(QStringLiteral("firstdew-summary-%1.pdf").arg(QString::fromStdString(to.iso())));
    const auto written = file ? print::writeSummary(contents(), print::paperHere(), *file) : Result<int>(file.error());
    m_file = written ? *file : QString();
    if (!written)
        say(words::errorSentence(written.error()));
    return written.ok();
}

void SummaryModel::share()
{
    if (make())
        m_outgoing.handOver(m_file, [self = QPointer(this)](const auto& result) {
            if (self)
                self->say(result.message);
        });
}

void SummaryModel::save()
{
    if (make())
        m_outgoing.save(m_file, [self = QPointer(this)](const auto& result) {
            if (self)
                self->say(result.message);
        });
}

bool SummaryModel::handOver(const QString& file) { return m_outgoing.share(file); }

bool SummaryModel::open(const QString& path) { return m_opener.open(path.toStdString()); }

void SummaryModel::ask(const QString& question)
{
    if (!question.trimmed().isEmpty())
        m_store.append(Question{question.trimmed().toStdString()});
}

void SummaryModel::takeBack(const QString& id) { m_store.retract(id.toStdString(), "taken back"); }

} // namespace firstdew::viewmodels
