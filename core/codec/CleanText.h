#pragma once

#include "facts/Fact.h"

#include <string>
#include <string_view>

// Characters that steer a screen or a printer instead of being read: control characters other than tab and line
// breaks, and the marks that turn the direction of what follows (U+202A to U+202E, U+2066 to U+2069). They can make a
// text look like another one. They are taken out where a text comes in.
namespace firstdew::codec {

[[nodiscard]] bool isClean(std::string_view text);

/// The text without them; U+2028 and U+2029 become a line break. What is not UTF-8 stays as it is.
[[nodiscard]] std::string cleanText(std::string_view text);

/// Cleans every text of a fact's payload.
void cleanTexts(facts::Fact& fact);

/// Whether a text stands on one line.
[[nodiscard]] bool isOneLine(std::string_view text);

/// The text on one line that a terminal shows as it is: what steers becomes a space, and bytes that are no UTF-8 a '?'.
[[nodiscard]] std::string forTerminal(std::string_view text, bool keepLines = false);

} // namespace firstdew::codec
