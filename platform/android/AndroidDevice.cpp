#include "android/AndroidDevice.h"

#include <iostream>
#include <utility>

namespace firstdew::androidside {

namespace {

using nlohmann::json;

constexpr int kPulseMs = 60;
/// Three long vibrations. They end before the engine repeats the alarm.
const std::vector<int> kAlarmMs{0, 600, 200, 600, 200, 600};

/// Logs a failure. For calls that a session can do without.
void tryTo(const JavaSide& java, const char* verb, const json& document)
{
    if (const auto told = java.ask(verb, document); !told)
        std::clog << "firstdew: " << verb << ": " << told.error().message << '\n';
}

} // namespace

bool AndroidSharer::share(const std::string& file, const std::string& mimeType)
{
    return m_java.ask("share", {{"file", file}, {"type", mimeType}}).ok();
}

bool AndroidOpener::open(const std::string& path) { return m_java.ask("open", {{"file", path}}).ok(); }

bool AndroidAnnouncer::listens() const
{
    const auto told = m_java.ask("reader", json::object());
    return told && told->value("on", false);
}

void AndroidAnnouncer::announce(const std::string& text, Urgency) { tryTo(m_java, "announce", {{"text", text}}); }

bool AndroidHaptics::present() const
{
    const auto told = m_java.ask("vibrator", json::object());
    return told && told->value("present", false);
}

void AndroidHaptics::pulse() { shake({0, kPulseMs}); }
void AndroidHaptics::tick() { tryTo(m_java, "tick", json::object()); }
void AndroidHaptics::alarm() { shake(kAlarmMs); }
void AndroidHaptics::still() { shake({}); }
void AndroidHaptics::shake(const std::vector<int>& timings) { tryTo(m_java, "vibrate", {{"timings", timings}}); }

void AndroidWakeGuard::keepAwake(bool on) { tryTo(m_java, "awake", {{"on", on}}); }

/// If the system refuses, the session continues, but the system may stop the app in the background.
void BathNotice::show(const ports::SessionStep& step)
{
    tryTo(m_java, "bath", {{"title", step.title}, {"stop", step.stop}, {"end", step.endWallMs.value_or(0)}});
}

void BathNotice::over() { tryTo(m_java, "bath-over", json::object()); }

/// Java's watch waits five times as long.
void BathNotice::alive()
{
    constexpr std::chrono::seconds kEvery{2};
    const auto now = std::chrono::steady_clock::now();
    if (m_told && now - *m_told < kEvery)
        return;
    m_told = now;
    tryTo(m_java, "alive", json::object());
}

void AndroidClipMaker::speak(const std::string& language, const std::string& text, const std::string& file,
                             std::function<void(bool)> answer)
{
    m_answer = std::move(answer);
    tryTo(m_java, "speak", {{"language", language}, {"text", text}, {"file", file}});
}

void AndroidClipMaker::drop()
{
    if (std::exchange(m_answer, nullptr))
        tryTo(m_java, "speak-no-more", json::object());
}

void AndroidClipMaker::answered(bool written)
{
    if (const auto answer = std::exchange(m_answer, nullptr))
        answer(written);
}

void BathNotice::stopPressed() const
{
    if (m_stop)
        m_stop();
}

ports::Insets AndroidSafeArea::insets() const
{
    const auto told = m_java.ask("insets", json::object());
    if (!told)
        return {};
    return {told->value("left", 0.0), told->value("top", 0.0), told->value("right", 0.0), told->value("bottom", 0.0)};
}

void AndroidSafeArea::look() const
{
    if (m_changed)
        m_changed();
}

ports::Hours AndroidClockFormat::asked() const
{
    const auto told = m_java.ask("clock", json::object());
    if (!told || !told->contains("twentyFour"))
        return ports::Hours::AsLocale;
    return told->value("twentyFour", false) ? ports::Hours::TwentyFour : ports::Hours::Twelve;
}

void AndroidClockFormat::look()
{
    const auto now = asked();
    if (std::exchange(m_hours, now) != now && m_changed)
        m_changed();
}

} // namespace firstdew::androidside
