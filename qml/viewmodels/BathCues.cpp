#include "BathCues.h"

#include "Store.h"
#include "words/Announced.h"
#include "words/BathWords.h"
#include "words/Prompts.h"

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
        say({bath::EffectKind::Say, prompt});
}

void BathCues::say(const bath::Effect& effect)
{
    if (toldByReader())
        m_ports.announcer->announce(words::promptText(*effect.prompt).toStdString(), ports::Announcer::Urgency::InTurn);
    else
        m_ports.voice.say(std::string(facts::token(*effect.prompt)));
}

/// The tone stays the app's, whoever says the words.
void BathCues::alarm(const bath::Effect& effect)
{
    m_ports.voice.alarm(toldByReader() ? std::string() : std::string(facts::token(*effect.prompt)));
    m_ports.haptics.alarm();
}

void BathCues::announce(const bath::Effect& effect, const bath::State& state)
{
    using bath::EffectKind;
    if (effect.kind != EffectKind::Say && effect.kind != EffectKind::AskMeter) // which say() announces
        if (const auto told = words::announced(effect, state, m_alarmTold))
            m_ports.announcer->announce(told->text.toStdString(), told->atOnce ? ports::Announcer::Urgency::AtOnce
                                                                               : ports::Announcer::Urgency::InTurn);
}

void BathCues::perform(const bath::Effect& effect, const bath::State& state)
{
    using bath::EffectKind;
    if (toldByReader())
        announce(effect, state);
    switch (effect.kind) {
    case EffectKind::Say: say(effect); break;
    case EffectKind::AskMeter:
        m_ports.voice.tone("minute");
        say(effect);
        break;
    case EffectKind::Alarm:
        m_alarmTold = true;
        alarm(effect);
        break;
    case EffectKind::AlarmOff:
        m_alarmTold = false;
        hush();
        break;
    case EffectKind::StepChanged:
        m_ports.voice.tone("step");
        pulse();
        break;
    case EffectKind::Completed:
        m_ports.voice.tone("done");
        pulse();
        break;
    case EffectKind::AskMeanwhile: alarm(effect); break; // nobody led, and current may flow: as loud as the alarm
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
    m_alarmTold = false;
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
