#include "sound/SoundOutput.h"

#include <QMediaDevices>
#include <algorithm>
#include <utility>

namespace firstdew::sound {

namespace {

constexpr int kSampleRate = 16'000;
/// A sound server starts to play once it has about this much.
constexpr int kAheadMs = 60;
constexpr int kFeedMs = 20;
/// The line stays open this long after its end: the output may lag, and a sound soon after starts without delay.
constexpr int kLingerMs = 1500;
constexpr int kRetryMs = 1000; // while there is no output (our own choice)

} // namespace

QAudioFormat SoundOutput::format()
{
    QAudioFormat format;
    format.setSampleRate(kSampleRate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

SoundOutput::SoundOutput(QObject* parent) : QObject(parent)
{
    m_clock.start();
    m_feeder.setInterval(kFeedMs);
    m_feeder.setTimerType(Qt::PreciseTimer);
    connect(&m_feeder, &QTimer::timeout, this, &SoundOutput::feed);
    m_closer.setSingleShot(true);
    connect(&m_closer, &QTimer::timeout, this, &SoundOutput::close);
    m_retry.setInterval(kRetryMs);
    connect(&m_retry, &QTimer::timeout, this, &SoundOutput::open);
}

SoundOutput::~SoundOutput()
{
    hush();
    m_sink.reset(); // processes events, so everything else must still exist
}

/// Opens the system's present output. A headset may have been plugged in or out since the last time.
bool SoundOutput::prepare()
{
    const QAudioDevice device = QMediaDevices::defaultAudioOutput();
    if (device.isNull())
        return false;
    if (m_sink && device == m_device && !m_silent)
        return true;
    m_device = device;
    if (m_sink)
        m_sink.release()->deleteLater(); // deleting processes events, which is not safe in this function
    m_sink = std::make_unique<QAudioSink>(device, format());
    m_sink->setBufferSize(format().bytesForDuration(1000 * kAheadMs));
    connect(m_sink.get(), &QAudioSink::stateChanged, this, &SoundOutput::stateChanged);
    return true;
}

/// The output was lost while something played.
void SoundOutput::stateChanged(QAudio::State state)
{
    if (sender() == m_sink.get() && state == QAudio::StoppedState && m_sink->error() != QAudio::NoError)
        setSilent(true);
}

void SoundOutput::setSilent(bool now)
{
    if (now)
        m_retry.start();
    else
        m_retry.stop();
    if (std::exchange(m_silent, now) != now)
        emit silent(now);
}

bool SoundOutput::open()
{
    if (m_out && !m_silent)
        return true;
    m_out = prepare() ? m_sink->start() : nullptr;
    m_silentAt = m_clock.elapsed();
    setSilent(m_out == nullptr);
    return m_out;
}

void SoundOutput::add(const QByteArray& samples)
{
    if (!open())
        return;
    m_silentAt = m_clock.elapsed() + leftMs() + format().durationForBytes(static_cast<qint32>(samples.size())) / 1000;
    m_rest += samples;
    feed();
    // Later: a slot that runs now may add the next sound.
    QMetaObject::invokeMethod(this, &SoundOutput::fillUp, Qt::QueuedConnection);
}

/// Adds silence after a tone that is too short for the server to start.
void SoundOutput::fillUp()
{
    if (m_out && leftMs() < 2 * kAheadMs) {
        m_rest += QByteArray(format().bytesForDuration(1000 * kAheadMs), 0);
        feed();
    }
}

void SoundOutput::feed()
{
    const qint64 taken = m_out ? m_out->write(m_rest) : m_rest.size();
    m_rest.remove(0, static_cast<qsizetype>(std::max<qint64>(taken, 0)));
    if (m_rest.isEmpty())
        m_feeder.stop();
    else if (!m_feeder.isActive())
        m_feeder.start();
    m_closer.start(static_cast<int>(leftMs()) + kLingerMs);
}

qint64 SoundOutput::leftMs() const { return std::max<qint64>(m_silentAt - m_clock.elapsed(), 0); }

void SoundOutput::hush()
{
    m_retry.stop();
    close();
}

void SoundOutput::close()
{
    m_rest.clear();
    m_feeder.stop();
    m_closer.stop();
    m_silentAt = 0;
    if (m_sink)
        m_sink->reset();
}

} // namespace firstdew::sound
