#include "android/AndroidDevice.h"

namespace firstdew::androidside
{

bool AndroidSharer::share(const std::string& file, const std::string& mimeType)
{
    return m_java.ask("share", {{"file", file}, {"type", mimeType}}).ok();
}

void AndroidWakeGuard::keepAwake(bool on) { (void)m_java.ask("awake", {{"on", on}}); }

bool BathNotice::show(const std::string& title, const std::string& text, std::optional<long long> endWallMs)
{
    return m_java.ask("bath", {{"title", title}, {"text", text}, {"end", endWallMs.value_or(0)}}).ok();
}

void BathNotice::over() { (void)m_java.ask("bath-over", nlohmann::json::object()); }

} // namespace firstdew::androidside
