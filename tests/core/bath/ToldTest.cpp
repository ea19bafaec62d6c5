#include "core/Told.h"
#include "Run.h"
#include "bath/Dose.h"

#include <fmt/format.h>

using namespace build;

namespace {

const char* name(EffectKind kind)
{
    switch (kind) {
    case EffectKind::Say: return "say";
    case EffectKind::Alarm: return "ALARM";
    case EffectKind::AlarmOff: return "alarm off";
    case EffectKind::StepChanged: return "next step";
    case EffectKind::AskMeter: return "ask for the reading";
    case EffectKind::AskMeanwhile: return "ask what happened meanwhile";
    case EffectKind::Completed: return "completed";
    case EffectKind::Interrupted: return "interrupted";
    }
    return "?";
}

const char* name(Current c) { return c == Current::Zero ? "at zero" : c == Current::Flowing ? "flowing" : "unknown"; }

const char* name(Phase p)
{
    return p == Phase::Running             ? "running"
           : p == Phase::AwaitingMeanwhile ? "awaiting an answer"
           : p == Phase::Finished          ? "finished"
                                           : "stopped";
}

/// A session as whoever listens and looks would tell it: a line for each event, and for each moment in which something
/// is said.
struct Teller {
    std::vector<std::string>& lines;
    Run run;
    std::size_t heard = 0;

    Teller(std::vector<std::string>& to, const char* what, const ScriptRequest& q) : lines(to), run(q)
    {
        lines.push_back(fmt::format("{}:", what));
    }

    std::string state() const
    {
        const State& s = run.state;
        return fmt::format(
            "{} s, {} {} at {} s ({} left, {} in all), current {}, target {:g} mA{}{}, {} readings, {} before, {} kept",
            s.sessionMs / 1000, name(s.phase), token(run.kind()), s.stepElapsedMs / 1000, remainingInStep(s).s,
            remainingInAll(s).s, name(s.current), s.target().mA, s.steady ? " steady" : "", s.alarm ? ", alarm" : "",
            s.readings.size(), s.interrupted.size(), run.kept.size());
    }
    void news()
    {
        std::string said;
        for (; heard < run.effects.size(); ++heard) {
            const Effect& e = run.effects[heard];
            said += fmt::format("{}{}{}", said.empty() ? "" : ", ", name(e.kind),
                                e.prompt ? fmt::format(" {}", token(*e.prompt)) : "");
        }
        if (!said.empty())
            lines.push_back(fmt::format("    {}", said));
    }
    void after(const std::string& what, const Result<Outcome>& out)
    {
        lines.push_back(fmt::format(
            "  {}: {}", what,
            out ? state()
                : fmt::format("refused, {} at {}: {}", out.error().code, out.error().input, out.error().message)));
        news();
    }
    Teller& does(BathEventKind kind)
    {
        after(std::string(token(kind)), run.send(kind));
        return *this;
    }
    Teller& reads(double mA)
    {
        after(fmt::format("reads {:g}", mA), run.read(mA));
        return *this;
    }
    Teller& answers(Meanwhile m)
    {
        after(fmt::format("answers {}", token(m)), run.resume(m));
        return *this;
    }
    /// Time goes by, a second at a time.
    Teller& waits(int seconds)
    {
        for (int i = 0; i < seconds; ++i) {
            const auto before = run.effects.size();
            run.pass(1, 1000);
            if (run.effects.size() > before) {
                lines.push_back(fmt::format("  +{} s: {}", i + 1, state()));
                news();
            }
        }
        return *this;
    }
    /// From the beginning to the moment in which the meter is to be at zero for the last time.
    void toLastWord()
    {
        using enum BathEventKind;
        run.begin();
        run.passTo(StepKind::HandsOut);
        (void)run.send(Lowered);
        (void)run.send(Swapped);
        run.passTo(StepKind::HandsOut);
        heard = run.effects.size();
    }
    /// The phone was off, or asleep.
    Teller& away(int seconds)
    {
        run.now.wallMs += 1000LL * seconds;
        run.now.monotonicMs += 1000LL * seconds;
        after(fmt::format("a tick after {} s away", seconds), run.send(BathEventKind::Tick));
        return *this;
    }
    void dose()
    {
        std::vector<MeterReading> all = run.state.interrupted;
        all.insert(all.end(), run.state.readings.begin(), run.state.readings.end());
        const auto& q = run.state.script.request;
        for (const double cm2 : {0.0, 150.0}) {
            const Dose d = doseOf(all, q.site, q.limit, SquareCentimetres{cm2});
            lines.push_back(fmt::format("  over {:g} cm2: {:.2f} mA min, peak {:g} mA{}", cm2, d.charge.mAmin,
                                        d.peak.mA,
                                        d.peakDensity ? fmt::format(", {:.3f} mA/cm2", *d.peakDensity) : ""));
            for (const auto& p : d.byPhase)
                lines.push_back(fmt::format("    phase {} at {:+d}, {}: {} s, {:.2f} mA min, peak {:g}", p.phase,
                                            p.polarity, p.side ? token(*p.side) : "both", p.length.s, p.charge.mAmin,
                                            p.peak.mA));
            for (const auto& l : d.byLimb)
                lines.push_back(fmt::format("    {}: {:.2f} in, {:.2f} out", token(l.limb), l.in.mAmin, l.out.mAmin));
            for (const auto& o : d.overLimit)
                lines.push_back(fmt::format("    above the limit from {:.1f} to {:.1f} s, peak {:g}", o.fromSecond,
                                            o.toSecond, o.peak.mA));
        }
    }
};

void tellHandsUnderAndFree(std::vector<std::string>& lines)
{
    using enum BathEventKind;
    Teller under(lines, "hands under, touched with dry hands alone", request(Site::Hands, WayOfWorking::HandsUnder));
    under.does(Begin).does(SwitchedOn).waits(760).does(Swapped).does(Lowered).waits(60).does(Swapped).waits(740);
    under.does(Lowered);
    under.dose();

    Teller free(lines, "feet, a hand free, read every minute", request(Site::Feet));
    free.does(Raised)
        .does(Begin)
        .does(Raised)
        .does(SwitchedOn)
        .waits(20)
        .reads(8)
        .does(Raised)
        .waits(70)
        .reads(10)
        .waits(60)
        .reads(10.4)
        .waits(30)
        .does(Swapped);
    free.does(Discomfort)
        .reads(9)
        .waits(60)
        .does(Lowered)
        .waits(30)
        .does(Raised)
        .reads(9.2)
        .waits(900)
        .reads(2)
        .does(Swapped);
    free.does(Lowered).does(Swapped).waits(10).reads(4).does(Raised).waits(905).does(Lowered).waits(5);
    free.does(Lowered).does(Stop);
    free.dose();
}

void tellTooHighAndOneSideAtATime(std::vector<std::string>& lines)
{
    using enum BathEventKind;
    Teller high(lines, "hands with a helper, too high", request(Site::Hands, WayOfWorking::Helper));
    high.does(Begin)
        .does(SwitchedOn)
        .reads(15)
        .reads(15.1)
        .waits(8)
        .reads(20)
        .waits(2)
        .reads(14)
        .does(Raised)
        .waits(30)
        .reads(16)
        .does(Lowered)
        .waits(5);
    high.reads(-1)
        .reads(100.5)
        .does(Raised)
        .reads(12)
        .does(OutOfWater)
        .waits(5)
        .does(OutOfWater)
        .does(Begin)
        .does(SwitchedOn)
        .does(Raised)
        .reads(11)
        .does(Stop)
        .does(Begin);
    high.dose();

    Teller sides(lines, "one hand with one foot", request(Site::HandFoot));
    for (int phase = 1; phase <= 4; ++phase)
        sides.does(phase == 1   ? Begin
                   : phase == 3 ? MovedSide
                                : Swapped)
            .does(SwitchedOn)
            .reads(10)
            .does(Raised)
            .waits(605)
            .reads(10)
            .does(Lowered);
    sides.does(MovedSide).waits(5).dose();
}

void tellAbsences(std::vector<std::string>& lines)
{
    using enum BathEventKind;
    for (const Meanwhile m : allOf<Meanwhile>()) {
        Teller gone(lines, fmt::format("away in a phase, {}", token(m)).c_str(), request(Site::Feet));
        gone.does(Begin)
            .does(SwitchedOn)
            .does(Raised)
            .reads(10)
            .waits(30)
            .reads(16)
            .away(9)
            .waits(2)
            .away(91)
            .does(Raised)
            .reads(12)
            .waits(12)
            .answers(m)
            .waits(5)
            .does(Begin)
            .does(SwitchedOn)
            .does(Lowered)
            .does(Raised)
            .reads(10)
            .waits(70);
        gone.away(200).does(OutOfWater).waits(3).does(Stop);
        gone.dose();
        Teller atEnd(lines, fmt::format("back at the last word, {}", token(m)).c_str(),
                     request(Site::Hands, WayOfWorking::HandsUnder));
        atEnd.toLastWord();
        atEnd.away(20).answers(m);
    }
}

void tellEveryEventAtBothEnds(std::vector<std::string>& lines)
{
    using enum BathEventKind;
    for (const BathEventKind kind : allOf<BathEventKind>()) {
        Teller atEnd(lines, fmt::format("{} at the last word", token(kind)).c_str(),
                     request(Site::Hands, WayOfWorking::HandsUnder));
        atEnd.toLastWord();
        if (kind == Reading)
            atEnd.reads(5);
        else
            atEnd.does(kind);
        Teller unbegun(lines, fmt::format("{} at the check list", token(kind)).c_str(), request(Site::Armpits));
        if (kind == Reading)
            unbegun.reads(5);
        else
            unbegun.does(kind);
    }
}

} // namespace

TEST_CASE("told: sessions in the three ways of working, with what can go wrong in each")
{
    std::vector<std::string> lines;
    tellHandsUnderAndFree(lines);
    tellTooHighAndOneSideAtATime(lines);
    tellAbsences(lines);
    tellEveryEventAtBothEnds(lines);
    checkTold("sessions", lines);
}
