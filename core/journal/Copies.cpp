#include "journal/Copies.h"

#include "journal/OwnFile.h"
#include "journal/StoreError.h"

#include <SQLiteCpp/Backup.h>
#include <algorithm>
#include <fmt/format.h>

namespace firstdew::journal {

using namespace facts;
using std::filesystem::path;

Result<path> keepCopy(SQLite::Database& db, const path& file, std::string_view reason)
{
    const path copy = beside(file, fmt::format(".{}.copy", reason));
    const path part = beside(copy, ".part");
    std::error_code ignored;
    std::filesystem::remove(part, ignored);
    if (auto made = createOwn(part); !made)
        return made.error();
    try {
        SQLite::Database to(part.string(), SQLite::OPEN_READWRITE);
        SQLite::Backup(to, db).executeStep(-1);
        // The copy stands alone: no WAL beside it that could get lost.
        to.exec("PRAGMA journal_mode = DELETE");
    } catch (const SQLite::Exception& e) {
        std::filesystem::remove(part, ignored);
        return storeError(copy, e);
    }
    std::error_code failed;
    std::filesystem::rename(part, copy, failed);
    if (failed) {
        std::filesystem::remove(part, ignored);
        return Error{"file-failed", copy.string(),
                     "the copy could not be put in place (" + failed.message() + "); nothing was changed"};
    }
    if (auto forced = forceToDisk(copy); !forced)
        return forced.error();
    return copy;
}

std::vector<path> copiesOf(const path& file)
{
    std::vector<path> out;
    const std::string stem = file.filename().string() + ".";
    std::error_code ec;
    const path folder = file.has_parent_path() ? file.parent_path() : path(".");
    for (const auto& entry : std::filesystem::directory_iterator(folder, ec)) {
        const std::string name = entry.path().filename().string();
        if (name.starts_with(stem) && (name.ends_with(".copy") || name.ends_with(".copy.part")))
            out.push_back(entry.path());
    }
    std::sort(out.begin(), out.end());
    return out;
}

} // namespace firstdew::journal
