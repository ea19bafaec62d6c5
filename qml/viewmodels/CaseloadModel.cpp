#include "CaseloadModel.h"

#include "journal/AnyRecord.h"
#include "journal/OwnFile.h"
#include "print/SummaryPdf.h"
#include "summary/Contents.h"
#include "words/CaseWords.h"
#include "words/Names.h"

#include <QDir>
#include <QFileInfo>
#include <QPointer>
#include <QStandardPaths>

#include <algorithm>
#include <atomic>

namespace firstdew::viewmodels {

using namespace facts;

/// What the files hold; made by the reading thread, then only looked at.
struct CaseloadModel::Found {
    std::vector<exchange::ReceivedFile> files;
    std::vector<exchange::Case> people;
    std::vector<std::pair<std::string, Error>> unread;
};

/// One reading of files.
struct CaseloadModel::Job {
    std::vector<std::string> files;
    std::vector<std::string> passphrases;
    LocalDate today;
    std::atomic<bool> stopped{false};
};

namespace {

/// Whether a passphrase may open what was refused so.
bool opensWithPassphrase(const Error& e) { return e.code == "not-a-record" || e.code == "passphrase-wrong"; }

/// The facts of a file, by the first of the passphrases that opens it.
Result<std::vector<Fact>> readWith(const std::string& file, const std::vector<std::string>& passphrases)
{
    auto facts = journal::readAnyRecord(file);
    for (const auto& passphrase : passphrases) {
        if (facts || !opensWithPassphrase(facts.error()))
            break;
        facts = journal::readAnyRecord(file, passphrase);
    }
    return facts;
}

} // namespace

CaseloadModel::CaseloadModel(Store& store, Outgoing& outgoing) : m_store(store), m_outgoing(outgoing)
{
    connect(&store, &Store::changed, this, &CaseloadModel::teachingChanged);
}

CaseloadModel::~CaseloadModel() { stop(); }

void CaseloadModel::stop()
{
    if (m_job)
        m_job->stopped = true;
    if (m_reader.joinable())
        m_reader.join();
    m_job.reset();
}

void CaseloadModel::useChooser(ports::FileChooser& chooser)
{
    m_chooser = &chooser;
    emit read();
}

bool CaseloadModel::teaches() const { return m_store.diary().preferences.teaches; }

void CaseloadModel::setTeaches(bool teaches)
{
    if (teaches != this->teaches())
        m_store.append(diary::teachesPreference(teaches));
}

QString CaseloadModel::folder() const { return text(m_store.diary().preferences.caseloadFolder); }

QList<ui::CaseLine> CaseloadModel::people() const
{
    QList<ui::CaseLine> out;
    if (!m_found)
        return out;
    for (const auto& one : m_found->people) {
        ui::CaseLine line{
            text(one.person), text(one.name), {}, one.call(), one.why.front().kind == exchange::CallReason::SkinEvent};
        for (const auto& why : one.why)
            line.why << words::callWhy(why, today());
        out << line;
    }
    return out;
}

QList<ui::UnreadFile> CaseloadModel::unread() const
{
    QList<ui::UnreadFile> out;
    if (m_found)
        for (const auto& [file, error] : m_found->unread)
            out << ui::UnreadFile{QFileInfo(text(file)).fileName(), words::unreadWhy(error)};
    return out;
}

int CaseloadModel::calls() const
{
    return m_found ? static_cast<int>(std::ranges::count_if(m_found->people, &exchange::Case::call)) : 0;
}

const exchange::Case* CaseloadModel::shownCase() const
{
    if (!m_found || m_shown.empty())
        return nullptr;
    const auto at = std::ranges::find(m_found->people, m_shown, &exchange::Case::person);
    return at == m_found->people.end() ? nullptr : &*at;
}

const std::vector<Fact>* CaseloadModel::shownFacts() const
{
    const auto* one = shownCase();
    if (one == nullptr)
        return nullptr;
    const auto at = std::ranges::find(m_found->files, one->file, &exchange::ReceivedFile::file);
    return at == m_found->files.end() ? nullptr : &at->facts;
}

ui::CaseLine CaseloadModel::shown() const
{
    for (const auto& line : people())
        if (line.id.toStdString() == m_shown)
            return line;
    return {};
}

QImage CaseloadModel::page(int width) const
{
    const auto* facts = shownFacts();
    if (facts == nullptr)
        return {};
    const auto diary = diary::readDiary(*facts, m_shown, today());
    const int days = m_store.diary().preferences.summaryDays;
    return print::previewOf(summary::contentsFor(diary, today() - (days - 1)), print::paperHere(), width);
}

void CaseloadModel::shareSummary()
{
    const auto* facts = shownFacts();
    if (facts == nullptr)
        return;
    const auto diary = diary::readDiary(*facts, m_shown, today());
    const auto file = m_outgoing.fresh(QStringLiteral("firstdew-summary-%1.pdf").arg(text(today())));
    if (!file)
        return emit summaryWent(refused(file.error()));
    const int days = m_store.diary().preferences.summaryDays;
    const auto contents = summary::contentsFor(diary, today() - (days - 1));
    if (const auto written = print::writeSummary(contents, print::paperHere(), *file); !written)
        return emit summaryWent(refused(written.error()));
    m_outgoing.handOver(*file, [self = QPointer(this)](const ui::FileResult& result) {
        if (self)
            emit self->summaryWent(result);
    });
}

void CaseloadModel::chooseFolder(const QString& title)
{
    const auto tell = [self = QPointer(this)](const std::optional<std::string>& path) {
        if (self && path)
            self->useFolder(text(*path));
    };
    if (m_chooser != nullptr && m_chooser->chooseFolder(title.toStdString(), tell))
        return;
    m_foldersChosen = false; // files are chosen one by one
    emit read();
}

void CaseloadModel::chooseFile(const QString& title)
{
    const auto tell = [self = QPointer(this)](const std::optional<std::string>& path) {
        if (!self || !path || std::ranges::find(self->m_files, *path) != self->m_files.end())
            return;
        self->m_files.push_back(*path);
        self->readAgain();
    };
    if (m_chooser != nullptr && m_chooser->choose(title.toStdString(), "json pgp db gpg", tell))
        return;
    m_chooser = nullptr;
    emit read();
}

void CaseloadModel::useFolder(const QString& folder)
{
    m_store.append(diary::caseloadFolderPreference(folder.toStdString()));
    readAgain();
}

void CaseloadModel::useDocuments() { useFolder(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)); }

void CaseloadModel::open()
{
    if (!m_everRead && !folder().isEmpty())
        readAgain();
}

void CaseloadModel::unlock(const QString& passphrase)
{
    m_passphrases.push_back(passphrase.toStdString());
    readAgain();
}

void CaseloadModel::readAgain()
{
    std::vector<std::string> files;
    m_trouble.clear();
    if (!folder().isEmpty()) {
        const auto inFolder = journal::recordFilesIn(folder().toStdString());
        if (!inFolder)
            m_trouble = words::unreadWhy(inFolder.error());
        else
            for (const auto& file : *inFolder)
                files.push_back(file.string());
    }
    for (const auto& file : m_files)
        if (std::ranges::find(files, file) == files.end())
            files.push_back(file);
    std::erase(files, m_store.file()); // the record here is no file that was sent
    start(std::move(files));
}

void CaseloadModel::start(std::vector<std::string> files)
{
    stop();
    m_everRead = true;
    m_reading = true;
    m_filesRead = 0;
    m_filesAll = static_cast<int>(files.size());
    emit progress();
    auto job = std::make_shared<Job>();
    job->files = std::move(files);
    job->passphrases = m_passphrases;
    job->today = today();
    m_job = job;
    m_reader = std::thread([this, job] {
        auto found = std::make_shared<Found>();
        int count = 0;
        for (const auto& file : job->files) {
            if (job->stopped)
                return;
            auto facts = readWith(file, job->passphrases);
            if (facts)
                found->files.push_back({file, std::move(facts.value())});
            else
                found->unread.emplace_back(file, facts.error());
            QMetaObject::invokeMethod(
                this,
                [this, job, now = ++count] {
                    if (m_job != job)
                        return;
                    m_filesRead = now;
                    emit progress();
                },
                Qt::QueuedConnection);
        }
        found->people = exchange::caseloadOf(found->files, job->today);
        QMetaObject::invokeMethod(
            this,
            [this, job, found] {
                if (m_job == job)
                    take(found);
            },
            Qt::QueuedConnection);
    });
}

void CaseloadModel::take(const std::shared_ptr<const Found>& found)
{
    stop();
    m_found = found;
    m_locked = std::ranges::any_of(found->unread, [](const auto& one) { return opensWithPassphrase(one.second); });
    m_reading = false;
    if (shownCase() == nullptr)
        m_shown.clear();
    emit progress();
    emit read();
    emit changed();
}

void CaseloadModel::show(const QString& id)
{
    m_shown = id.toStdString();
    emit changed();
}

} // namespace firstdew::viewmodels
