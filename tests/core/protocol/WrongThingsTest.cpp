#include "bath/Engine.h"
#include "bath/Trace.h"
#include "core/Build.h"
#include "protocol/Area.h"
#include "protocol/Course.h"
#include "protocol/MayBegin.h"
#include "protocol/Response.h"
#include "protocol/Script.h"
#include "protocol/Sweat.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

// Things done wrong on purpose. Each is refused with one sentence that says what is safe to do now, and changes
// nothing.

using namespace firstdew;
using namespace firstdew::protocol;
using bath::Event;
using build::day;
using build::Facts;

namespace {

const LocalDate kToday = day("2026-03-05");

template <class T>
void refused(const char* what, const Result<T>& result, const std::string& code, const std::string& safe)
{
    INFO(what);
    REQUIRE_FALSE(result.ok());
    const Error& e = result.error();
    INFO(e.message);
    CHECK(e.code == code);
    CHECK_FALSE(e.input.empty());
    CHECK(e.message.find(safe) != std::string::npos);
    CHECK(e.message.find('\n') == std::string::npos);
}

ScriptRequest request(AgeGroup age, double limit, Site site = Site::Feet, Waveform waveform = Waveform::Direct)
{
    ScriptRequest q;
    q.site = site;
    q.waveform = waveform;
    q.age = age;
    q.limit = {limit};
    return q;
}

/// A session of an adult's feet; what is refused must leave it as it was.
class Bath {
public:
    void go(BathEventKind kind, std::optional<Milliamps> reading = {})
    {
        tick();
        m_state = bath::step(m_state, {kind, reading, {}}, m_now).value().state;
    }
    void refuses(const char* what, Event event, const std::string& code, const std::string& safe)
    {
        tick();
        const bath::State before = m_state;
        const auto out = bath::step(m_state, event, m_now);
        refused(what, out, code, safe);
        CHECK(m_state == before);
    }
    void refuses(const char* what, BathEventKind kind, const std::string& code, const std::string& safe)
    {
        refuses(what, Event{kind, {}, {}}, code, safe);
    }
    void reads(const char* what, double mA, const std::string& code, const std::string& safe)
    {
        refuses(what, Event{BathEventKind::Reading, Milliamps{mA}, {}}, code, safe);
    }
    void sleep(long long ms) { m_now = {m_now.wallMs + ms, m_now.monotonicMs}; }
    void toHold()
    {
        go(BathEventKind::Begin);
        go(BathEventKind::SwitchedOn);
        go(BathEventKind::Raised);
    }
    [[nodiscard]] const bath::State& state() const { return m_state; }

private:
    void tick() { m_now = {m_now.wallMs + 1000, m_now.monotonicMs + 1000}; }

    bath::State m_state = bath::prepared(scriptFor(request(AgeGroup::Adult, 20)).value(), {10});
    Instant m_now{};
};

Machine directOnly()
{
    Machine m;
    m.pulsed = false;
    return m;
}

Facts screenedToday() { return Facts().adult().screened(kToday); }

} // namespace

TEST_CASE("each wrong event in a session is refused and changes nothing")
{
    Bath s;
    s.refuses("raise before the check list", BathEventKind::Raised, "not-raising", "leave the current at zero");
    s.refuses("discomfort before any current", BathEventKind::Discomfort, "no-current",
              "machine off, take hands or feet out");
    s.toHold();
    s.refuses("swap while current flows", BathEventKind::Swapped, "current-flows", "lower to zero first");
    s.refuses("move to the other side while current flows", BathEventKind::MovedSide, "current-flows",
              "lower to zero first");
    s.refuses("the check list twice", BathEventKind::Begin, "already-begun", "go on with the step shown");
    s.refuses("say what happened when nothing did", Event{BathEventKind::Resumed, {}, Meanwhile::KeptRunning},
              "nothing-to-resume", "go on with the step shown");
    s.reads("a negative reading", -4, "reading-negative", "without its sign");
    s.reads("a reading that is no number", std::nan(""), "reading-not-a-number", "lower to zero");
    s.reads("an endless reading", std::numeric_limits<double>::infinity(), "reading-not-a-number", "lower to zero");
    s.reads("10^9 mA", 1e9, "reading-implausible", "machine off now");
    s.refuses("a reading without a number", BathEventKind::Reading, "reading-not-a-number", "lower to zero");
    s.go(BathEventKind::Lowered);
    s.refuses("swap in the middle of a phase", BathEventKind::Swapped, "not-now", "go on with the step shown");
    s.refuses("lift out at zero is no accident", BathEventKind::OutOfWater, "no-current", "lifting out is safe now");
    s.go(BathEventKind::Raised);
    s.sleep(600'000);
    s.reads("a reading after ten minutes unwatched", 10, "awaiting-answer", "switch it off");
    s.go(BathEventKind::Stop);
    s.refuses("go on after the end", BathEventKind::Raised, "session-ended", "machine off and current zero");
    s.refuses("swap after the end", BathEventKind::Swapped, "session-ended", "machine off and current zero");
}

TEST_CASE("25 mA of direct current on the meter raises the alarm at once and stops the script")
{
    Bath s;
    s.toHold();
    const auto out = bath::step(s.state(), {BathEventKind::Reading, Milliamps{25}, {}}, s.state().last);
    REQUIRE(out);
    CHECK(out->state.alarm);
    CHECK(out->effects.front().kind == bath::EffectKind::Alarm);
    CHECK(out->effects.front().prompt == Prompt::TooHigh);
}

TEST_CASE("wrong input before a session gives neither script nor permission")
{
    refused("25 mA direct", scriptFor(request(AgeGroup::Adult, 25)), "limit-out-of-range",
            "nothing may be raised above the trade's limit");
    refused("a child on 20 mA direct", scriptFor(request(AgeGroup::Child, 20)), "limit-out-of-range", "at most 15 mA");
    refused("a limit that is no number", scriptFor(request(AgeGroup::Adult, std::nan(""))), "limit-out-of-range",
            "at most 20 mA");
    refused("armpits with direct current", scriptFor(request(AgeGroup::Adult, 10, Site::Armpits)),
            "armpits-pulsed-only", "leave the armpits out");
    auto hasty = request(AgeGroup::Adult, 20);
    hasty.lower = {5};
    refused("five seconds to lower", scriptFor(hasty), "allowance-out-of-range", "choose a time in between");

    const auto begin = [](const Facts& d, Site site = Site::Hands, Waveform waveform = Waveform::Direct) {
        return mayBegin(d.on(kToday), site, waveform);
    };
    refused("armpits on a machine with direct current alone, direct",
            begin(screenedToday().add(directOnly(), kToday), Site::Armpits), "armpits-pulsed-only",
            "do not use it there");
    refused("armpits on a machine with direct current alone, pulsed",
            begin(screenedToday().add(directOnly(), kToday), Site::Armpits, Waveform::Pulsed), "machine-unsuited",
            "do not use it there");
    refused("pregnant since yesterday",
            begin(screenedToday().add(Screening{false, {ScreeningRow::Pregnancy}, {ScreeningRow::Pregnancy}}, kToday)),
            "screening-stops", "leave the machine off");
    refused("session today already done", begin(screenedToday().session(Site::Hands, kToday)), "session-today",
            "leave the skin in peace");
    refused("never screened", begin(Facts().adult()), "screening-due", "leave the machine off");
    refused("the short question passed over", begin(Facts().adult().screened(kToday - 3)), "short-question-due",
            "leave the machine off");
    refused("a child of four",
            begin(Facts().add(Person{"Kim", day("2021-06-01"), {}, {}, {}}, kToday).screened(kToday)),
            "screening-stops", "until a clinician has approved treatment");
    refused("a child without a clinician's word",
            begin(Facts().add(Person{"Kim", day("2014-06-01"), {}, {}, {}}, kToday).screened(kToday)), "screening-asks",
            "leave the machine off");
    refused("a clearance that ran out yesterday",
            begin(Facts()
                      .adult()
                      .screened(kToday, {ScreeningRow::MetalImplant})
                      .add(Clearance{ScreeningRow::MetalImplant, "Dr Vance", kToday - 30, kToday - 1}, kToday - 30)),
            "screening-stops", "until a clinician has approved treatment");
}

TEST_CASE("impossible courses, readings, scores, bodies and weighings are refused")
{
    CourseRequest q;
    q.start = q.today = kToday;
    q.done = {kToday};
    q.fixed = {{2, kToday}};
    refused("a second session on a day that has one", planCourse(q), "day-not-open", "has its session");
    q.fixed.clear();
    q.done = {kToday + 1};
    refused("done tomorrow", planCourse(q), "done-in-the-future", "only sessions already done count");
    q.done.clear();
    q.plan = CourseTemplate::Prescribed;
    q.days = {1, 1, 4};
    refused("two sessions prescribed for one day", planCourse(q), "days-not-ascending", "list each day once");

    const auto traced = [](double second, double mA) -> Result<Done> {
        const auto wrong = bath::refusalOfTrace(std::vector<bath::TracePoint>{{0, 0}, {60, 10}, {second, mA}});
        return wrong ? Result<Done>(wrong->error) : Result<Done>(Done{});
    };
    refused("a reading from the past of the trace", traced(30, 10), "time-goes-back", "in the order of time");
    refused("a reading in the far future", traced(1e9, 10), "time-out-of-range", "seconds from the beginning");
    refused("10^9 mA in a trace", traced(120, 1e9), "reading-implausible", "machine off");

    refused("a score of five", responseBy(5, 2), "hdss-out-of-range", "again");
    refused("a height in metres", bodySurface({1.7}, {70}), "height-out-of-range", "in centimetres");
    refused("paper that got lighter", sweatRate({DiarySite::Hands, {1500}, {1000}, 5}, {1.8}), "lighter-after",
            "weigh again");
}
