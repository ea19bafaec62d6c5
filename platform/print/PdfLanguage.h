#pragma once

#include "facts/Result.h"

#include <string>
#include <string_view>

namespace firstdew::print {

/// Returns the document with its language set (a BCP 47 tag), which screen readers need
/// (ISO 32000-1:2008, 14.9.2). Errors: the bytes are not a PDF.
[[nodiscard]] facts::Result<std::string> inLanguage(std::string_view pdf, const std::string& language);

} // namespace firstdew::print
