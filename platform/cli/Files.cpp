#include "Files.h"

#include "journal/Destination.h"
#include "journal/OwnFile.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace firstdew::cli {

namespace {

/// Names the option, and the one that helps where a file is there already.
[[noreturn]] void refuseOut(const facts::Error& e)
{
    throw Refused{"--out: " + e.input + " " + e.message +
                  (e.code == "file-exists" ? std::string(", or say --force") : std::string())};
}

} // namespace

std::string readWhole(const std::string& file, std::size_t most) { return orRefuse(journal::readFile(file, most)); }

void checkOut(const std::string& out, const std::string& store, bool replace)
{
    if (const auto may = journal::mayWriteTo(out, store, replace); !may)
        refuseOut(may.error());
}

void writeWhole(const std::string& file, const std::string& content, bool replace)
{
    const auto written = replace ? journal::replaceFile(file, content) : journal::writeNewFile(file, content);
    if (!written)
        refuseOut(written.error());
}

std::string passphraseFrom(const std::string& file)
{
    struct stat s {};
    if (::stat(file.c_str(), &s) == 0 && S_ISREG(s.st_mode) && (s.st_mode & (S_IRGRP | S_IROTH)) != 0)
        throw Refused{"--passphrase-file: others can read " + file + "; change that with 'chmod 600' and its name"};
    const std::string content = orRefuse(journal::readFile(file, 4096));
    std::string line = content.substr(0, content.find_first_of("\r\n"));
    if (line.empty())
        throw Refused{"--passphrase-file: the first line of " + file + " is empty; write the passphrase there"};
    return line;
}

QuietLibrary::QuietLibrary() : m_errors(::dup(STDERR_FILENO))
{
    if (const int nowhere = ::open("/dev/null", O_WRONLY); nowhere >= 0) {
        ::dup2(nowhere, STDERR_FILENO);
        ::close(nowhere);
    }
}

QuietLibrary::~QuietLibrary()
{
    if (m_errors >= 0) {
        ::dup2(m_errors, STDERR_FILENO);
        ::close(m_errors);
    }
}

} // namespace firstdew::cli
