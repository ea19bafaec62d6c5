#include "TodayModel.h"

#include "protocol/Screening.h"
#include "situation/Sites.h"
#include "words/Sentences.h"

#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

constexpr int kStripDays = 14;
constexpr int kLatelyDays = 7;

QVariantMap reasonMap(const situation::Reason& r, LocalDate today)
{
    return {{"kind", token(r.kind)},
            {"date", r.date ? text(*r.date) : QString()},
            {"text", words::reasonSentence(r, today)}};
}

/// The check-in that counts for a site on a day: the latest recorded one.
const Entry<CheckIn>* checkInOn(const Record& record, DiarySite site, LocalDate day)
{
    const Entry<CheckIn>* out = nullptr;
    for (const auto& e : record.all<CheckIn>())
        if (e.payload.site == site && e.happened.date == day)
            out = &e;
    return out;
}

double chanceOn(const outlook::Forecast& forecast, LocalDate day)
{
    if (!forecast.lastSession)
        return -1;
    for (const auto& d : forecast.days)
        if (d.date == day)
            return d.begun;
    return -1;
}

bool plannedOn(const situation::SiteSituation& s, LocalDate day)
{
    if (s.course && s.stage == situation::Stage::FirstCourse)
        return std::any_of(s.course->sessions.begin(), s.course->sessions.end(),
                           [&](const auto& p) { return p.state == protocol::CourseState::Planned && p.date == day; });
    return s.nextSession == day;
}

} // namespace

TodayModel::TodayModel(QObject* parent) : QObject(parent)
{
    connect(Store::instance(), &Store::changed, this, &TodayModel::changed);
}

bool TodayModel::unready() const
{
    const Store& store = *Store::instance();
    return !store.situation().sites.empty() &&
           (store.record().latest<Machine>() == nullptr || !protocol::everyRowAnswered(store.record()));
}

QVariantList TodayModel::sites() const
{
    const Store& store = *Store::instance();
    QVariantList out;
    for (const auto& s : store.situation().sites) {
        QVariantList reasons;
        for (const auto& r : s.reasons)
            reasons << reasonMap(r, store.situation().today);
        const auto* line = checkInOn(store.record(), s.site, store.situation().today);
        out << QVariantMap{{"site", token(s.site)},
                           {"treatedAs", token(s.treatedAs)},
                           {"stage", token(s.stage)},
                           {"advice", token(s.advice)},
                           {"title", words::headline(s.advice, s.treatedAs)},
                           {"checkedIn", line != nullptr},
                           {"level", line == nullptr ? QString() : token(line->payload.level)},
                           {"with", line == nullptr ? QStringList() : tokens(line->payload.with)},
                           {"reasons", reasons},
                           {"next", s.nextSession ? text(*s.nextSession) : QString()},
                           {"lastSession", s.lastSession ? text(*s.lastSession) : QString()},
                           {"spells", static_cast<int>(s.forecast.spells.size())},
                           {"censored", s.forecast.censored},
                           {"usualFrom", s.forecast.usualFrom},
                           {"usualTo", s.forecast.usualTo},
                           {"risk", s.forecast.risk},
                           {"due", s.forecast.due ? text(*s.forecast.due) : QString()}};
    }
    return out;
}

int TodayModel::first() const
{
    const auto first = Store::instance()->situation().first;
    return first ? static_cast<int>(*first) : -1;
}

QVariantList TodayModel::strip() const
{
    const auto& situation = Store::instance()->situation();
    QVariantList out;
    for (int i = 0; i < kStripDays; ++i) {
        const LocalDate day = situation.today + i;
        QVariantList sites;
        for (const auto& s : situation.sites)
            sites << QVariantMap{
                {"site", token(s.site)}, {"chance", chanceOn(s.forecast, day)}, {"bath", plannedOn(s, day)}};
        out << QVariantMap{{"date", text(day)}, {"sites", sites}};
    }
    return out;
}

QVariantList TodayModel::lately() const
{
    const Store& store = *Store::instance();
    QVariantList out;
    for (int i = kLatelyDays; i >= 1; --i) {
        const LocalDate day = store.situation().today - i;
        QVariantList sites;
        for (const auto& s : store.situation().sites) {
            const auto* line = checkInOn(store.record(), s.site, day);
            sites << QVariantMap{{"site", token(s.site)},
                                 {"level", line == nullptr ? QString() : token(line->payload.level)}};
        }
        out << QVariantMap{{"date", text(day)}, {"sites", sites}};
    }
    return out;
}

bool TodayModel::checkIn(const QString& site, const QString& level, const QString& date)
{
    Store& store = *Store::instance();
    const auto where = valueOf<DiarySite>(site);
    const auto how = valueOf<Level>(level);
    const auto day = date.isEmpty() ? std::optional(store.now().date) : LocalDate::parse(date.toStdString());
    if (!where || !how || !day)
        return false;
    const auto* present = checkInOn(store.record(), *where, *day);
    const bool isToday = *day == store.now().date;
    const LocalTime happened = present != nullptr ? present->happened
                               : isToday          ? store.now()
                                                  : LocalTime{*day, {12 * 60}};
    const CheckIn line{*where, *how, present == nullptr ? SetOf<Circumstance>{} : present->payload.with};
    const bool correction = present != nullptr;
    const auto id = store.append(line, happened, correction ? present->id : std::string());
    if (!id)
        return false;
    m_lastCheckIn = *id;
    m_lastWasCorrection = correction;
    emit changed();
    return true;
}

bool TodayModel::setCircumstances(const QString& site, const QStringList& with, const QString& date)
{
    Store& store = *Store::instance();
    const auto where = valueOf<DiarySite>(site);
    const auto day = date.isEmpty() ? std::optional(store.now().date) : LocalDate::parse(date.toStdString());
    if (!where || !day)
        return false;
    const auto* present = checkInOn(store.record(), *where, *day);
    if (present == nullptr)
        return false;
    return store
        .append(CheckIn{*where, present->payload.level, setOf<Circumstance>(with)}, present->happened, present->id)
        .has_value();
}

void TodayModel::undo()
{
    if (m_lastCheckIn.empty())
        return;
    const std::string id = std::exchange(m_lastCheckIn, {});
    Store& store = *Store::instance();
    const auto fact =
        std::find_if(store.allFacts().begin(), store.allFacts().end(), [&](const Fact& f) { return f.id == id; });
    if (fact == store.allFacts().end())
        return;
    if (!m_lastWasCorrection) {
        store.retract(id, "undo");
        return;
    }
    const auto before = std::find_if(store.allFacts().begin(), store.allFacts().end(),
                                     [&](const Fact& f) { return f.id == fact->corrects; });
    if (before != store.allFacts().end())
        store.append(before->payload, before->happened, id);
}

bool TodayModel::answer(const QString& site, const QString& answer, const QString& reason)
{
    const auto where = valueOf<DiarySite>(site);
    const auto what = valueOf<CallAnswer>(answer);
    return where && what && Store::instance()->append(CallAnswered{*where, *what, reason.toStdString()}).has_value();
}

bool TodayModel::reviewDone(const QString& treatedAs, bool keepGoing)
{
    const auto site = valueOf<Site>(treatedAs);
    return site && Store::instance()->append(ReviewDone{*site, keepGoing}).has_value();
}

} // namespace firstdew::viewmodels
