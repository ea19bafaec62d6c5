// Preloaded by cli_files_test.py: looking at the file named by FAILING_STAT fails as a broken disk does, each time or
// only the FAILING_TURN-th. Opening it works.
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <dlfcn.h>
#include <sys/stat.h>

namespace {

bool fails(const char* path)
{
    static int turn = 0;
    const char* named = std::getenv("FAILING_STAT");
    if (named == nullptr || path == nullptr || std::strcmp(named, path) != 0)
        return false;
    const char* only = std::getenv("FAILING_TURN");
    if (only != nullptr && std::atoi(only) != ++turn)
        return false;
    errno = EIO;
    return true;
}

template <class Stat>
int looked(const char* name, const char* path, Stat* into)
{
    if (fails(path))
        return -1;
    return reinterpret_cast<int (*)(const char*, Stat*)>(dlsym(RTLD_NEXT, name))(path, into);
}

} // namespace

extern "C" int stat(const char* path, struct stat* into) noexcept { return looked("stat", path, into); }
extern "C" int stat64(const char* path, struct stat64* into) noexcept { return looked("stat64", path, into); }
