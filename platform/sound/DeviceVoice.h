#pragma once

#include <QObject>
#include <QString>
#include <memory>

namespace firstdew::sound {

/// The voice that the device itself has for a language. It speaks in a program of its own (sound/Speaker.cpp): an
/// engine that hangs or dies takes nothing of a session with it. What has not answered in its time is taken for not
/// there.
class DeviceVoice : public QObject {
    Q_OBJECT

public:
    /// How long to wait, in milliseconds.
    struct Patience {
        int answers = 30'000; ///< for a voice to be found: some engines have hundreds to list
        int begins = 2'500;   ///< for a prompt to be heard
        int ends = 20'000;    ///< for its end: none is so long
    };
    /// `program` speaks; without one there is no voice.
    explicit DeviceVoice(const QString& program, Patience patience, QObject* parent = nullptr);
    explicit DeviceVoice(const QString& program, QObject* parent = nullptr) : DeviceVoice(program, Patience(), parent)
    {
    }
    ~DeviceVoice() override;

    /// Looks for a voice for that language, unless it is at hand or being looked for; answered() follows where it
    /// looks.
    void look(const QString& language);
    /// Whether one for that language is at hand.
    [[nodiscard]] bool speaks(const QString& language) const;
    /// Whether one for that language is being looked for.
    [[nodiscard]] bool looksFor(const QString& language) const;
    /// Only while it speaks a language, and is not busy.
    void say(const QString& text);
    [[nodiscard]] bool busy() const;
    /// Silent, without ended().
    void stop();

signals:
    void answered();
    /// What was asked for has been said, or could not be.
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
