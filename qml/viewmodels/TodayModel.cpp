#include "TodayModel.h"

#include "Edge.h"
#include "Tokens.h"
#include "protocol/Drawings.h"
#include "protocol/Response.h"
#include "protocol/Screening.h"
#include "situation/DaysAhead.h"
#include "words/Names.h"
#include "words/Sentences.h"
#include "words/Technique.h"

#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;
using situation::Advice;
using situation::ReasonKind;

namespace {

constexpr int kDaysBehind = 7;

int dayNumber(const std::optional<LocalDate>& day) { return day ? day->daysSince1970() : 0; }

} // namespace

TodayModel::TodayModel(Store& store) : m_store(store) { connect(&store, &Store::changed, this, &TodayModel::changed); }

bool TodayModel::unready() const
{
    return !m_store.situation().sites.empty() &&
           (!m_store.diary().machine || !m_store.diary().person || !m_store.diary().person->birth ||
            !protocol::everyRowAnswered(m_store.diary()));
}

ui::SiteToday TodayModel::tell(const situation::SiteSituation& s) const
{
    const LocalDate today = m_store.situation().today;
    ui::SiteToday out;
    out.known = true;
    out.site = ui::shown(s.site);
    out.treatedAs = ui::shown(s.treatedAs);
    out.stage = ui::shown(s.stage);
    out.advice = ui::shown(s.advice);
    out.calls = situation::callsForTopUp(s.advice);
    out.title = words::headline(s);
    if (const auto* line = m_store.diary().checkInOn(s.site, today)) {
        out.checkedIn = true;
        out.level = ui::shown(line->payload.level);
        out.with = ui::shown(line->payload.with);
    }
    for (const auto& r : s.reasons) {
        out.reasons << words::reasonSentence(r, today);
        if ((r.kind == ReasonKind::PutOff || r.kind == ReasonKind::AwayNow) && out.putOff.isEmpty())
            out.putOff = out.reasons.constLast();
        out.thisEvening = out.thisEvening || (r.kind == ReasonKind::PutOff && r.date == today);
    }
    if (!s.reasons.empty() && s.reasons.front().kind != ReasonKind::PutOff &&
        s.reasons.front().kind != ReasonKind::AwayNow)
        out.why = out.reasons.constFirst();
    out.next = dayNumber(s.nextSession);
    out.spells = s.forecast.learned;
    out.censored = s.forecast.censored;
    out.returnCost = s.forecast.returnCost;
    out.due = dayNumber(s.callDay());
    out.scoreNeeded = std::ranges::any_of(s.reasons, [](const auto& r) { return r.kind == ReasonKind::ScoreNeeded; });
    if (!s.atNoResponse.empty())
        out.atNoResponse = words::asWritten(s.atNoResponse);
    out.otherwise = s.forecast.otherwise;
    out.homeTomorrow = !m_store.diary().awayAround(today + 1);
    return out;
}

QList<ui::SiteToday> TodayModel::sites() const
{
    QList<ui::SiteToday> out;
    for (const auto& s : m_store.situation().sites)
        out << tell(s);
    return out;
}

ui::SiteToday TodayModel::matter() const
{
    const auto& situation = m_store.situation();
    return situation.first ? tell(situation.sites[*situation.first]) : ui::SiteToday{};
}

ui::SiteToday TodayModel::of(ui::DiarySite::Value site) const
{
    for (const auto& s : m_store.situation().sites)
        if (ui::shown(s.site) == site)
            return tell(s);
    return {};
}

QList<ui::SiteAhead> TodayModel::ahead() const
{
    const auto& situation = m_store.situation();
    QList<ui::SiteAhead> out;
    for (const auto& s : situation.sites) {
        ui::SiteAhead line;
        line.site = ui::shown(s.site);
        for (const auto& day : situation::daysAhead(m_store.diary(), s)) {
            line.chances << day.begun.value_or(-1);
            line.sessions << day.session;
            if (day.session && line.next == 0)
                line.next = day.date.daysSince1970();
        }
        line.known = line.chances.constFirst() >= 0;
        out << line;
    }
    return out;
}

int TodayModel::daysAhead() const { return situation::kDaysAhead; }

QList<ui::DayBehind> TodayModel::lately() const
{
    QList<ui::DayBehind> out;
    for (int i = kDaysBehind; i >= 1; --i) {
        const LocalDate day = m_store.situation().today - i;
        ui::DayBehind behind;
        behind.day = day.daysSince1970();
        for (const auto& s : m_store.situation().sites) {
            ui::SiteLevel line;
            line.site = ui::shown(s.site);
            if (const auto* noted = m_store.diary().checkInOn(s.site, day)) {
                line.noted = true;
                line.level = ui::shown(noted->payload.level);
            }
            behind.gap = behind.gap || !line.noted;
            behind.sites << line;
        }
        out << behind;
    }
    return out;
}

bool TodayModel::checkIn(ui::DiarySite::Value site, ui::Level::Value level, int day)
{
    const auto where = ui::core(site);
    const auto how = ui::core(level);
    if (!where || !how)
        return false;
    const LocalDate date(day);
    const bool isToday = date == m_store.now().date;
    const auto* present =
        isToday ? m_store.diary().checkInCorrectedAt(*where, m_store.now()) : m_store.diary().checkInOn(*where, date);
    const LocalTime happened = present != nullptr ? present->happened
                               : isToday          ? m_store.now()
                                                  : LocalTime{date, {12 * 60}};
    const CheckIn line{*where, *how, present == nullptr ? SetOf<Circumstance>{} : present->payload.with};
    const bool correction = present != nullptr;
    const auto id = m_store.append(line, happened, correction ? present->id : std::string());
    if (!id)
        return false;
    m_lastCheckIn = *id;
    m_lastWasCorrection = correction;
    emit changed();
    emit checkedIn();
    return true;
}

bool TodayModel::setCircumstances(ui::DiarySite::Value site, const QList<ui::Circumstance::Value>& with, int day)
{
    const auto where = ui::core(site);
    const auto* present = where ? m_store.diary().checkInOn(*where, LocalDate(day)) : nullptr;
    return present != nullptr &&
           m_store.append(CheckIn{*where, present->payload.level, ui::coreSet(with)}, present->happened, present->id)
               .has_value();
}

void TodayModel::undo()
{
    if (m_lastCheckIn.empty())
        return;
    const std::string id = std::exchange(m_lastCheckIn, {});
    const auto& all = m_store.allFacts();
    const auto fact = std::find_if(all.begin(), all.end(), [&](const Fact& f) { return f.id == id; });
    if (fact == all.end())
        return;
    if (!m_lastWasCorrection) {
        m_store.retract(id, "undo");
        return;
    }
    const auto before = std::find_if(all.begin(), all.end(), [&](const Fact& f) { return f.id == fact->corrects; });
    if (before != all.end())
        m_store.append(before->payload, before->happened, id);
}

bool TodayModel::answer(ui::DiarySite::Value site, ui::CallAnswer::Value answer)
{
    const auto where = ui::core(site);
    const auto what = ui::core(answer);
    return where && what && m_store.append(CallAnswered{*where, *what, {}}).has_value();
}

bool TodayModel::notThisTime(ui::DiarySite::Value site, ui::NotNow::Value why)
{
    const auto where = ui::core(site);
    return where &&
           m_store.append(CallAnswered{*where, CallAnswer::NotThisTime, tokenOf(kNotNowTokens, why)}).has_value();
}

bool TodayModel::goOn(ui::Site::Value treatedAs)
{
    const auto site = ui::core(treatedAs);
    if (!site)
        return false;
    for (const auto& s : m_store.situation().sites)
        for (const auto& r : s.reasons)
            if (s.treatedAs == *site && r.kind == ReasonKind::NotBetterYet)
                return m_store
                    .append(protocol::furtherCourse(m_store.diary().at(s.site).course()->course, r.count,
                                                    m_store.situation().today))
                    .has_value();
    return false;
}

QList<ui::TechniqueLine> TodayModel::technique(ui::Site::Value treatedAs) const
{
    QList<ui::TechniqueLine> out;
    const auto site = ui::core(treatedAs);
    if (!site)
        return out;
    const Machine machine = m_store.diary().machine.value_or(Machine{});
    for (const auto check : protocol::techniqueChecks(*site, machine))
        out << ui::TechniqueLine{words::techniqueText(check, *site),
                                 ui::shown(protocol::drawingsOf(check, *site, machine.swap))};
    return out;
}

bool TodayModel::reviewDone(ui::Site::Value treatedAs, bool keepGoing)
{
    const auto site = ui::core(treatedAs);
    return site && m_store.append(ReviewDone{*site, keepGoing}).has_value();
}

} // namespace firstdew::viewmodels
