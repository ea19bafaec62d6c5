#include "sound/QtVoice.h"

#include <QDir>
#include <QFile>
#include <QWaveDecoder>

namespace firstdew::sound {

namespace {

/// A prompt that begins later than this may no longer be true.
constexpr qint64 kTooLateMs = 8000;
/// Every clip begins with at least this much silence (assets/voice/make.py). It is not needed after a tone.
constexpr int kLeadMs = 25;

const QString kSpoken = QStringLiteral(":/firstdew/voice/en/");
const QString kTones = QStringLiteral(":/firstdew/sounds/");

QString fileOf(const QString& folder, const std::string& id)
{
    return folder + QString::fromStdString(id) + QStringLiteral(".wav");
}

QByteArray decoded(const QString& source)
{
    QFile file(source);
    QWaveDecoder decoder(&file);
    if (file.open(QIODevice::ReadOnly) && decoder.open(QIODevice::ReadOnly) &&
        decoder.audioFormat() == VoiceLine::format())
        return decoder.readAll();
    qWarning("not heard, for it cannot be decoded: %s", qPrintable(source));
    return {};
}

} // namespace

QtVoice::QtVoice(const QString& speaker, QObject* parent) : QObject(parent), m_device(speaker)
{
    m_clock.start();
    m_next.setSingleShot(true);
    m_next.setTimerType(Qt::PreciseTimer);
    connect(&m_next, &QTimer::timeout, this, &QtVoice::goOn);
    connect(&m_device, &DeviceVoice::ended, this, &QtVoice::afterSaid);
    connect(&m_device, &DeviceVoice::answered, this, [this] {
        if (const auto tell = std::exchange(m_asking, nullptr))
            tell();
    });
}

VoiceLine& QtVoice::line()
{
    if (!m_line) {
        // The role lets the sound server lower other programs. Qt has no function for it.
        if (!qEnvironmentVariableIsSet("PULSE_PROP"))
            qputenv("PULSE_PROP", "media.role=a11y");
        m_line.emplace();
        connect(&*m_line, &VoiceLine::silent, this, [this](bool silent) {
            if (m_tellSilence)
                m_tellSilence(silent);
        });
    }
    return *m_line;
}

const QByteArray& QtVoice::samples(const QString& source)
{
    const auto [clip, isNew] = m_clips.try_emplace(source);
    if (isNew)
        clip->second = decoded(source);
    return clip->second;
}

void QtVoice::ask(const std::string& language, std::function<void(bool)> answer)
{
    const QString wanted = QString::fromStdString(language);
    m_device.findVoice(wanted);
    if (m_device.looksFor(wanted))
        m_asking = [wanted, answer = std::move(answer), this] { answer(m_device.speaks(wanted)); };
    else
        answer(m_device.speaks(wanted));
}

bool QtVoice::prepare()
{
    if (!m_choice.language.empty())
        m_device.findVoice(QString::fromStdString(m_choice.language));
    const bool audible = line().prepare();
    for (const QString& folder : {kSpoken, kTones})
        for (const QString& file : QDir(folder).entryList({QStringLiteral("*.wav")}))
            samples(folder + file);
    return audible;
}

bool QtVoice::byDevice(const Waiting& next) const
{
    return next.spoken && m_choice.text && !m_choice.language.empty() &&
           m_device.speaks(QString::fromStdString(m_choice.language));
}

void QtVoice::enqueue(const std::string& id, bool spoken)
{
    m_waiting.push_back({id, spoken, m_clock.elapsed()});
    goOn();
}

/// Clips and tones follow each other without a gap. The device's voice waits for them, and they wait for it.
void QtVoice::goOn()
{
    while (!m_waiting.empty() && !m_device.busy()) {
        const Waiting next = m_waiting.front();
        const qint64 left = line().leftMs();
        if (left > 0 && byDevice(next)) {
            m_next.start(static_cast<int>(left));
            return;
        }
        m_waiting.pop_front();
        if (m_clock.elapsed() + left - next.since <= kTooLateMs)
            play(next);
    }
}

void QtVoice::play(const Waiting& next)
{
    if (byDevice(next)) {
        m_said = next;
        m_device.say(QString::fromStdString(m_choice.text(next.id)));
        return;
    }
    const QByteArray& clip = samples(fileOf(next.spoken ? kSpoken : kTones, next.id));
    const bool follows = next.spoken && line().leftMs() > 0;
    line().add(follows ? clip.mid(VoiceLine::format().bytesForDuration(1000 * kLeadMs)) : clip);
}

void QtVoice::afterSaid(bool said)
{
    if (!said)
        m_waiting.push_front(m_said); // the recorded voice repeats it
    goOn();
}

void QtVoice::say(const std::string& prompt)
{
    if (m_choice.voice)
        enqueue(prompt, true);
}

void QtVoice::tone(const std::string& name)
{
    if (m_choice.tones)
        enqueue(name, false);
}

void QtVoice::alarm(const std::string& prompt)
{
    hush();
    // The person's settings do not silence an alarm.
    enqueue("alarm", false);
    if (!prompt.empty())
        enqueue(prompt, true);
}

void QtVoice::hush()
{
    m_waiting.clear();
    m_next.stop();
    m_device.stop();
    if (m_line)
        m_line->hush();
}

} // namespace firstdew::sound
