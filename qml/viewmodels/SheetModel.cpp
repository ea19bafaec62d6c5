#include "SheetModel.h"

#include "CaseloadModel.h"
#include "Edge.h"
#include "exchange/CareSheetFile.h"
#include "exchange/Caseload.h"
#include "journal/OwnFile.h"
#include "protocol/Area.h"
#include "protocol/CareSheets.h"
#include "protocol/Limits.h"
#include "protocol/SheetLimits.h"
#include "words/Errors.h"
#include "words/Names.h"
#include "words/SheetWords.h"

#include <QPointer>

#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;
using protocol::SheetField;

namespace {

constexpr int kWeek = 7;
constexpr int kFirstDays = 4 * kWeek;
constexpr int kMostDays = 52 * kWeek;
constexpr int kSecondsStep = 5;
const protocol::Allowances kUsual;

Milliamps usualLimit(Waveform waveform, AgeGroup age)
{
    return protocol::limitFor({Site::Hands, waveform, age, {}, {}, {}}).limit;
}

template <class E>
int numberOf(const std::optional<E>& value)
{
    return value ? static_cast<int>(*value) : -1;
}

} // namespace

SheetModel::SheetModel(Store& store, const CaseloadModel& caseload, const Outgoing& outgoing)
    : m_store(store), m_caseload(caseload), m_outgoing(outgoing)
{
    begin();
}

void SheetModel::set(const CareSheet& sheet)
{
    m_sheet = sheet;
    m_sheet.given = m_store.situation().today;
    m_sheet.who = m_store.diary().preferences.signature;
    const auto& contact = m_store.diary().preferences.contact;
    m_sheet.contact = contact.empty() ? std::nullopt : std::optional(contact);
    if (m_sheet.review && *m_sheet.review < m_sheet.given)
        m_sheet.review.reset();
    m_start = m_sheet.given;
    const int last = m_sheet.days.empty() ? 0 : m_sheet.days.back();
    m_lastDay = std::max(kFirstDays, (last + kWeek - 1) / kWeek * kWeek);
    emit changed();
}

void SheetModel::begin()
{
    m_name.clear();
    m_age = AgeGroup::Adult;
    CareSheet sheet;
    sheet.plan = CourseTemplate::Seven;
    set(sheet);
}

void SheetModel::beginForShown()
{
    const auto* facts = m_caseload.shownFacts();
    const auto* one = m_caseload.shownCase();
    begin();
    if (facts == nullptr || one == nullptr)
        return;
    const LocalDate today = m_store.situation().today;
    const auto diary = diary::readDiary(*facts, one->person, today);
    m_name = one->name;
    m_age = protocol::ageGroupOn(diary.person ? diary.person->birth : std::nullopt, today);
    set(exchange::sheetToBeginWith(diary));
}

void SheetModel::setName(const QString& name)
{
    m_name = name.trimmed().toStdString();
    emit changed();
}

ui::AgeGroup::Value SheetModel::age() const { return ui::shown(m_age); }

void SheetModel::setAge(ui::AgeGroup::Value age)
{
    m_age = ui::core(age).value_or(AgeGroup::Child);
    lowerLevel();
    emit changed();
}

QList<ui::Site::Value> SheetModel::sites() const { return ui::shown(m_sheet.sites); }

void SheetModel::setSites(const QList<ui::Site::Value>& sites)
{
    m_sheet.sites = ui::coreSet(sites);
    lowerLevel();
    emit changed();
}

int SheetModel::waveform() const { return numberOf(m_sheet.waveform); }

void SheetModel::setWaveform(int waveform)
{
    m_sheet.waveform = ui::core(static_cast<ui::Waveform::Value>(waveform));
    m_sheet.level.reset(); // it was one of the other current
    emit changed();
}

int SheetModel::plan() const { return numberOf(m_sheet.plan); }

void SheetModel::setPlan(int plan)
{
    m_sheet.plan = ui::core(static_cast<ui::CourseTemplate::Value>(plan));
    m_sheet.days.clear();
    if (m_sheet.plan == CourseTemplate::Prescribed)
        m_sheet.days = {1};
    emit changed();
}

QList<int> SheetModel::days() const { return {m_sheet.days.begin(), m_sheet.days.end()}; }

void SheetModel::toggleDay(int day)
{
    if (day <= 1 || day > m_lastDay)
        return;
    const auto at = std::ranges::lower_bound(m_sheet.days, day);
    if (at != m_sheet.days.end() && *at == day)
        m_sheet.days.erase(at);
    else
        m_sheet.days.insert(at, day);
    emit changed();
}

void SheetModel::moreDays()
{
    m_lastDay = std::min(m_lastDay + kWeek, kMostDays);
    emit changed();
}

void SheetModel::setStart(int day)
{
    m_start = day == 0 ? std::nullopt : std::optional(LocalDate(day));
    emit changed();
}

void SheetModel::setReview(int day)
{
    m_sheet.review = day == 0 ? std::nullopt : std::optional(LocalDate(day));
    emit changed();
}

QString SheetModel::problemOf(SheetField field) const { return words::sheetProblem(field, m_sheet, m_age); }

ui::SheetLine SheetModel::lineOf(const QString& shown, SheetField field) const { return {shown, problemOf(field)}; }

ui::SheetLine SheetModel::who() const { return lineOf(text(m_sheet.who), SheetField::Who); }
ui::SheetLine SheetModel::contact() const { return lineOf(text(m_sheet.contact.value_or("")), SheetField::Contact); }
ui::SheetLine SheetModel::notes() const { return lineOf(text(m_sheet.notes), SheetField::Notes); }
ui::SheetLine SheetModel::atNoResponse() const { return lineOf(text(m_sheet.atNoResponse), SheetField::AtNoResponse); }

void SheetModel::setWho(const QString& who)
{
    m_sheet.who = who.trimmed().toStdString();
    emit changed();
}

void SheetModel::setContact(const QString& contact)
{
    const auto trimmed = contact.trimmed().toStdString();
    m_sheet.contact = trimmed.empty() ? std::nullopt : std::optional(trimmed);
    emit changed();
}

void SheetModel::setNotes(const QString& notes)
{
    m_sheet.notes = notes.trimmed().toStdString();
    emit changed();
}

void SheetModel::setAtNoResponse(const QString& words)
{
    m_sheet.atNoResponse = words.trimmed().toStdString();
    emit changed();
}

ui::SheetLine SheetModel::limitLine(Waveform waveform, const std::optional<Milliamps>& set, SheetField field) const
{
    const QString shown =
        set ? words::milliamps(set->mA) : words::asUsual(words::milliamps(usualLimit(waveform, m_age).mA));
    return lineOf(shown, field);
}

ui::SheetLine SheetModel::direct() const
{
    return limitLine(Waveform::Direct, m_sheet.directLimit, SheetField::DirectLimit);
}
ui::SheetLine SheetModel::pulsed() const
{
    return limitLine(Waveform::Pulsed, m_sheet.pulsedLimit, SheetField::PulsedLimit);
}

void SheetModel::stepLimit(std::optional<Milliamps>& limit, Waveform waveform, int by)
{
    const Milliamps usual = usualLimit(waveform, m_age);
    const Milliamps next{std::max(limit.value_or(usual).mA + by, exchange::kLeastLimit.mA)};
    // What is above the table, because the age was changed, comes down to it at once.
    limit = next < usual ? std::optional(next) : std::nullopt;
    lowerLevel();
    emit changed();
}

/// The level to begin with stays within what the sheet allows.
void SheetModel::lowerLevel()
{
    if (m_sheet.level && m_sheet.waveform)
        m_sheet.level =
            std::min(*m_sheet.level, protocol::mostLevel(m_sheet, *m_sheet.waveform, m_age).value_or(*m_sheet.level));
}

ui::SheetLine SheetModel::level() const
{
    return lineOf(m_sheet.level ? words::milliamps(m_sheet.level->mA) : words::leftOpen(), SheetField::Level);
}

void SheetModel::stepLevel(int by)
{
    const auto start = m_sheet.waveform ? protocol::levelToStart(m_sheet, *m_sheet.waveform, m_age) : std::nullopt;
    if (!start)
        return;
    const Milliamps next{m_sheet.level ? m_sheet.level->mA + by : start->mA};
    m_sheet.level = next < exchange::kLeastLimit ? std::nullopt : std::optional(next);
    lowerLevel();
    emit changed();
}

void SheetModel::stepDirect(int by) { stepLimit(m_sheet.directLimit, Waveform::Direct, by); }
void SheetModel::stepPulsed(int by) { stepLimit(m_sheet.pulsedLimit, Waveform::Pulsed, by); }

ui::SheetLine SheetModel::pad() const
{
    return lineOf(m_sheet.pad ? words::squareCentimetres(*m_sheet.pad) : words::leftOpen(), SheetField::Pad);
}

void SheetModel::stepPad(int by)
{
    if (!m_sheet.pad)
        m_sheet.pad = protocol::kUnknownPad;
    else if (m_sheet.pad->cm2 + by < exchange::kLeastPad.cm2)
        m_sheet.pad.reset();
    else
        m_sheet.pad->cm2 = std::min(m_sheet.pad->cm2 + by, exchange::kMostPad.cm2);
    lowerLevel();
    emit changed();
}

ui::SheetLine SheetModel::timeLine(const std::optional<Seconds>& set, Seconds usual, SheetField field) const
{
    return lineOf(set ? words::seconds(*set) : words::asUsual(words::seconds(usual)), field);
}

ui::SheetLine SheetModel::raise() const { return timeLine(m_sheet.raise, kUsual.raise, SheetField::Raise); }
ui::SheetLine SheetModel::lower() const { return timeLine(m_sheet.lower, kUsual.lower, SheetField::Lower); }
ui::SheetLine SheetModel::swapping() const { return timeLine(m_sheet.swapping, kUsual.swapping, SheetField::Swapping); }

void SheetModel::stepTime(std::optional<Seconds>& time, Seconds usual, int by)
{
    const Seconds next{std::clamp(time.value_or(usual).s + by * kSecondsStep, protocol::kLeastAllowance.s,
                                  protocol::kMostAllowance.s)};
    time = next == usual ? std::nullopt : std::optional(next);
    emit changed();
}

void SheetModel::stepRaise(int by) { stepTime(m_sheet.raise, kUsual.raise, by); }
void SheetModel::stepLower(int by) { stepTime(m_sheet.lower, kUsual.lower, by); }
void SheetModel::stepSwapping(int by) { stepTime(m_sheet.swapping, kUsual.swapping, by); }

QStringList SheetModel::phases() const
{
    QStringList out;
    for (const Site site : allOf<Site>())
        if (m_sheet.sites.contains(site))
            out << words::phasesOf(site);
    return out;
}

bool SheetModel::ready() const { return exchange::careSheetProblems(m_sheet, m_age).empty(); }

QString SheetModel::code() const { return ready() ? text(exchange::careSheetLine(m_sheet)) : QString(); }

QImage SheetModel::page(int width) const
{
    return ready() ? print::previewOf(contents(), print::paperHere(), width) : QImage();
}

void SheetModel::remember()
{
    const auto& known = m_store.diary().preferences;
    std::vector<Payload> changes;
    if (known.signature != m_sheet.who)
        changes.emplace_back(diary::signaturePreference(m_sheet.who));
    if (known.contact != m_sheet.contact.value_or(""))
        changes.emplace_back(diary::contactPreference(m_sheet.contact.value_or("")));
    if (!changes.empty())
        m_store.append(changes);
}

Result<QString> SheetModel::madeSheet()
{
    if (const auto may = exchange::checkCareSheet(m_sheet, m_age); !may)
        return may.error();
    auto file = m_outgoing.fresh(QStringLiteral("firstdew-care-sheet-%1.json").arg(text(m_sheet.given)));
    if (!file)
        return file;
    if (const auto put = journal::writeNewFile(file->toStdString(), exchange::careSheetJson(m_sheet)); !put)
        return put.error();
    remember();
    return file;
}

Result<QString> SheetModel::madeHandout()
{
    if (const auto may = exchange::checkCareSheet(m_sheet, m_age); !may)
        return may.error();
    auto file = m_outgoing.fresh(QStringLiteral("firstdew-plan-%1.pdf").arg(text(m_sheet.given)));
    if (!file)
        return file;
    if (const auto put = print::writeHandout(contents(), print::paperHere(), *file); !put)
        return put.error();
    remember();
    return file;
}

Outgoing::Told SheetModel::teller()
{
    return [self = QPointer(this)](const ui::FileResult& result) {
        if (self)
            emit self->went(result);
    };
}

void SheetModel::share(const Result<QString>& file)
{
    if (file)
        m_outgoing.handOver(*file, teller());
    else
        emit went(refused(file.error()));
}

void SheetModel::save(const Result<QString>& file)
{
    if (file)
        m_outgoing.save(*file, teller());
    else
        emit went(refused(file.error()));
}

void SheetModel::shareSheet() { share(madeSheet()); }
void SheetModel::saveSheet() { save(madeSheet()); }
void SheetModel::shareHandout() { share(madeHandout()); }
void SheetModel::saveHandout() { save(madeHandout()); }

} // namespace firstdew::viewmodels
