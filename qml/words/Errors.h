#pragma once

#include "facts/Result.h"

#include <QString>

namespace firstdew::words {

/// What was refused, why and what is safe instead, in the person's language; one sentence for all that has none of its
/// own.
[[nodiscard]] QString errorSentence(const facts::Error& error);

} // namespace firstdew::words
