#pragma once

#include "sound/SoundOutput.h"

#include <QThread>
#include <atomic>
#include <deque>
#include <functional>

namespace firstdew::sound {

/// The person's output of sound, from a thread that never waits for it: a sound server may hang, and the alarm on the
/// screen, the stop and the session must not hang with it. Added samples follow earlier ones without a gap.
class VoiceLine : public QObject {
    Q_OBJECT

public:
    explicit VoiceLine(QObject* parent = nullptr);
    ~VoiceLine() override;
    /// The format of all samples: 16 bits, 16 kHz, one channel.
    [[nodiscard]] static QAudioFormat format() { return SoundOutput::format(); }
    /// Makes ready to open, so that the first sound starts without delay. Returns false if there is no output.
    bool prepare();
    void add(const QByteArray& samples);
    /// The time until all added samples have been heard; 0 while nothing is heard.
    [[nodiscard]] qint64 leftMs() const;
    /// Stops at once and drops the samples not yet heard.
    void hush();

signals:
    /// True: the output is lost or does not answer, and added samples are not heard. False: the output is back.
    void silent(bool silent);

private:
    void post(std::function<void(SoundOutput&)> what);
    void answered();
    void look();
    void tell();

    QThread* m_thread;
    SoundOutput* m_output;                                                            ///< lives in that thread
    std::shared_ptr<std::atomic<int>> m_turn = std::make_shared<std::atomic<int>>(0); ///< rises with each hush
    QElapsedTimer m_clock;
    qint64 m_silentAt = 0;
    std::deque<qint64> m_asked; ///< when each call was made that is not answered yet
    QTimer m_watch;
    bool m_lost = false;
    bool m_hangs = false;
    bool m_silent = false;
};

} // namespace firstdew::sound
