#include "journal/StoreError.h"

#include "journal/Journal.h"

#include <fmt/format.h>
#include <sqlite3.h>

namespace firstdew::journal {

using facts::Error;
using std::filesystem::path;

Error missingStore(const path& file)
{
    return {"store-missing", file.string(), "there is no such store; check the path"};
}

Error foreignFile(const path& file)
{
    return {"store-foreign", file.string(),
            "is not a Firstdew store, or is damaged at its very beginning; nothing was changed in it, choose another "
            "file or restore a back-up"};
}

Error damagedStore(const path& file, const std::string& what)
{
    return {"store-damaged", file.string(),
            fmt::format("is damaged ({}); keep the file; repair it, or restore a back-up", what)};
}

Error unreadableStore(const path& file, const std::string& why)
{
    return {"store-unreadable", file.string(),
            fmt::format("cannot be opened ({}); check the path and who owns it", why)};
}

Error readOnlyStore(const path& file)
{
    return {"store-read-only", file.string(), "cannot be written to; make it and its folder writable for its owner"};
}

Error replacedStore(const path& file)
{
    return {"store-replaced", file.string(),
            "was deleted or replaced by another program; nothing was recorded, open it again"};
}

Error busyStore(const path& file)
{
    return {"store-busy", file.string(), "another program is using it; nothing was recorded, try again in a moment"};
}

Error newerStore(const path& file, int version)
{
    return {"store-newer", file.string(),
            fmt::format("was written by a newer Firstdew (version {} of the store, this one knows {}); update Firstdew",
                        version, kSchemaVersion)};
}

Error newerFact(const path& file, const Error& what)
{
    return {"store-newer", file.string(),
            fmt::format("holds what only a newer Firstdew can read (fact {}: {}); nothing was changed, update Firstdew",
                        what.input, what.message)};
}

Error storeError(const path& file, const SQLite::Exception& e)
{
    switch (e.getErrorCode() & 0xff) {
    case SQLITE_NOTADB: return foreignFile(file);
    case SQLITE_CORRUPT: return damagedStore(file, e.what());
    case SQLITE_READONLY: return readOnlyStore(file);
    case SQLITE_CANTOPEN:
    case SQLITE_PERM:
    case SQLITE_AUTH: return unreadableStore(file, e.what());
    case SQLITE_FULL:
        return {"disk-full", file.string(), "the disk is full; nothing was recorded, make room and try again"};
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
    case SQLITE_PROTOCOL: return busyStore(file);
    default:
        return {"store-failed", file.string(),
                fmt::format("could not be read or written ({}); nothing was recorded, try again", e.what())};
    }
}

} // namespace firstdew::journal
