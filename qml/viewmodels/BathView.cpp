#include "BathView.h"

#include "Store.h"
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

} // namespace

QVariantMap runningView(const bath::State& s)
{
    const auto& step = s.script.steps[s.step];
    const auto& q = s.script.request;
    const int remaining = bath::remainingInStep(s).s;
    const double length = std::max(1, step.length.s);
    return {{"step", words::stepName(step)},
            {"kind", token(step.kind)},
            {"sentence", words::nowSentence(s)},
            {"remaining", step.timed ? words::countdown(remaining) : QString()},
            {"remainingSpoken", words::leftInStep(s)},
            {"progress", step.timed ? 1.0 - remaining / length : 0.0},
            {"timed", step.timed},
            {"phase", words::phaseName(s)},
            {"side", step.side ? words::sideName(*step.side) : QString()},
            {"next", words::nextName(s)},
            {"target", words::milliamps(s.target().mA)},
            {"limit", words::milliamps(q.limit.mA)},
            {"reading", words::readingName(s.lastReading)},
            {"hasReading", s.lastReading.has_value() &&
                               s.current != bath::Current::Zero}, // what it showed before is no answer to "at zero?"
            {"limitMa", q.limit.mA},
            {"lastReading", s.lastReading ? s.lastReading->current.mA : s.target().mA},
            {"alarm", s.alarm},
            {"flowing", s.current != bath::Current::Zero},
            {"under", bath::handsAreUnder(s)},
            {"mostReading", bath::kMostPlausibleReading.mA},
            {"waveform", words::waveformName(q.waveform)},
            {"note", words::noteAtSwap(s)},
            {"out", words::pausedName(s)},
            {"pads", q.site == Site::Armpits},
            {"keptRunning", q.waveform == Waveform::Direct ? words::stillDirect() : words::stillPulsed()},
            {"primary", words::primaryName(s)},
            {"all", words::leftInAll(s)},
            {"canRead", step.phase > 0}};
}

QVariantMap afterView(const bath::State& s)
{
    const double most = s.script.request.limit.mA;
    // What set off the alarm is not proposed as comfortable.
    const double within = bath::mostComfortable(s).value_or(Milliamps{0}).mA;
    return {{"completed", s.phase == bath::Phase::Finished},
            {"peak", peakOf(s)},
            {"comfortable", within},
            {"target", s.target().mA},
            {"why", words::endSentence(s)},
            {"pads", s.script.request.site == Site::Armpits},
            {"limit", most}};
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
