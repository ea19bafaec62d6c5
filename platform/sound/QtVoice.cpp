#include "sound/QtVoice.h"

#include <QDir>

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

/// Clips that come with the app are compressed; tones, and clips that were made here, are not.
QString fileOf(const QString& folder, const std::string& id)
{
    const QString name = folder + QString::fromStdString(id);
    return name + (folder.startsWith(kVoices) ? QStringLiteral(".opus") : QStringLiteral(".wav"));
}

bool hasClips(const QString& language) { return !language.isEmpty() && QDir(kVoices + language).exists(); }

} // namespace

QtVoice::QtVoice(const QString& speaker, double speed, QObject* parent)
    : QObject(parent), m_speed(speed), m_device(speaker)
{
    // The line's own thread calls; there, nothing may be done.
    m_ahead = makeLeadLine(Timeline(kLeadMs * kPerMs, kTooLateMs * kPerMs), [this](bool there) {
        QMetaObject::invokeMethod(
            this, [this, there] { aheadIs(there); }, Qt::QueuedConnection);
    });
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

/// Opens the line that is filled ahead, unless it is open or was tried just now.
void QtVoice::openAhead()
{
    if (!m_ahead)
        return;
    m_wanted.start();
    if (!m_ahead->ready() && (!m_opened.isValid() || m_opened.elapsed() > kOpenAgainMs)) {
        m_opened.start();
        m_ahead->open();
        m_closer.start();
    }
}

ports::Lead QtVoice::leads()
{
    if (!m_ahead)
        return ports::Lead::App;
    openAhead();
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
        sounds.push_back({sampleOf(p.inMs), m_clips.get(fileOf(folder, id)), id, spoken, cuts});
    };
    for (const ports::Planned& p : planned) {
        if (p.kind == Kind::Alarm) // the person's settings do not silence an alarm
            add(p, kTones, "alarm", false, true);
        if (p.kind == Kind::Alarm || (p.kind == Kind::Prompt && m_choice.voice))
            add(p, spoken(), p.id, true, false);
        if (p.kind == Kind::Tone && m_choice.tones)
            add(p, kTones, p.id, false, false);
    }
    const auto bed = m_clips.get(fileOf(kTones, "bed"));
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

/// The line that is filled ahead is there, or is not. Where it is lost in a session, the other line finds out whether
/// anything can be heard, and says so.
void QtVoice::aheadIs(bool there)
{
    if (std::exchange(m_hasBed, there) != there && m_tellChange)
        m_tellChange();
    if (!there && m_plans)
        line().add(QByteArray(VoiceLine::format().bytesForDuration(1000 * kLeadMs), 0));
}

ports::Says QtVoice::says() const
{
    const QString language = QString::fromStdString(m_choice.recorded);
    if (hasClips(language))
        return ports::Says::Recorded;
    return m_made && m_made->speaks(language) ? ports::Says::Made : ports::Says::English;
}

QString QtVoice::spoken() const
{
    switch (says()) {
    case ports::Says::Recorded: return kVoices + QString::fromStdString(m_choice.recorded) + QLatin1Char('/');
    case ports::Says::Made: return m_made->folder();
    case ports::Says::English: break;
    }
    return kVoices + kEnglish + QLatin1Char('/');
}

void QtVoice::makeClips(std::unique_ptr<ports::ClipMaker> maker, const QString& folder)
{
    m_made.emplace(std::move(maker), folder);
    connect(&*m_made, &MadeClips::changed, this, [this] {
        m_clips.forget(m_made->folder());
        tellSays();
    });
}

void QtVoice::choose(const ports::VoiceChoice& choice)
{
    m_choice = choice;
    wantClips();
    tellSays();
}

void QtVoice::tellSays()
{
    if (const auto now = says(); std::exchange(m_said, now) != now && m_tellChange)
        m_tellChange();
}

/// Has the device's voice speak what the recorded one does not.
void QtVoice::wantClips()
{
    const QString language = QString::fromStdString(m_choice.recorded);
    if (!m_made || !m_choice.text || language.isEmpty() || hasClips(language))
        return;
    MadeClips::Texts texts;
    for (const QString& file : QDir(kVoices + kEnglish).entryList({QStringLiteral("*.opus")})) {
        const std::string id = file.chopped(5).toStdString();
        texts[id] = m_choice.text(id);
    }
    m_made->want(language, texts);
}

void QtVoice::ask(const std::string& language, std::function<void(bool)> answer)
{
    openAhead();
    if (m_made) {
        m_made->again();
        wantClips();
    }
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
    openAhead();
    if (says() == ports::Says::Made)
        checkMade();
    QStringList files;
    for (const QString& folder : {kTones, spoken()}) // the tones are few, and the alarm is one of them
        for (const QString& file : QDir(folder).entryList({QStringLiteral("*.wav"), QStringLiteral("*.opus")}))
            files << folder + file;
    m_clips.fetch(files);
    return line().prepare();
}

/// The system may have emptied the folder, or only half of it.
void QtVoice::checkMade()
{
    const QString folder = spoken();
    for (const QString& file : QDir(kVoices + kEnglish).entryList({QStringLiteral("*.opus")}))
        if (m_clips.get(fileOf(folder, file.chopped(5).toStdString()))->empty()) {
            m_made->spoil();
            wantClips();
            return;
        }
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
        m_saying = next;
        m_device.say(QString::fromStdString(m_choice.text(next.id)));
        return;
    }
    const QString source = fileOf(next.spoken ? spoken() : kTones, next.id);
    if (ahead()) {
        m_ahead->change([&](Timeline& t, Moment now) {
            t.add(now.changeable, {0, m_clips.get(source), next.id, next.spoken});
        });
        return;
    }
    const auto clip = m_clips.get(source);
    const bool follows = next.spoken && line().leftMs() > 0;
    const std::size_t skip = follows ? std::min<std::size_t>(kLeadMs * kPerMs, clip->size()) : 0;
    line().add(QByteArray(reinterpret_cast<const char*>(clip->data() + skip),
                          static_cast<qsizetype>((clip->size() - skip) * sizeof(std::int16_t))));
}

void QtVoice::afterSaid(bool said)
{
    if (!said)
        m_waiting.push_front(m_saying); // the recorded voice repeats it
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
