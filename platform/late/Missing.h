#pragma once

#include "facts/Result.h"

namespace firstdew::late {

/// What cannot be done without a part that is not there.
[[nodiscard]] inline facts::Error missing()
{
    return {"part-missing", "", "a part of the program is missing; install Firstdew again"};
}

} // namespace firstdew::late
