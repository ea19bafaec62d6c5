#include "KeepModel.h"

#include "codec/RecordJson.h"
#include "exchange/Calendar.h"
#include "exchange/CareSheetFile.h"
#include "exchange/Fhir.h"
#include "exchange/Tables.h"
#include "journal/BackUp.h"
#include "journal/Import.h"
#include "journal/OwnFile.h"
#include "words/Errors.h"

#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

constexpr std::size_t kMostBytes = 256U * 1024 * 1024;

Store& store() { return *Store::instance(); }

QVariantMap refused(const Error& e)
{
    return {{"ok", false}, {"code", text(e.code)}, {"input", text(e.input)}, {"message", words::errorSentence(e)}};
}

QVariantMap done(qlonglong count = 0, const QString& path = {})
{
    return {{"ok", true}, {"count", count}, {"path", path}};
}

Result<CareSheet> sheetIn(const QString& file)
{
    const auto content = journal::readFile(file.toStdString(), kMostBytes);
    if (!content)
        return content.error();
    return exchange::readCareSheet(file.toStdString(), *content, store().situation().age);
}

} // namespace

QString KeepModel::folder() const { return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation); }

QVariantMap KeepModel::written(const QString& ending, const std::string& content) const
{
    QDir().mkpath(folder());
    const QString path = QStringLiteral("%1/firstdew-%2.%3").arg(folder(), store().todayIso(), ending);
    const auto put = journal::replaceFile(path.toStdString(), content);
    return put ? done(0, path) : refused(put.error());
}

QVariantMap KeepModel::writtenTables() const
{
    const QString path = QStringLiteral("%1/firstdew-%2-tables").arg(folder(), store().todayIso());
    QDir().mkpath(path);
    const auto tables = exchange::tablesOf(store().allFacts());
    for (const auto& [name, table] : tables) {
        const auto put = journal::replaceFile((path + QLatin1Char('/')).toStdString() + name, table);
        if (!put)
            return refused(put.error());
    }
    return done(static_cast<qlonglong>(tables.size()), path);
}

QVariantMap KeepModel::backUp(const QString& passphrase)
{
    const auto& journal = store().journalForWholeStoreActs();
    if (!journal)
        return {{"ok", false}};
    const auto sealed = journal::backUp(*journal, passphrase.toStdString());
    return sealed ? written("pgp", *sealed) : refused(sealed.error());
}

QVariantMap KeepModel::restore(const QString& file, const QString& passphrase)
{
    const auto content = journal::readFile(file.toStdString(), kMostBytes);
    if (!content)
        return refused(content.error());
    const auto facts = journal::openBackUp(file.toStdString(), *content, passphrase.toStdString());
    if (!facts)
        return refused(facts.error());
    store().journalForWholeStoreActs().reset();
    const auto restored = journal::restore(store().file(), *facts);
    store().reopen();
    return restored ? done(static_cast<qlonglong>(restored->facts), text(restored->kept.string()))
                    : refused(restored.error());
}

QVariantMap KeepModel::exportAs(const QString& format, const QVariantMap& words)
{
    const long long stamp = store().clock().instant().wallMs;
    if (format == QLatin1String("json"))
        return written("json", codec::recordJson(store().allFacts()));
    if (format == QLatin1String("csv"))
        return writtenTables();
    if (format == QLatin1String("fhir"))
        return written("fhir.json", exchange::fhirBundle(store().allFacts(), {false, stamp}));
    const auto word = [&](const char* key) { return words.value(QLatin1String(key)).toString().toStdString(); };
    const exchange::CalendarText calendar{
        word("calendar"), {word("hands"), word("feet"), word("hand-foot"), word("armpits")}, word("alarm")};
    const auto today = store().situation().today;
    const auto events = exchange::calendarEvents(store().record(), store().person().toStdString(), today);
    return written("ics", exchange::calendarFile(events, calendar,
                                                 exchange::calendarSequence(store().allFacts().size(), today), stamp));
}

QVariantMap KeepModel::importFrom(const QString& file)
{
    auto& journal = store().journalForWholeStoreActs();
    const auto content = journal::readFile(file.toStdString(), kMostBytes);
    if (!content)
        return refused(content.error());
    const auto incoming = codec::readRecordJson(file.toStdString(), *content);
    if (!incoming)
        return refused(incoming.error());
    if (!journal)
        return {{"ok", false}};
    const auto imported = journal::importInto(*journal, *incoming);
    store().reload();
    return imported ? done(static_cast<qlonglong>(imported->added), text(imported->kept.string()))
                    : refused(imported.error());
}

QVariantMap KeepModel::readSheet(const QString& file)
{
    const auto sheet = sheetIn(file);
    if (!sheet)
        return refused(sheet.error());
    std::optional<CareSheet> present;
    if (const auto* e = store().record().latest<CareSheet>())
        present = e->payload;
    QVariantList changes;
    for (const auto& c : exchange::changesBy(*sheet, present))
        changes << QVariantMap{{"field", text(c.field)}, {"before", text(c.before)}, {"after", text(c.after)}};
    QVariantMap out = done(changes.size(), file);
    out["who"] = text(sheet->who);
    out["given"] = text(sheet->given);
    out["changes"] = changes;
    return out;
}

bool KeepModel::acceptSheet(const QString& file)
{
    const auto sheet = sheetIn(file);
    return sheet && store().append(*sheet).has_value();
}

QVariantMap KeepModel::forgetPerson()
{
    auto& journal = store().journalForWholeStoreActs();
    if (!journal)
        return {{"ok", false}};
    const auto forgotten = journal->forget(store().person().toStdString());
    store().reload();
    return forgotten ? done() : refused(forgotten.error());
}

QVariantMap KeepModel::forgetAll()
{
    store().journalForWholeStoreActs().reset();
    const auto gone = journal::Journal::destroy(store().file());
    store().reopen();
    return gone ? done() : refused(gone.error());
}

QVariantList KeepModel::filesEnding(const QString& ending) const
{
    QVariantList out;
    for (const QFileInfo& f : QDir(folder()).entryInfoList({QStringLiteral("*.") + ending}, QDir::Files, QDir::Time))
        out << QVariantMap{{"name", f.fileName()}, {"path", f.absoluteFilePath()}};
    return out;
}

} // namespace firstdew::viewmodels
