#pragma once

#include "ports/Announcer.h"
#include "ports/Haptics.h"
#include "ports/SessionNotice.h"
#include "ports/Voice.h"
#include "ports/WakeGuard.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "bath/Ahead.h"
#endif

#include <deque>

namespace firstdew::viewmodels {

class Store;

/// What a running session has of the system.
struct BathPorts {
    ports::Voice& voice;
    ports::WakeGuard& wake;
    ports::Haptics& haptics;
    ports::SessionNotice& notice;
    /// Whether a screen reader takes touches first.
    std::function<bool()> screenReader = [] { return false; };
    ports::Announcer* announcer = nullptr; ///< where there is one
};

/// Whether the person wants to feel each step; an alarm is felt whatever was chosen.
[[nodiscard]] bool wantsVibration(const Store& store);

/// Has a session heard, felt and shown outside the app, as far as the person chose and the system can.
class BathCues {
public:
    BathCues(const Store& store, BathPorts ports) : m_store(store), m_ports(ports) {}
    [[nodiscard]] bool canVibrate() const { return m_ports.haptics.present(); }
    /// Makes ready for a session that may follow, so that its first prompt comes in time.
    [[nodiscard]] bool prepare() { return m_ports.voice.prepare(); }
    /// Not with a screen reader: it says the words, and nothing is handed to the sound server.
    [[nodiscard]] bool hasBed() const { return m_ports.voice.hasBed() && !toldByReader(); }
    /// Who can say the prompts in the person's language.
    [[nodiscard]] protocol::Speakers speakers() const
    {
        const auto says = m_ports.voice.says();
        return {says == ports::Says::Recorded, says == ports::Says::Made, toldByReader()};
    }
    /// Calls `tell` when speakers() or hasBed() has changed.
    void onChange(std::function<void()> tell) { m_ports.voice.onChange(std::move(tell)); }
    [[nodiscard]] bool screenReader() const { return m_ports.screenReader(); }
    void askVoice(const std::string& language, std::function<void(bool)> answer)
    {
        m_ports.voice.ask(language, std::move(answer));
    }
    /// Calls `tell` with true when nothing can be heard any more, and with false when it can be heard again.
    void onSilence(std::function<void(bool silent)> tell) { m_ports.voice.onSilence(std::move(tell)); }
    /// Calls `stop` when the person stops the session outside the app.
    void onStop(std::function<void()> stop) { m_ports.notice.onStop(std::move(stop)); }
    /// One prompt, to try how loud it is.
    void tryOut() { m_ports.voice.say("volume-check"); }
    /// Before the session: the kit is checked and the machine switched on while the voice says it.
    void speakOfKit(facts::Waveform waveform);
    /// The screen stays on from here to end().
    void begin() { m_ports.wake.keepAwake(true); }
    /// `state` is that after the effect.
    void perform(const bath::Effect& effect, const bath::State& state);
    /// The same in a session that is led ahead: what the voice says by itself at its time is only felt.
    void performUnlessAhead(const bath::Effect& effect, const bath::State& state, facts::Instant now);
    /// Gives the voice the time ahead, unless it has it. `changed`: something happened besides time.
    void lookAhead(const bath::State& state, facts::Instant now, bool changed);
    /// What the system shows of the session outside the app follows it; to be called whenever something may have
    /// changed.
    void follow(const bath::State& state);
    /// The session is over; what is being said is said to its end.
    void end();
    /// Silent at once.
    void hush();

private:
    void pulse();
    /// Whether a screen reader says the words, so that the app's voice must not.
    [[nodiscard]] bool toldByReader() const { return m_ports.announcer != nullptr && m_ports.announcer->listens(); }
    void announce(const bath::Effect& effect, const bath::State& state);
    void say(const std::string& id, protocol::Prompt prompt);
    void sound(const bath::Effect& effect);
    void feel(const bath::Effect& effect);
    void forgetAhead();
    [[nodiscard]] bool saidAhead(const bath::Effect& effect, facts::Instant now);

    const Store& m_store;
    BathPorts m_ports;
    std::optional<ports::SessionStep> m_shown;
    ports::Lead m_lead = ports::Lead::App; ///< who says what is planned
    bool m_stale = true;                   ///< something was said that is not in the plan
    /// What the voice says by itself; `atMs` by the clock that never jumps.
    std::deque<bath::Cue> m_ahead;
    bool m_alarmTold = false; ///< the alarm that stands was announced
};

} // namespace firstdew::viewmodels
