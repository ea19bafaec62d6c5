#include "journal/Journal.h"
#include "journal/Repair.h"

#include <cstdint>
#include <cstdlib>
#include <fstream>
#include <unistd.h>

using namespace firstdew;

namespace {

/// A folder in memory for this process alone.
std::filesystem::path folder()
{
    static const std::filesystem::path path = [] {
        auto p = std::filesystem::path("/dev/shm") / ("firstdew-fuzz-" + std::to_string(::getpid()));
        std::filesystem::create_directories(p);
        return p;
    }();
    return path;
}

void clear()
{
    for (const auto& entry : std::filesystem::directory_iterator(folder()))
        std::filesystem::remove_all(entry.path());
}

} // namespace

/// A store of any content: opened, repaired or refused; after a repair it is whole.
extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, size_t size)
{
    clear();
    const auto file = folder() / "store.db";
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
    {
        const auto journal = journal::Journal::openExisting(file);
        if (journal) {
            (void)journal->readAll();
            (void)journal->check();
        }
    }
    if (journal::repair(file)) {
        const auto journal = journal::Journal::openExisting(file);
        if (!journal || !journal->check().ok)
            std::abort();
    }
    clear();
    return 0;
}
