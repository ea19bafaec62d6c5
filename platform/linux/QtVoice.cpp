#include "linux/QtVoice.h"

#include <QDir>
#include <QFile>
#include <QWaveDecoder>

namespace firstdew::linuxside
{

namespace
{

/// A prompt that would begin later than this after its moment says something that is no longer true.
constexpr qint64 kTooLateMs = 8000;
/// Every clip begins with silence of this length at the least (assets/voice/make.py); behind a tone it is not needed.
constexpr int kLeadMs = 25;

const QString kSpoken = QStringLiteral(":/firstdew/voice/en/");
const QString kTones = QStringLiteral(":/firstdew/sounds/");

QString fileOf(const QString& folder, const std::string& id) { return folder + QString::fromStdString(id) + QStringLiteral(".wav"); }

QByteArray decoded(const QString& source)
{
    QFile file(source);
    QWaveDecoder decoder(&file);
    if (file.open(QIODevice::ReadOnly) && decoder.open(QIODevice::ReadOnly) && decoder.audioFormat() == VoiceLine::format())
        return decoder.readAll();
    qWarning("not heard, for it cannot be decoded: %s", qPrintable(source));
    return {};
}

} // namespace

QtVoice::QtVoice(QObject* parent) : QObject(parent) {}

VoiceLine& QtVoice::line()
{
    if (!m_line) {
        // A sound server that quietens other programs beside spoken help goes by the role, for which Qt has no call.
        if (!qEnvironmentVariableIsSet("PULSE_PROP"))
            qputenv("PULSE_PROP", "media.role=a11y");
        m_line.emplace();
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

bool QtVoice::prepare()
{
    line().prepare();
    for (const QString& folder : {kSpoken, kTones})
        for (const QString& file : QDir(folder).entryList({QStringLiteral("*.wav")}))
            samples(folder + file);
    return true;
}

void QtVoice::play(const QString& source, int leadMs)
{
    const qint64 wait = line().leftMs();
    if (wait <= kTooLateMs)
        line().add(wait > 0 ? samples(source).mid(VoiceLine::format().bytesForDuration(1000 * leadMs)) : samples(source));
}

void QtVoice::say(const std::string& prompt)
{
    if (m_choice.voice)
        play(fileOf(kSpoken, prompt), kLeadMs);
}

void QtVoice::tone(const std::string& name)
{
    if (m_choice.tones)
        play(fileOf(kTones, name));
}

void QtVoice::alarm(const std::string& prompt)
{
    hush();
    // An alarm is heard whatever was chosen.
    play(fileOf(kTones, "alarm"));
    play(fileOf(kSpoken, prompt), kLeadMs);
}

void QtVoice::hush()
{
    if (m_line)
        m_line->hush();
}

} // namespace firstdew::linuxside
