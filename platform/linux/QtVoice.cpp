#include "linux/QtVoice.h"

#include <QDir>
#include <QFile>
#include <QUrl>
#include <QtEndian>

namespace firstdew::linuxside
{

namespace
{

/// A prompt that would begin later than this after its moment says something that is no longer true.
constexpr qint64 kTooLateMs = 8000;
/// A clip that has not ended so long after its length never will: Qt 6.4 now and then misses the end of a short one.
constexpr int kOverdueMs = 700;
constexpr qint64 kHeaderBytes = 44;
constexpr qint64 kBytesPerSecondAt = 28; // within the header of a WAV file

/// How long a clip lasts, by its header.
int lengthMs(const QUrl& source)
{
    QFile file(QLatin1Char(':') + source.path());
    if (!file.open(QIODevice::ReadOnly))
        return 0;
    const QByteArray head = file.read(kHeaderBytes);
    const auto rate = head.size() == kHeaderBytes ? qFromLittleEndian<quint32>(head.constData() + kBytesPerSecondAt) : 0U;
    return rate > 0 ? static_cast<int>(1000 * (file.size() - kHeaderBytes) / rate) : 0;
}

} // namespace

QtVoice::QtVoice(QObject* parent) : QObject(parent)
{
    // A sound server that quietens other programs beside spoken help goes by the role, for which Qt has no call.
    if (!qEnvironmentVariableIsSet("PULSE_PROP"))
        qputenv("PULSE_PROP", "media.role=a11y");
    m_clock.start();
    m_overdue.setSingleShot(true);
    connect(&m_overdue, &QTimer::timeout, this, &QtVoice::giveUp);
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
                m_overdue.stop();
                // Not from within its own signal: the same clip once more would be lost, and all that comes after it.
                QTimer::singleShot(0, this, [this] { goOn(); });
            }
        });
        // A clip that cannot be decoded must not hold up those behind it.
        connect(made, &QSoundEffect::statusChanged, this, [this, made] {
            if (made->status() == QSoundEffect::Error && m_playing == made) {
                m_playing = nullptr;
                playNext();
            } else if (made->status() == QSoundEffect::Ready && m_playing == made && !made->isPlaying()) {
                play();
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
    goOn();
}

void QtVoice::goOn()
{
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
            play();
        return;
    }
}

void QtVoice::play()
{
    m_overdue.start(lengthMs(m_playing->source()) + kOverdueMs);
    m_playing->play();
}

/// The clip is let go of and loaded anew when it is next wanted; what waits behind it goes on.
void QtVoice::giveUp()
{
    QSoundEffect* stuck = std::exchange(m_playing, nullptr);
    if (stuck == nullptr)
        return;
    stuck->disconnect(this);
    stuck->stop();
    const auto slot = m_effects.find(stuck->source().toString());
    if (slot != m_effects.end()) {
        slot->second.release()->deleteLater();
        m_effects.erase(slot);
    }
    goOn();
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
    m_overdue.stop();
    if (QSoundEffect* playing = std::exchange(m_playing, nullptr))
        playing->stop();
}

} // namespace firstdew::linuxside
