#include "sound/MadeClips.h"

#include "sound/Clips.h"
#include "sound/SpokenCheck.h"

#include <QDebug>
#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <algorithm>
#include <sndfile.h>
#include <utility>

namespace firstdew::sound {

namespace {

const QString kSaid = QStringLiteral("said.json");
const QString kFresh = QStringLiteral("fresh.wav"); ///< as the system's voice wrote it
constexpr qint64 kLeastBytes = 4096;                ///< a tenth of a second and more

int lettersOf(const std::string& text)
{
    const QString all = QString::fromStdString(text);
    return static_cast<int>(std::ranges::count_if(all, [](QChar c) { return c.isLetterOrNumber(); }));
}

bool writeClip(const QString& file, const Samples& samples)
{
    SF_INFO info{};
    info.samplerate = kRate;
    info.channels = 1;
    info.format = SF_FORMAT_WAV | SF_FORMAT_PCM_16;
    SNDFILE* out = sf_open(QFile::encodeName(file).constData(), SFM_WRITE, &info);
    if (out == nullptr)
        return false;
    const auto wanted = static_cast<sf_count_t>(samples.size());
    const bool written = sf_writef_short(out, samples.data(), wanted) == wanted;
    return sf_close(out) == 0 && written;
}

} // namespace

MadeClips::MadeClips(std::unique_ptr<ports::ClipMaker> maker, QString folder, int patienceMs)
    : m_maker(std::move(maker)), m_root(std::move(folder))
{
    m_late.setSingleShot(true);
    m_late.setInterval(patienceMs);
    connect(&m_late, &QTimer::timeout, this, [this] { fail("it did not answer"); });
}

MadeClips::~MadeClips() { m_maker->drop(); }

QString MadeClips::folder() const { return m_root + QLatin1Char('/') + m_language + QLatin1Char('/'); }

QString MadeClips::fileOf(const std::string& id) const
{
    return folder() + QString::fromStdString(id) + QStringLiteral(".wav");
}

/// What the clips on disk say.
MadeClips::Texts MadeClips::kept() const
{
    QFile file(folder() + kSaid);
    Texts said;
    if (file.open(QIODevice::ReadOnly)) {
        const QJsonObject all = QJsonDocument::fromJson(file.readAll()).object();
        for (auto entry = all.begin(); entry != all.end(); ++entry)
            if (QFile(fileOf(entry.key().toStdString())).size() >= kLeastBytes)
                said[entry.key().toStdString()] = entry.value().toString().toStdString();
    }
    return said;
}

bool MadeClips::keep() const
{
    QJsonObject all;
    for (const auto& [id, text] : m_texts)
        if (!m_left.contains(id))
            all[QString::fromStdString(id)] = QString::fromStdString(text);
    QSaveFile file(folder() + kSaid);
    return file.open(QIODevice::WriteOnly) && file.write(QJsonDocument(all).toJson()) > 0 && file.commit();
}

void MadeClips::stop()
{
    m_late.stop();
    m_maker->drop();
    m_left.clear();
}

void MadeClips::want(const QString& language, const Texts& texts)
{
    if (language == m_language && texts == m_texts && (m_ready || !m_left.empty()))
        return;
    if (language.isEmpty() || texts.empty() || language == m_failed)
        return;
    stop();
    m_language = language;
    m_texts = texts;
    const bool was = std::exchange(m_ready, false);
    const Texts said = kept();
    for (const auto& [id, text] : texts)
        if (const auto known = said.find(id); known == said.end() || known->second != text)
            m_left.emplace(id, text);
    m_ready = m_left.empty();
    if (was || m_ready)
        emit changed();
    if (!m_ready && QDir().mkpath(folder()))
        next();
}

void MadeClips::next()
{
    m_late.start();
    m_maker->speak(m_language.toStdString(), m_left.begin()->second, (folder() + kFresh).toStdString(),
                   [this](bool written) { made(written); });
}

void MadeClips::made(bool written)
{
    m_late.stop();
    if (m_left.empty()) // stopped meanwhile
        return;
    QFile fresh(folder() + kFresh);
    if (!written || !fresh.open(QIODevice::ReadOnly)) {
        fail("it has no voice for it");
        return;
    }
    const Samples samples = samplesOf(fresh.readAll());
    fresh.remove();
    const auto [id, text] = *m_left.begin();
    if (const auto fault = faultOf(loudnessOf(samples), lettersOf(text))) {
        qWarning("spoken by this device, \"%s\" is %s", id.c_str(),
                 *fault == Unspoken::Silent     ? "silent"
                 : *fault == Unspoken::TooShort ? "too short"
                                                : "too long");
        fail("it cannot be heard saying it");
        return;
    }
    if (!writeClip(fileOf(id), evened(samples))) {
        fail("the clip cannot be stored");
        return;
    }
    m_left.erase(id);
    if (!keep())
        fail("the clips cannot be stored");
    else if (!m_left.empty())
        next();
    else {
        m_ready = true;
        emit changed();
    }
}

void MadeClips::fail(const char* why)
{
    qWarning("this device's voice does not speak the prompts in \"%s\": %s", qPrintable(m_language), why);
    m_failed = m_language;
    stop();
}

void MadeClips::spoil()
{
    stop();
    QFile::remove(folder() + kSaid);
    if (std::exchange(m_ready, false))
        emit changed();
}

} // namespace firstdew::sound
