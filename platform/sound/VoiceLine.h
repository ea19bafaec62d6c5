#pragma once

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QElapsedTimer>
#include <QPointer>
#include <QTimer>
#include <memory>

namespace firstdew::sound {

/// One line of sound to the output the person uses: what is added is heard behind what was added before, without a gap,
/// and at once where the line is silent. Open only while something is heard, so that silence costs nothing.
class VoiceLine : public QObject {
    Q_OBJECT

public:
    explicit VoiceLine(QObject* parent = nullptr);
    ~VoiceLine() override;
    /// What all samples are: 16 bits, 16 kHz, one channel.
    [[nodiscard]] static QAudioFormat format();
    /// Opens the output that the person uses, so that the first sound is as prompt as the last. Returns false if there
    /// is none.
    bool prepare();
    void add(const QByteArray& samples);
    /// How long what was added is still heard.
    [[nodiscard]] qint64 leftMs() const;
    /// Silent at once; what was not heard yet is dropped.
    void hush();

signals:
    /// True: what was added is not heard. False: the output is there again.
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
    QPointer<QIODevice> m_out; // the sink takes it away when it stops
    QByteArray m_rest;         // what the system has not taken yet
    QElapsedTimer m_clock;
    qint64 m_silentAt = 0;
    QTimer m_feeder;
    QTimer m_closer;
    QTimer m_retry; ///< runs while the line is silent
    bool m_silent = false;
};

} // namespace firstdew::sound
