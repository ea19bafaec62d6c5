#include "linux/ScreenReader.h"
#include "Bus.h"

using namespace firstdew;

TEST_CASE("a screen reader is on when the desktop says so, and off where nobody can be asked")
{
    tests::Bus desktop({"org.a11y.Bus"});
    CHECK_FALSE(linuxside::screenReaderIsOn(desktop.connection()));
    CHECK(linuxside::screenReaderIsOn(desktop.connection()));
    tests::Bus empty;
    CHECK_FALSE(linuxside::screenReaderIsOn(empty.connection()));
}
