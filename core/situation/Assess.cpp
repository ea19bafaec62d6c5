#include "situation/Assess.h"

#include "bath/Engine.h"
#include "outlook/UsualDays.h"
#include "protocol/Kit.h"
#include "protocol/MayBegin.h"
#include "protocol/Skin.h"
#include "situation/CourseStage.h"
#include "situation/Leave.h"

#include <algorithm>
#include <cmath>

namespace firstdew::situation {

namespace {

using outlook::kSettlingDays;

constexpr double kSweatingLikely = 0.5; // chance from which one wet report restarts the course: our own choice

/// How long the person usually stays dry, unless it is told that dry spells have become shorter: the two would
/// contradict each other.
void tellUsualSpell(const View& v, SiteSituation& s)
{
    if (outlook::shorterToTell(s.forecast))
        return;
    Reason r = because(ReasonKind::DrySpellUsual);
    const auto usual = outlook::usualDays(s.forecast);
    r.from = usual.from;
    r.to = usual.to;
    r.number = v.today - v.treated.back();
    s.reasons.push_back(r);
}

/// Whether the report before the last one, at most two days earlier, shows at least `level` as the last one does.
bool twiceAtLeast(const View& v, Level level)
{
    const auto& reports = v.sinceSession;
    return reports.size() >= 2 && reports[reports.size() - 2].level >= level &&
           reports.back().date - reports[reports.size() - 2].date <= 2;
}

/// Decides by the latest reports since the last session.
void readReports(const View& v, SiteSituation& s)
{
    if (v.sinceSession.empty())
        return;
    const DayReport& last = v.sinceSession.back();
    const bool atRest = last.with.empty();
    if (last.level == Level::Dry)
        return;
    const int age = v.treated.empty() ? 0 : last.date - v.treated.back();
    const bool twice = twiceAtLeast(v, Level::Clammy);
    // On the day after a session the skin settles, and one report of dampness calls for nothing that day (our own
    // choice). But skin that was damp may need a second session: one or two are usually enough (common practice, no
    // source).
    const bool onDamp = !s.forecast.spells.empty() && s.forecast.spells.back().onDamp;
    const bool mayNeedSecond = onDamp && atRest;
    const bool settling = !v.treated.empty() && v.today - v.treated.back() <= kSettlingDays && !mayNeedSecond;
    const bool wet = last.level >= Level::Wet && atRest && !settling;
    if (wet && (twiceAtLeast(v, Level::Wet) || s.forecast.today.sweating >= kSweatingLikely)) {
        s.stage = Stage::SweatingAgain;
        s.advice = Advice::RestartCourse;
        s.nextSession = v.today;
        s.reasons.push_back(because(ReasonKind::WetAtRest, last.date));
        return;
    }
    const bool old = v.treated.empty() || age >= s.forecast.soonest;
    // In a younger spell the cost decides, but not on the day after a session, when the skin settles.
    const bool likely = !settling && s.forecast.firstDew;
    // In a comparison every spell ends in the same way: at the first dampness at rest once the skin has settled.
    const bool ends = s.compares() && (mayNeedSecond || age > kSettlingDays);
    if (!settling && (twice || wet || (atRest && (old || likely || ends)))) {
        s.stage = Stage::FirstDew;
        s.advice = Advice::FirstDewTopUp;
        s.nextSession = v.today;
        const auto once = wet ? ReasonKind::WetOnce : ReasonKind::ClammyAtRest;
        s.reasons.push_back(because(twice ? ReasonKind::ClammyTwice : once, last.date));
        if (!twice && !old && !ends && s.forecast.today.dry < 0.5) {
            s.reasons.push_back(because(ReasonKind::ReturnLikely));
            s.reasons.back().probability = 1 - s.forecast.today.dry;
        }
        return;
    }
    // A finding at rest holds until a dry report or a session. Weaker evidence counts for one more day.
    if (v.today - last.date > 1)
        return;
    s.advice = Advice::Watch;
    const auto atRestKind = last.level >= Level::Wet ? ReasonKind::WetAtRest : ReasonKind::ClammyAtRest;
    s.reasons.push_back(because(atRest ? atRestKind : ReasonKind::ClammyStirred, last.date));
}

/// Calls for a top-up by the forecast if the reports do not. A weak report, on which the app watches, neither brings
/// that call nor takes it back.
void callByForecast(const View& v, SiteSituation& s)
{
    const auto due = s.callDay();
    if (!due || *due > v.today)
        return;
    const bool regardless = v.today - *s.forecast.lastSession >= s.forecast.bestAge ||
                            (!v.sinceSession.empty() && *due <= v.sinceSession.back().date);
    if (s.advice != Advice::None && (s.advice != Advice::Watch || !regardless))
        return;
    s.advice = Advice::TopUpDue;
    Reason r = because(ReasonKind::DueByForecast, *due);
    r.probability = s.forecast.dampTomorrow;
    s.reasons.insert(s.reasons.begin(), r);
}

/// Offers a top-up before days away, if the forecast would call for one during them.
void offerBeforeLeaving(const View& v, SiteSituation& s)
{
    if (s.advice != Advice::None || !s.forecast.due)
        return;
    const auto leave = leaveAround(v.diary, *s.forecast.lastSession, *s.forecast.due);
    if (!leave || v.today < leave->offered)
        return;
    s.advice = Advice::TopUpDue;
    Reason r = because(ReasonKind::BeforeLeaving, leave->from);
    r.days = leave->to - leave->from + 1;
    s.reasons.insert(s.reasons.begin(), r);
}

/// Says that a comparison keeps the forecast from calling. It rests where a new course is called for.
void tellComparison(const View& v, SiteSituation& s)
{
    if (!s.compares())
        return;
    if (s.advice == Advice::RestartCourse) {
        s.comparison->rests = ComparisonRest::Sweating;
        return;
    }
    Reason r = because(ReasonKind::Comparing);
    r.number = s.comparison->pair();
    r.count = outlook::kPairs;
    const bool decides = s.advice == Advice::None && (v.treated.empty() || v.treated.back() != v.today);
    s.reasons.insert(decides ? s.reasons.begin() : s.reasons.end(), r);
}

void dryStage(const View& v, SiteSituation& s)
{
    s.stage = Stage::KeepingDry;
    s.advice = Advice::None;
    if (const auto due = s.callDay())
        s.nextSession = aroundDaysAway(v.diary, *s.forecast.lastSession, *due);
    if (!v.treated.empty() && v.treated.back() == v.today) {
        // A stopped one counts beside completed ones alone, so that there are some.
        const bool completed = v.sessions.back() == v.today;
        s.reasons.push_back(because(completed ? ReasonKind::SessionDoneToday : ReasonKind::StoppedCounts));
        tellUsualSpell(v, s);
        return;
    }
    readReports(v, s);
    callByForecast(v, s);
    offerBeforeLeaving(v, s);
    if (s.forecast.lastSession)
        tellUsualSpell(v, s);
}

/// Applies the person's answer to the present call. A newer report overrides the answer "not this time".
void applyAnswer(const View& v, SiteSituation& s)
{
    if (!callsForTopUp(s.advice))
        return;
    const Entry<CallAnswered>* answer = nullptr;
    for (const auto& e : v.diary.callAnswers)
        if (e.payload.site == v.use.site && (v.treated.empty() || e.happened.date > v.treated.back()))
            answer = &e;
    if (answer == nullptr)
        return;
    const LocalDate day = answer->happened.date;
    const bool newerReport = !v.sinceSession.empty() && v.sinceSession.back().date > day;
    switch (answer->payload.answer) {
    case CallAnswer::StartNow: return;
    case CallAnswer::ThisEvening:
        if (day == v.today)
            s.reasons.push_back(because(ReasonKind::PutOff, day));
        return;
    case CallAnswer::Tomorrow:
        if (day == v.today) {
            s.reasons.push_back(because(ReasonKind::PutOff, day + 1));
            s.nextSession = day + 1;
            s.advice = Advice::Watch;
        }
        return;
    case CallAnswer::NotThisTime:
        if (!newerReport) {
            s.reasons.push_back(because(ReasonKind::PutOff));
            s.advice = Advice::Watch;
        }
        return;
    }
}

/// On a day away no call for a top-up is made: the machine is usually at home, and whoever has it along can still begin
/// a session (our own choice, the cautious one: nobody is pressed to treat in a strange place). First dew is told all
/// the same, and the call comes on the first day back.
void holdWhileAway(const View& v, SiteSituation& s)
{
    const auto away = v.diary.awayAround(v.today);
    if (!callsForTopUp(s.advice) || !away)
        return;
    s.heldByAway = true;
    if (s.advice == Advice::TopUpDue) // the reason of a call that is not made
        std::erase_if(s.reasons, [](const Reason& r) { return r.kind == ReasonKind::DueByForecast; });
    s.advice = Advice::Watch;
    s.nextSession = away->second + 1;
    s.reasons.push_back(because(ReasonKind::AwayNow, away->second));
}

ReasonKind reasonFor(protocol::WaveformBar bar)
{
    switch (bar) {
    case protocol::WaveformBar::ArmpitsNeedPulsed: return ReasonKind::MachineUnsuited;
    case protocol::WaveformBar::PrescribedLacks: return ReasonKind::PrescribedLacks;
    case protocol::WaveformBar::MachineHasNone: return ReasonKind::MachineHasNone;
    }
    return ReasonKind::MachineUnsuited;
}

/// Every reason, apart from the skin, that prevents a session at the site today.
std::vector<Reason> barsOf(const View& v)
{
    std::vector<Reason> out;
    const auto verdict = protocol::screen(v.diary, v.use.treatedAs);
    if (verdict.outcome != protocol::ScreeningOutcome::Go)
        for (const ScreeningRow row : verdict.deciding) {
            const bool stops = verdict.outcome == protocol::ScreeningOutcome::Stop;
            out.push_back(because(stops ? ReasonKind::ScreeningStops : ReasonKind::ScreeningAsks));
            out.back().row = row;
        }
    if (!v.diary.person || !v.diary.person->birth)
        out.push_back(because(ReasonKind::BirthDateMissing));
    if (const auto bar = protocol::waveformBar(v.diary, v.use.treatedAs))
        out.push_back(because(reasonFor(*bar)));
    return out;
}

/// Takes the call back where the skin had enough for one day: it stands again tomorrow. What says that dampness is to
/// be treated now is not named beside that.
void spare(const View& v, SiteSituation& s)
{
    if ((s.advice != Advice::Watch && !callsForSession(s.advice)) || !bath::enoughToday(v.diary, v.use.treatedAs))
        return;
    std::erase_if(s.reasons, [](const Reason& r) {
        return r.kind == ReasonKind::ClammyAtRest || r.kind == ReasonKind::ClammyTwice || r.kind == ReasonKind::WetOnce;
    });
    s.advice = Advice::None;
    s.nextSession = v.today + 1;
    s.reasons.insert(s.reasons.begin(), because(ReasonKind::EnoughToday));
}

/// Blocks any advice to treat if the skin, the screening or the machine forbids a session.
void guard(const View& v, SiteSituation& s)
{
    std::vector<Reason> reasons;
    const auto skin = protocol::skinBar(v.diary, v.use.treatedAs);
    if (skin) {
        reasons.push_back(because(ReasonKind::SkinBars, skin->since));
        reasons.back().finding = skin->finding;
        s.nextSession.reset();
    }
    if (callsForSession(s.advice) || s.stage == Stage::NotStarted) {
        const auto bars = barsOf(v);
        reasons.insert(reasons.end(), bars.begin(), bars.end());
    }
    if (reasons.empty())
        return;
    s.advice = Advice::Blocked;
    s.reasons.insert(s.reasons.begin(), reasons.begin(), reasons.end());
}

SiteSituation assessSite(const Diary& diary, const diary::SiteInUse& use, const outlook::Settings& settings)
{
    View v = viewOf(diary, use);
    const LocalDate today = diary.today;
    SiteSituation s;
    s.site = use.site;
    s.treatedAs = use.treatedAs;
    s.comparison = comparisonAt(diary, use);
    s.forecast = outlook::forecastFor(diary, use.site, settings);
    if (!s.forecast.spells.empty() && s.forecast.spells.back().evening)
        v.sinceSession.insert(v.sinceSession.begin(), *s.forecast.spells.back().evening);
    if (!v.sessions.empty())
        s.lastSession = v.sessions.back();
    const auto& reports = diary.at(use.site).reports;
    s.checkedInToday = !reports.empty() && reports.back().date == today;
    if (v.course != nullptr)
        planCourseOf(v, s);
    const auto scored = judgeResponse(v, s);

    if (use.paused) {
        s.stage = Stage::Paused;
        s.reasons.push_back(because(ReasonKind::PausedByPerson));
        return s;
    }
    if (v.course != nullptr && !v.course->firstReview)
        courseStage(v, s, scored);
    else if (v.course != nullptr && !v.course->keepGoing) {
        s.stage = Stage::Review;
        s.advice = Advice::AskPrescriber;
        s.reasons.push_back(because(ReasonKind::NoResponse));
    } else if (v.course == nullptr && v.sessions.empty()) {
        s.stage = Stage::NotStarted;
        s.reasons.push_back(because(ReasonKind::NoCourseYet));
    } else {
        dryStage(v, s);
        tellComparison(v, s);
        applyAnswer(v, s);
        holdWhileAway(v, s);
    }
    if (!reports.empty() && today - reports.back().date >= 3) {
        Reason r = because(ReasonKind::NoCheckInFor);
        r.days = today - reports.back().date;
        s.reasons.push_back(r);
    }
    guard(v, s);
    spare(v, s);
    return s;
}

/// Rank of an advice among several sites. A blocked site comes first, then calls to treat, then the rest.
int urgency(Advice advice)
{
    switch (advice) {
    case Advice::Blocked: return 8;
    case Advice::RestartCourse: return 7;
    case Advice::FirstDewTopUp: return 6;
    case Advice::DoCourseSession: return 5;
    case Advice::TopUpDue: return 4;
    case Advice::AskPrescriber: return 3;
    case Advice::TryFurther: return 3;
    case Advice::Review: return 2;
    case Advice::Watch: return 1;
    case Advice::None: return 0;
    }
    return 0;
}

} // namespace

bool callsForTopUp(Advice advice)
{
    return advice == Advice::FirstDewTopUp || advice == Advice::TopUpDue || advice == Advice::RestartCourse;
}

bool callsForSession(Advice advice) { return advice == Advice::DoCourseSession || callsForTopUp(advice); }

Situation assess(const Diary& diary, const outlook::Settings& settings)
{
    Situation out;
    out.today = diary.today;
    out.age = protocol::ageGroupOn(diary.person ? diary.person->birth : std::nullopt, diary.today);
    out.screeningDue = protocol::screeningDue(diary);
    if (diary.machine)
        out.cellSessionsLeft = protocol::cellSessionsLeft(diary, *diary.machine);
    outlook::Settings own = settings;
    own.risk = diary.preferences.risk.value_or(settings.risk);
    for (const diary::SiteInUse& use : diary.sitesInUse())
        out.sites.push_back(assessSite(diary, use, own));
    if (out.screeningDue == protocol::ScreeningDue::Full)
        for (SiteSituation& s : out.sites)
            if (callsForSession(s.advice))
                s.reasons.push_back(because(ReasonKind::ScreeningStale));
    for (std::size_t i = 0; i < out.sites.size(); ++i)
        if (!out.first || urgency(out.sites[i].advice) > urgency(out.sites[*out.first].advice))
            out.first = i;
    return out;
}

} // namespace firstdew::situation
