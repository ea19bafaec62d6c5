#pragma once

#include "facts/Result.h"

#include <string>
#include <string_view>

namespace firstdew::print {

/// The document, saying in which language it is (a BCP 47 tag), for those who have it read to them
/// (ISO 32000-1:2008, 14.9.2). Refused: bytes that are no PDF.
[[nodiscard]] facts::Result<std::string> inLanguage(std::string_view pdf, const std::string& language);

} // namespace firstdew::print
