#include "sound/DeviceVoice.h"

#include <QProcess>
#include <QTimer>

namespace firstdew::sound {

#if QT_CONFIG(process)

enum class Now { Absent, Looking, Silent, Asked, Speaking };

struct DeviceVoice::Inside {
    QString program;
    Patience patience;
    std::unique_ptr<QProcess> speaker;
    QString language;
    Now now = Now::Absent;
    int number = 0; // of the present prompt, so that a late end of a stopped prompt is ignored
    QTimer late;
};

DeviceVoice::DeviceVoice(const QString& program, Patience patience, QObject* parent)
    : QObject(parent), m_inside(std::make_unique<Inside>())
{
    m_inside->program = program;
    m_inside->patience = patience;
    m_inside->late.setSingleShot(true);
    connect(&m_inside->late, &QTimer::timeout, this, &DeviceVoice::overdue);
}

DeviceVoice::~DeviceVoice() { dismiss(); }

void DeviceVoice::findVoice(const QString& language)
{
    if (m_inside->program.isEmpty() || (m_inside->now != Now::Absent && m_inside->language == language))
        return;
    dismiss();
    m_inside->language = language;
    m_inside->now = Now::Looking;
    m_inside->speaker = std::make_unique<QProcess>();
    QProcess* speaker = m_inside->speaker.get();
    speaker->setProcessChannelMode(QProcess::ForwardedErrorChannel);
    connect(speaker, &QProcess::readyReadStandardOutput, this, [this, speaker] {
        while (m_inside->speaker.get() == speaker && speaker->canReadLine())
            hear(speaker->readLine().trimmed());
    });
    connect(speaker, &QProcess::finished, this, &DeviceVoice::giveUp);
    connect(speaker, &QProcess::errorOccurred, this, &DeviceVoice::giveUp);
    m_inside->late.start(m_inside->patience.answers);
    speaker->start(m_inside->program, {language});
}

/// Reads the speaker's output: "ready", then "begun", "ended" or "failed" with the number of the text.
void DeviceVoice::hear(const QByteArray& line)
{
    const auto is = [&](const char* word) {
        return line == QByteArray(word) + ' ' + QByteArray::number(m_inside->number);
    };
    if (m_inside->now == Now::Looking && line == "ready") {
        m_inside->now = Now::Silent;
        m_inside->late.stop();
        emit answered();
    } else if (m_inside->now == Now::Asked && is("begun")) {
        m_inside->now = Now::Speaking;
        m_inside->late.start(m_inside->patience.ends);
    } else if (m_inside->now == Now::Speaking && is("ended")) {
        m_inside->now = Now::Silent;
        m_inside->late.stop();
        emit ended(true);
    } else if (busy() && is("failed")) {
        giveUp();
    }
}

void DeviceVoice::overdue()
{
    if (m_inside->now != Now::Speaking) {
        giveUp();
        return;
    }
    stop();
    emit ended(true);
}

/// Does not wait for the process, because this may run inside one of its signals.
void DeviceVoice::dismiss()
{
    QProcess* speaker = m_inside->speaker.release();
    if (speaker == nullptr)
        return;
    speaker->disconnect(this);
    if (speaker->state() == QProcess::NotRunning) {
        speaker->deleteLater();
        return;
    }
    connect(speaker, &QProcess::finished, speaker, &QObject::deleteLater);
    connect(speaker, &QProcess::errorOccurred, speaker, &QObject::deleteLater);
    speaker->kill();
}

/// Drops the voice. The next search may find it again.
void DeviceVoice::giveUp()
{
    const Now was = std::exchange(m_inside->now, Now::Absent);
    m_inside->late.stop();
    dismiss();
    if (was == Now::Looking)
        emit answered();
    else if (was == Now::Asked || was == Now::Speaking)
        emit ended(was == Now::Speaking);
}

bool DeviceVoice::speaks(const QString& language) const
{
    return m_inside->language == language && m_inside->now != Now::Absent && m_inside->now != Now::Looking;
}

bool DeviceVoice::looksFor(const QString& language) const
{
    return m_inside->language == language && m_inside->now == Now::Looking;
}

void DeviceVoice::say(const QString& text)
{
    m_inside->now = Now::Asked;
    m_inside->late.start(m_inside->patience.begins);
    m_inside->speaker->write(QByteArray::number(++m_inside->number) + ' ' + text.simplified().toUtf8() + '\n');
}

bool DeviceVoice::busy() const { return m_inside->now == Now::Asked || m_inside->now == Now::Speaking; }

void DeviceVoice::stop()
{
    if (!busy())
        return;
    m_inside->late.stop();
    m_inside->now = Now::Silent;
    m_inside->speaker->write("stop\n");
}

#else // the system has no child processes

struct DeviceVoice::Inside {};

DeviceVoice::DeviceVoice(const QString&, Patience, QObject* parent) : QObject(parent) {}
DeviceVoice::~DeviceVoice() = default;
void DeviceVoice::findVoice(const QString&) {}
void DeviceVoice::hear(const QByteArray&) {}
void DeviceVoice::overdue() {}
void DeviceVoice::giveUp() {}
void DeviceVoice::dismiss() {}
bool DeviceVoice::speaks(const QString&) const { return false; }
bool DeviceVoice::looksFor(const QString&) const { return false; }
void DeviceVoice::say(const QString&) {}
bool DeviceVoice::busy() const { return false; }
void DeviceVoice::stop() {}

#endif

} // namespace firstdew::sound
