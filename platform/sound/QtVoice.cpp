#include "sound/QtVoice.h"

#include <QDir>
#include <QFile>
#include <QWaveDecoder>

namespace firstdew::sound {

namespace {

/// A prompt that begins later than this may no longer be true.
constexpr qint64 kTooLateMs = 8000;
/// Every clip begins with at least this much silence (assets/voice/make.py). It is not needed after a tone.
constexpr int kLeadMs = 25;
constexpr int kPerMs = 16; // samples
/// What the device's voice is to say is said by the recorded one where the app has not said it this long after.
constexpr long long kReserveMs = 1000;
constexpr int kCloseMs = 1000;
constexpr int kUnwantedMs = 10'000; // a session asks all the time
constexpr int kOpenAgainMs = 2000;  // while the line is not there (our own choice)

const QString kVoices = QStringLiteral(":/firstdew/voice/");
const QString kEnglish = QStringLiteral("en");
const QString kTones = QStringLiteral(":/firstdew/sounds/");

QString fileOf(const QString& folder, const std::string& id)
{
    return folder + QString::fromStdString(id) + QStringLiteral(".wav");
}

QByteArray decoded(const QString& source)
{
    QFile file(source);
    QWaveDecoder decoder(&file);
    if (file.open(QIODevice::ReadOnly) && decoder.open(QIODevice::ReadOnly) &&
        decoder.audioFormat() == VoiceLine::format())
        return decoder.readAll();
    qWarning("not heard, for it cannot be decoded: %s", qPrintable(source));
    return {};
}

} // namespace

QtVoice::QtVoice(const QString& speaker, double speed, QObject* parent)
    : QObject(parent), m_speed(speed), m_device(speaker)
{
    // The line's own thread calls; there, nothing may be done.
    m_ahead = makeLeadLine(Timeline(kLeadMs * kPerMs, kTooLateMs * kPerMs),
                           [this] { QMetaObject::invokeMethod(this, &QtVoice::lostAhead, Qt::QueuedConnection); });
    m_closer.setInterval(kCloseMs);
    connect(&m_closer, &QTimer::timeout, this, &QtVoice::closeWhenSilent);
    m_clock.start();
    m_next.setSingleShot(true);
    m_next.setTimerType(Qt::PreciseTimer);
    connect(&m_next, &QTimer::timeout, this, &QtVoice::goOn);
    connect(&m_device, &DeviceVoice::ended, this, &QtVoice::afterSaid);
    connect(&m_device, &DeviceVoice::answered, this, [this] {
        if (const auto tell = std::exchange(m_asking, nullptr))
            tell();
    });
}

QtVoice::~QtVoice() { m_ahead.reset(); }

VoiceLine& QtVoice::line()
{
    if (!m_line) {
        // The role lets the sound server lower other programs. Qt has no function for it.
        if (!qEnvironmentVariableIsSet("PULSE_PROP"))
            qputenv("PULSE_PROP", "media.role=a11y");
        m_line.emplace();
        connect(&*m_line, &VoiceLine::silent, this, [this](bool silent) {
            if (m_tellSilence)
                m_tellSilence(silent);
        });
    }
    return *m_line;
}

const QByteArray& QtVoice::samples(const QString& source)
{
    const auto [clip, isNew] = m_clips.try_emplace(source);
    if (isNew)
        clip->second = decoded(source);
    return clip->second;
}

std::shared_ptr<const Samples> QtVoice::shared(const QString& source)
{
    auto& clip = m_shared[source];
    if (!clip) {
        const QByteArray& bytes = samples(source);
        const auto* first = reinterpret_cast<const std::int16_t*>(bytes.constData());
        clip = std::make_shared<const Samples>(first, first + bytes.size() / 2);
    }
    return clip;
}

/// Whether sounds go to the line that is filled ahead.
bool QtVoice::ahead() const
{
    return m_ahead && m_ahead->ready() && (m_plans || aheadLeftMs() > 0) && (!m_line || m_line->leftMs() == 0);
}

qint64 QtVoice::aheadLeftMs() const
{
    long long left = 0;
    if (m_ahead)
        m_ahead->read([&](const Timeline& t, Moment now) { left = (t.left(now.heard) + kPerMs - 1) / kPerMs; });
    return left;
}

qint64 QtVoice::leftMs() const { return std::max(m_line ? m_line->leftMs() : 0, aheadLeftMs()); }

bool QtVoice::speaksByDevice() const
{
    return m_choice.text && !m_choice.language.empty() && m_device.speaks(QString::fromStdString(m_choice.language));
}

ports::Lead QtVoice::leads()
{
    if (!m_ahead)
        return ports::Lead::App;
    m_wanted.start();
    if (!m_ahead->ready() && (!m_opened.isValid() || m_opened.elapsed() > kOpenAgainMs)) {
        m_opened.start();
        m_ahead->open();
        m_closer.start();
    }
    // What the other line says is said to its end first.
    if (!m_ahead->ready() || (m_line && m_line->leftMs() > 0))
        return ports::Lead::App;
    return speaksByDevice() ? ports::Lead::Reserve : ports::Lead::Line;
}

void QtVoice::plan(const std::vector<ports::Planned>& planned, long long endsMs)
{
    using Kind = ports::Planned::Kind;
    QElapsedTimer since; // what is planned counts from here, however long it takes to plan it
    since.start();
    const ports::Lead lead = leads();
    if (lead == ports::Lead::App)
        return;
    m_plans = true;
    const long long later = lead == ports::Lead::Reserve ? kReserveMs : 0;
    const auto sampleOf = [&](long long ms) {
        return static_cast<long long>((static_cast<double>(ms) / m_speed + static_cast<double>(later)) * kPerMs);
    };
    std::vector<Timeline::Sound> sounds;
    const auto add = [&](const ports::Planned& p, const QString& folder, const std::string& id, bool spoken,
                         bool cuts) {
        sounds.push_back({sampleOf(p.inMs), shared(fileOf(folder, id)), id, spoken, cuts});
    };
    for (const ports::Planned& p : planned) {
        if (p.kind == Kind::Alarm) // the person's settings do not silence an alarm
            add(p, kTones, "alarm", false, true);
        if (p.kind == Kind::Alarm || (p.kind == Kind::Prompt && m_choice.voice))
            add(p, spoken(), p.id, true, false);
        if (p.kind == Kind::Tone && m_choice.tones)
            add(p, kTones, p.id, false, false);
    }
    const auto bed = shared(fileOf(kTones, "bed"));
    m_ahead->change([&](Timeline& t, Moment now) {
        const long long start = now.heard - since.elapsed() * kPerMs;
        for (auto& s : sounds)
            s.due += start;
        t.setBed(bed);
        t.plan(now.changeable, std::move(sounds), start + sampleOf(endsMs));
    });
}

void QtVoice::endPlan()
{
    m_plans = false;
    if (m_ahead)
        m_ahead->change([](Timeline& t, Moment now) { t.end(now.changeable); });
}

/// After a session the line is closed, because an open one costs power.
void QtVoice::closeWhenSilent()
{
    bool silent = !m_plans && m_wanted.elapsed() > kUnwantedMs;
    m_ahead->read([&](const Timeline& t, Moment now) {
        silent = silent && t.silentFrom(now.heard - static_cast<long long>(kCloseMs) * kPerMs);
    });
    if (!silent)
        return;
    m_closer.stop();
    m_ahead->close();
}

/// The other line finds out whether anything can be heard, and says so.
void QtVoice::lostAhead()
{
    if (m_plans)
        line().add(QByteArray(VoiceLine::format().bytesForDuration(1000 * kLeadMs), 0));
}

/// The clips of the person's language, or the English ones where there are none.
QString QtVoice::spoken() const
{
    const QString own = kVoices + QString::fromStdString(m_choice.recorded);
    return (m_choice.recorded.empty() || !QDir(own).exists() ? kVoices + kEnglish : own) + QLatin1Char('/');
}

void QtVoice::ask(const std::string& language, std::function<void(bool)> answer)
{
    const QString wanted = QString::fromStdString(language);
    m_device.findVoice(wanted);
    if (m_device.looksFor(wanted))
        m_asking = [wanted, answer = std::move(answer), this] { answer(m_device.speaks(wanted)); };
    else
        answer(m_device.speaks(wanted));
}

bool QtVoice::prepare()
{
    if (!m_choice.language.empty())
        m_device.findVoice(QString::fromStdString(m_choice.language));
    const bool audible = line().prepare();
    for (const QString& folder : {spoken(), kTones})
        for (const QString& file : QDir(folder).entryList({QStringLiteral("*.wav")}))
            samples(folder + file);
    return audible;
}

bool QtVoice::byDevice(const Waiting& next) const { return next.spoken && speaksByDevice(); }

void QtVoice::enqueue(const std::string& id, bool spoken)
{
    m_waiting.push_back({id, spoken, m_clock.elapsed()});
    goOn();
}

/// Clips and tones follow each other without a gap. The device's voice waits for them, and they wait for it.
void QtVoice::goOn()
{
    while (!m_waiting.empty() && !m_device.busy()) {
        const Waiting next = m_waiting.front();
        const qint64 left = leftMs();
        if (left > 0 && byDevice(next)) {
            m_next.start(static_cast<int>(left));
            return;
        }
        m_waiting.pop_front();
        if (m_clock.elapsed() + left - next.since <= kTooLateMs)
            play(next);
    }
}

void QtVoice::play(const Waiting& next)
{
    if (byDevice(next)) {
        m_said = next;
        m_device.say(QString::fromStdString(m_choice.text(next.id)));
        return;
    }
    const QString source = fileOf(next.spoken ? spoken() : kTones, next.id);
    if (ahead()) {
        m_ahead->change([&](Timeline& t, Moment now) {
            t.add(now.changeable, {0, shared(source), next.id, next.spoken});
        });
        return;
    }
    const QByteArray& clip = samples(source);
    const bool follows = next.spoken && line().leftMs() > 0;
    line().add(follows ? clip.mid(VoiceLine::format().bytesForDuration(1000 * kLeadMs)) : clip);
}

void QtVoice::afterSaid(bool said)
{
    if (!said)
        m_waiting.push_front(m_said); // the recorded voice repeats it
    goOn();
}

void QtVoice::say(const std::string& prompt)
{
    if (m_choice.voice)
        enqueue(prompt, true);
}

void QtVoice::tone(const std::string& name)
{
    if (m_choice.tones)
        enqueue(name, false);
}

void QtVoice::alarm(const std::string& prompt)
{
    hush();
    // The person's settings do not silence an alarm.
    enqueue("alarm", false);
    if (!prompt.empty())
        enqueue(prompt, true);
}

void QtVoice::hush()
{
    m_waiting.clear();
    m_next.stop();
    m_device.stop();
    if (m_line)
        m_line->hush();
    if (m_ahead)
        m_ahead->change([](Timeline& t, Moment) { t.hush(); });
}

} // namespace firstdew::sound
