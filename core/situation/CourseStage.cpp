#include "situation/CourseStage.h"

#include "protocol/CareSheets.h"

#include <algorithm>
#include <set>

namespace firstdew::situation {

namespace {

/// Whether the entry is about the running course of the site.
template <class P>
bool ofCourse(const View& v, const Entry<P>& e)
{
    return e.payload.site == v.course->course.site && e.happened >= v.course->set;
}

int doneInCourse(const View& v)
{
    const auto from = std::lower_bound(v.sessions.begin(), v.sessions.end(), v.course->course.start);
    return static_cast<int>(v.sessions.end() - from);
}

/// The running course as it stood on `day`: around sessions done, sessions moved, days away and the pace chosen.
protocol::CourseRequest requestOf(const View& v, LocalDate day)
{
    const Course& course = v.course->course;
    const auto known = [&](LocalDate said) { return day == v.today || said <= day; };
    protocol::CourseRequest q;
    q.plan = course.plan;
    q.days = course.days;
    q.start = course.start;
    q.today = day;
    q.free = course.free;
    for (const auto& e : v.diary.away)
        if (known(e.happened.date))
            q.away.emplace_back(e.payload.from, e.payload.to);
    for (const LocalDate d : v.sessions)
        if (d >= course.start) // nobody looks back to a day before the last of them
            q.done.push_back(d);
    const int done = static_cast<int>(q.done.size());
    for (const auto& e : v.diary.courseMoves)
        // A move that concerns an earlier course or a session already done must not make the other moves fail.
        if (ofCourse(v, e) && known(e.happened.date) && e.payload.date >= day && e.payload.number > done) {
            std::erase_if(q.fixed, [&](const auto& f) { return f.first == e.payload.number; });
            q.fixed.emplace_back(e.payload.number, e.payload.date);
        }
    for (const auto& e : v.diary.coursePaces)
        if (ofCourse(v, e) && known(e.happened.date))
            q.pace = e.payload.pace;
    return q;
}

std::optional<protocol::CoursePlan> planOf(protocol::CourseRequest q)
{
    auto plan = protocol::planCourse(q);
    if (!plan && !q.fixed.empty()) {
        // A day chosen by hand may no longer fit. The person still needs a plan.
        q.fixed.clear();
        plan = protocol::planCourse(q);
    }
    if (!plan)
        return std::nullopt;
    return plan.value();
}

const protocol::PlannedSession* nextOf(const protocol::CoursePlan& plan)
{
    const auto next = std::find_if(plan.sessions.begin(), plan.sessions.end(),
                                   [](const auto& p) { return p.state == protocol::CourseState::Planned; });
    return next == plan.sessions.end() ? nullptr : &*next;
}

/// Follows the plan of the next session from the last one done, or from the day the course was chosen, through every
/// later word of the person about the course. A session that was moved after its day is no longer named as missed.
std::optional<MissedSession> missedOf(const View& v)
{
    const int number = doneInCourse(v) + 1;
    LocalDate asOf = std::max(v.course->course.start, v.course->set.date);
    if (number > 1)
        asOf = std::max(asOf, v.sessions.back() + 1);
    std::set<LocalDate> stops{v.today};
    std::set<LocalDate> moved;
    for (const auto& e : v.diary.courseMoves)
        if (ofCourse(v, e) && e.payload.number == number)
            moved.insert(e.happened.date);
    stops.insert(moved.begin(), moved.end());
    for (const auto& e : v.diary.coursePaces)
        if (ofCourse(v, e))
            stops.insert(e.happened.date);
    for (const auto& e : v.diary.away)
        stops.insert(e.happened.date);
    std::optional<MissedSession> out;
    for (const LocalDate stop : stops) {
        if (stop < asOf || stop > v.today)
            continue;
        while (!out && asOf < stop) {
            const auto plan = planOf(requestOf(v, asOf));
            const auto* next = plan ? nextOf(*plan) : nullptr;
            if (next == nullptr || next->date >= stop)
                break;
            if (v.diary.awayAround(next->date)) // said afterwards: no session stood there
                asOf = next->date + 1;
            else
                out = MissedSession{number, next->date};
        }
        if (moved.contains(stop))
            out.reset();
        asOf = stop;
    }
    return out;
}

/// Day 1 of the treatment that is being judged: courses that followed each other without a review are one.
LocalDate treatmentBegan(const View& v)
{
    const auto& courses = v.diary.at(v.use.site).courses;
    std::size_t i = courses.size() - 1;
    while (i > 0 && !courses[i - 1].firstReview)
        --i;
    return courses[i].course.start;
}

int sessionsSince(const View& v, LocalDate day)
{
    return static_cast<int>(std::ranges::count_if(v.sessions, [&](LocalDate d) { return d >= day; }));
}

/// What follows from the scores once every session of the course is done.
void reviewCourse(const View& v, SiteSituation& s, std::optional<LocalDate> scored)
{
    if (!s.response || v.today - *scored > protocol::kScoreDays) {
        s.response.reset();
        Reason r = because(ReasonKind::ScoreNeeded);
        r.days = scored ? v.today - *scored : 0;
        s.reasons.insert(s.reasons.begin(), r);
        return;
    }
    if (*s.response != protocol::Response::None) {
        s.reasons.push_back(
            because(*s.response == protocol::Response::Strong ? ReasonKind::ResponseStrong : ReasonKind::ResponseGood));
        return;
    }
    const CareSheet* sheet = protocol::sheetFor(v.diary, v.course->course.site);
    const int done = sessionsSince(v, treatmentBegan(v));
    const bool early = done < protocol::kLeastSessionsToJudge;
    Reason r = because(early ? ReasonKind::NotBetterYet : ReasonKind::NoResponse);
    r.count = early ? done : 0;
    s.reasons.insert(s.reasons.begin(), r);
    // Who prescribed the course decides how it goes on.
    const bool prescribed = sheet != nullptr && sheet->plan;
    s.advice = early && !prescribed ? Advice::TryFurther : Advice::AskPrescriber;
    if (sheet != nullptr)
        s.atNoResponse = sheet->atNoResponse;
}

} // namespace

void planCourseOf(const View& v, SiteSituation& s)
{
    const auto request = requestOf(v, v.today);
    s.pace = request.pace;
    s.course = planOf(request);
    if (!s.course || v.course->firstReview || nextOf(*s.course) == nullptr)
        return;
    s.missed = missedOf(v);
    const auto chosen = std::find_if(v.diary.coursePaces.rbegin(), v.diary.coursePaces.rend(),
                                     [&](const auto& e) { return ofCourse(v, e); });
    const bool answered =
        chosen != v.diary.coursePaces.rend() && (!s.missed || chosen->happened.date > s.missed->planned);
    if (!answered)
        s.crowding = protocol::crowdingOf(request, *s.course);
}

std::vector<LocalDate> courseDaysAhead(const Diary& diary, const diary::SiteInUse& use, int days)
{
    const diary::SiteDiary& site = diary.at(use.site);
    const View v{diary, diary.today, use, site.sessionDays, {}, {}, site.course()};
    std::vector<LocalDate> out;
    if (v.course == nullptr)
        return out;
    for (LocalDate day = v.today; day < v.today + days; day = out.back() + 1) {
        const auto plan = planOf(requestOf(v, day));
        const auto* next = plan ? nextOf(*plan) : nullptr;
        if (next == nullptr || next->date >= v.today + days)
            break;
        out.push_back(next->date); // until that day is over, the plan stays the same
    }
    return out;
}

std::optional<LocalDate> judgeResponse(const View& v, SiteSituation& s)
{
    if (v.course == nullptr)
        return std::nullopt;
    std::optional<LocalDate> scored;
    const LocalDate began = treatmentBegan(v);
    for (const auto& e : v.diary.scores) {
        if (e.payload.site != v.use.site)
            continue;
        const bool before = v.sessions.empty() || e.happened.date <= began;
        if (before || !s.hdssStart) {
            s.hdssStart = e.payload.score;
            s.hdssStartOn = e.happened.date;
        }
        if (!before) {
            s.hdssNow = e.payload.score;
            scored = e.happened.date;
        }
    }
    if (s.hdssStart && s.hdssNow)
        if (const auto response = protocol::responseBy(*s.hdssStart, *s.hdssNow))
            s.response = *response;
    return scored;
}

void courseStage(const View& v, SiteSituation& s, std::optional<LocalDate> scored)
{
    s.stage = Stage::FirstCourse;
    if (!s.course) {
        s.advice = Advice::AskPrescriber;
        s.reasons.push_back(because(ReasonKind::CourseOverrun));
        return;
    }
    const auto* next = nextOf(*s.course);
    const int count = static_cast<int>(s.course->sessions.size());
    if (next == nullptr) {
        s.stage = Stage::Review;
        s.advice = Advice::Review;
        Reason r = because(ReasonKind::CourseFinished);
        r.count = count;
        s.reasons.push_back(r);
        reviewCourse(v, s, scored);
        return;
    }
    s.nextSession = next->date;
    const bool doneToday = !v.sessions.empty() && v.sessions.back() == v.today;
    Reason r =
        because(next->date <= v.today ? ReasonKind::CourseSessionToday : ReasonKind::CourseSessionLater, next->date);
    r.number = next->number;
    r.count = count;
    s.advice = next->date <= v.today && !doneToday ? Advice::DoCourseSession : Advice::None;
    if (doneToday)
        s.reasons.push_back(because(ReasonKind::SessionDoneToday));
    if (s.missed) {
        Reason missed = because(ReasonKind::CourseSessionMissed, s.missed->planned);
        missed.number = s.missed->number;
        missed.days = next->date - s.missed->planned;
        s.reasons.push_back(missed);
    }
    s.reasons.push_back(r);
    if (s.crowding) {
        Reason crowded = because(ReasonKind::CourseCrowded);
        crowded.count = s.crowding->inARow;
        crowded.days = s.crowding->dayBetween.overrunDays;
        s.reasons.push_back(crowded);
    }
    if (!s.course->fits) {
        Reason over = because(ReasonKind::CourseOverrun);
        over.days = s.course->overrunDays;
        s.reasons.push_back(over);
    }
}

} // namespace firstdew::situation
