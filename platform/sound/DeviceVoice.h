#pragma once

#include <QObject>
#include <QString>
#include <memory>

namespace firstdew::sound {

/// The device's own voice for a language. It runs in a separate program (sound/Speaker.cpp), so that an engine that
/// hangs or dies does not affect a session. A voice that does not answer in time counts as missing.
class DeviceVoice : public QObject {
    Q_OBJECT

public:
    /// Time limits in milliseconds.
    struct Patience {
        int answers = 30'000; ///< to find a voice; some engines list hundreds
        int begins = 2'500;   ///< to begin a prompt
        int ends = 20'000;    ///< to end a prompt; longer than any prompt takes
    };
    /// `program` is the path of the speaker. If it is empty, there is no voice.
    explicit DeviceVoice(const QString& program, Patience patience, QObject* parent = nullptr);
    explicit DeviceVoice(const QString& program, QObject* parent = nullptr) : DeviceVoice(program, Patience(), parent)
    {
    }
    ~DeviceVoice() override;

    /// Starts a search for a voice for that language, unless it is ready or a search runs. A search ends with
    /// answered().
    void findVoice(const QString& language);
    /// Whether a voice for that language is ready.
    [[nodiscard]] bool speaks(const QString& language) const;
    /// Whether a search for that language runs.
    [[nodiscard]] bool looksFor(const QString& language) const;
    /// Requires a voice that is ready and not busy.
    void say(const QString& text);
    [[nodiscard]] bool busy() const;
    /// Stops the voice. ended() does not follow.
    void stop();

signals:
    void answered();
    /// The prompt has ended or failed.
    void ended(bool said);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;

    void hear(const QByteArray& line);
    void overdue();
    void giveUp();
    void dismiss();
};

} // namespace firstdew::sound
