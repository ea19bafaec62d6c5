#include "summary/Contents.h"

#include "protocol/Screening.h"
#include "protocol/Skin.h"
#include "protocol/Sweat.h"
#include "protocol/TeachBack.h"

#include <algorithm>

namespace firstdew::summary {

namespace {

void countSessions(const Diary& diary, LocalDate from, SiteContents& site)
{
    double charge = 0;
    int charged = 0;
    for (const auto& e : diary.sessions) {
        if (!treats(e.payload.site).contains(site.site) || e.happened.date < from)
            continue;
        ++(e.payload.completed ? site.sessionsDone : site.sessionsInterrupted);
        if (e.payload.charge) {
            charge += e.payload.charge->mAmin;
            ++charged;
        }
    }
    if (charged > 0)
        site.meanCharge = MilliampMinutes{charge / charged};
    for (const LocalDate d : diary.at(site.site).sessionDays)
        if (d >= from)
            site.sessions.push_back(d);
}

SiteContents siteFor(const Diary& diary, LocalDate from, const situation::SiteSituation& s)
{
    SiteContents site;
    site.site = s.site;
    site.situation = s;
    site.working = situation::workingAt(diary, s);
    site.score = outlook::scoreOf(diary, s.site);
    site.levels = highestLevels(diary, s.site, from);
    site.scores = scoresFrom(diary, s.site, from);
    site.weeks = situation::dampWeeks(diary.at(s.site), from, diary.today);
    if (s.course) {
        site.courseStart = diary.at(s.site).course()->course.start;
        site.sessionsPlanned = static_cast<int>(s.course->sessions.size());
        site.courseDone =
            static_cast<int>(std::count_if(s.course->sessions.begin(), s.course->sessions.end(),
                                           [](const auto& one) { return one.state == protocol::CourseState::Done; }));
        site.courseMoved = static_cast<int>(std::ranges::count_if(s.course->sessions, [](const auto& one) {
            return one.state == protocol::CourseState::Done && one.shift != 0;
        }));
    }
    for (const auto& report : diary.at(s.site).reports) {
        if (report.date < from)
            continue;
        ++site.checkIns;
        ++site.byLevel[report.level];
        site.line.emplace_back(report.date, report.level);
        for (const auto c : allOf<Circumstance>())
            site.stirred[c] += report.with.contains(c) ? 1 : 0;
    }
    for (const auto& e : diary.weighings)
        if (e.payload.site == s.site && e.happened.date >= from)
            site.weighings.emplace_back(e.happened.date, protocol::mgPerMinute(e.payload));
    countSessions(diary, from, site);
    return site;
}

} // namespace

namespace {

/// What was found of the skin in the period, on whatever page it was noted, and each older harm that still bars a site.
std::vector<Entry<SideEffect>> skinIn(const Diary& diary, LocalDate from)
{
    std::vector<Entry<SideEffect>> all = diary.skin;
    for (const auto& e : diary.sessions)
        for (const DiarySite site : allOf<DiarySite>()) {
            auto skin = e.payload.skin;
            skin.erase(SkinFinding::Fine);
            if (treats(e.payload.site).contains(site) && !skin.empty())
                all.push_back({e.id, e.happened, e.recordedMs, e.position, e.corrected, {site, skin, {}}});
        }
    std::ranges::stable_sort(all, {}, [](const auto& e) { return e.happened; });
    std::erase_if(all, [&](const auto& e) {
        const auto bar = protocol::skinBar(diary, e.payload.site);
        const bool bars = bar && bar->since == e.happened.date && protocol::harms(e.payload.skin);
        return e.happened.date > diary.today || (e.happened.date < from && !bars);
    });
    return all;
}

} // namespace

Contents contentsFor(const Diary& diary, LocalDate from)
{
    Contents out;
    out.from = from;
    out.to = diary.today;
    if (diary.person) {
        out.name = diary.person->name;
        if (diary.person->birth)
            out.years = ageInYears(*diary.person->birth, diary.today);
    }
    out.machine = diary.machine;
    out.careSheets = protocol::sheetsInForce(diary);
    const auto situation = situation::assess(diary);
    out.cellSessionsLeft = situation.cellSessionsLeft;
    out.age = situation.age;
    out.verdict = verdictOf(diary, situation);
    out.asks = asksOf(diary, situation, from);
    out.overLimit = overLimitFrom(diary, from);
    out.limits = limitsInForce(diary);
    for (const auto& s : situation.sites)
        out.sites.push_back(siteFor(diary, from, s));
    const auto ofPeriod = [&](const auto& e) { return e.happened.date >= from && e.happened.date <= diary.today; };
    std::ranges::copy_if(diary.sessions, std::back_inserter(out.sessions), ofPeriod);
    out.sideEffects = skinIn(diary, from);
    std::ranges::copy_if(diary.otherTreatments, std::back_inserter(out.otherTreatments), [&](const auto& e) {
        return e.payload.from <= diary.today && (!e.payload.until || *e.payload.until >= from);
    });
    out.taught = protocol::taughtSessions(diary);
    out.clearances = diary.clearances;
    for (const auto& rule : protocol::screeningRows()) {
        out.screened = out.screened || diary.answerSoFar(rule.row);
        if (protocol::yesSince(diary, rule.row))
            out.screeningYes.push_back(rule.row);
    }
    for (const auto& e : diary.questions)
        if (ofPeriod(e))
            out.questions.push_back(e.payload.text);
    return out;
}

} // namespace firstdew::summary
