#include "simulator/Disk.h"

#include <algorithm>
#include <fcntl.h>
#include <unistd.h>
#include <utility>

namespace firstdew::simulator {

struct Disk::File {
    sqlite3_file base;
    const char* path;
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

namespace {
constexpr long long kSector = 512;
}

struct Disk::Methods {
    static sqlite3_file* realOf(sqlite3_file* f) { return reinterpret_cast<File*>(f)->real(); }
    static const char* pathOf(sqlite3_file* f) { return reinterpret_cast<File*>(f)->path; }

    static int write(sqlite3_file* f, const void* data, int n, sqlite3_int64 at)
    {
        sqlite3_file* real = realOf(f);
        if (s_now->m_dead)
            return SQLITE_IOERR_WRITE;
        const bool fails = s_now->strikes();
        const int length = fails ? n / 2 : n;
        if (pathOf(f) != nullptr)
            s_now->remember(
                real, pathOf(f),
                {at, {}, std::string(static_cast<const char*>(data), static_cast<std::size_t>(length)), 0, false});
        const int rc = length == 0 ? SQLITE_OK : real->pMethods->xWrite(real, data, length, at);
        return fails ? s_now->m_code == SQLITE_FULL ? SQLITE_FULL : SQLITE_IOERR_WRITE : rc;
    }
    static int truncate(sqlite3_file* f, sqlite3_int64 size)
    {
        sqlite3_file* real = realOf(f);
        if (s_now->m_dead || s_now->strikes())
            return SQLITE_IOERR_TRUNCATE;
        if (pathOf(f) != nullptr)
            s_now->remember(real, pathOf(f), {size, {}, {}, 0, true});
        return real->pMethods->xTruncate(real, size);
    }
    static int sync(sqlite3_file* f, int flags)
    {
        if (s_now->m_dead || s_now->strikes())
            return SQLITE_IOERR_FSYNC;
        if (s_now->lies)
            return SQLITE_OK;
        const int rc = realOf(f)->pMethods->xSync(realOf(f), flags);
        if (rc == SQLITE_OK && pathOf(f) != nullptr)
            s_now->m_unsynced.erase(pathOf(f));
        return rc;
    }
    static int close(sqlite3_file* f) { return realOf(f)->pMethods->xClose(realOf(f)); }
    static int read(sqlite3_file* f, void* to, int n, sqlite3_int64 at)
    {
        return realOf(f)->pMethods->xRead(realOf(f), to, n, at);
    }
    static int size(sqlite3_file* f, sqlite3_int64* out) { return realOf(f)->pMethods->xFileSize(realOf(f), out); }
    static int lock(sqlite3_file* f, int level) { return realOf(f)->pMethods->xLock(realOf(f), level); }
    static int unlock(sqlite3_file* f, int level) { return realOf(f)->pMethods->xUnlock(realOf(f), level); }
    static int reserved(sqlite3_file* f, int* out) { return realOf(f)->pMethods->xCheckReservedLock(realOf(f), out); }
    static int control(sqlite3_file* f, int op, void* arg)
    {
        return realOf(f)->pMethods->xFileControl(realOf(f), op, arg);
    }
    static int sector(sqlite3_file* f) { return realOf(f)->pMethods->xSectorSize(realOf(f)); }
    static int device(sqlite3_file* f) { return realOf(f)->pMethods->xDeviceCharacteristics(realOf(f)); }
    static int shmMap(sqlite3_file* f, int page, int bytes, int extend, void volatile** out)
    {
        return realOf(f)->pMethods->xShmMap(realOf(f), page, bytes, extend, out);
    }
    static int shmLock(sqlite3_file* f, int offset, int n, int flags)
    {
        return realOf(f)->pMethods->xShmLock(realOf(f), offset, n, flags);
    }
    static void shmBarrier(sqlite3_file* f) { realOf(f)->pMethods->xShmBarrier(realOf(f)); }
    static int shmUnmap(sqlite3_file* f, int remove) { return realOf(f)->pMethods->xShmUnmap(realOf(f), remove); }

    static int open(sqlite3_vfs*, const char* name, sqlite3_file* f, int flags, int* out)
    {
        static const sqlite3_io_methods methods{2,       close,      read,     write,   truncate, sync,   size,
                                                lock,    unlock,     reserved, control, sector,   device, shmMap,
                                                shmLock, shmBarrier, shmUnmap, nullptr, nullptr};
        auto* file = reinterpret_cast<File*>(f);
        file->base.pMethods = nullptr;
        file->path = name;
        if (s_now->m_dead)
            return SQLITE_CANTOPEN;
        const int rc = s_now->m_real->xOpen(s_now->m_real, name, file->real(), flags, out);
        if (rc == SQLITE_OK)
            file->base.pMethods = &methods;
        return rc;
    }
    static int remove(sqlite3_vfs*, const char* name, int sync)
    {
        if (s_now->m_dead)
            return SQLITE_IOERR_DELETE;
        s_now->m_unsynced.erase(name);
        return s_now->m_real->xDelete(s_now->m_real, name, sync);
    }
};

Disk::Disk()
{
    s_now = this;
    m_real = sqlite3_vfs_find(nullptr);
    m_vfs = *m_real;
    m_vfs.zName = "simulated";
    m_vfs.szOsFile = static_cast<int>(sizeof(File)) + m_real->szOsFile;
    m_vfs.xOpen = Methods::open;
    m_vfs.xDelete = Methods::remove;
    sqlite3_vfs_register(&m_vfs, 1);
}

Disk::~Disk()
{
    sqlite3_vfs_unregister(&m_vfs);
    sqlite3_vfs_register(m_real, 1);
    s_now = nullptr;
}

void Disk::failAfter(long long count, int code, bool stays)
{
    mend();
    m_strikesAt = m_count + count;
    m_code = code;
    m_stays = stays;
}

void Disk::dieAfter(long long count)
{
    failAfter(count, SQLITE_IOERR, true);
    m_kills = true;
}

void Disk::mend()
{
    m_strikesAt = -1;
    m_stays = m_kills = m_struck = false;
}

bool Disk::strikes()
{
    ++m_count;
    if (m_strikesAt < 0 || m_count <= m_strikesAt || (m_struck && !m_stays))
        return false;
    m_struck = true;
    m_dead = m_dead || m_kills;
    return true;
}

void Disk::remember(sqlite3_file* real, const char* path, Change change)
{
    sqlite3_int64 size = 0;
    (void)real->pMethods->xFileSize(real, &size);
    change.sizeBefore = size;
    const long long end = change.truncates ? size : change.at + static_cast<long long>(change.after.size());
    if (const long long kept = std::min<long long>(end, size) - change.at; kept > 0) {
        change.before.resize(static_cast<std::size_t>(kept));
        (void)real->pMethods->xRead(real, change.before.data(), static_cast<int>(kept), change.at);
    }
    m_unsynced[path].push_back(std::move(change));
}

/// The file as it was when it was synced last, and then any of the changes since, in any order.
void Disk::apply(const std::string& path, const std::vector<Change>& changes, Disk& disk, Dice& dice)
{
    const int file = ::open(path.c_str(), O_RDWR | O_CLOEXEC);
    if (file < 0)
        return;
    const auto put = [&](const std::string& bytes, long long at) {
        (void)!::pwrite(file, bytes.data(), bytes.size(), at);
    };
    for (auto c = changes.rbegin(); c != changes.rend(); ++c) {
        put(c->before, c->at);
        (void)!::ftruncate(file, c->sizeBefore);
    }
    std::vector<const Change*> kept;
    for (const Change& c : changes)
        if (dice.oneIn(2))
            kept.push_back(&c);
    disk.lost += static_cast<long long>(changes.size() - kept.size());
    for (std::size_t i = kept.size(); i > 1; --i) {
        const auto other = static_cast<std::size_t>(dice.below(static_cast<long long>(i)));
        disk.reordered += other != i - 1;
        std::swap(kept[i - 1], kept[other]);
    }
    for (const Change* c : kept) {
        if (c->truncates) {
            (void)!::ftruncate(file, c->at);
            continue;
        }
        const long long sectors = static_cast<long long>(c->after.size()) / kSector;
        const bool tears = sectors > 1 && dice.oneIn(4);
        disk.torn += tears;
        put(tears ? c->after.substr(0, static_cast<std::size_t>(kSector * dice.below(sectors))) : c->after, c->at);
    }
    ::close(file);
}

void Disk::restart(bool powerCut, Dice& dice)
{
    if (powerCut)
        for (const auto& [path, changes] : m_unsynced)
            apply(path, changes, *this, dice);
    if (!lies || powerCut)
        m_unsynced.clear();
    m_dead = false;
    mend();
}

} // namespace firstdew::simulator
