#include "linux/DesktopHaptics.h"
#include "Bus.h"

using namespace firstdew;
using firstdew::tests::Bus;

namespace {

const QJsonObject kFelt{{"profile", "quiet"}};

/// The call that the desktop's daemon was asked for next: {trigger, program, event, hints, seconds, number}.
QJsonArray trigger(const char* event, int seconds, int number)
{
    return {"trigger", "org.firstdew", event, kFelt, seconds, number};
}

} // namespace

TEST_CASE("a step is felt as one short pulse, not heard")
{
    Bus bus({"org.sigxcpu.Feedback"});
    linuxside::DesktopHaptics haptics(bus.connection());
    CHECK(haptics.present());
    haptics.pulse();
    CHECK(bus.said() == trigger("timeout-completed", -1, 1));
}

TEST_CASE("a touch that was taken is felt as the daemon's own event for one, which its silent profile leaves out")
{
    Bus bus({"org.sigxcpu.Feedback"});
    linuxside::DesktopHaptics haptics(bus.connection());
    haptics.tick();
    CHECK(bus.said() == trigger("button-pressed", -1, 1));
}

TEST_CASE("an alarm ends when told, and one that is repeated begins anew")
{
    Bus bus({"org.sigxcpu.Feedback"});
    linuxside::DesktopHaptics haptics(bus.connection());
    haptics.alarm();
    CHECK(bus.said() == trigger("phone-incoming-call", 3, 1));
    bus.answered("org.sigxcpu.Feedback"); // from here on the alarm's number is known
    haptics.alarm();
    CHECK(bus.said() == QJsonArray{"end", 1});
    CHECK(bus.said() == trigger("phone-incoming-call", 3, 2));
}

TEST_CASE("an alarm that is called off before the daemon has answered is ended all the same")
{
    Bus bus({"org.sigxcpu.Feedback"});
    linuxside::DesktopHaptics haptics(bus.connection());
    haptics.alarm();
    haptics.still();
    CHECK(bus.said() == trigger("phone-incoming-call", 3, 1));
    CHECK(bus.said() == QJsonArray{"end", 1});
    haptics.still(); // nothing runs: nothing is asked
    haptics.pulse();
    CHECK(bus.said() == trigger("timeout-completed", -1, 2));
}

TEST_CASE("an alarm that ended of itself is not ended again")
{
    Bus bus({"org.sigxcpu.Feedback"});
    linuxside::DesktopHaptics haptics(bus.connection());
    haptics.alarm();
    CHECK(bus.said() == trigger("phone-incoming-call", 3, 1));
    bus.answered("org.sigxcpu.Feedback");
    QDBusMessage ended = QDBusMessage::createSignal("/org/sigxcpu/Feedback", "org.sigxcpu.Feedback", "FeedbackEnded");
    ended << 1U << 0U;
    REQUIRE(bus.connection().send(ended));
    (void)bus.connection().interface()->registeredServiceNames(); // its answer comes after the signal
    tests::program().processEvents();
    haptics.still();
    haptics.pulse();
    CHECK(bus.said() == trigger("timeout-completed", -1, 2));
}

TEST_CASE("without a daemon nothing is felt, which is said once")
{
    static QStringList log;
    log.clear();
    const auto before =
        qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString& text) { log << text; });
    {
        Bus bus;
        linuxside::DesktopHaptics haptics(bus.connection());
        CHECK_FALSE(haptics.present());
        haptics.pulse();
        tests::waitFor("a line in the log", [] { return !log.isEmpty(); });
        haptics.alarm();
        haptics.still();
        // A call whose answer comes after those of the others.
        (void)bus.connection().interface()->registeredServiceNames();
        tests::program().processEvents();
    }
    qInstallMessageHandler(before);
    REQUIRE(log.size() == 1);
    CHECK(log.front().startsWith("firstdew: nothing vibrates here"));
}
