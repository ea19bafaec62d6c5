#include "PlanModel.h"

#include "BathCues.h"

#include "exchange/CareSheetFile.h"
#include "protocol/MayBegin.h"
#include "protocol/Screening.h"
#include "situation/Sites.h"
#include "words/Names.h"

#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

std::optional<LocalDate> dateOf(const QString& iso) { return LocalDate::parse(iso.toStdString()); }

Store& store() { return *Store::instance(); }

template <class P>
std::optional<P> latest(const Record& record)
{
    const auto* e = record.latest<P>();
    return e == nullptr ? std::nullopt : std::optional(e->payload);
}

} // namespace

PlanModel::PlanModel(QObject* parent) : QObject(parent)
{
    connect(Store::instance(), &Store::changed, this, &PlanModel::changed);
}

QVariantList PlanModel::sites() const
{
    QVariantList out;
    for (const auto& s : store().situation().sites) {
        QVariantList sessions;
        if (s.course)
            for (const auto& p : s.course->sessions)
                sessions << QVariantMap{{"number", p.number},
                                        {"date", text(p.date)},
                                        {"done", p.state == protocol::CourseState::Done},
                                        {"shift", p.shift}};
        out << QVariantMap{{"site", token(s.site)},
                           {"treatedAs", token(s.treatedAs)},
                           {"stage", token(s.stage)},
                           {"paused", s.stage == situation::Stage::Paused},
                           {"hdssStart", s.hdssStart.value_or(0)},
                           {"hdssNow", s.hdssNow.value_or(0)},
                           {"response", s.response ? token(*s.response) : QString()},
                           {"next", s.nextSession ? text(*s.nextSession) : QString()},
                           {"sessions", sessions},
                           {"windowEnd", s.course ? text(s.course->windowEnd) : QString()},
                           {"fits", !s.course || s.course->fits},
                           {"overrun", s.course ? s.course->overrunDays : 0}};
    }
    return out;
}

QVariantList PlanModel::limits() const
{
    QVariantList out;
    const Record& record = store().record();
    SetOf<Site> kinds;
    for (const auto& use : situation::sitesInUse(record))
        kinds.insert(use.treatedAs);
    const auto sheet = latest<CareSheet>(record);
    for (const Site site : allOf<Site>()) {
        if (!kinds.contains(site))
            continue;
        for (const Waveform waveform : allOf<Waveform>()) {
            const auto a =
                protocol::limitFor(protocol::limitQueryFor(record, site, waveform, store().situation().today));
            out << QVariantMap{{"site", token(site)},
                               {"waveform", token(waveform)},
                               {"allowed", a.allowed},
                               {"limit", a.limit.mA},
                               {"source", words::limitSource(a.binding, sheet ? sheet->who : std::string())}};
        }
    }
    return out;
}

QVariantMap PlanModel::machine() const
{
    const auto m = latest<Machine>(store().record());
    const auto left = store().situation().cellSessionsLeft;
    const Machine shown = m.value_or(Machine{});
    return {{"known", m.has_value()},      {"name", text(shown.name)},         {"direct", shown.direct},
            {"pulsed", shown.pulsed},      {"swap", token(shown.swap)},        {"remote", shown.remote},
            {"power", token(shown.power)}, {"sessionsLeft", left.value_or(-1)}};
}

QVariantMap PlanModel::reminders() const
{
    const auto s = latest<ReminderSettings>(store().record()).value_or(ReminderSettings{});
    return {{"known", store().record().latest<ReminderSettings>() != nullptr},
            {"on", s.on},
            {"checkIn", s.checkIn.minute},
            {"sessions", s.sessions.minute},
            {"quietFrom", s.quietFrom.minute},
            {"quietUntil", s.quietUntil.minute},
            {"backupMonthly", s.backupMonthly}};
}

QVariantMap PlanModel::careSheet() const
{
    const auto s = latest<CareSheet>(store().record());
    if (!s)
        return {{"known", false}};
    return {{"known", true},
            {"who", words::giverName(s->who)},
            {"given", text(s->given)},
            {"directLimit", s->directLimit ? s->directLimit->mA : -1},
            {"pulsedLimit", s->pulsedLimit ? s->pulsedLimit->mA : -1},
            {"review", s->review ? text(*s->review) : QString()},
            {"notes", text(s->notes)},
            {"line", text(exchange::careSheetLine(*s))}};
}

QVariantMap PlanModel::person() const
{
    const auto p = latest<Person>(store().record());
    const Person shown = p.value_or(Person{});
    return {{"known", p.has_value()},
            {"name", text(shown.name)},
            {"birth", shown.birth ? text(*shown.birth) : QString()},
            {"height", shown.height ? shown.height->cm : 0},
            {"weight", shown.weight ? shown.weight->kg : 0},
            {"adult", text(shown.adult)},
            {"age", token(store().situation().age)}};
}

QString PlanModel::screeningDue() const
{
    switch (store().situation().screeningDue) {
    case protocol::ScreeningDue::None: return "none";
    case protocol::ScreeningDue::ShortQuestion: return "short-question";
    case protocol::ScreeningDue::Full: return "full";
    }
    return {};
}

QVariantList PlanModel::screeningRows() const
{
    const Record& record = store().record();
    SetOf<ScreeningRow> yes;
    SetOf<ScreeningRow> asked;
    for (const auto& e : record.all<Screening>())
        for (const ScreeningRow row : allOf<ScreeningRow>())
            if (e.payload.asked.contains(row)) {
                asked.insert(row);
                e.payload.yes.contains(row) ? yes.insert(row) : yes.erase(row);
            }
    QVariantList out;
    for (const auto& rule : protocol::screeningRows()) {
        if (protocol::knownByAge(rule.row))
            continue;
        const char* outcome = rule.outcome == protocol::RowOutcome::Stop       ? "stop"
                              : rule.outcome == protocol::RowOutcome::AskFirst ? "ask-first"
                                                                               : "mention";
        QString cleared;
        for (const auto& e : record.all<Clearance>())
            if (e.payload.row == rule.row)
                cleared = text(e.payload.who);
        out << QVariantMap{{"row", token(rule.row)},
                           {"outcome", outcome},
                           {"asked", asked.contains(rule.row)},
                           {"yes", yes.contains(rule.row)},
                           {"clearedBy", cleared}};
    }
    return out;
}

QString PlanModel::sound() const { return store().preferenceOr("sound", "both"); }

QString PlanModel::voice() const { return store().preferenceOr("voice", "recorded"); }

bool PlanModel::vibration() const { return wantsVibration(store()); }

void PlanModel::setVibration(bool on) { setWantsVibration(store(), on); }

double PlanModel::risk() const
{
    return store().preferenceOr("risk", QString::number(outlook::Settings{}.risk)).toDouble();
}

void PlanModel::setRisk(double chance) { store().setPreference("risk", QString::number(chance)); }

QVariantList PlanModel::away() const
{
    QVariantList out;
    for (const auto& e : store().record().all<Away>())
        if (e.payload.to >= store().situation().today)
            out << QVariantMap{{"id", text(e.id)}, {"from", text(e.payload.from)}, {"to", text(e.payload.to)}};
    return out;
}

bool PlanModel::setPerson(const QString& name, const QString& birth, double heightCm, double weightKg,
                          const QString& adult)
{
    Person p{name.trimmed().toStdString(), dateOf(birth), {}, {}, adult.trimmed().toStdString()};
    if (heightCm > 0)
        p.height = Centimetres{heightCm};
    if (weightKg > 0)
        p.weight = Kilograms{weightKg};
    return store().append(std::move(p)).has_value();
}

bool PlanModel::useSite(const QString& site, bool inUse)
{
    const auto which = valueOf<Site>(site);
    return which && store().append(SiteUse{*which, inUse}).has_value();
}

bool PlanModel::setMachine(const QString& name, bool direct, bool pulsed, const QString& swap, bool remote,
                           const QString& power)
{
    const auto how = valueOf<PolaritySwap>(swap);
    const auto from = valueOf<PowerSource>(power);
    return how && from &&
           store().append(Machine{name.trimmed().toStdString(), direct, pulsed, *how, remote, *from}).has_value();
}

bool PlanModel::cellsChanged()
{
    const auto m = latest<Machine>(store().record());
    return m && store().append(CellsChanged{m->name}).has_value();
}

bool PlanModel::setReminders(bool on, int checkIn, int sessions, int quietFrom, int quietUntil, bool backupMonthly)
{
    return store()
        .append(ReminderSettings{{checkIn}, {sessions}, {quietFrom}, {quietUntil}, on, backupMonthly})
        .has_value();
}

bool PlanModel::setScreening(const QStringList& asked, const QStringList& yes)
{
    return store().append(Screening{true, setOf<ScreeningRow>(asked), setOf<ScreeningRow>(yes)}).has_value();
}

bool PlanModel::startCourse(const QString& site, const QString& plan, const QString& start, const QStringList& free)
{
    const auto which = valueOf<Site>(site);
    const auto what = valueOf<CourseTemplate>(plan);
    const auto when = dateOf(start);
    return which && what && when && store().append(Course{*which, *what, {}, *when, setOf<Weekday>(free)}).has_value();
}

bool PlanModel::moveCourse(const QString& site, int number, const QString& date)
{
    const auto which = valueOf<Site>(site);
    const auto when = dateOf(date);
    return which && when && store().append(CourseMove{*which, number, *when}).has_value();
}

bool PlanModel::addAway(const QString& from, const QString& to)
{
    const auto first = dateOf(from);
    const auto last = dateOf(to);
    return first && last && *first <= *last && store().append(Away{*first, *last}).has_value();
}

bool PlanModel::pause(const QString& site, bool paused)
{
    const auto which = valueOf<Site>(site);
    return which && store().append(Pause{*which, paused}).has_value();
}

bool PlanModel::clearance(const QString& row, const QString& who)
{
    const auto which = valueOf<ScreeningRow>(row);
    return which && !who.trimmed().isEmpty() &&
           store().append(Clearance{*which, who.trimmed().toStdString(), store().now().date, std::nullopt}).has_value();
}

bool PlanModel::addPerson(const QString& name, const QString& birth, const QString& adult)
{
    return store()
        .addPerson({name.trimmed().toStdString(), dateOf(birth), {}, {}, adult.trimmed().toStdString()})
        .has_value();
}

bool PlanModel::isPastDay(const QString& iso) const
{
    const auto day = dateOf(iso);
    return day && *day <= store().now().date;
}

QString PlanModel::ageGroup(const QString& birth) const
{
    return token(protocol::ageGroupOn(dateOf(birth), store().now().date));
}

} // namespace firstdew::viewmodels
