#include "linux/DesktopSessionNotice.h"
#include "Bus.h"

using namespace firstdew;
using firstdew::tests::Bus;
using firstdew::tests::waitFor;

namespace {

const QString kDaemon = QStringLiteral("org.freedesktop.Notifications");

const ports::SessionStep kRaise{"Raise slowly", {}, {}, "Stop"};
const ports::SessionStep kHold{"Hold still", 1772478420000, "Ends at 20:07", "Stop"};

/// What the daemon is asked for: it replaces that notice, or none where that is 0, and gets that number.
QJsonArray notify(const ports::SessionStep& step, int replaces, int number)
{
    const QString title = QString::fromStdString(step.title);
    return {"notify",
            replaces,
            title,
            QString::fromStdString(step.ends),
            QJsonArray{"default", title, "stop", QString::fromStdString(step.stop)},
            QJsonArray{"desktop-entry", "resident", "suppress-sound", "urgency", "x-dunst-stack-tag"},
            0,
            60'000,
            number};
}

struct Desktop {
    Bus bus{{kDaemon}};
    linuxside::DesktopSessionNotice notice{bus.connection()};
    int stopped = 0;
    int opened = 0;

    Desktop()
    {
        notice.onStop([this] { ++stopped; });
        QObject::connect(&notice, &linuxside::DesktopSessionNotice::opened, [this] { ++opened; });
    }
    void hand(const QString& what, const QVariantList& arguments = {}) const
    {
        auto call =
            QDBusMessage::createMethodCall(kDaemon, "/org/freedesktop/Notifications", "org.firstdew.Hands", what);
        call.setArguments(arguments);
        REQUIRE(bus.connection().call(call).type() == QDBusMessage::ReplyMessage);
        bus.answered(kDaemon);
    }
    void press(uint number, const char* action) const { hand("Press", {number, QString(action)}); }
    void close(uint number, uint reason) const { hand("Close", {number, reason}); }
};

} // namespace

TEST_CASE("the running session is one silent notice that follows each step and goes when it is over")
{
    Desktop d;
    d.notice.show(kRaise);
    CHECK(d.bus.said() == notify(kRaise, 0, 1));
    d.bus.answered(kDaemon);
    d.notice.show(kHold);
    CHECK(d.bus.said() == notify(kHold, 1, 1));
    d.bus.answered(kDaemon);
    d.notice.over();
    CHECK(d.bus.said() == QJsonArray{"close", 1});
    d.notice.over(); // nothing is up: nothing is asked
    d.notice.show(kRaise);
    CHECK(d.bus.said() == notify(kRaise, 0, 2));
}

TEST_CASE("Stop on the notice stops, a tap on it opens the app, and neither is taken from another notice")
{
    Desktop d;
    d.notice.show(kHold);
    d.bus.said();
    d.bus.answered(kDaemon);
    d.press(7, "stop");
    d.press(1, "default");
    waitFor("the tap", [&] { return d.opened == 1; });
    CHECK(d.stopped == 0);
    d.press(1, "stop");
    waitFor("the stop", [&] { return d.stopped == 1; });
    CHECK(d.opened == 1);
    d.notice.over();
    d.press(1, "stop"); // late
    d.bus.said();
    CHECK(d.stopped == 1);
}

TEST_CASE("a daemon that hangs holds nothing up, and gets the latest step once it answers")
{
    Desktop d;
    d.hand("Hold");
    d.notice.show(kRaise);
    CHECK(d.bus.said() == notify(kRaise, 0, 1));
    d.notice.show(kHold);
    d.notice.show(kRaise);
    d.notice.show(kHold);
    d.hand("LetGo");
    CHECK(d.bus.said() == notify(kHold, 1, 1));
    d.bus.answered(kDaemon);
    d.notice.over();
    CHECK(d.bus.said() == QJsonArray{"close", 1});
}

TEST_CASE("a session that is over before the daemon has answered leaves no notice")
{
    Desktop d;
    d.hand("Hold");
    d.notice.show(kRaise);
    d.bus.said();
    d.notice.over();
    d.hand("LetGo");
    CHECK(d.bus.said() == QJsonArray{"close", 1});
}

TEST_CASE("what the person closed stays closed until the next session; what ended by itself or was pressed comes again")
{
    Desktop d;
    d.notice.show(kRaise);
    d.bus.said();
    d.bus.answered(kDaemon);
    d.close(1, 1); // ended by itself
    d.notice.show(kHold);
    CHECK(d.bus.said() == notify(kHold, 0, 2));
    d.bus.answered(kDaemon);
    d.press(2, "default");
    d.close(2, 2); // as some daemons do with a notice that was pressed
    d.notice.show(kRaise);
    CHECK(d.bus.said() == notify(kRaise, 0, 3));
    d.bus.answered(kDaemon);
    d.close(3, 2);
    d.notice.show(kHold);
    d.notice.over();
    d.notice.show(kRaise);
    CHECK(d.bus.said() == notify(kRaise, 0, 4)); // and nothing before it
}

TEST_CASE("the notice goes with the app")
{
    Bus bus({kDaemon});
    {
        linuxside::DesktopSessionNotice notice(bus.connection());
        notice.show(kRaise);
        bus.said();
        bus.answered(kDaemon);
    }
    CHECK(bus.said() == QJsonArray{"close", 1});
}

TEST_CASE("without a daemon a session goes on")
{
    Bus bus;
    linuxside::DesktopSessionNotice notice(bus.connection());
    notice.show(kRaise);
    notice.show(kHold);
    CHECK_NOTHROW(notice.over());
}
