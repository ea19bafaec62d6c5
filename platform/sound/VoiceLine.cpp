#include "sound/VoiceLine.h"

#include <QMediaDevices>
#include <algorithm>
#include <utility>

namespace firstdew::sound {

namespace {

/// A server that answers later than this hangs, and the person is told (our own choice).
constexpr int kHangsMs = 1500;
/// What a server that hung plays later than this would not be true any more (our own choice).
constexpr qint64 kStaleMs = 2000;
/// At the end of the program a server that hangs is not waited for longer.
constexpr unsigned long kFarewellMs = 500;

} // namespace

VoiceLine::VoiceLine(QObject* parent) : QObject(parent), m_thread(new QThread), m_output(new SoundOutput)
{
    m_clock.start();
    m_output->moveToThread(m_thread);
    connect(m_thread, &QThread::finished, m_output, &QObject::deleteLater);
    connect(m_output, &SoundOutput::handled, this, &VoiceLine::answered);
    connect(m_output, &SoundOutput::silent, this, [this](bool lost) {
        m_lost = lost;
        tell();
    });
    m_watch.setSingleShot(true);
    connect(&m_watch, &QTimer::timeout, this, &VoiceLine::look);
    m_thread->start();
}

VoiceLine::~VoiceLine()
{
    hush();
    disconnect(m_output, nullptr, this, nullptr);
    m_thread->quit();
    if (m_thread->wait(kFarewellMs))
        delete m_thread; // one that waits for the server is left to the end of the process
}

/// Has it done in the output's thread, and watches how long that takes.
void VoiceLine::post(std::function<void(SoundOutput&)> what)
{
    m_asked.push_back(m_clock.elapsed());
    if (!m_watch.isActive())
        m_watch.start(kHangsMs);
    QMetaObject::invokeMethod(
        m_output,
        [output = m_output, what = std::move(what)] {
            what(*output);
            emit output->handled();
        },
        Qt::QueuedConnection);
}

void VoiceLine::answered()
{
    m_asked.pop_front();
    if (m_asked.empty())
        m_watch.stop();
    look();
}

void VoiceLine::look()
{
    m_hangs = !m_asked.empty() && m_clock.elapsed() - m_asked.front() >= kHangsMs;
    if (!m_asked.empty())
        m_watch.start(kHangsMs);
    tell();
}

void VoiceLine::tell()
{
    const bool now = m_lost || m_hangs;
    if (std::exchange(m_silent, now) != now)
        emit silent(now);
}

bool VoiceLine::prepare()
{
    const bool there = !QMediaDevices::defaultAudioOutput().isNull();
    post([](SoundOutput& output) { (void)output.prepare(); });
    return there;
}

void VoiceLine::add(const QByteArray& samples)
{
    const qint64 ms = format().durationForBytes(static_cast<qint32>(samples.size())) / 1000;
    m_silentAt = std::max(m_clock.elapsed(), m_silentAt) + ms;
    post([samples, turn = m_turn, mine = m_turn->load(), clock = m_clock, at = m_clock.elapsed()](SoundOutput& output) {
        if (turn->load() == mine && clock.elapsed() - at < kStaleMs)
            output.add(samples);
    });
}

qint64 VoiceLine::leftMs() const { return m_silent ? 0 : std::max<qint64>(m_silentAt - m_clock.elapsed(), 0); }

void VoiceLine::hush()
{
    ++*m_turn;
    m_silentAt = 0;
    post([](SoundOutput& output) { output.hush(); });
}

} // namespace firstdew::sound
