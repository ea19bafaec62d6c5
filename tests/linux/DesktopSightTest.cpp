#include "linux/DesktopSight.h"
#include "Bus.h"

#include <utility>
#include <vector>

using namespace firstdew;

TEST_CASE("text size and contrast follow the desktop's settings, from the moment they change")
{
    tests::Bus desktop({"org.freedesktop.portal.Desktop"});
    linuxside::DesktopSight sight(desktop.connection());
    std::vector<std::pair<double, bool>> told;
    sight.follow([&](double scale, bool contrast) { told.emplace_back(scale, contrast); });
    tests::waitFor("the settings", [&] { return told.size() == 2; });
    CHECK(told.back() == std::pair(1.5, true));
    const auto change = [&](const char* group, const char* key, double value) {
        auto hands = QDBusMessage::createMethodCall("org.freedesktop.portal.Desktop", "/org/freedesktop/portal/desktop",
                                                    "org.firstdew.Hands", "SetNumber");
        hands << group << key << value;
        REQUIRE(desktop.connection().call(hands).type() == QDBusMessage::ReplyMessage);
    };
    change("org.gnome.desktop.interface", "text-scaling-factor", 1.25);
    tests::waitFor("the size", [&] { return told.size() == 3; });
    CHECK(told.back() == std::pair(1.25, true));
    change("org.gnome.desktop.interface", "contrast", 0); // of another group
    change("org.freedesktop.appearance", "contrast", 0);
    tests::waitFor("the contrast", [&] { return told.size() == 4; });
    CHECK(told.back() == std::pair(1.25, false));
}

TEST_CASE("a desktop that cannot be asked wants words as they are")
{
    tests::Bus empty;
    linuxside::DesktopSight sight(empty.connection());
    std::vector<std::pair<double, bool>> told;
    sight.follow([&](double scale, bool contrast) { told.emplace_back(scale, contrast); });
    tests::waitFor("no answer", [&] { return told.size() == 2; });
    CHECK(told.back() == std::pair(1.0, false));
}
