#pragma once

#include <filesystem>
#include <fstream>
#include <stdlib.h>
#include <string>
#include <unistd.h>

namespace firstdew::testing {

/// A folder of its own that is gone afterwards; in memory where there is such a place, since thousands of stores are
/// made and forced to disk.
class Scratch {
public:
    Scratch()
    {
        const std::filesystem::path memory = "/dev/shm";
        const bool there = ::access(memory.c_str(), W_OK | X_OK) == 0;
        std::string pattern = ((there ? memory : std::filesystem::temp_directory_path()) / "firstdew-XXXXXX").string();
        m_path = ::mkdtemp(pattern.data());
    }
    Scratch(const Scratch&) = delete;
    Scratch& operator=(const Scratch&) = delete;
    ~Scratch() { std::filesystem::remove_all(m_path); }
    [[nodiscard]] std::filesystem::path operator/(const char* name) const { return m_path / name; }
    [[nodiscard]] const std::filesystem::path& path() const { return m_path; }

private:
    std::filesystem::path m_path;
};

/// While it lives, file rights count: the superuser, whom none binds, acts as nobody.
class Unprivileged {
public:
    Unprivileged()
    {
        if (m_was == 0 && ::seteuid(65534) != 0)
            ::abort();
    }
    Unprivileged(const Unprivileged&) = delete;
    Unprivileged& operator=(const Unprivileged&) = delete;
    ~Unprivileged()
    {
        if (m_was == 0 && ::seteuid(0) != 0)
            ::abort();
    }

private:
    uid_t m_was = ::geteuid();
};

inline std::string contentOf(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline void writeTo(const std::filesystem::path& file, std::string_view content)
{
    std::ofstream(file, std::ios::binary) << content;
}

} // namespace firstdew::testing
