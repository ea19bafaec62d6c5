#include "linux/QtVoice.h"

#include <QDir>
#include <QUrl>

namespace firstdew::linuxside
{

namespace
{

/// A prompt that would begin later than this after its moment says something that is no longer true.
constexpr qint64 kTooLateMs = 8000;

} // namespace

QtVoice::QtVoice(QObject* parent) : QObject(parent)
{
    m_clock.start();
}

QSoundEffect* QtVoice::effect(const QString& source)
{
    auto& slot = m_effects[source];
    if (!slot) {
        slot = std::make_unique<QSoundEffect>();
        slot->setSource(QUrl(source));
        QSoundEffect* made = slot.get();
        connect(made, &QSoundEffect::playingChanged, this, [this, made] {
            if (m_playing == made && !made->isPlaying()) {
                m_playing = nullptr;
                playNext();
            }
        });
        // A clip that cannot be decoded must not hold up those behind it.
        connect(made, &QSoundEffect::statusChanged, this, [this, made] {
            if (made->status() == QSoundEffect::Error && m_playing == made) {
                m_playing = nullptr;
                playNext();
            } else if (made->status() == QSoundEffect::Ready && m_playing == made && !made->isPlaying()) {
                made->play();
            }
        });
    }
    return slot.get();
}

void QtVoice::prepare()
{
    for (const QString& folder : {QStringLiteral(":/firstdew/voice/en"), QStringLiteral(":/firstdew/sounds")})
        for (const QString& file : QDir(folder).entryList({QStringLiteral("*.wav")}))
            effect(QStringLiteral("qrc%1/%2").arg(folder, file));
}

void QtVoice::enqueue(const QString& source)
{
    m_waiting.push_back({source, m_clock.elapsed()});
    if (!m_playing)
        playNext();
}

void QtVoice::playNext()
{
    while (!m_waiting.empty()) {
        const Waiting next = m_waiting.front();
        m_waiting.pop_front();
        if (m_clock.elapsed() - next.since > kTooLateMs)
            continue;
        m_playing = effect(next.source);
        if (m_playing->status() == QSoundEffect::Error) {
            m_playing = nullptr;
            continue;
        }
        if (m_playing->status() == QSoundEffect::Ready)
            m_playing->play();
        return;
    }
}

void QtVoice::say(const std::string& prompt)
{
    if (m_choice.voice)
        enqueue(QStringLiteral("qrc:/firstdew/voice/en/%1.wav").arg(QString::fromStdString(prompt)));
}

void QtVoice::tone(const std::string& name)
{
    if (m_choice.tones)
        enqueue(QStringLiteral("qrc:/firstdew/sounds/%1.wav").arg(QString::fromStdString(name)));
}

void QtVoice::alarm(const std::string& prompt)
{
    hush();
    // An alarm is heard whatever was chosen.
    enqueue(QStringLiteral("qrc:/firstdew/sounds/alarm.wav"));
    enqueue(QStringLiteral("qrc:/firstdew/voice/en/%1.wav").arg(QString::fromStdString(prompt)));
}

void QtVoice::hush()
{
    m_waiting.clear();
    if (QSoundEffect* playing = std::exchange(m_playing, nullptr))
        playing->stop();
}

} // namespace firstdew::linuxside
