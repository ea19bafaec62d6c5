#include "codec/RecordJson.h"
#include "journal/Import.h"

#include <cstdint>
#include <cstdlib>

using namespace firstdew;

/// A JSON import: read or refused; what was read can be kept and comes back the same.
extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size)
{
    const auto read = codec::readRecordJson("file", {reinterpret_cast<const char*>(data), size});
    if (!read)
        return 0;
    const auto plan = journal::planImport({}, *read);
    if (!plan)
        return 0;
    const auto again = codec::readRecordJson("file", codec::recordJson(plan->fresh));
    if (!again || again->size() != plan->fresh.size())
        std::abort();
    for (std::size_t i = 0; i < again->size(); ++i)
        if ((*again)[i].fact != plan->fresh[i])
            std::abort();
    return 0;
}
