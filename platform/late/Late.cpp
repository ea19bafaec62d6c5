#include "late/Late.h"

#include <cstdio>
#include <dlfcn.h>
#include <filesystem>
#include <string>

namespace firstdew::late {

const void* offered(const char* name)
{
    std::error_code failed;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", failed);
    const auto file = program.parent_path() / FIRSTDEW_LATE_FOLDER / (std::string("firstdew-") + name + ".so");
    void* part = failed ? nullptr : dlopen(file.c_str(), RTLD_LAZY | RTLD_LOCAL); // stays until the program ends
    const void* found = part == nullptr ? nullptr : dlsym(part, "firstdewPart");
    if (found == nullptr)
        std::fprintf(stderr, "firstdew: a part of the program cannot be loaded: %s\n", file.c_str());
    return found;
}

} // namespace firstdew::late
