#pragma once

#include "ports/Voice.h"
#include "sound/Clips.h"
#include "sound/DeviceVoice.h"
#include "sound/LeadLine.h"
#include "sound/MadeClips.h"
#include "sound/VoiceLine.h"

#include <deque>
#include <map>
#include <optional>

namespace firstdew::sound {

/// Plays tones and prompts one after the other. Prompts are recorded clips or the device's own voice.
class QtVoice : public QObject, public ports::Voice {
    Q_OBJECT

public:
    /// `speaker` is the program of the device's voice (DeviceVoice.h). If it is empty, the recorded voice speaks.
    /// `speed` is that of the session's clock, in tests.
    explicit QtVoice(const QString& speaker = {}, double speed = 1, QObject* parent = nullptr);
    ~QtVoice() override;
    /// In a language without recorded clips, `maker` speaks them into files below `folder`.
    void makeClips(std::unique_ptr<ports::ClipMaker> maker, const QString& folder);
    void choose(const ports::VoiceChoice& choice) override;
    void ask(const std::string& language, std::function<void(bool)> answer) override;
    [[nodiscard]] bool prepare() override;
    void onSilence(std::function<void(bool)> tell) override { m_tellSilence = std::move(tell); }
    [[nodiscard]] ports::Says says() const override;
    [[nodiscard]] bool hasBed() const override { return m_hasBed; }
    void onChange(std::function<void()> tell) override { m_tellChange = std::move(tell); }
    [[nodiscard]] ports::Lead leads() override;
    void plan(const std::vector<ports::Planned>& planned, long long endsMs) override;
    void endPlan() override;
    void say(const std::string& prompt) override;
    void tone(const std::string& name) override;
    void alarm(const std::string& prompt) override;
    void hush() override;

private:
    struct Waiting {
        std::string id;
        bool spoken = false;
        qint64 since = 0;
    };
    VoiceLine& line();
    [[nodiscard]] QString spoken() const;
    [[nodiscard]] bool speaksByDevice() const;
    [[nodiscard]] bool ahead() const;
    [[nodiscard]] qint64 aheadLeftMs() const;
    [[nodiscard]] qint64 leftMs() const;
    void closeWhenSilent();
    void openAhead();
    void aheadIs(bool there);
    void wantClips();
    void checkMade();
    void tellSays();
    void enqueue(const std::string& id, bool spoken);
    void goOn();
    void play(const Waiting& next);
    void afterSaid(bool said);
    [[nodiscard]] bool byDevice(const Waiting& next) const;

    ports::VoiceChoice m_choice;
    double m_speed;
    std::optional<VoiceLine> m_line; // created at the first sound
    std::unique_ptr<LeadLine> m_ahead;
    bool m_plans = false; ///< a session is led
    QElapsedTimer m_opened;
    QElapsedTimer m_wanted;
    QTimer m_closer;
    Clips m_clips;
    std::optional<MadeClips> m_made; // where the system has a voice that speaks into files
    ports::Says m_said = ports::Says::English;
    bool m_hasBed = false; ///< by the last word of the line that is filled ahead
    std::function<void()> m_tellChange;
    std::function<void(bool)> m_tellSilence;
    DeviceVoice m_device;
    std::deque<Waiting> m_waiting;
    Waiting m_saying;
    std::function<void()> m_asking; // called when it is known whether the device has a voice
    QElapsedTimer m_clock;
    QTimer m_next;
};

} // namespace firstdew::sound
