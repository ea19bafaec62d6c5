#pragma once

#include "simulator/Dice.h"

#include <map>
#include <sqlite3.h>
#include <string>
#include <vector>

namespace firstdew::simulator {

/// The disk of a phone, between SQLite and the real file system. Writes that were not synced are remembered, so that a
/// power cut can lose any of them, keep any in another order, and tear one.
class Disk {
public:
    Disk();
    Disk(const Disk&) = delete;
    Disk& operator=(const Disk&) = delete;
    ~Disk();

    /// The operation after `count` others fails: for a moment, or until mend().
    void failAfter(long long count, int code, bool stays);
    /// The operation after `count` others is torn, and from then on nothing works: the process is gone.
    void dieAfter(long long count);
    /// Whether the fault that was set has struck.
    [[nodiscard]] bool struck() const { return m_struck; }
    [[nodiscard]] bool dead() const { return m_dead; }
    /// Takes back a fault that waits or stays.
    void mend();
    /// The phone starts again. After a power cut of what was not synced only a part is there, in any order.
    void restart(bool powerCut, Dice& dice);

    bool lies = false; ///< planted: says that it synced, and did not
    long long torn = 0;
    long long reordered = 0;
    long long lost = 0;

private:
    struct File;
    struct Change {
        long long at = 0; ///< of a write; of a truncation the new size
        std::string before;
        std::string after;
        long long sizeBefore = 0;
        bool truncates = false;
    };
    struct Methods;

    bool strikes();
    void remember(sqlite3_file* real, const char* path, Change change);
    static void apply(const std::string& path, const std::vector<Change>& changes, Disk& disk, Dice& dice);

    static inline Disk* s_now = nullptr;
    sqlite3_vfs* m_real = nullptr;
    sqlite3_vfs m_vfs{};
    std::map<std::string, std::vector<Change>> m_unsynced; ///< by path
    long long m_count = 0;
    long long m_strikesAt = -1;
    int m_code = SQLITE_IOERR;
    bool m_stays = false;
    bool m_kills = false;
    bool m_struck = false;
    bool m_dead = false;
};

} // namespace firstdew::simulator
