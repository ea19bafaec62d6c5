#pragma once

#include "ports/Voice.h"
#include "sound/DeviceVoice.h"
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
    explicit QtVoice(const QString& speaker = {}, QObject* parent = nullptr);
    void choose(const ports::VoiceChoice& choice) override { m_choice = choice; }
    void ask(const std::string& language, std::function<void(bool)> answer) override;
    [[nodiscard]] bool prepare() override;
    void onSilence(std::function<void(bool)> tell) override { m_tellSilence = std::move(tell); }
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
    const QByteArray& samples(const QString& source);
    void enqueue(const std::string& id, bool spoken);
    void goOn();
    void play(const Waiting& next);
    void afterSaid(bool said);
    [[nodiscard]] bool byDevice(const Waiting& next) const;

    ports::VoiceChoice m_choice;
    std::optional<VoiceLine> m_line; // created at the first sound
    std::function<void(bool)> m_tellSilence;
    DeviceVoice m_device;
    std::map<QString, QByteArray> m_clips;
    std::deque<Waiting> m_waiting;
    Waiting m_said;
    std::function<void()> m_asking; // called when it is known whether the device has a voice
    QElapsedTimer m_clock;
    QTimer m_next;
};

} // namespace firstdew::sound
