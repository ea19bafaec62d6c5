#include "exchange/CareSheetFile.h"

#include <cstdint>
#include <cstdlib>

using namespace firstdew;

/// A care sheet from anywhere: read or refused, and what was read writes itself again.
extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    for (const auto age : {facts::AgeGroup::Adult, facts::AgeGroup::Child}) {
        const auto sheet = exchange::readCareSheet("sheet", text, age);
        if (!sheet)
            continue;
        const auto again = exchange::readCareSheet("sheet", exchange::careSheetJson(*sheet), age);
        if (!again || *again != *sheet || sheet->directLimit.value_or(facts::Milliamps{}).mA > 20)
            std::abort();
    }
    return 0;
}
