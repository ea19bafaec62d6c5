#pragma once

#include "linux/VoiceLine.h"
#include "ports/Voice.h"

#include <map>
#include <optional>

namespace firstdew::linuxside
{

/// Clips and tones from the program's own resources through Qt Multimedia, one after the other.
class QtVoice : public QObject, public ports::Voice
{
    Q_OBJECT

public:
    explicit QtVoice(QObject* parent = nullptr);
    void choose(const ports::VoiceChoice& choice) override { m_choice = choice; }
    [[nodiscard]] bool prepare() override;
    void say(const std::string& prompt) override;
    void tone(const std::string& name) override;
    void alarm(const std::string& prompt) override;
    void hush() override;

private:
    VoiceLine& line();
    const QByteArray& samples(const QString& source);
    void play(const QString& source, int leadMs = 0);

    ports::VoiceChoice m_choice;
    std::optional<VoiceLine> m_line; // nothing of sound is set up before something is to be heard
    std::map<QString, QByteArray> m_clips;
};

} // namespace firstdew::linuxside
