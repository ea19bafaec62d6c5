#include "rehearsal/Life.h"

#include "diary/Reader.h"
#include "outlook/Filter.h"
#include "outlook/Learned.h"
#include "outlook/Renewal.h"
#include "protocol/Course.h"
#include "rehearsal/Belief.h"
#include "situation/Assess.h"

#include <algorithm>

namespace firstdew::rehearsal {

namespace {

using namespace facts;
using situation::Advice;
using situation::Stage;

const LocalDate kDayZero(0);
constexpr int kWeek = 7;
constexpr int kCheckInAt = 20 * 60;
constexpr int kSessionBefore = 18 * 60; // of people whose session comes before the day's check-in
constexpr int kSessionAfter = 20 * 60 + 30;
constexpr double kUsualCharge = 250;    // mA min
constexpr double kSweatingLikely = 0.5; // chance from which one who knows the person does the course again
constexpr int kJudgedAmong = 20;        // the judged spell is one of this many first ones

void count(Tally& tally, Skin skin)
{
    tally.clammyDays += skin == Skin::Clammy;
    tally.sweatingDays += skin == Skin::Sweating;
}

bool sessionFirst(const World& world, const Chance& chance)
{
    return chance.happens(world.sessionBeforeCheckin, Draw::Order, 0);
}

/// A person who keeps a diary and follows the advice.
class Diarist {
public:
    Diarist(const Request& request, Chance chance, Foresight& foresight)
        : m_request(request), m_chance(chance), m_sessionFirst(sessionFirst(request.world, chance)),
          m_sessionAt(m_sessionFirst ? kSessionBefore : kSessionAfter), m_foresight(foresight),
          m_body(request.world, chance)
    {
        Screening screening;
        for (const auto row : allOf<ScreeningRow>())
            screening.asked.insert(row);
        note(0, 0, Person{"", LocalDate(-11000), {}, {}, {}});
        note(0, 0, screening);
        note(0, m_sessionAt, sessionFact(1));
        foresee(0);
    }

    void live(int day)
    {
        m_reader.turnTo(kDayZero + day);
        m_body.pass(day);
        count(m_tally, m_body.skin());
        if (!m_sessionFirst)
            report(day);
        auto s = assessed();
        judge(s);
        if (s.advice == Advice::RestartCourse) {
            ++m_foresight.calls.restarts;
            m_foresight.calls.restartsDry += m_body.skin() != Skin::Sweating;
            Course course;
            course.site = Site::Hands;
            course.start = kDayZero + day;
            note(day, m_sessionAt - 1, course);
            s = assessed();
        }
        switch (s.advice) {
        case Advice::TopUpDue: called(day); [[fallthrough]];
        case Advice::FirstDewTopUp:
            treat(day, false);
            foresee(day);
            break;
        case Advice::DoCourseSession: treat(day, s.course && s.course->sessions.back().date > kDayZero + day); break;
        case Advice::Review:
        case Advice::TryFurther:
        case Advice::AskPrescriber: note(day, m_sessionAt, ReviewDone{Site::Hands, true}); break;
        default:
            if (s.stage == Stage::KeepingDry && unasked(day)) {
                treat(day, false);
                foresee(day);
            }
        }
        m_named = s.nextSession;
        if (m_sessionFirst)
            report(day);
    }
    [[nodiscard]] Tally tally() const { return m_tally; }

private:
    static Session sessionFact(double dose)
    {
        Session s;
        s.site = Site::Hands;
        s.charge = MilliampMinutes{kUsualCharge * dose};
        return s;
    }

    void called(int day)
    {
        ++m_foresight.calls.all;
        m_foresight.calls.onDry += m_body.skin() == Skin::Dry;
        m_foresight.calls.named += m_named == kDayZero + day;
    }

    /// Whether the person tops up of their own accord.
    bool unasked(int day)
    {
        const World& w = m_request.world;
        const bool habit = w.habitDays > 0 && day - m_last >= w.habitDays;
        const double left = m_body.spell() - (day - m_last);
        const bool felt = m_body.skin() == Skin::Dry && left <= 1 &&
                          m_chance.happens(w.feltInAdvance, Draw::Felt, static_cast<std::uint64_t>(day));
        return habit || felt;
    }

    void note(int day, int minute, Payload payload)
    {
        m_reader.add({{}, {}, {kDayZero + day, {minute}}, 0, {}, std::move(payload)});
    }

    [[nodiscard]] situation::SiteSituation assessed() const
    {
        return std::move(situation::assess(m_reader.diary(), m_request.settings).sites.front());
    }

    void treat(int day, bool courseGoesOn)
    {
        note(day, m_sessionAt, sessionFact(m_body.nextDose()));
        m_last = day;
        ++m_tally.sessions;
        m_body.treat(courseGoesOn);
    }

    void report(int day)
    {
        if (const auto said = checkInOf(m_request.world, m_chance, m_body.skin(), day))
            note(day, kCheckInAt,
                 CheckIn{DiarySite::Hands, said->level,
                         said->stirred ? SetOf<Circumstance>{Circumstance::Heat} : SetOf<Circumstance>{}});
    }

    /// Compares the forecast made after a session with the spell that followed.
    void foresee(int day)
    {
        if (m_body.skin() != Skin::Dry)
            return;
        const LocalDate today = kDayZero + day;
        const auto& diary = m_reader.diary();
        const auto f = outlook::forecastFor(diary, DiarySite::Hands, m_request.settings);
        const auto& clock = outlook::learnedFrom(diary).presentFor(
            DiarySite::Hands, f.spells, diary.at(DiarySite::Hands).spellReports, m_request.settings.rules);
        const double u = 1 - clock.survivor(m_body.spell());
        constexpr std::array kCentral{0.5, 0.8, 0.95};
        for (std::size_t i = 0; i < kCentral.size(); ++i)
            m_foresight.covered[i] += std::abs(u - 0.5) <= kCentral[i] / 2;
        const auto tenth = std::min<std::size_t>(9, static_cast<std::size_t>(u * 10));
        ++m_foresight.pit[tenth];
        if (m_foresight.spells == static_cast<int>(m_chance.uniform(Draw::Judged) * kJudgedAmong))
            m_foresight.judged = tenth;
        const int due = f.dueIfSilent.value_or(today + outlook::kLongestWait) - today;
        m_foresight.before += m_body.spell() <= due - m_sessionAt / 1440.0;
        m_foresight.onTheDay += m_body.spell() <= due;
        m_foresight.misfit = f.misfit;
        m_foresight.found = m_foresight.found || f.widened;
        if (f.change && f.change->found != m_changed) {
            m_changed = f.change->found;
            ++m_foresight.shortenings;
            const double changes = m_request.world.changeDay;
            m_foresight.shortened = m_foresight.shortened || (changes > 0 && *m_changed - kDayZero > changes);
        }
        ++m_foresight.spells;
    }

    void judge(const situation::SiteSituation& s)
    {
        if (s.stage == Stage::FirstCourse || s.stage == Stage::Review)
            return;
        const double damp = 1 - s.forecast.today.dry;
        const double truth = m_body.skin() == Skin::Dry ? 0 : 1;
        m_foresight.squares += (damp - truth) * (damp - truth);
        ++m_foresight.days;
    }

    const Request& m_request;
    Chance m_chance;
    bool m_sessionFirst;
    int m_sessionAt;
    int m_last = 0; ///< day of the last session
    std::optional<LocalDate> m_named;
    std::optional<LocalDate> m_changed; ///< day on which the latest shortening was found
    Foresight& m_foresight;
    Body m_body;
    diary::Reader m_reader{{}, {}, kDayZero};
    Tally m_tally;
};

/// A person who treats by a rule of thumb, or as one would who knew the truth. From the day on which full sweating is
/// back, all of them do the course again.
class Treater {
public:
    Treater(const Request& request, Chance chance, Policy policy)
        : m_request(request), m_chance(chance), m_policy(policy), m_sessionFirst(sessionFirst(request.world, chance)),
          m_body(request.world, chance), m_belief(request.world)
    {
        choose();
    }

    void live(int day)
    {
        m_body.pass(day);
        if (m_policy == Policy::Knowing)
            m_belief.pass(hazardOn(day));
        count(m_tally, m_body.skin());
        if (!m_sessionFirst)
            checkIn(day);
        if (!m_courseFrom && seesSweating())
            m_courseFrom = day;
        const int ofCourse = m_courseFrom ? day - *m_courseFrom + 1 : 0;
        if (m_courseFrom ? std::find(m_course.begin(), m_course.end(), ofCourse) != m_course.end() : treats(day))
            treat(day, m_courseFrom && ofCourse < m_course.back());
        if (m_sessionFirst)
            checkIn(day);
    }
    [[nodiscard]] Tally tally() const { return m_tally; }

private:
    void treat(int day, bool courseGoesOn)
    {
        if (!m_courseFrom) {
            m_gapSum += day - m_last;
            ++m_gaps;
        }
        m_body.treat(courseGoesOn);
        m_belief.treat();
        ++m_tally.sessions;
        m_last = day;
        m_reportedDamp = false;
        m_seenDamp = false;
        if (!courseGoesOn)
            m_courseFrom.reset();
        choose();
    }

    /// When to end the spell that begins, for those who know its distribution.
    void choose()
    {
        if (m_policy == Policy::Oracle || m_policy == Policy::Seeing || m_policy == Policy::Knowing)
            m_renewal.emplace([this](double days) { return survivor(days); }, returnCostOf(m_request));
    }

    [[nodiscard]] double survivor(double days) const
    {
        return m_policy == Policy::Oracle ? m_body.survivor(days) : m_body.foreseen(days);
    }

    void checkIn(int day)
    {
        m_seenDamp = m_body.skin() != Skin::Dry;
        const auto said = checkInOf(m_request.world, m_chance, m_body.skin(), day);
        if (!said)
            return;
        m_reportedDamp = m_reportedDamp || said->level != Level::Dry;
        if (m_policy == Policy::Knowing)
            m_belief.hear(*said);
    }

    /// The chance that a site which was dry on the day before turned clammy. A course holds it dry.
    [[nodiscard]] double hazardOn(int day) const
    {
        const int age = day - m_last;
        return m_courseFrom ? 0 : outlook::hazardOf(survivor(age - 1), survivor(age));
    }

    [[nodiscard]] bool seesSweating() const
    {
        return m_policy == Policy::Knowing ? m_belief.sweating() >= kSweatingLikely : m_body.skin() == Skin::Sweating;
    }

    [[nodiscard]] bool treats(int day) const
    {
        const int age = day - m_last;
        switch (m_policy) {
        case Policy::Weekly: return age >= kWeek;
        case Policy::FirstClammy: return m_reportedDamp;
        case Policy::WeeklyOrClammy: return m_reportedDamp || age >= kWeek;
        case Policy::MeanOrClammy: return m_reportedDamp || age >= std::lround(m_gapSum / m_gaps);
        case Policy::Knowing: return m_renewal->treat(age, m_belief.dry());
        case Policy::Seeing:
        case Policy::Oracle: return m_seenDamp || age >= m_renewal->age();
        case Policy::Early:
        case Policy::Late: return false;
        }
        return false;
    }

    const Request& m_request;
    Chance m_chance;
    Policy m_policy;
    bool m_sessionFirst;
    Body m_body;
    std::vector<int> m_course = protocol::templateDays(CourseTemplate::Seven, {}, kDayZero)->days;
    Tally m_tally;
    int m_last = 0;
    std::optional<int> m_courseFrom;
    double m_gapSum = 10; ///< days between sessions; ten to begin with
    double m_gaps = 1;
    std::optional<outlook::Renewal> m_renewal; ///< of those who know the distribution of dry spells
    Belief m_belief;                           ///< of one who reads the check-ins and knows all the rest
    bool m_reportedDamp = false;               ///< since the last session
    bool m_seenDamp = false;                   ///< the truth at the last check-in
};

} // namespace

Tally liveByRule(const Request& request, Chance chance, Policy policy)
{
    Treater person(request, chance, policy);
    for (int day = 1; day <= request.days; ++day)
        person.live(day);
    return person.tally();
}

Tally liveByAdvice(const Request& request, Chance chance, Foresight& foresight)
{
    Diarist person(request, chance, foresight);
    for (int day = 1; day <= request.days; ++day)
        person.live(day);
    return person.tally();
}

} // namespace firstdew::rehearsal
