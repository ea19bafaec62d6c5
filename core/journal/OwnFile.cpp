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
    const char* code = number == ENOENT ? "file-missing" : number == ENOSPC ? "disk-full" : "file-failed";
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

Result<Done> replaceFile(const path& file, std::string_view content)
{
    path part = file;
    part += ".part";
    std::error_code ignored;
    {
        std::filesystem::remove(part, ignored);
        const Descriptor fd(part, O_WRONLY | O_CREAT | O_EXCL);
        if (!fd.ok() || ::fchmod(fd.get(), S_IRUSR | S_IWUSR) != 0 || !writeAll(fd.get(), content) ||
            ::fsync(fd.get()) != 0) {
            const Error e = fileError(file, "written", errno);
            std::filesystem::remove(part, ignored);
            return e;
        }
    }
    if (::rename(part.c_str(), file.c_str()) != 0) {
        const Error e = fileError(file, "written", errno);
        std::filesystem::remove(part, ignored);
        return e;
    }
    return forceToDisk(file);
}

Result<Done> wipe(const path& file)
{
    {
        const Descriptor fd(file, O_WRONLY);
        if (!fd.ok() && errno == ENOENT)
            return Done{};
        struct stat s {};
        if (!fd.ok() || ::fstat(fd.get(), &s) != 0)
            return fileError(file, "removed", errno);
        const std::string zeros(65536, '\0');
        for (auto left = static_cast<std::size_t>(s.st_size); left > 0; left -= std::min(left, zeros.size()))
            if (!writeAll(fd.get(), std::string_view(zeros).substr(0, left)))
                return fileError(file, "removed", errno);
        if (::fsync(fd.get()) != 0)
            return fileError(file, "removed", errno);
    }
    if (::unlink(file.c_str()) != 0)
        return fileError(file, "removed", errno);
    return Done{};
}

Result<std::string> readFile(const path& file, std::size_t most)
{
    const Descriptor fd(file, O_RDONLY);
    if (!fd.ok())
        return fileError(file, "read", errno);
    std::string out;
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
            return Error{"file-too-large", file.string(),
                         fmt::format("is larger than {} MB; this cannot be the right file", most >> 20U)};
    }
}

} // namespace firstdew::journal
