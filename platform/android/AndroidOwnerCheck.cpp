#include "android/AndroidOwnerCheck.h"

#include <utility>

namespace firstdew::androidside {

bool AndroidOwnerCheck::available() const
{
    const auto told = m_java.ask("lock", nlohmann::json::object());
    return told && told->value("secure", false);
}

void AndroidOwnerCheck::ask(const std::string& why, Asking asking)
{
    m_asking = std::move(asking);
    if (!m_java.ask("confirm", {{"why", why}}))
        std::exchange(m_asking, {}).done(Verdict::Unable);
}

// The system's page says nothing of wrong attempts: it keeps the person there.
void AndroidOwnerCheck::answered(bool confirmed)
{
    if (const auto done = std::exchange(m_asking, {}).done)
        done(confirmed ? Verdict::Confirmed : Verdict::Dropped);
}

} // namespace firstdew::androidside
