#include "KeepModel.h"

#include "Outgoing.h"
#include "Tokens.h"
#include "codec/RecordJson.h"
#include "codec/Tally.h"
#include "diary/AppLock.h"
#include "exchange/Calendar.h"
#include "exchange/CareSheetFile.h"
#include "exchange/Fhir.h"
#include "exchange/QrRead.h"
#include "exchange/Tables.h"
#include "journal/BackUp.h"
#include "journal/Import.h"
#include "journal/OwnFile.h"
#include "journal/Repair.h"
#include "protocol/SheetCourse.h"
#include "protocol/SheetEffect.h"
#include "words/Errors.h"
#include "words/Names.h"
#include "words/SheetWords.h"

#include <QBuffer>
#include <QDir>
#include <QFileInfo>
#include <QImage>
#include <QImageReader>
#include <QPointer>
#include <QStandardPaths>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

/// Copies of a store, which takes more than its record as a file.
constexpr std::size_t kMostCopyBytes = 256U << 20U;

ui::FileResult failed(const QString& message) { return {true, false, message, {}, {}, false}; }
ui::FileResult done(const QString& where = {}, const QString& path = {})
{
    return {true, true, {}, where, path, false};
}

/// The text of the code in a picture; of any other file its content. A picture is measured before it is unpacked: a
/// small file may be packed to unpack to any size. Drawings are no pictures here, since they have no size of their own.
Result<std::string> textIn(const std::string& file, std::string content)
{
    const bool png = content.starts_with("\x89PNG\r\n");
    if (!png && !content.starts_with("\xff\xd8\xff"))
        return content;
    QByteArray bytes = QByteArray::fromRawData(content.data(), static_cast<qsizetype>(content.size()));
    QBuffer buffer(&bytes);
    QImageReader reader(&buffer, png ? "png" : "jpeg");
    const QSize size = reader.size();
    if (!exchange::mayBeLookedAt(size.width(), size.height()))
        return Error{"picture-unusable", file, "is no picture that can be looked at; take another one"};
    const QImage picture = reader.read().convertToFormat(QImage::Format_Grayscale8);
    std::vector<unsigned char> grey;
    grey.reserve(static_cast<std::size_t>(picture.width()) * static_cast<std::size_t>(picture.height()));
    for (int row = 0; row < picture.height(); ++row) // rows of a picture may be padded
        grey.insert(grey.end(), picture.constScanLine(row), picture.constScanLine(row) + picture.width());
    auto text = exchange::readQrCode(grey, picture.width(), picture.height());
    if (!text)
        return Error{text.error().code, file, text.error().message};
    return text;
}

ui::BackUpRead unread(const Error& e) { return {true, false, words::errorSentence(e), {}, {}}; }

ui::RecordTally shown(const codec::Tally& t)
{
    return {t.people, t.checkIns, t.sessions, t.last ? t.last->daysSince1970() : 0};
}

/// The facts of a back-up.
Result<std::vector<Fact>> factsIn(const QString& file, const QString& passphrase)
{
    const auto content = journal::readFile(file.toStdString(), codec::kMostRecordBytes);
    if (!content)
        return content.error();
    return journal::openBackUp(file.toStdString(), *content, passphrase.toStdString());
}

} // namespace

QString KeepModel::folder() const { return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation); }

std::string KeepModel::fileName(const QString& ending) const
{
    return QStringLiteral("firstdew-%1%2").arg(text(m_store.situation().today), ending).toStdString();
}

/// Into the person's documents, under names that are free.
ui::FileResult KeepModel::written(const std::vector<ports::OutFile>& files) const
{
    QDir().mkpath(folder());
    std::filesystem::path into = folder().toStdString();
    if (files.size() > 1) {
        const auto free = journal::freeName(into / fileName({}));
        if (!free)
            return refused(free.error());
        if (const auto made = journal::makeOwnFolder(*free); !made)
            return refused(made.error());
        into = *free;
    }
    for (const auto& file : files) {
        const auto free = journal::freeName(into / file.name);
        if (!free)
            return refused(free.error());
        if (const auto put = journal::writeNewFile(*free, file.content); !put)
            return refused(put.error());
        if (files.size() == 1)
            return done(text(free->string()), text(free->string()));
    }
    return done(text(into.string()));
}

void KeepModel::save(std::vector<ports::OutFile> files, Told told)
{
    const auto tell = [self = QPointer(this), told](const Result<std::optional<ports::SavedAs>>& end) {
        if (!self)
            return;
        if (!end)
            told(refused(end.error()));
        else
            told(*end ? done(text((*end)->where), text((*end)->file)) : ui::FileResult{});
    };
    if (m_chooser == nullptr || !m_chooser->save(tr("Save as").toStdString(), files, tell))
        told(written(files));
}

void KeepModel::saveAndTell(std::vector<ports::OutFile> files)
{
    save(std::move(files), [this](const ui::FileResult& result) { emit saved(result); });
}

void KeepModel::saveCopy(const QString& file, Told told)
{
    auto content = journal::readFile(file.toStdString(), kMostCopyBytes);
    if (!content)
        return told(refused(content.error()));
    save({{QFileInfo(file).fileName().toStdString(), std::move(content.value())}}, std::move(told));
}

void KeepModel::backUp(const QString& passphrase)
{
    const auto& journal = m_store.journalForWholeStoreActs();
    if (!journal) {
        emit saved(failed(m_store.errorText()));
        return;
    }
    auto sealed = journal::backUp(*journal, passphrase.toStdString());
    if (!sealed) {
        emit saved(refused(sealed.error()));
        return;
    }
    saveAndTell({{fileName(QStringLiteral(".pgp")), std::move(sealed.value())}});
}

bool KeepModel::longEnough(const QString& passphrase)
{
    return static_cast<std::size_t>(passphrase.toUcs4().size()) >= journal::kLeastPassphrase;
}

/// What comes in was locked by another device's lock, or by none: here it stays as it is.
void KeepModel::keepLock(bool on)
{
    if (m_store.isOpen() && m_store.lockWanted() != on)
        m_store.recordForAll(diary::appLockPreference(on));
}

ui::FileResult KeepModel::restore(const QString& file, const QString& passphrase)
{
    const auto facts = factsIn(file, passphrase);
    if (!facts)
        return refused(facts.error());
    const bool locked = m_store.lockWanted();
    m_store.journalForWholeStoreActs().reset();
    const auto restored = journal::restore(m_store.file(), *facts);
    m_store.reopen();
    keepLock(locked);
    return restored ? done(text(restored->kept.string())) : refused(restored.error());
}

void KeepModel::useChooser(ports::FileChooser& chooser)
{
    m_chooser = &chooser;
    emit canChooseChanged();
}

int KeepModel::chooseFile(const QString& title, const QString& ending)
{
    const int request = ++m_requests;
    const auto tell = [self = QPointer(this), request](const std::optional<std::string>& path) {
        if (self)
            emit self->fileChosen(request, path ? text(*path) : QString());
    };
    if (m_chooser != nullptr && m_chooser->choose(title.toStdString(), ending.toStdString(), tell))
        return request;
    m_chooser = nullptr;
    emit canChooseChanged();
    return 0;
}

ui::RecordTally KeepModel::tally() const { return shown(codec::tallyOf(m_store.allFacts())); }

ui::BackUpRead KeepModel::lookInto(const QString& file, const QString& passphrase) const
{
    const auto facts = factsIn(file, passphrase);
    if (!facts)
        return unread(facts.error());
    return {true, true, {}, shown(codec::tallyOf(*facts)), {}};
}

ui::BackUpRead KeepModel::takeOver(const QString& file, const QString& passphrase)
{
    const auto facts = factsIn(file, passphrase);
    if (!facts)
        return unread(facts.error());
    const bool locked = m_store.lockWanted();
    m_store.journalForWholeStoreActs().reset();
    const auto restored = journal::restore(m_store.file(), *facts);
    m_store.reopen();
    if (!restored)
        return unread(restored.error());
    const bool whole = m_store.allFacts() == *facts;
    const ui::RecordTally here = tally(); // to be compared with the other phone's
    keepLock(locked);
    return {true, whole, whole ? QString() : words::errorSentence({"move-incomplete", file.toStdString(), {}}), here,
            text(restored->kept.string())};
}

void KeepModel::exportAs(ui::ExportFormat::Value format)
{
    std::vector<ports::OutFile> files;
    switch (format) {
    case ui::ExportFormat::Json:
        files.push_back({fileName(QStringLiteral(".json")), codec::recordJson(m_store.allFacts())});
        break;
    case ui::ExportFormat::Tables:
        for (const auto& [name, table] : exchange::tablesOf(m_store.allFacts()))
            files.push_back({fileName(QStringLiteral("-") + text(name)), table});
        break;
    case ui::ExportFormat::Fhir:
        files.push_back({fileName(QStringLiteral(".fhir.json")),
                         exchange::fhirBundle(m_store.allFacts(), {false, m_store.clock().instant().wallMs})});
        break;
    }
    saveAndTell(std::move(files));
}

void KeepModel::exportCalendar(const QString& name, const QString& alarm)
{
    const auto session = [](Site site) { return words::bathName(site).toStdString(); };
    const exchange::CalendarText calendar{
        name.toStdString(),
        {session(Site::Hands), session(Site::Feet), session(Site::HandFoot), session(Site::Armpits)},
        alarm.toStdString()};
    const auto today = m_store.situation().today;
    const auto events = exchange::calendarEvents(m_store.diary(), m_store.person().toStdString());
    saveAndTell({{fileName(QStringLiteral(".ics")),
                  exchange::calendarFile(events, calendar, exchange::calendarSequence(m_store.allFacts().size(), today),
                                         m_store.clock().instant().wallMs)}});
}

ui::FileResult KeepModel::importFrom(const QString& file, bool asNewPerson)
{
    auto& journal = m_store.journalForWholeStoreActs();
    auto content = journal::readFile(file.toStdString(), codec::kMostRecordBytes);
    if (!content)
        return refused(content.error());
    auto incoming = codec::readRecordJson(file.toStdString(), *content);
    content.value() = {};
    if (!incoming)
        return refused(incoming.error());
    if (const auto sheets = exchange::checkCareSheets(*incoming); !sheets)
        return refused(sheets.error());
    if (!journal)
        return failed(m_store.errorText());
    const bool locked = m_store.lockWanted();
    const auto imported = journal::importInto(*journal, std::move(incoming.value()),
                                              asNewPerson ? journal::Doubtful::AsNewPerson : journal::Doubtful::Refuse);
    m_store.reload();
    keepLock(locked);
    if (imported)
        return done(text(imported->kept.string()));
    ui::FileResult out = refused(imported.error());
    out.otherPerson = imported.error().code == "person-differs" || imported.error().code == "person-unsure";
    return out;
}

Result<CareSheet> KeepModel::sheetIn(const QString& file) const
{
    const std::string name = file.toStdString();
    auto content = journal::readFile(name, exchange::kMostPictureBytes);
    if (!content)
        return content.error();
    const auto text = textIn(name, std::move(content.value()));
    return text ? sheetFrom(name, *text) : text.error();
}

Result<CareSheet> KeepModel::sheetFrom(const std::string& source, std::string_view text) const
{
    auto sheet = exchange::readCareSheet(source, text, m_store.situation().age);
    if (!sheet)
        return sheet;
    if (const auto may = exchange::checkAcceptance(*sheet, m_store.diary().today); !may)
        return may.error();
    return sheet;
}

ui::SheetRead KeepModel::readSheet(const QString& file) { return told(sheetIn(file)); }
ui::SheetRead KeepModel::readScanned(const QString& text) { return told(sheetFrom({}, text.toStdString())); }

ui::SheetRead KeepModel::told(const Result<CareSheet>& sheet) const
{
    if (!sheet)
        return {true, false, words::errorSentence(sheet.error()), false, {}, {}};
    const auto effects = protocol::effectsOf(*sheet, m_store.diary());
    ui::SheetRead out{true, true, {}, protocol::loosens(effects), {}, {}};
    for (const auto& next : protocol::coursesOf(*sheet, m_store.diary()))
        out.courses << words::courseBegins(next);
    for (const auto& effect : effects) {
        QList<ui::SheetChange> changes;
        for (const auto& c : effect.changes)
            changes << ui::SheetChange{words::sheetChange(c.field, effect.before, *sheet), c.loosens};
        out.effects << ui::SheetEffect{words::siteNames(effect.sites), changes};
    }
    return out;
}

bool KeepModel::acceptSheet(const QString& file, bool loosen) { return accept(sheetIn(file), loosen); }
bool KeepModel::acceptScanned(const QString& text, bool loosen)
{
    return accept(sheetFrom({}, text.toStdString()), loosen);
}

bool KeepModel::accept(const Result<CareSheet>& sheet, bool loosen)
{
    if (!sheet || (protocol::loosens(protocol::effectsOf(*sheet, m_store.diary())) && !loosen))
        return false;
    return m_store.append(protocol::acceptanceOf(*sheet, m_store.diary()));
}

/// Copies on their way out hold what is removed now.
void KeepModel::dropCopies()
{
    if (m_chooser != nullptr)
        m_chooser->dropCopies();
    emit forgotten();
}

ui::FileResult KeepModel::forgetPerson()
{
    auto& journal = m_store.journalForWholeStoreActs();
    if (!journal)
        return failed(m_store.errorText());
    const auto removed = journal->forget(m_store.person().toStdString());
    m_store.reload();
    dropCopies();
    return removed ? done() : refused(removed.error());
}

ui::FileResult KeepModel::forgetAll()
{
    m_store.journalForWholeStoreActs().reset();
    const auto gone = journal::Journal::destroy(m_store.file());
    m_store.reopen();
    dropCopies();
    return gone ? done() : refused(gone.error());
}

ui::FileResult KeepModel::repair()
{
    m_store.journalForWholeStoreActs().reset();
    const auto repaired = journal::repair(m_store.file());
    m_store.reopen();
    return repaired ? done(text(repaired->aside.string())) : refused(repaired.error());
}

QList<ui::FoundFile> KeepModel::filesEnding(const QString& ending) const
{
    QList<ui::FoundFile> out;
    QStringList patterns;
    for (const QString& one : ending.split(QLatin1Char(' ')))
        patterns << QStringLiteral("*.") + one;
    for (const QFileInfo& f : QDir(folder()).entryInfoList(patterns, QDir::Files, QDir::Time))
        out << ui::FoundFile{f.fileName(), f.absoluteFilePath()};
    return out;
}

} // namespace firstdew::viewmodels
