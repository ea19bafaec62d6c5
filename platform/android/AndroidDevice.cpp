#include "android/AndroidDevice.h"

#include <iostream>

namespace firstdew::androidside {

namespace {

using nlohmann::json;

constexpr int kPulseMs = 60;
/// Three long ones: over before the engine repeats an alarm that stands.
const std::vector<int> kAlarmMs{0, 600, 200, 600, 200, 600};

/// For what a session does without: a refusal is a line in the log.
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

bool AndroidHaptics::present() const
{
    const auto told = m_java.ask("vibrator", json::object());
    return told && told->value("present", false);
}

void AndroidHaptics::pulse() { shake({0, kPulseMs}); }
void AndroidHaptics::alarm() { shake(kAlarmMs); }
void AndroidHaptics::still() { shake({}); }
void AndroidHaptics::shake(const std::vector<int>& timings) { tryTo(m_java, "vibrate", {{"timings", timings}}); }

void AndroidWakeGuard::keepAwake(bool on) { tryTo(m_java, "awake", {{"on", on}}); }

/// Refused, the bath goes on, but the system may stop an app that it does not see.
void BathNotice::show(const ports::SessionStep& step)
{
    tryTo(m_java, "bath", {{"title", step.title}, {"text", step.text}, {"end", step.endWallMs.value_or(0)}});
}

void BathNotice::over() { tryTo(m_java, "bath-over", json::object()); }

} // namespace firstdew::androidside
