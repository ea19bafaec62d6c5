#include "android/AndroidFileChooser.h"

#include "journal/OwnFile.h"

#include <iostream>
#include <utility>

namespace firstdew::androidside {

// The picker knows types and not endings, and back-ups have no type that every phone knows. So it shows all files.
bool AndroidFileChooser::choose(const std::string&, const std::string&, Chosen chosen)
{
    if (!m_java.ask("choose", nlohmann::json::object()))
        return false;
    m_saved = {};
    m_chosen = std::move(chosen);
    return true;
}

bool AndroidFileChooser::save(const std::string&, std::vector<ports::OutFile> files, Saved saved)
{
    auto paths = nlohmann::json::array();
    if (!journal::emptyOwnFolder(m_outgoing))
        return false;
    for (const auto& file : files) {
        const auto copy = m_outgoing / file.name;
        if (!journal::writeNewFile(copy, file.content))
            return false;
        paths.push_back(copy.string());
    }
    if (!m_java.ask("save", {{"files", paths}}))
        return false;
    m_chosen = {};
    m_saved = std::move(saved);
    m_file = files.size() == 1 ? paths.front().get<std::string>() : std::string();
    return true;
}

void AndroidFileChooser::dropCopies()
{
    const auto emptied = journal::emptyOwnFolder(m_outgoing);
    const auto told = m_java.ask("drop-copies", nlohmann::json::object());
    if (!emptied || !told)
        std::clog << "firstdew: copies of saved or shared files may still be in the cache\n";
}

void AndroidFileChooser::lookForSaved()
{
    if (!m_saved)
        return;
    const auto told = m_java.ask("saved", nlohmann::json::object());
    if (!told || !told->value("answered", false))
        return;
    const auto tell = std::exchange(m_saved, {});
    const std::string where = told->value("where", "");
    if (told->value("failed", false))
        tell(facts::Error{"save-failed", where, "could not be written there; choose another place"});
    else
        tell(where.empty() ? std::nullopt : std::optional(ports::SavedAs{where, m_file}));
}

void AndroidFileChooser::lookForAnswer()
{
    lookForSaved();
    if (!m_chosen)
        return;
    const auto told = m_java.ask("chosen", nlohmann::json::object());
    if (!told || !told->value("answered", false))
        return;
    const std::string path = told->value("path", "");
    std::exchange(m_chosen, {})(path.empty() ? std::nullopt : std::optional(path));
}

} // namespace firstdew::androidside
