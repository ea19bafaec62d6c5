#include "protocol/Response.h"

#include <fmt/format.h>

namespace firstdew::protocol {

// Gülmez & Solak, J Clin Med 2026;15:640.
Result<Response> responseBy(int hdssStart, int hdssNow)
{
    for (const int score : {hdssStart, hdssNow})
        if (score < 1 || score > 4)
            return Error{
                "hdss-out-of-range", "score",
                fmt::format("the score {} is not between 1 and 4; answer the four-step question again", score)};
    const int better = hdssStart - hdssNow;
    return better >= 2 ? Response::Strong : better == 1 ? Response::Good : Response::None;
}

} // namespace firstdew::protocol
