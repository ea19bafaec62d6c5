#include "exchange/Tables.h"
#include "journal/Import.h"

#include <cstdint>
#include <cstdlib>

using namespace firstdew;

/// A CSV import: read or refused; what was read comes back the same from a table of our own.
extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size)
{
    const auto read = exchange::readTable("file", {reinterpret_cast<const char*>(data), size}, "p1", 1);
    if (!read)
        return 0;
    const auto plan = journal::planImport({}, *read);
    if (!plan)
        return 0;
    for (const auto& fact : plan->fresh)
        for (const auto& [name, table] : exchange::tablesOf({&fact, 1})) {
            if (name == "columns.csv")
                continue;
            const auto again = exchange::readTable(name, table, "p1", 1);
            if (!again || again->size() != 1 || again->front().fact != fact)
                std::abort();
        }
    return 0;
}
