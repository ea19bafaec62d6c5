/* What Android 8 has and Android 6 lacks, as far as it is needed: the app runs on Android 9 and later, the emulator on
 * Android 6's library. Bionic's own functions ignore the locale as well. Source of "since": bionic's libc.map.txt,
 * which says introduced=26 of each. */
#include <locale.h>
#include <stdlib.h>

#define SINCE_26(declaration) declaration

SINCE_26(double strtod_l(const char* text, char** end, locale_t locale))
{
    (void)locale;
    return strtod(text, end);
}

SINCE_26(float strtof_l(const char* text, char** end, locale_t locale))
{
    (void)locale;
    return strtof(text, end);
}
