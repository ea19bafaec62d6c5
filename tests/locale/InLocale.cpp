// Preloaded into firstdew-cli, which sets no locale itself: a library that it uses may.
#include <clocale>
#include <cstdio>
#include <cstdlib>

namespace {

[[gnu::constructor]] void setLocale()
{
    if (std::setlocale(LC_ALL, "") != nullptr)
        return;
    std::fputs("the locale that the environment names is not in LOCPATH\n", stderr);
    std::_Exit(99);
}

} // namespace
