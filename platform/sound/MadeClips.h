#pragma once

#include "ports/ClipMaker.h"

#include <QObject>
#include <QString>
#include <QTimer>
#include <map>
#include <memory>
#include <string>

namespace firstdew::sound {

/// Clips in a language that the recorded voice does not speak: the system's voice speaks every prompt into a file,
/// once, and each is checked (SpokenCheck.h). They count only if all are there, so that no session changes its
/// language in the middle.
class MadeClips : public QObject {
    Q_OBJECT

public:
    using Texts = std::map<std::string, std::string>; ///< by prompt id

    /// They are kept in a folder of `folder` for each language. Waiting longer than `patienceMs` for one is a failure.
    MadeClips(std::unique_ptr<ports::ClipMaker> maker, QString folder, int patienceMs = 20'000);
    ~MadeClips() override;

    /// Makes what is missing of those texts; what was made of others is made again. What failed in that language is
    /// not tried again before again().
    void want(const QString& language, const Texts& texts);
    void again() { m_failed.clear(); }
    /// Whether every one of the texts that were wanted last is there.
    [[nodiscard]] bool ready() const { return m_ready; }
    [[nodiscard]] bool speaks(const QString& language) const { return m_ready && m_language == language; }
    [[nodiscard]] QString folder() const;
    /// One of them turned out unusable: they are made again.
    void spoil();

signals:
    /// ready() has changed, or other clips are there.
    void changed();

private:
    void stop();
    void next();
    void made(bool written);
    void fail(const char* why);
    [[nodiscard]] QString fileOf(const std::string& id) const;
    [[nodiscard]] Texts kept() const;
    [[nodiscard]] bool keep() const;

    std::unique_ptr<ports::ClipMaker> m_maker;
    QString m_root;
    QString m_language;
    QString m_failed;
    Texts m_texts;
    Texts m_left;
    QTimer m_late;
    bool m_ready = false;
};

} // namespace firstdew::sound
