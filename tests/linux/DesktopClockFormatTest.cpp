#include "linux/DesktopClockFormat.h"
#include "Bus.h"

using namespace firstdew;
using firstdew::tests::Bus;
using ports::Hours;

namespace {

/// The desktop tells of a changed setting; returns when that has come.
void set(const Bus& bus, const char* key, const char* value)
{
    auto signal = QDBusMessage::createSignal("/org/freedesktop/portal/desktop", "org.freedesktop.portal.Settings",
                                             "SettingChanged");
    signal << "org.gnome.desktop.interface" << key << QVariant::fromValue(QDBusVariant(QString::fromUtf8(value)));
    REQUIRE(bus.connection().send(signal));
    (void)bus.connection().interface()->registeredServiceNames(); // its answer comes after the signal
    tests::program().processEvents();
}

} // namespace

TEST_CASE("the desktop's clock says whether hours are counted to twelve, and a change is followed")
{
    qputenv("CLOCK", "12h");
    const Bus bus({"org.freedesktop.portal.Desktop"});
    qunsetenv("CLOCK");
    linuxside::DesktopClockFormat format(bus.connection());
    CHECK(format.hours() == Hours::AsLocale); // nothing waits for the answer
    int changes = 0;
    format.onChange([&] { ++changes; });
    tests::waitFor("the setting", [&] { return changes == 1; });
    CHECK(format.hours() == Hours::Twelve);
    set(bus, "clock-format", "24h");
    CHECK(changes == 2);
    CHECK(format.hours() == Hours::TwentyFour);
    set(bus, "font-name", "12h");
    set(bus, "clock-format", "24h");
    bus.answered("org.freedesktop.portal.Desktop");
    CHECK(changes == 2);
    CHECK(format.hours() == Hours::TwentyFour);
}

TEST_CASE("without a portal, or with a setting that nobody knows, the locale counts the hours")
{
    const Bus empty;
    const linuxside::DesktopClockFormat none(empty.connection());
    (void)empty.connection().interface()->registeredServiceNames(); // its answer comes after the other
    tests::program().processEvents();
    CHECK(none.hours() == Hours::AsLocale);

    qputenv("CLOCK", "sundial");
    const Bus bus({"org.freedesktop.portal.Desktop"});
    qunsetenv("CLOCK");
    const linuxside::DesktopClockFormat odd(bus.connection());
    bus.answered("org.freedesktop.portal.Desktop");
    CHECK(odd.hours() == Hours::AsLocale);
}
