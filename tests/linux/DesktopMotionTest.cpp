#include "linux/DesktopMotion.h"
#include "Bus.h"

#include <vector>

using namespace firstdew;

TEST_CASE("nothing moves where the desktop's settings say so, from the moment they do")
{
    tests::Bus desktop({"org.freedesktop.portal.Desktop"});
    linuxside::DesktopMotion motion(desktop.connection());
    std::vector<bool> still;
    motion.follow([&](bool now) { still.push_back(now); });
    CHECK(still.empty()); // asked, and not waited for
    tests::waitFor("the settings", [&] { return still.size() == 1; });
    CHECK(still.back());
    const auto animate = [&](bool on, const char* key) {
        auto hands = QDBusMessage::createMethodCall("org.freedesktop.portal.Desktop", "/org/freedesktop/portal/desktop",
                                                    "org.firstdew.Hands", "Set");
        hands << key << on;
        REQUIRE(desktop.connection().call(hands).type() == QDBusMessage::ReplyMessage);
    };
    animate(true, "enable-animations");
    tests::waitFor("the change", [&] { return still.size() == 2; });
    CHECK_FALSE(still.back());
    animate(false, "locate-pointer"); // of something else
    animate(false, "enable-animations");
    tests::waitFor("the next change", [&] { return still.size() == 3; });
    CHECK(still.back());
}

TEST_CASE("a desktop that cannot be asked asks for nothing")
{
    tests::Bus empty;
    linuxside::DesktopMotion motion(empty.connection());
    std::vector<bool> still;
    motion.follow([&](bool now) { still.push_back(now); });
    tests::waitFor("no answer", [&] { return !still.empty(); });
    CHECK(still == std::vector<bool>{false});
}
