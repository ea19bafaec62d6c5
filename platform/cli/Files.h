#pragma once

#include "Verb.h"

// Files that verbs read and write: whole or not at all, for the owner alone.
namespace firstdew::cli {

/// Bytes of the largest file that a verb reads.
inline constexpr std::size_t kMostBytes = 128U << 20U;

std::string readWhole(const std::string& file, std::size_t most = kMostBytes);

/// Refused before any work is done: a place where nothing may be written (journal/Destination), `store` being the one
/// that is read, if any; a file that is there already, unless `replace`.
void checkOut(const std::string& out, const std::string& store, bool replace);

/// Writes what checkOut allowed. A file that came in between stays, unless `replace`.
void writeWhole(const std::string& file, const std::string& content, bool replace);

/// The first line of a file, without its end. Refused: an empty one, and a file that others can read.
std::string passphraseFrom(const std::string& file);

/// The OpenPGP library writes its own lines to standard error, past every switch it offers; a script expects one of
/// ours. Standard error is silent as long as this lives.
class QuietLibrary {
public:
    QuietLibrary();
    QuietLibrary(const QuietLibrary&) = delete;
    QuietLibrary& operator=(const QuietLibrary&) = delete;
    ~QuietLibrary();

private:
    int m_errors;
};

} // namespace firstdew::cli
