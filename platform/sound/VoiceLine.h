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
/// line is silent. The output is open only while something plays, so that silence costs no power.
class VoiceLine : public QObject {
    Q_OBJECT

public:
    explicit VoiceLine(QObject* parent = nullptr);
    ~VoiceLine() override;
    /// The format of all samples: 16 bits, 16 kHz, one channel.
    [[nodiscard]] static QAudioFormat format();
    /// Opens the output early, so that the first sound starts without delay. Returns false if there is no output.
    bool prepare();
    void add(const QByteArray& samples);
    /// The time until all added samples have been heard.
    [[nodiscard]] qint64 leftMs() const;
    /// Stops at once and drops the samples not yet heard.
    void hush();

signals:
    /// True: the output is lost, and added samples are not heard. False: the output is back.
    void silent(bool silent);

private:
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
    QTimer m_feeder;
    QTimer m_closer;
    QTimer m_retry; ///< runs while the line is silent
    bool m_silent = false;
};

} // namespace firstdew::sound
