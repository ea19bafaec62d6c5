#pragma once

#include "ports/Voice.h"

#include <QElapsedTimer>
#include <QObject>
#include <QSoundEffect>
#include <QTimer>
#include <deque>
#include <map>
#include <memory>

namespace firstdew::linuxside
{

/// How the app speaks: the person's choice in Plan.
struct VoiceChoice {
    bool voice = true;
    bool tones = true;
};

/// Clips and tones from the program's own resources through Qt Multimedia, one after the other. The output stays open
/// from the first prompt on, so that a clip starts without the delay of opening it.
class QtVoice : public QObject, public ports::Voice
{
    Q_OBJECT

public:
    explicit QtVoice(QObject* parent = nullptr);
    void choose(VoiceChoice choice) { m_choice = choice; }
    void prepare() override;
    void say(const std::string& prompt) override;
    void tone(const std::string& name) override;
    void alarm(const std::string& prompt) override;
    void hush() override;

private:
    struct Waiting {
        QString source;
        qint64 since;
    };
    QSoundEffect* effect(const QString& source);
    void enqueue(const QString& source);
    void goOn();
    void playNext();
    void play();
    void giveUp();

    VoiceChoice m_choice;
    std::map<QString, std::unique_ptr<QSoundEffect>> m_effects;
    std::deque<Waiting> m_waiting;
    QSoundEffect* m_playing = nullptr;
    QElapsedTimer m_clock;
    QTimer m_overdue;
};

} // namespace firstdew::linuxside
