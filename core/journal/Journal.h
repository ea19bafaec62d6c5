#pragma once

#include "facts/Fact.h"
#include "facts/Result.h"

#include <filesystem>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace firstdew::journal {

using namespace facts;

struct Health {
    bool ok = false;
    long long facts = 0;
    std::vector<std::string> problems; ///< one line each
};

/// The schema version this program writes.
inline constexpr int kSchemaVersion = 2;

/// The one file: facts are only ever added. SQLite, WAL, synchronous=FULL, owner-only permissions.
/// An append that returned success is on disk. One journal is used by one thread at a time.
class Journal {
public:
    /// Opens the store, or makes it where there is none or an empty file; migrates an older version after keeping a
    /// copy beside it. A symbolic link is followed: what is kept beside the store lies beside the file it names.
    /// Refused: a newer version, a file that is not a store, a damaged one, no permission.
    [[nodiscard]] static Result<Journal> open(const std::filesystem::path& file);
    /// As open, but a missing file is refused rather than made.
    [[nodiscard]] static Result<Journal> openExisting(const std::filesystem::path& file);
    /// Opens for reading alone: no file is made, changed or migrated, and no right to write is needed. Whatever writes
    /// is refused. For programs that do not have the store open already: closing this drops a process's locks on it.
    [[nodiscard]] static Result<Journal> openToRead(const std::filesystem::path& file);

    Journal(Journal&&) noexcept;
    Journal& operator=(Journal&&) noexcept;
    ~Journal();

    /// Adds one fact; gives it an id where it has none, and cleans its texts (codec/CleanText). Returns the id. A known
    /// id, a value that cannot be (NaN, a current below zero or above 100 mA, text that is not UTF-8) and a full disk
    /// are refused; so is everything once the file was deleted or replaced (store-replaced).
    [[nodiscard]] Result<std::string> append(Fact fact);
    /// Adds all or none.
    [[nodiscard]] Result<std::vector<std::string>> appendAll(std::vector<Fact> facts);
    /// Every fact, in the order recorded.
    [[nodiscard]] Result<std::vector<Fact>> readAll() const;
    /// Whether another program has recorded something since readAll() was called last.
    [[nodiscard]] bool changedElsewhere() const;
    /// SQLite's own integrity check and every row read back.
    [[nodiscard]] Health check() const;

    /// Puts these facts in the place of all that is there, at once or not at all.
    [[nodiscard]] Result<Done> replaceAll(const std::vector<Fact>& facts);
    /// Keeps the store as it stands beside itself, in `<file>.<reason>.copy`, and returns that path (see Copies.h).
    [[nodiscard]] Result<std::filesystem::path> keepCopy(std::string_view reason);
    /// Removes every fact of a person for good: out of the file, the log beside it and all copies kept. Refused while
    /// another program has the store open.
    [[nodiscard]] Result<Done> forget(const std::string& person);
    /// Removes a store with its log and copies for good. No Journal of it may be open.
    [[nodiscard]] static Result<Done> destroy(const std::filesystem::path& file);

private:
    struct Impl;
    explicit Journal(std::unique_ptr<Impl> impl);
    [[nodiscard]] static Result<Journal> openAs(const std::filesystem::path& file, bool mustBeThere);
    [[nodiscard]] Result<Done> wipeLog();
    std::unique_ptr<Impl> m_impl;
};

} // namespace firstdew::journal
