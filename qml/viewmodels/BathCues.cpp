#include "BathCues.h"

#include "Store.h"
#include "words/Announced.h"
#include "words/BathWords.h"
#include "words/Prompts.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace firstdew::viewmodels {

namespace {

/// The end of a step is known to the second; what moves by less has not moved.
constexpr long long kSameEndMs = 1500;
/// What is planned for this much later is what is happening now.
constexpr long long kSameMomentMs = 250;

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

/// What an effect sounds like.
std::vector<ports::Planned> soundsOf(const bath::Cue& cue)
{
    using bath::EffectKind;
    using enum ports::Planned::Kind;
    const auto prompt = [&] { return std::string(facts::token(*cue.effect.prompt)); };
    switch (cue.effect.kind) {
    case EffectKind::Say: return {{cue.atMs, Prompt, prompt()}};
    case EffectKind::AskMeter: return {{cue.atMs, Tone, "minute"}, {cue.atMs, Prompt, prompt()}};
    case EffectKind::StepChanged: return {{cue.atMs, Tone, "step"}};
    case EffectKind::Completed: return {{cue.atMs, Tone, "done"}};
    case EffectKind::Alarm:
    case EffectKind::AskMeanwhile: // nobody led, and current may flow: as loud as the alarm
        return {{cue.atMs, Alarm, prompt()}};
    case EffectKind::AlarmOff:
    case EffectKind::Interrupted: break;
    }
    return {};
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
        say(std::string(facts::token(prompt)), prompt);
}

/// The words, by whoever says them.
void BathCues::say(const std::string& id, protocol::Prompt prompt)
{
    if (toldByReader())
        m_ports.announcer->announce(words::promptText(prompt).toStdString(), ports::Announcer::Urgency::InTurn);
    else
        m_ports.voice.say(id);
}

void BathCues::perform(const bath::Effect& effect, const bath::State& state)
{
    announce(effect, state);
    sound(effect);
    feel(effect);
}

/// What a screen reader says besides the prompts.
void BathCues::announce(const bath::Effect& effect, const bath::State& state)
{
    using bath::EffectKind;
    const bool known = m_alarmTold;
    if (effect.kind == EffectKind::Alarm || effect.kind == EffectKind::AlarmOff)
        m_alarmTold = effect.kind == EffectKind::Alarm;
    if (!toldByReader() || effect.kind == EffectKind::Say || effect.kind == EffectKind::AskMeter)
        return;
    if (const auto told = words::announced(effect, state, known))
        m_ports.announcer->announce(told->text.toStdString(), told->atOnce ? ports::Announcer::Urgency::AtOnce
                                                                           : ports::Announcer::Urgency::InTurn);
}

void BathCues::sound(const bath::Effect& effect)
{
    for (const auto& planned : soundsOf({0, effect}))
        switch (planned.kind) {
        case ports::Planned::Kind::Tone: m_ports.voice.tone(planned.id); break;
        case ports::Planned::Kind::Prompt: say(planned.id, *effect.prompt); break;
        // The tone stays the app's, whoever says the words.
        case ports::Planned::Kind::Alarm: m_ports.voice.alarm(toldByReader() ? std::string() : planned.id); break;
        }
    if (effect.kind == bath::EffectKind::AlarmOff)
        m_ports.voice.hush();
}

void BathCues::feel(const bath::Effect& effect)
{
    using bath::EffectKind;
    switch (effect.kind) {
    case EffectKind::Alarm:
    case EffectKind::AskMeanwhile: m_ports.haptics.alarm(); break;
    case EffectKind::AlarmOff: m_ports.haptics.still(); break;
    case EffectKind::StepChanged:
    case EffectKind::Completed: pulse(); break;
    case EffectKind::Say:
    case EffectKind::AskMeter:
    case EffectKind::Interrupted: break;
    }
}

/// Whether the voice says that by itself, about now. What lies before it in the plan has been said.
bool BathCues::saidAhead(const bath::Effect& effect, facts::Instant now)
{
    if (m_lead != ports::Lead::Line || m_ports.voice.leads() != ports::Lead::Line ||
        effect.kind == bath::EffectKind::AlarmOff)
        return false;
    const auto planned = std::find_if(m_ahead.begin(), m_ahead.end(), [&](const bath::Cue& c) {
        return c.atMs <= now.monotonicMs + kSameMomentMs && c.effect.kind == effect.kind &&
               c.effect.prompt == effect.prompt;
    });
    if (planned == m_ahead.end())
        return false;
    m_ahead.erase(m_ahead.begin(), planned + 1);
    return true;
}

void BathCues::performUnlessAhead(const bath::Effect& effect, const bath::State& state, facts::Instant now)
{
    announce(effect, state);
    if (!saidAhead(effect, now)) {
        sound(effect);
        m_stale = true;
    }
    feel(effect);
}

void BathCues::lookAhead(const bath::State& state, facts::Instant now, bool changed)
{
    if (toldByReader()) {
        forgetAhead(); // a screen reader takes no words beforehand
        return;
    }
    if (!changed && !m_stale && m_lead != ports::Lead::App)
        return;
    m_lead = m_ports.voice.leads();
    m_stale = m_lead == ports::Lead::App; // asked again with the next tick
    if (m_stale)
        return;
    const bath::Ahead ahead = bath::ahead(state, now);
    const long long gone = m_store.clock().instant().monotonicMs - now.monotonicMs; // since that was so
    std::vector<ports::Planned> planned;
    m_ahead.clear();
    for (bath::Cue cue : ahead.cues) {
        auto sounds = soundsOf(cue);
        for (auto& sound : sounds) {
            sound.inMs -= gone;
            planned.push_back(std::move(sound));
        }
        cue.atMs += now.monotonicMs;
        m_ahead.push_back(cue);
    }
    m_ports.voice.plan(planned, ahead.endsMs - gone);
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
    m_ports.notice.alive();
    const auto step = shownOf(state);
    if (m_shown && sameToTheEye(*m_shown, step))
        return;
    m_shown = step;
    m_ports.notice.show(step);
}

void BathCues::forgetAhead()
{
    if (std::exchange(m_lead, ports::Lead::App) != ports::Lead::App)
        m_ports.voice.endPlan();
    m_ahead.clear();
    m_stale = true;
}

void BathCues::end()
{
    forgetAhead();
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
