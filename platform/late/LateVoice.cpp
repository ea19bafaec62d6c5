#include "late/LateVoice.h"

#include "late/Late.h"
#include "late/Parts.h"
#include "ports/Absent.h"

namespace firstdew::late {

ports::Voice& LateVoice::voice()
{
    if (!m_voice) {
        const auto* part = static_cast<const Sound*>(offered("sound"));
        m_missing = part == nullptr;
        if (m_missing)
            m_voice = std::make_unique<ports::AbsentVoice>();
        else
            m_voice.reset(part->make());
        m_voice->choose(m_choice);
    }
    return *m_voice;
}

void LateVoice::choose(const ports::VoiceChoice& choice)
{
    m_choice = choice;
    if (m_voice)
        m_voice->choose(choice);
}

void LateVoice::ask(const std::string& language, std::function<void(bool)> answer)
{
    voice().ask(language, std::move(answer));
}

bool LateVoice::prepare()
{
    const bool ready = voice().prepare();
    return ready && !m_missing;
}

void LateVoice::say(const std::string& prompt) { voice().say(prompt); }
void LateVoice::tone(const std::string& name) { voice().tone(name); }
void LateVoice::alarm(const std::string& prompt) { voice().alarm(prompt); }

void LateVoice::hush()
{
    if (m_voice)
        m_voice->hush();
}

} // namespace firstdew::late
