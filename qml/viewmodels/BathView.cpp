#include "BathView.h"

#include "Edge.h"
#include "bath/Dose.h"
#include "words/BathWords.h"

#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

/// Every reading of the session, those of runs that started again first.
std::vector<bath::MeterReading> readingsOf(const bath::State& state)
{
    std::vector<bath::MeterReading> all = state.interrupted;
    all.insert(all.end(), state.readings.begin(), state.readings.end());
    return all;
}

double peakOf(const bath::State& state)
{
    double peak = 0;
    for (const auto& r : readingsOf(state))
        peak = std::max(peak, r.current.mA);
    return peak;
}

ui::MainButton::Value mainButtonOf(const bath::State& state)
{
    namespace MainButton = ui::MainButton;
    const auto event = bath::mainEvent(state);
    if (!event)
        return MainButton::None;
    switch (*event) {
    case BathEventKind::Begin: return MainButton::Begin;
    case BathEventKind::SwitchedOn: return MainButton::SwitchedOn;
    case BathEventKind::Raised: return MainButton::Raised;
    case BathEventKind::Lowered: return MainButton::Lowered;
    case BathEventKind::Swapped: return MainButton::Swapped;
    case BathEventKind::MovedSide: return MainButton::MovedSide;
    default: return MainButton::None;
    }
}

ui::Exits::Value exitsOf(const bath::State& state)
{
    if (bath::handsAreUnder(state))
        return ui::Exits::TapAnywhere;
    return state.current == bath::Current::Zero ? ui::Exits::StopOnly : ui::Exits::All;
}

ui::MeterView meterOf(const bath::State& state)
{
    const Milliamps limit = state.script.request.limit;
    ui::MeterView out;
    out.target = words::milliamps(state.target().mA);
    out.limit = words::milliamps(limit.mA);
    out.limitMa = limit.mA;
    out.mostReading = bath::kMostPlausibleReading.mA;
    out.reading = words::readingName(state.lastReading);
    // What it showed before is no answer to "at zero?".
    out.hasReading = state.lastReading.has_value() && state.current != bath::Current::Zero;
    out.lastReading = state.lastReading ? state.lastReading->current.mA : state.target().mA;
    return out;
}

} // namespace

ui::RunningPage runningPage(const bath::State& s)
{
    const auto& step = s.script.steps[s.step];
    const auto& q = s.script.request;
    const int remaining = bath::remainingInStep(s).s;
    ui::RunningPage out;
    out.known = true;
    out.step = words::stepName(step);
    out.kind = ui::shown(step.kind);
    out.sentence = words::nowSentence(s);
    out.drawings = ui::shown(bath::drawingsNow(s));
    out.phase = words::phaseName(s);
    out.side = step.side ? words::sideName(*step.side) : QString();
    out.waveform = words::waveformName(q.waveform);
    out.next = words::nextName(s);
    out.note = words::noteAtSwap(s);
    out.timed = step.timed;
    out.remaining = step.timed ? words::countdown(remaining) : QString();
    out.remainingSpoken = words::leftInStep(s);
    out.progress = step.timed ? 1.0 - static_cast<double>(remaining) / std::max(1, step.length.s) : 0.0;
    out.all = words::leftInAll(s);
    out.meter = meterOf(s);
    out.canRead = step.phase > 0;
    out.alarm = s.alarm;
    out.exits = exitsOf(s);
    out.out = words::pausedName(s);
    out.main = mainButtonOf(s);
    out.mainText = words::primaryName(s);
    out.pads = q.site == Site::Armpits;
    out.keptRunning = q.waveform == Waveform::Direct ? words::stillDirect() : words::stillPulsed();
    return out;
}

ui::AfterPage afterPage(const bath::State& s)
{
    ui::AfterPage out;
    out.completed = s.phase == bath::Phase::Finished;
    out.why = words::endSentence(s);
    out.pads = s.script.request.site == Site::Armpits;
    // What set off the alarm is not proposed as comfortable.
    out.comfortable = bath::mostComfortable(s).value_or(Milliamps{0}).mA;
    out.target = s.target().mA;
    out.limit = s.script.request.limit.mA;
    return out;
}

Session sessionOf(const bath::State& state)
{
    Session s;
    s.site = state.script.request.site;
    s.waveform = state.script.request.waveform;
    s.completed = state.phase == bath::Phase::Finished;
    if (const double peak = peakOf(state); peak > 0)
        s.peak = Milliamps{peak};
    if (const auto readings = readingsOf(state); readings.size() > 1)
        s.charge = bath::chargeOf(readings);
    return s;
}

} // namespace firstdew::viewmodels
