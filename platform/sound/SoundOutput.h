#pragma once

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QElapsedTimer>
#include <QPointer>
#include <QTimer>
#include <memory>

namespace firstdew::sound {

/// A stream of sound to the person's output. Added samples follow earlier ones without a gap, or start at once if the
/// output is silent. It is open only while something plays, so that silence costs no power. Any of its functions may
/// wait for the sound server, for as long as that hangs: VoiceLine calls them in a thread of their own.
class SoundOutput : public QObject {
    Q_OBJECT

public:
    explicit SoundOutput(QObject* parent = nullptr);
    ~SoundOutput() override;
    /// The format of all samples: 16 bits, 16 kHz, one channel.
    [[nodiscard]] static QAudioFormat format();
    /// Makes ready to open, so that the first sound starts without delay. Returns false if there is no output.
    bool prepare();
    void add(const QByteArray& samples);
    /// Stops at once and drops the samples not yet heard.
    void hush();

signals:
    /// True: the output is lost, and added samples are not heard. False: the output is back.
    void silent(bool silent);
    /// What was asked for is done, however long the server took.
    void handled();

private:
    [[nodiscard]] qint64 leftMs() const;
    bool open();
    void close();
    void setSilent(bool silent);
    void stateChanged(QAudio::State state);
    void feed();
    void fillUp();

    std::unique_ptr<QAudioSink> m_sink;
    QAudioDevice m_device;
    QPointer<QIODevice> m_out; // deleted by the sink when it stops
    QByteArray m_rest;         // samples that the system has not accepted yet
    QElapsedTimer m_clock;
    qint64 m_silentAt = 0;
    QTimer m_feeder{this}; // of this thread, wherever it is moved
    QTimer m_closer{this};
    QTimer m_retry{this}; ///< runs while the line is silent
    bool m_silent = false;
};

} // namespace firstdew::sound
