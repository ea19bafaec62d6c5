#pragma once

#include <filesystem>
#include <fstream>
#include <map>
#include <sqlite3.h>
#include <string>
#include <vector>

// A disk that breaks at a chosen moment, between SQLite and the real one.
namespace firstdew::testing {

/// What happens at the n-th write, sync or truncation.
enum class Fault {
    Once,      ///< it fails, later ones work
    FullOnce,  ///< the disk is full for a moment
    FullStays, ///< and stays so
    PowerLoss  ///< it fails and everything after it; what was not synced is lost
};

/// While it lives, every SQLite file of the process goes through it.
class FaultyVfs {
public:
    FaultyVfs(Fault fault, int failAt) : m_fault(fault), m_failAt(failAt)
    {
        s_now = this;
        m_real = sqlite3_vfs_find(nullptr);
        m_vfs = *m_real;
        m_vfs.zName = "faulty";
        m_vfs.szOsFile = static_cast<int>(sizeof(File)) + m_real->szOsFile;
        m_vfs.xOpen = open;
        sqlite3_vfs_register(&m_vfs, 1);
    }
    FaultyVfs(const FaultyVfs&) = delete;
    FaultyVfs& operator=(const FaultyVfs&) = delete;
    ~FaultyVfs()
    {
        sqlite3_vfs_unregister(&m_vfs);
        sqlite3_vfs_register(m_real, 1);
        s_now = nullptr;
    }

    [[nodiscard]] int operations() const { return m_count; }
    [[nodiscard]] bool struck() const { return m_count >= m_failAt; }

    /// After a power loss: every file as it was when it was last synced; one that never was is empty.
    void loseWhatWasNotSynced() const
    {
        for (const auto& [path, content] : m_synced)
            if (std::filesystem::exists(path))
                std::ofstream(path, std::ios::binary | std::ios::trunc) << content;
    }

private:
    struct File {
        sqlite3_file base;
        const char* path;
        sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
    };

    static inline FaultyVfs* s_now = nullptr;
    Fault m_fault;
    int m_failAt;
    int m_count = 0;
    sqlite3_vfs* m_real = nullptr;
    sqlite3_vfs m_vfs{};
    std::map<std::string, std::string> m_synced;

    static std::string contentOf(const char* path)
    {
        std::ifstream in(path, std::ios::binary);
        return {std::istreambuf_iterator<char>(in), {}};
    }

    /// Counts one operation; true where it has to fail.
    bool strikes()
    {
        ++m_count;
        const bool stays = m_fault == Fault::FullStays || m_fault == Fault::PowerLoss;
        return stays ? m_count >= m_failAt : m_count == m_failAt;
    }
    [[nodiscard]] int code(int otherwise) const
    {
        return m_fault == Fault::FullOnce || m_fault == Fault::FullStays ? SQLITE_FULL : otherwise;
    }

    static sqlite3_file* realOf(sqlite3_file* f) { return reinterpret_cast<File*>(f)->real(); }

    static int write(sqlite3_file* f, const void* data, int n, sqlite3_int64 at)
    {
        if (s_now->strikes()) {
            // A torn write: half of it reaches the file.
            (void)realOf(f)->pMethods->xWrite(realOf(f), data, n / 2, at);
            return s_now->code(SQLITE_IOERR_WRITE);
        }
        return realOf(f)->pMethods->xWrite(realOf(f), data, n, at);
    }
    static int truncate(sqlite3_file* f, sqlite3_int64 size)
    {
        if (s_now->strikes())
            return s_now->code(SQLITE_IOERR_TRUNCATE);
        return realOf(f)->pMethods->xTruncate(realOf(f), size);
    }
    static int sync(sqlite3_file* f, int flags)
    {
        const char* path = reinterpret_cast<File*>(f)->path;
        if (s_now->strikes())
            return s_now->m_fault == Fault::FullOnce || s_now->m_fault == Fault::FullStays ? SQLITE_FULL
                                                                                           : SQLITE_IOERR_FSYNC;
        const int rc = realOf(f)->pMethods->xSync(realOf(f), flags);
        if (rc == SQLITE_OK && path != nullptr && s_now->m_fault == Fault::PowerLoss)
            s_now->m_synced[path] = contentOf(path);
        return rc;
    }

    // The rest passes through.
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
        const int rc = s_now->m_real->xOpen(s_now->m_real, name, file->real(), flags, out);
        if (rc == SQLITE_OK) {
            file->base.pMethods = &methods;
            if (name != nullptr && s_now->m_fault == Fault::PowerLoss && !s_now->m_synced.contains(name))
                s_now->m_synced[name] = contentOf(name);
        }
        return rc;
    }
};

} // namespace firstdew::testing
