#include "rehearsal/Life.h"

#include "diary/Reader.h"
#include "outlook/Learned.h"
#include "protocol/Course.h"
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
constexpr int kSessionAt = 20 * 60 + 30;
constexpr int kJudgedAmong = 20; // the judged spell is one of this many first ones

void count(Tally& tally, Skin skin)
{
    tally.clammyDays += skin == Skin::Clammy;
    tally.sweatingDays += skin == Skin::Sweating;
}

/// A person who keeps a diary and follows the advice.
class Diarist {
public:
    Diarist(const Request& request, Chance chance, Foresight& foresight)
        : m_request(request), m_chance(chance), m_foresight(foresight), m_body(request.world, chance)
    {
        Screening screening;
        for (const auto row : allOf<ScreeningRow>())
            screening.asked.insert(row);
        note(0, 0, Person{"", LocalDate(-11000), {}, {}, {}});
        note(0, 0, screening);
        note(0, kSessionAt, sessionFact());
        foresee(0);
    }

    void live(int day)
    {
        m_reader.turnTo(kDayZero + day);
        m_body.pass(day);
        count(m_tally, m_body.skin());
        report(day);
        auto s = assessed();
        judge(s);
        if (s.advice == Advice::RestartCourse) {
            Course course;
            course.site = Site::Hands;
            course.start = kDayZero + day;
            note(day, kSessionAt - 1, course);
            s = assessed();
        }
        switch (s.advice) {
        case Advice::FirstDewTopUp:
        case Advice::TopUpDue:
            treat(day, false);
            foresee(day);
            break;
        case Advice::DoCourseSession: treat(day, s.course && s.course->sessions.back().date > kDayZero + day); break;
        case Advice::Review:
        case Advice::AskPrescriber: note(day, kSessionAt, ReviewDone{Site::Hands, true}); break;
        default: break;
        }
    }
    [[nodiscard]] Tally tally() const { return m_tally; }

private:
    static Session sessionFact()
    {
        Session s;
        s.site = Site::Hands;
        return s;
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
        note(day, kSessionAt, sessionFact());
        ++m_tally.sessions;
        m_body.treat(courseGoesOn);
    }

    void report(int day)
    {
        const World& w = m_request.world;
        const auto i = static_cast<std::uint64_t>(day);
        if (m_chance.happens(w.checkinMissed, Draw::Missed, i))
            return;
        const bool stirred = m_chance.happens(w.stirredDays, Draw::Stirred, i);
        const double u = m_chance.uniform(Draw::Report, i);
        Level level{};
        switch (m_body.skin()) {
        case Skin::Dry:
            level = u < (stirred ? w.falseClammyStirred : w.falseClammyCalm) ? Level::Clammy : Level::Dry;
            break;
        case Skin::Clammy: level = u < w.missedClammy ? Level::Dry : Level::Clammy; break;
        case Skin::Sweating: level = m_chance.happens(0.3, Draw::Level, i) ? Level::Dripping : Level::Wet; break;
        }
        note(day, kCheckInAt,
             CheckIn{DiarySite::Hands, level,
                     stirred ? SetOf<Circumstance>{Circumstance::Heat} : SetOf<Circumstance>{}});
    }

    /// Compares the forecast made after a session with the spell that followed.
    void foresee(int day)
    {
        if (m_body.skin() != Skin::Dry)
            return;
        const LocalDate today = kDayZero + day;
        const auto& diary = m_reader.diary();
        const auto f = outlook::forecastFor(diary, DiarySite::Hands, m_request.settings);
        const auto& clock = outlook::learnedFrom(diary).clockFor(
            DiarySite::Hands, f.spells, diary.at(DiarySite::Hands).spellReports, m_request.settings.rules);
        const double u = 1 - clock.survivor(m_body.spell());
        constexpr std::array kCentral{0.5, 0.8, 0.95};
        for (std::size_t i = 0; i < kCentral.size(); ++i)
            m_foresight.covered[i] += std::abs(u - 0.5) <= kCentral[i] / 2;
        const auto tenth = std::min<std::size_t>(9, static_cast<std::size_t>(u * 10));
        ++m_foresight.pit[tenth];
        if (m_foresight.spells == static_cast<int>(m_chance.uniform(Draw::Judged) * kJudgedAmong))
            m_foresight.judged = tenth;
        const int due = *f.due - today;
        m_foresight.before += m_body.spell() <= due - kSessionAt / 1440.0;
        m_foresight.onTheDay += m_body.spell() <= due;
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
    Foresight& m_foresight;
    Body m_body;
    diary::Reader m_reader{{}, {}, kDayZero};
    Tally m_tally;
};

} // namespace

Tally liveByCalendar(const Request& request, Chance chance, bool weekly)
{
    const auto course = protocol::templateDays(CourseTemplate::Seven, {}, kDayZero)->days;
    Body body(request.world, chance);
    Tally tally;
    int last = 0;
    std::optional<int> courseFrom;
    for (int day = 1; day <= request.days; ++day) {
        body.pass(day);
        count(tally, body.skin());
        if (!courseFrom && body.skin() == Skin::Sweating)
            courseFrom = day;
        const bool ofCourse =
            courseFrom && std::find(course.begin(), course.end(), day - *courseFrom + 1) != course.end();
        if (!ofCourse && (courseFrom || !weekly || day - last < kWeek))
            continue;
        const bool courseGoesOn = ofCourse && day - *courseFrom + 1 < course.back();
        body.treat(courseGoesOn);
        ++tally.sessions;
        last = day;
        if (!courseGoesOn)
            courseFrom.reset();
    }
    return tally;
}

Tally liveByAdvice(const Request& request, Chance chance, Foresight& foresight)
{
    Diarist person(request, chance, foresight);
    for (int day = 1; day <= request.days; ++day)
        person.live(day);
    return person.tally();
}

} // namespace firstdew::rehearsal
