#pragma once

#include "Verb.h"

// Files that verbs read and write: whole or not at all, for the owner alone.
namespace firstdew::cli {

inline constexpr std::size_t kMostBytes = 256U << 20U;

std::string readWhole(const std::string& file);

/// Refused: a file that is there already, unless `replace`.
void writeWhole(const std::string& file, const std::string& content, bool replace);

/// The first line of a file, without its end. Refused: an empty one.
std::string passphraseFrom(const std::string& file);

} // namespace firstdew::cli
