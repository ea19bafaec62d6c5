#include "Files.h"

#include "journal/OwnFile.h"

#include <filesystem>

namespace firstdew::cli {

std::string readWhole(const std::string& file) { return orRefuse(journal::readFile(file, kMostBytes)); }

void writeWhole(const std::string& file, const std::string& content, bool replace)
{
    std::error_code ec;
    if (!replace && std::filesystem::exists(file, ec))
        throw Refused{"--out: " + file + " is there already; choose another name, or say --force"};
    (void)orRefuse(journal::replaceFile(file, content));
}

std::string passphraseFrom(const std::string& file)
{
    const std::string content = orRefuse(journal::readFile(file, 4096));
    std::string line = content.substr(0, content.find_first_of("\r\n"));
    if (line.empty())
        throw Refused{"--passphrase-file: the first line of " + file + " is empty; write the passphrase there"};
    return line;
}

} // namespace firstdew::cli
