#include "android/AndroidFileChooser.h"

#include <utility>

namespace firstdew::androidside {

// The picker knows types and not endings, and back-ups have no type that every phone knows. So it shows all files.
bool AndroidFileChooser::choose(const std::string&, const std::string&, Chosen chosen)
{
    if (!m_java.ask("choose", nlohmann::json::object()))
        return false;
    m_chosen = std::move(chosen);
    return true;
}

void AndroidFileChooser::lookForAnswer()
{
    if (!m_chosen)
        return;
    const auto told = m_java.ask("chosen", nlohmann::json::object());
    if (!told || !told->value("answered", false))
        return;
    const std::string path = told->value("path", "");
    std::exchange(m_chosen, {})(path.empty() ? std::nullopt : std::optional(path));
}

} // namespace firstdew::androidside
