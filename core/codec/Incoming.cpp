#include "codec/Incoming.h"

#include <fmt/format.h>

namespace firstdew::codec {

Error errorAt(const std::string& file, int line, const Error& cause)
{
    std::string where = fmt::format("{}, line {}", file, line);
    if (!cause.input.empty())
        where += ", " + cause.input;
    return {cause.code, where, cause.message};
}

} // namespace firstdew::codec
