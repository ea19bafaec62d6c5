#pragma once

#include "facts/Payloads.h"
#include "facts/Result.h"

namespace firstdew::protocol {

using namespace facts;

enum class Response { None, Good, Strong };

/// Response by HDSS change (scores 1-4): better by 2 or more strong, by 1 good, else none.
[[nodiscard]] Result<Response> responseBy(int hdssStart, int hdssNow);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_WORDS(protocol::Response, "none", "good", "strong");
} // namespace firstdew::facts
