#pragma once

#include "ports/Voice.h"

#include <memory>

namespace firstdew::late {

/// The voice of the part "sound", which is loaded when something is first to be made ready or heard. Where the part is
/// missing it cannot be made ready, and the log says so.
class LateVoice final : public ports::Voice {
public:
    void choose(const ports::VoiceChoice& choice) override;
    void ask(const std::string& language, std::function<void(bool)> answer) override;
    [[nodiscard]] bool prepare() override;
    void say(const std::string& prompt) override;
    void tone(const std::string& name) override;
    void alarm(const std::string& prompt) override;
    void hush() override;

private:
    ports::Voice& voice();

    ports::VoiceChoice m_choice;
    std::unique_ptr<ports::Voice> m_voice;
    bool m_missing = false;
};

} // namespace firstdew::late
