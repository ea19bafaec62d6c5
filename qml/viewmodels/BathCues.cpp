#include "BathCues.h"

#include "Store.h"
#include "words/BathWords.h"

#include <cstdlib>
#include <utility>

namespace firstdew::viewmodels {

namespace {

/// The end of a step is known to the second; what moves by less has not moved.
constexpr long long kSameEndMs = 1500;

ports::SessionStep shownOf(const bath::State& state)
{
    const auto& step = state.script.steps[state.step];
    ports::SessionStep out;
    out.title = words::noticeTitle(state).toStdString();
    out.stop = words::stopName().toStdString();
    if (step.timed && !words::waitsAtZero(state)) {
        out.endWallMs = state.last.wallMs + 1000LL * bath::remainingInStep(state).s;
        out.ends = words::endsName(*out.endWallMs).toStdString();
    }
    return out;
}

bool sameToTheEye(const ports::SessionStep& a, const ports::SessionStep& b)
{
    return a.title == b.title && a.stop == b.stop && a.endWallMs.has_value() == b.endWallMs.has_value() &&
           std::llabs(a.endWallMs.value_or(0) - b.endWallMs.value_or(0)) < kSameEndMs;
}

} // namespace

bool wantsVibration(const Store& store) { return store.diary().preferences.vibration; }

void BathCues::speakOfKit(facts::Waveform waveform)
{
    using protocol::Prompt;
    for (const auto prompt : {Prompt::CheckEverything,
                              waveform == facts::Waveform::Direct ? Prompt::SwitchOnDirect : Prompt::SwitchOnPulsed})
        m_ports.voice.say(std::string(facts::token(prompt)));
}

void BathCues::perform(const bath::Effect& effect)
{
    using bath::EffectKind;
    const auto prompt = [&] { return std::string(facts::token(*effect.prompt)); };
    switch (effect.kind) {
    case EffectKind::Say: m_ports.voice.say(prompt()); break;
    case EffectKind::AskMeter:
        m_ports.voice.tone("minute");
        m_ports.voice.say(prompt());
        break;
    case EffectKind::Alarm:
        m_ports.voice.alarm(prompt());
        m_ports.haptics.alarm();
        break;
    case EffectKind::AlarmOff: hush(); break;
    case EffectKind::StepChanged:
        m_ports.voice.tone("step");
        pulse();
        break;
    case EffectKind::Completed:
        m_ports.voice.tone("done");
        pulse();
        break;
    case EffectKind::AskMeanwhile: // nobody led, and current may flow: as loud as the alarm
        m_ports.voice.alarm(prompt());
        m_ports.haptics.alarm();
        break;
    case EffectKind::Interrupted: break;
    }
}

void BathCues::pulse()
{
    if (wantsVibration(m_store))
        m_ports.haptics.pulse();
}

void BathCues::follow(const bath::State& state)
{
    if (state.phase != bath::Phase::Running) {
        // What the machine does is not known until the person has said it, and a countdown would say that it is.
        if (std::exchange(m_shown, std::nullopt))
            m_ports.notice.over();
        return;
    }
    const auto step = shownOf(state);
    if (m_shown && sameToTheEye(*m_shown, step))
        return;
    m_shown = step;
    m_ports.notice.show(step);
}

void BathCues::end()
{
    m_ports.wake.keepAwake(false);
    m_ports.haptics.still();
    if (std::exchange(m_shown, std::nullopt))
        m_ports.notice.over();
}

void BathCues::hush()
{
    m_ports.voice.hush();
    m_ports.haptics.still();
}

} // namespace firstdew::viewmodels
