#include "journal/OwnFile.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

namespace firstdew::journal {

using namespace facts;
using std::filesystem::path;

namespace {

Error fileError(const path& file, const char* doing, int number)
{
    const char* code = number == ENOENT   ? "file-missing"
                       : number == ENOSPC ? "disk-full"
                       : number == EEXIST ? "file-exists"
                                          : "file-failed";
    if (number == EEXIST)
        return {code, file.string(), "is there already; choose another name"};
    return {
        code, file.string(),
        fmt::format("cannot be {} ({}); check the path, its owner and the space left", doing, std::strerror(number))};
}

class Descriptor {
public:
    Descriptor(const path& file, int flags) : m_fd(::open(file.c_str(), flags | O_CLOEXEC, S_IRUSR | S_IWUSR)) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor()
    {
        if (m_fd >= 0)
            ::close(m_fd);
    }
    [[nodiscard]] bool ok() const { return m_fd >= 0; }
    [[nodiscard]] int get() const { return m_fd; }

private:
    int m_fd;
};

bool writeAll(int fd, std::string_view content)
{
    while (!content.empty()) {
        const ssize_t n = ::write(fd, content.data(), content.size());
        if (n < 0 && errno != EINTR)
            return false;
        content.remove_prefix(n < 0 ? 0 : static_cast<std::size_t>(n));
    }
    return true;
}

path folderOf(const path& file) { return file.has_parent_path() ? file.parent_path() : path("."); }

bool writeZeros(int fd, off_t length)
{
    const std::string zeros(65536, '\0');
    for (auto left = static_cast<std::size_t>(length); left > 0; left -= std::min(left, zeros.size()))
        if (!writeAll(fd, std::string_view(zeros).substr(0, left)))
            return false;
    return ::fsync(fd) == 0;
}

/// A name beside `file` that nothing has.
path unusedBeside(const path& file)
{
    struct stat s {};
    for (int i = 0;; ++i)
        if (path name = beside(file, "." + std::to_string(::getpid()) + "-" + std::to_string(i) + ".part");
            ::lstat(name.c_str(), &s) != 0)
            return name;
}

bool createWhole(const path& file, std::string_view content)
{
    const Descriptor fd(file, O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW);
    return fd.ok() && ::fchmod(fd.get(), S_IRUSR | S_IWUSR) == 0 && writeAll(fd.get(), content) &&
           ::fsync(fd.get()) == 0;
}

/// Gives a file its final name. Without `replace` a name that is taken stays, also where it was taken just now; a file
/// system without links is asked beforehand.
bool moveInto(const path& from, const path& to, bool replace)
{
    if (replace)
        return ::rename(from.c_str(), to.c_str()) == 0;
    if (::link(from.c_str(), to.c_str()) == 0)
        return ::unlink(from.c_str()) == 0;
    if (errno != EPERM && errno != ENOSYS && errno != ENOTSUP)
        return false;
    struct stat s {};
    if (::lstat(to.c_str(), &s) == 0)
        errno = EEXIST;
    return errno == ENOENT && ::rename(from.c_str(), to.c_str()) == 0;
}

Result<Done> write(const path& file, std::string_view content, bool replace)
{
    const auto lies = whatLiesAt(file);
    if (!lies)
        return lies.error();
    if (!replace && *lies != Lies::Nothing)
        return fileError(file, "written", EEXIST);
    if (*lies == Lies::Folder || *lies == Lies::Other)
        return Error{"file-failed", file.string(), "cannot be written: it is no regular file; choose another name"};
    const path part = unusedBeside(file);
    if (!createWhole(part, content) || !moveInto(part, file, replace)) {
        const Error e = fileError(file, "written", errno);
        ::unlink(part.c_str());
        return e;
    }
    return forceToDisk(file);
}

} // namespace

path beside(const path& file, std::string_view suffix)
{
    path out = file;
    out += suffix;
    return out;
}

Result<Done> createOwn(const path& file)
{
    const Descriptor fd(file, O_RDWR | O_CREAT | O_EXCL);
    if (!fd.ok() && errno != EEXIST)
        return fileError(file, "made", errno);
    if (fd.ok() && ::fchmod(fd.get(), S_IRUSR | S_IWUSR) != 0)
        return fileError(file, "made", errno);
    return Done{};
}

void closeToOthers(const path& file)
{
    struct stat s {};
    if (::stat(file.c_str(), &s) == 0 && (s.st_mode & (S_IRWXG | S_IRWXO)) != 0)
        (void)::chmod(file.c_str(), s.st_mode & S_IRWXU);
}

Result<Done> forceToDisk(const path& file)
{
    const Descriptor fd(file, O_RDONLY);
    if (!fd.ok() || ::fsync(fd.get()) != 0)
        return fileError(file, "forced to disk", errno);
    const Descriptor folder(folderOf(file), O_RDONLY | O_DIRECTORY);
    if (!folder.ok() || ::fsync(folder.get()) != 0)
        return fileError(file, "forced to disk", errno);
    return Done{};
}

Result<Done> replaceFile(const path& file, std::string_view content) { return write(file, content, true); }

Result<Done> writeNewFile(const path& file, std::string_view content) { return write(file, content, false); }

Result<Done> makeOwnFolder(const path& folder)
{
    if (::mkdir(folder.c_str(), S_IRWXU) != 0 || ::chmod(folder.c_str(), S_IRWXU) != 0)
        return fileError(folder, "made", errno);
    return Done{};
}

Result<Done> emptyOwnFolder(const path& folder)
{
    std::error_code failed;
    if (!std::filesystem::is_directory(folder, failed)) {
        std::filesystem::create_directories(folderOf(folder), failed);
        return makeOwnFolder(folder);
    }
    for (const auto& entry : std::filesystem::directory_iterator(folder, failed))
        if (auto gone = wipe(entry.path()); !gone)
            return gone;
    return failed ? Result<Done>(fileError(folder, "looked into", failed.value())) : Result<Done>(Done{});
}

Result<Done> moveWiping(const path& from, const path& to)
{
    const Descriptor old(to, O_WRONLY | O_NOFOLLOW);
    struct stat s {};
    const bool there = old.ok() && ::fstat(old.get(), &s) == 0 && S_ISREG(s.st_mode);
    if (::rename(from.c_str(), to.c_str()) != 0)
        return fileError(to, "replaced", errno);
    if (there && !writeZeros(old.get(), s.st_size))
        return fileError(to, "overwritten", errno);
    return Done{};
}

Result<Done> overwrite(const path& file)
{
    const Descriptor fd(file, O_WRONLY | O_NOFOLLOW);
    if (!fd.ok() && errno == ENOENT)
        return Done{};
    struct stat s {};
    if (!fd.ok() || ::fstat(fd.get(), &s) != 0 || (S_ISREG(s.st_mode) && !writeZeros(fd.get(), s.st_size)))
        return fileError(file, "overwritten", errno);
    return Done{};
}

Result<Done> wipe(const path& file)
{
    struct stat s {};
    if (::lstat(file.c_str(), &s) != 0)
        return errno == ENOENT ? Result<Done>(Done{}) : fileError(file, "removed", errno);
    if (S_ISREG(s.st_mode))
        if (auto gone = overwrite(file); !gone)
            return Error{gone.error().code, file.string(), "cannot be removed: its content " + gone.error().message};
    if (::unlink(file.c_str()) != 0)
        return fileError(file, "removed", errno);
    return Done{};
}

Result<path> behindLinks(const path& file)
{
    std::error_code failed;
    path at = file;
    for (int hops = 0; hops < 40; ++hops) {
        const auto status = std::filesystem::symlink_status(at, failed);
        if (failed && status.type() != std::filesystem::file_type::not_found)
            return Error{"file-failed", file.string(),
                         "cannot be looked at (" + failed.message() + "); check the path and who owns it"};
        if (status.type() != std::filesystem::file_type::symlink)
            return at;
        const path named = std::filesystem::read_symlink(at, failed);
        if (failed)
            break;
        at = named.is_absolute() ? named : folderOf(at) / named;
    }
    return Error{"file-failed", file.string(), "is a link that leads nowhere; name the file itself"};
}

Result<Lies> whatLiesAt(const path& file)
{
    struct stat s {};
    struct stat link {};
    if (::lstat(file.c_str(), &link) != 0 || ::stat(file.c_str(), &s) != 0) {
        if (errno == ENOENT)
            return S_ISLNK(link.st_mode) ? Lies::Other : Lies::Nothing;
        return Error{"file-failed", file.string(),
                     fmt::format("cannot be looked at ({}); nothing was changed, check the path and who owns it",
                                 std::strerror(errno))};
    }
    if (S_ISREG(s.st_mode))
        return s.st_size == 0 ? Lies::EmptyFile : Lies::File;
    return S_ISDIR(s.st_mode) ? Lies::Folder : Lies::Other;
}

std::optional<Identity> identityOf(const path& file)
{
    struct stat s {};
    if (::stat(file.c_str(), &s) != 0)
        return std::nullopt;
    return Identity{static_cast<unsigned long long>(s.st_dev), static_cast<unsigned long long>(s.st_ino)};
}

Result<path> freeName(const path& wanted)
{
    constexpr int kMost = 10'000;
    path at = wanted;
    for (int n = 2; n < kMost; ++n) {
        const auto lies = whatLiesAt(at);
        if (!lies)
            return lies.error();
        if (*lies == Lies::Nothing)
            return at;
        at = folderOf(wanted) / wanted.stem();
        at += fmt::format("-{}", n);
        at += wanted.extension();
    }
    return fileError(wanted, "written", EEXIST);
}

Result<std::string> readFile(const path& file, std::size_t most)
{
    constexpr std::size_t kMega = 1U << 20U;
    const Descriptor fd(file, O_RDONLY);
    if (!fd.ok())
        return fileError(file, "read", errno);
    const Error tooLarge{
        "file-too-large", file.string(),
        fmt::format("is larger than {}; this cannot be the right file",
                    most < kMega ? fmt::format("{} kB", most >> 10U) : fmt::format("{} MB", most >> 20U))};
    struct stat s {};
    if (::fstat(fd.get(), &s) == 0 && S_ISREG(s.st_mode) && s.st_size > static_cast<off_t>(most))
        return tooLarge;
    std::string out;
    out.reserve(S_ISREG(s.st_mode) ? static_cast<std::size_t>(s.st_size) : 0);
    char buffer[65536];
    while (true) {
        const ssize_t n = ::read(fd.get(), buffer, sizeof buffer);
        if (n == 0)
            return out;
        if (n < 0 && errno == EINTR)
            continue;
        if (n < 0)
            return fileError(file, "read", errno);
        out.append(buffer, static_cast<std::size_t>(n));
        if (out.size() > most)
            return tooLarge;
    }
}

} // namespace firstdew::journal
