#include "journal/ReplaceDamaged.h"

#include "journal/OwnFile.h"

#include <fmt/format.h>

namespace firstdew::journal {

using std::filesystem::path;

namespace {

Error inTheWay(const path& file, const std::error_code& why)
{
    return {"file-failed", file.string(), "could not be replaced (" + why.message() + "); nothing was changed"};
}

/// A store with these facts, closed and with no log that would have to come along.
Result<Done> writeWhole(const path& file, const std::vector<Fact>& facts)
{
    {
        auto journal = Journal::open(file);
        if (!journal)
            return journal.error();
        if (auto written = journal.value().replaceAll(facts); !written)
            return written;
    }
    const auto log = whatLiesAt(beside(file, "-wal"));
    if (!log || *log != Lies::Nothing)
        return Error{"store-failed", file.string(),
                     "could not be written whole; nothing was changed, make room and try again"};
    return forceToDisk(file);
}

/// The first of ".damaged.copy", ".damaged-2.copy" … that is not there.
Result<path> freeDamagedName(const path& file)
{
    path kept = beside(file, ".damaged.copy");
    for (int n = 2;; ++n) {
        const auto lies = whatLiesAt(kept);
        if (!lies)
            return lies.error();
        if (*lies == Lies::Nothing)
            return kept;
        kept = beside(file, fmt::format(".damaged-{}.copy", n));
    }
}

Result<path> keepDamaged(const path& file)
{
    auto kept = freeDamagedName(file);
    if (!kept)
        return kept;
    std::error_code failed;
    std::filesystem::copy_file(file, *kept, failed);
    if (failed)
        return inTheWay(file, failed);
    closeToOthers(*kept);
    if (auto forced = forceToDisk(*kept); !forced)
        return forced.error();
    // The log belongs to that file alone; left behind it would be read into the new one.
    path stem = *kept;
    stem.replace_extension();
    for (const char* suffix : {"-wal", "-shm"}) {
        std::filesystem::rename(beside(file, suffix), beside(stem, fmt::format("{}.copy", suffix)), failed);
        if (failed && failed != std::errc::no_such_file_or_directory)
            return inTheWay(beside(file, suffix), failed);
    }
    return kept;
}

} // namespace

Result<path> replaceDamaged(const path& file, const std::vector<Fact>& facts)
{
    const path fresh = beside(file, ".fresh.copy.part");
    const auto discard = [&fresh](const Error& why) {
        (void)Journal::destroy(fresh);
        return why;
    };
    (void)Journal::destroy(fresh);
    if (auto written = writeWhole(fresh, facts); !written)
        return discard(written.error());
    auto kept = keepDamaged(file);
    if (!kept)
        return discard(kept.error());
    std::error_code failed;
    std::filesystem::rename(fresh, file, failed);
    if (failed)
        return discard(inTheWay(file, failed));
    if (auto forced = forceToDisk(file); !forced)
        return forced.error();
    return kept;
}

} // namespace firstdew::journal
