#define CATCH_CONFIG_RUNNER
#include <catch2/catch.hpp>

#include <clocale>
#include <cstdio>
#include <cstdlib>

// In the locale of the environment, as the app runs: Qt calls setlocale, and a decimal comma must change no number.
int main(int count, char** words)
{
    const char* locale = std::setlocale(LC_ALL, "");
    if (locale == nullptr && std::getenv("LOCPATH") != nullptr) {
        std::fputs("the locale that the environment names is not in LOCPATH\n", stderr);
        return 2;
    }
    return Catch::Session().run(count, words);
}
