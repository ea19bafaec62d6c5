#include "journal/Copies.h"

#include "journal/OwnFile.h"
#include "journal/StoreError.h"

#include <SQLiteCpp/Backup.h>
#include <algorithm>
#include <fmt/format.h>
#include <sqlite3.h>

namespace firstdew::journal {

using namespace facts;
using std::filesystem::path;

namespace {

bool isNumber(std::string_view text)
{
    return !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

/// "damaged", "damaged-2", each also with the log that lay beside: "damaged-2-wal".
bool isDamagedReason(std::string_view reason)
{
    if (!reason.starts_with("damaged"))
        return false;
    reason.remove_prefix(std::string_view("damaged").size());
    for (const std::string_view log : {"-wal", "-shm"})
        if (reason.ends_with(log)) {
            reason.remove_suffix(log.size());
            break;
        }
    return reason.empty() || (reason.front() == '-' && isNumber(reason.substr(1)));
}

bool isReason(std::string_view reason)
{
    constexpr std::string_view version = "before-version-";
    return reason == "before-import" || reason == "before-restore" || reason == "repairing" || reason == "fresh" ||
           (reason.starts_with(version) && isNumber(reason.substr(version.size()))) || isDamagedReason(reason);
}

/// What comes after ".copy": nothing, or the mark of a file that was being written.
bool isTail(std::string_view tail)
{
    if (tail.empty() || tail == ".part")
        return true;
    constexpr std::size_t kMark = 12;
    return tail.size() == kMark + 6 && tail.front() == '.' && tail.ends_with(".part") &&
           tail.substr(1, kMark).find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

path unfinished(const path& copy)
{
    unsigned char bytes[6];
    ::sqlite3_randomness(sizeof bytes, bytes);
    std::string mark;
    for (const unsigned char byte : bytes)
        mark += fmt::format("{:02x}", byte);
    return beside(copy, "." + mark + ".part");
}

} // namespace

Result<path> keepCopy(SQLite::Database& db, const path& file, std::string_view reason)
{
    const path copy = beside(file, fmt::format(".{}.copy", reason));
    const path part = unfinished(copy); // of this call alone: another program may be keeping a copy too
    if (auto made = createOwn(part); !made)
        return made.error();
    try {
        SQLite::Database to(part.string(), SQLite::OPEN_READWRITE);
        SQLite::Backup(to, db).executeStep(-1);
        // The copy stands alone: no WAL beside it that could get lost.
        to.exec("PRAGMA journal_mode = DELETE");
    } catch (const SQLite::Exception& e) {
        (void)wipe(part);
        return storeError(copy, e);
    }
    if (auto moved = moveWiping(part, copy); !moved) {
        (void)wipe(part);
        return Error{"file-failed", copy.string(),
                     "the copy could not be put in place: " + moved.error().message + "; nothing was changed"};
    }
    if (auto forced = forceToDisk(copy); !forced)
        return forced.error();
    return copy;
}

std::string_view reasonOf(std::string_view name, std::string_view store)
{
    constexpr std::string_view kCopy = ".copy";
    if (store.empty() || !name.starts_with(store) || name.size() <= store.size() || name[store.size()] != '.')
        return {};
    const std::string_view rest = name.substr(store.size() + 1);
    const auto end = rest.find(kCopy);
    if (end == std::string_view::npos || !isTail(rest.substr(end + kCopy.size())))
        return {};
    const std::string_view reason = rest.substr(0, end);
    return isReason(reason) ? reason : std::string_view();
}

Result<std::vector<path>> copiesOf(const path& file)
{
    const auto store = behindLinks(file);
    if (!store)
        return store.error();
    std::vector<path> out;
    std::error_code failed;
    const path folder = store->has_parent_path() ? store->parent_path() : path(".");
    const std::string own = store->filename().string();
    auto entry = std::filesystem::directory_iterator(folder, failed);
    for (; !failed && entry != std::filesystem::directory_iterator(); entry.increment(failed))
        if (!reasonOf(entry->path().filename().string(), own).empty())
            out.push_back(entry->path());
    if (failed && failed != std::errc::no_such_file_or_directory)
        return Error{"file-failed", folder.string(),
                     "the folder cannot be read (" + failed.message() + "); nothing was changed, check who owns it"};
    std::sort(out.begin(), out.end());
    return out;
}

} // namespace firstdew::journal
