#include "PlanModel.h"

#include "Edge.h"
#include "exchange/CareSheetFile.h"
#include "protocol/Area.h"
#include "protocol/CareSheets.h"
#include "protocol/MayBegin.h"
#include "protocol/Screening.h"
#include "words/BathWords.h"
#include "words/Names.h"
#include "words/Sentences.h"
#include "words/SheetWords.h"

#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

/// What there is to say and to choose of a running course.
void tellCourse(const situation::SiteSituation& s, LocalDate today, ui::SitePlan& plan)
{
    for (const auto& p : s.course->sessions) {
        const bool done = p.state == protocol::CourseState::Done;
        plan.sessions << ui::CourseLine{p.number, p.date.daysSince1970(), done};
        if (!done && plan.nextNumber == 0)
            plan.nextNumber = p.number;
        plan.lastDay = p.date.daysSince1970();
    }
    plan.windowEnd = s.course->windowEnd.daysSince1970();
    plan.fits = s.course->fits;
    plan.overrun = s.course->overrunDays;
    plan.pace = ui::shown(s.pace);
    for (const auto& r : s.reasons) {
        if (r.kind == situation::ReasonKind::CourseSessionMissed)
            plan.missed = words::reasonSentence(r, today);
        if (r.kind == situation::ReasonKind::CourseCrowded && s.crowding) {
            plan.crowded = words::reasonSentence(r, today);
            plan.lastBetween = s.crowding->dayBetween.sessions.back().date.daysSince1970();
        }
    }
}

std::optional<LocalDate> dateOf(const QString& iso) { return LocalDate::parse(iso.toStdString()); }

} // namespace

PlanModel::PlanModel(Store& store) : m_store(store) { connect(&store, &Store::changed, this, &PlanModel::changed); }

QList<ui::SitePlan> PlanModel::sites() const
{
    QList<ui::SitePlan> out;
    for (const auto& s : m_store.situation().sites) {
        ui::SitePlan plan;
        plan.known = true;
        plan.site = ui::shown(s.site);
        plan.treatedAs = ui::shown(s.treatedAs);
        plan.stage = ui::shown(s.stage);
        plan.paused = s.stage == situation::Stage::Paused;
        plan.next = s.nextSession ? s.nextSession->daysSince1970() : 0;
        if (s.course)
            tellCourse(s, m_store.situation().today, plan);
        out << plan;
    }
    return out;
}

ui::SitePlan PlanModel::planOf(ui::Site::Value treatedAs) const
{
    ui::SitePlan out;
    for (const auto& plan : sites()) // of several that one session treats, the one with a course
        if (plan.treatedAs == treatedAs && (!out.known || (out.sessions.isEmpty() && !plan.sessions.isEmpty())))
            out = plan;
    return out;
}

bool PlanModel::uses(ui::Site::Value site) const
{
    const auto& used = m_store.situation().sites;
    return std::any_of(used.begin(), used.end(), [&](const auto& s) { return ui::shown(s.treatedAs) == site; });
}

QList<ui::LimitLine> PlanModel::limits() const
{
    QList<ui::LimitLine> out;
    SetOf<Site> kinds;
    for (const auto& use : m_store.diary().sitesInUse())
        kinds.insert(use.treatedAs);
    for (const Site site : allOf<Site>()) {
        if (!kinds.contains(site))
            continue;
        const CareSheet* sheet = protocol::sheetFor(m_store.diary(), site);
        for (const Waveform waveform : allOf<Waveform>()) {
            const auto query = protocol::limitQueryFor(m_store.diary(), site, waveform);
            const auto a = protocol::limitFor(query);
            const bool last = waveform == Waveform::Pulsed;
            out << ui::LimitLine{ui::shown(site),
                                 ui::shown(waveform),
                                 a.allowed,
                                 a.limit.mA,
                                 words::limitSource(a.binding, sheet ? sheet->who : std::string()),
                                 a.allowed ? words::watchSentence(a.warnAbove) : QString(),
                                 last ? words::areaSentence(query, protocol::areaFrom(m_store.diary(), site))
                                      : QString()};
        }
    }
    return out;
}

ui::MachineKit PlanModel::machine() const
{
    const auto& m = m_store.diary().machine;
    const Machine shown = m.value_or(Machine{});
    return {m.has_value(),
            text(shown.name),
            shown.direct,
            shown.pulsed,
            ui::shown(shown.swap),
            shown.remote,
            ui::shown(shown.power),
            m_store.situation().cellSessionsLeft.value_or(-1),
            shown.pad ? shown.pad->cm2 : 0};
}

ui::ReminderPlan PlanModel::reminders() const
{
    const auto s = m_store.diary().reminderSettings.value_or(ReminderSettings{});
    return {s.on, s.checkIn.minute, s.sessions.minute, s.quietFrom.minute, s.quietUntil.minute, s.backupMonthly};
}

QList<ui::SheetInUse> PlanModel::careSheets() const
{
    QList<ui::SheetInUse> out;
    for (const auto& [sheet, sites] : protocol::sheetsInForce(m_store.diary()))
        out << ui::SheetInUse{words::giverName(sheet.who), words::siteNames(sites), sheet.given.daysSince1970(),
                              words::sheetLines(sheet), text(exchange::careSheetLine(sheet))};
    return out;
}

ui::PersonInUse PlanModel::person() const
{
    const auto& p = m_store.diary().person;
    const Person shown = p.value_or(Person{});
    return {p.has_value(),
            text(shown.name),
            shown.birth ? text(*shown.birth) : QString(),
            shown.height ? shown.height->cm : 0,
            shown.weight ? shown.weight->kg : 0,
            text(shown.adult),
            m_store.situation().age == AgeGroup::Child};
}

ui::ScreeningDue::Value PlanModel::screeningDue() const { return ui::shown(m_store.situation().screeningDue); }

QList<ui::HealthQuestion> PlanModel::questions() const
{
    QList<ui::HealthQuestion> out;
    const auto& diary = m_store.diary();
    const bool child = protocol::isKnownChild(diary);
    for (const auto& a : protocol::answersOf(diary))
        out << ui::HealthQuestion{ui::shown(a.rule.row),
                                  child ? words::screeningQuestionAbout(a.rule.row, diary.person->name)
                                        : words::screeningQuestion(a.rule.row),
                                  ui::shown(a.rule.outcome),
                                  a.asked,
                                  a.yes,
                                  a.since.daysSince1970(),
                                  a.waits,
                                  a.clearance ? text(a.clearance->who) : QString(),
                                  a.clearance ? a.clearance->until.daysSince1970() : 0,
                                  a.blocks()};
    return out;
}

QList<ui::HealthQuestion> PlanModel::blocking() const
{
    QList<ui::HealthQuestion> out = questions();
    out.removeIf([](const ui::HealthQuestion& q) { return !q.blocks; });
    return out;
}

ui::SetUpStep::Value PlanModel::setUpStep() const
{
    if (!m_store.diary().preferences.cautionsRead)
        return ui::SetUpStep::Cautions;
    if (m_store.situation().sites.empty())
        return ui::SetUpStep::Sites;
    if (!m_store.diary().person || !m_store.diary().person->birth)
        return ui::SetUpStep::Person;
    if (!m_store.diary().machine)
        return ui::SetUpStep::Machine;
    return m_store.situation().screeningDue == protocol::ScreeningDue::Full ? ui::SetUpStep::Health
                                                                            : ui::SetUpStep::Hour;
}

void PlanModel::cautionsRead() { m_store.append(diary::cautionsReadPreference(m_store.diary().today)); }

ui::SoundChoice::Value PlanModel::sound() const { return ui::shown(m_store.diary().preferences.cues); }

void PlanModel::setSound(ui::SoundChoice::Value sound)
{
    if (const auto cues = ui::core(sound); cues && *cues != m_store.diary().preferences.cues)
        m_store.append(diary::cuesPreference(*cues));
}

ui::VoiceChoice::Value PlanModel::voice() const { return ui::shown(m_store.diary().preferences.speaker); }

void PlanModel::setVoice(ui::VoiceChoice::Value voice)
{
    if (const auto speaker = ui::core(voice); speaker && *speaker != m_store.diary().preferences.speaker)
        m_store.append(diary::speakerPreference(*speaker));
}

bool PlanModel::pedal() const { return m_store.diary().preferences.pedal; }

void PlanModel::setPedal(bool there)
{
    if (there != pedal())
        m_store.append(diary::pedalPreference(there));
}

bool PlanModel::vibration() const { return m_store.diary().preferences.vibration; }

void PlanModel::setVibration(bool on)
{
    if (on != vibration())
        m_store.append(diary::vibrationPreference(on));
}

double PlanModel::risk() const { return m_store.diary().preferences.risk.value_or(outlook::Settings{}.risk); }

double PlanModel::returnCostAt(double risk) { return outlook::returnCostOf(risk); }

void PlanModel::setRisk(double chance)
{
    if (chance != risk())
        m_store.append(diary::riskPreference(chance));
}

QList<ui::AwayDays> PlanModel::away() const
{
    QList<ui::AwayDays> out;
    for (const auto& e : m_store.diary().away)
        if (e.payload.to >= m_store.situation().today)
            out << ui::AwayDays{text(e.id), e.payload.from.daysSince1970(), e.payload.to.daysSince1970()};
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
    return m_store.append(std::move(p)).has_value();
}

bool PlanModel::useSite(ui::Site::Value site, bool inUse)
{
    const auto which = ui::core(site);
    return which && m_store.append(SiteUse{*which, inUse}).has_value();
}

bool PlanModel::setMachine(const QString& name, bool direct, bool pulsed, ui::PolaritySwap::Value swap, bool remote,
                           ui::PowerSource::Value power, double pad)
{
    const auto how = ui::core(swap);
    const auto from = ui::core(power);
    const auto padArea = pad > 0 ? std::optional(SquareCentimetres{pad}) : std::nullopt;
    return how && from &&
           m_store.append(Machine{name.trimmed().toStdString(), direct, pulsed, *how, remote, *from, padArea})
               .has_value();
}

bool PlanModel::cellsChanged()
{
    const auto& m = m_store.diary().machine;
    return m && m_store.append(CellsChanged{m->name}).has_value();
}

bool PlanModel::setReminders(bool on, int checkIn, int sessions, int quietFrom, int quietUntil, bool backupMonthly)
{
    return m_store.append(ReminderSettings{{checkIn}, {sessions}, {quietFrom}, {quietUntil}, on, backupMonthly})
        .has_value();
}

bool PlanModel::remindAt(int checkIn)
{
    const auto r = reminders();
    return setReminders(true, checkIn, r.sessions, r.quietFrom, r.quietUntil, r.backupMonthly);
}

bool PlanModel::answerQuestions(const QList<ui::ScreeningRow::Value>& yes)
{
    Screening answers{true, {}, ui::coreSet(yes)};
    for (const auto& rule : protocol::screeningRows())
        if (!protocol::knownByAge(rule.row))
            answers.asked.insert(rule.row);
    return m_store.append(std::move(answers)).has_value();
}

bool PlanModel::startCourse(ui::Site::Value site, ui::CourseTemplate::Value plan, int day,
                            const QList<ui::Weekday::Value>& free)
{
    const auto which = ui::core(site);
    const auto what = ui::core(plan);
    return which && what && m_store.append(Course{*which, *what, {}, LocalDate(day), ui::coreSet(free)}).has_value();
}

bool PlanModel::moveCourse(ui::Site::Value site, int number, int day)
{
    const auto which = ui::core(site);
    return which && m_store.append(CourseMove{*which, number, LocalDate(day)}).has_value();
}

bool PlanModel::setPace(ui::Site::Value site, ui::Pace::Value pace)
{
    const auto which = ui::core(site);
    const auto how = ui::core(pace);
    return which && how && m_store.append(CoursePace{*which, *how}).has_value();
}

bool PlanModel::addAway(int from, int to)
{
    return from <= to && m_store.append(Away{LocalDate(from), LocalDate(to)}).has_value();
}

bool PlanModel::pause(ui::Site::Value site, bool paused)
{
    const auto which = ui::core(site);
    return which && m_store.append(Pause{*which, paused}).has_value();
}

bool PlanModel::clearance(ui::ScreeningRow::Value row, const QString& who, int day)
{
    const auto which = ui::core(row);
    return which && !who.trimmed().isEmpty() &&
           m_store.append(Clearance{*which, who.trimmed().toStdString(), LocalDate(day), std::nullopt}).has_value();
}

bool PlanModel::addPerson(const QString& name, const QString& birth, const QString& adult)
{
    return m_store.addPerson({name.trimmed().toStdString(), dateOf(birth), {}, {}, adult.trimmed().toStdString()})
        .has_value();
}

bool PlanModel::isPastDay(const QString& typed) const
{
    const auto day = dateOf(typed);
    return day && *day <= m_store.now().date;
}

double PlanModel::shortest() { return protocol::kShortest.cm; }
double PlanModel::tallest() { return protocol::kTallest.cm; }
double PlanModel::lightest() { return protocol::kLightest.kg; }
double PlanModel::heaviest() { return protocol::kHeaviest.kg; }

bool PlanModel::isChild(const QString& birth) const
{
    return protocol::ageGroupOn(dateOf(birth), m_store.now().date) == AgeGroup::Child;
}

} // namespace firstdew::viewmodels
