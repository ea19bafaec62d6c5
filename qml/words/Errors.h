#pragma once

#include "facts/Result.h"

#include <QString>

namespace firstdew::words {

/// What was refused, why and what is safe instead, in the person's language; core's own English sentence for what
/// people do not meet.
[[nodiscard]] QString errorSentence(const facts::Error& error);

} // namespace firstdew::words
