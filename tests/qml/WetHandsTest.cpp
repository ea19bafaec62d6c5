#include "Fingers.h"

#include <functional>
#include <map>

using namespace firstdew;
using namespace firstdew::tests;

// Wet hands beside a current: a finger that lands eight millimetres beside what it was meant for, and one that touches
// twice. Figures are our own choice.
namespace {

constexpr double kOff = 50;  // device-independent pixels, eight millimetres
constexpr int kTwiceMs = 80; // between both touches
constexpr int kLateMs = 300; // between both, where something new stands under the finger
const std::vector<QString> kSteps{"raise", "run", "alarm", "under-dry", "question", "line", "prepare"};

/// What a touch can change of a session.
struct Standing {
    ui::BathPage::Value page{};
    ui::StepKind::Value kind{};
    QString phase, side;
    bool stopped = false;
    std::size_t events = 0;
    int at = -1; ///< line of the preparation
    bool operator==(const Standing&) const = default;
};

Standing standing(Interface& ui)
{
    ui.bath.flush(); // the disk is behind what was touched
    const auto r = ui.bath.running();
    Standing out{ui.bath.page(), r.kind, r.phase, r.side, ui.bath.stopsIn() > 0, 0, -1};
    const auto& diary = ui.store.diary();
    if (!diary.ledSessions.empty())
        out.events = diary.ledSessions.at(diary.latestLed).events.size();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (QString::fromLatin1(item->metaObject()->className()).startsWith("BathPrepare_QML"))
            out.at = item->property("at").toInt();
    });
    return out;
}

/// The buttons of the page, by what a screen reader calls them.
std::map<QString, QRectF> buttons(Interface& ui)
{
    std::map<QString, QRectF> out;
    ui.settled();
    const QRectF screen(0, 0, ui.window->width(), ui.window->height());
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && item->isEnabled() && screen.contains(onScreen(item).center()))
            for (QObject* child : item->children())
                if (child->inherits("QQuickAccessibleAttached"))
                    out.emplace(child->property("name").toString(), onScreen(item));
    });
    return out;
}

/// What comes of touches is compared, and not what time brings beside them.
struct StandingClock {
    StandingClock() { Interface::sessionSpeed = 0; }
    ~StandingClock() { Interface::sessionSpeed = 1; }
    StandingClock(const StandingClock&) = delete;
    StandingClock& operator=(const StandingClock&) = delete;
};

/// What comes of touches at these places, one after the other, from that step on.
Standing after(const QSize& size, const QString& step, const std::function<void(Interface&)>& touch)
{
    Interface ui(size, "light");
    REQUIRE(ui.showBath(step));
    ui.settled();
    touch(ui);
    QCoreApplication::processEvents();
    return standing(ui);
}

} // namespace

TEST_CASE("Two touches of a wet finger do what one does")
{
    const StandingClock still;
    const QSize size = GENERATE(QSize(390, 844), QSize(320, 568));
    int seen = 0;
    for (const QString& step : kSteps) {
        Interface ui(size, "light");
        REQUIRE(ui.showBath(step));
        for (const auto& [name, where] : buttons(ui)) {
            const QPointF at = where.center();
            const Standing once = after(size, step, [&](Interface& i) { tap(i, at); });
            for (const int between : {kTwiceMs, kLateMs}) {
                if (between == kLateMs && (name.startsWith("Meter shows") || name == "It is unpleasant"))
                    continue; // these may be meant twice; said twice, unpleasant only lowers further
                const Standing twice = after(size, step, [&](Interface& i) {
                    tap(i, at);
                    tap(i, at + QPointF(3, -2), between);
                });
                ++seen;
                if (!(once == twice))
                    FAIL_CHECK(step.toStdString()
                               << " at " << size.width() << ", " << between << " ms: a second touch of "
                               << name.toStdString() << " does something else");
            }
        }
    }
    CHECK(seen > 20);
}

TEST_CASE("A touch eight millimetres beside a button of the running page does nothing of another")
{
    const StandingClock still;
    const QSize size = GENERATE(QSize(390, 844), QSize(320, 568));
    int seen = 0;
    for (const char* step : {"raise", "run", "alarm", "armpits"}) {
        Interface ui(size, "light");
        REQUIRE(ui.showBath(step));
        const Standing before = standing(ui);
        for (const auto& [name, where] : buttons(ui)) {
            const Standing meant = after(size, step, [&](Interface& i) { tap(i, where.center()); });
            for (const QPointF by : {QPointF(kOff, 0), QPointF(-kOff, 0), QPointF(0, kOff), QPointF(0, -kOff)}) {
                const QPointF at = where.center() + by;
                const Standing came = after(size, step, [&](Interface& i) { tap(i, at); });
                ++seen;
                // A stop by mistake is taken back; nothing else may come of it but what was meant.
                if (!(came == meant) && !(came == before) && !came.stopped)
                    FAIL_CHECK(step << " at " << size.width() << ": beside " << name.toStdString() << " by " << by.x()
                                    << ", " << by.y());
            }
        }
    }
    CHECK(seen > 20);
}

TEST_CASE("A stop by a touch beside what was meant is taken back, and the session goes on where it was")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    const Standing before = standing(ui);
    QQuickItem* stop = button(ui, "Stop");
    REQUIRE(stop != nullptr);
    tap(ui, onScreen(stop).center() + QPointF(0, kOff - 10));
    REQUIRE(ui.bath.stopsIn() > 0);
    QQuickItem* back = nullptr;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && item->property("text").toString().startsWith("That was a slip"))
            back = item;
    });
    REQUIRE(back != nullptr);
    tap(ui, onScreen(back).center());
    Standing now = standing(ui);
    CHECK(now.events > before.events); // the stop and its taking back are kept
    now.events = before.events;
    CHECK(now == before);
}

TEST_CASE("With the hands under, a second drip takes no stop back, wherever it falls")
{
    for (double y = 20; y < 844; y += 90) {
        Interface ui({390, 844}, "light");
        REQUIRE(ui.showBath("under"));
        ui.settled();
        tap(ui, {195, y});
        REQUIRE(ui.bath.stopsIn() > 0);
        tap(ui, {197, y}, kTwiceMs);
        INFO(y);
        CHECK(ui.bath.stopsIn() > 0);
        CHECK(ui.bath.page() == ui::BathPage::Run);
    }
}

TEST_CASE("A touch somewhere else counts at once, however soon: nothing holds Stop up")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("raise"));
    QQuickItem* stop = button(ui, "Stop");
    QQuickItem* comfortable = button(ui, "It is comfortable");
    REQUIRE(stop != nullptr);
    REQUIRE(comfortable != nullptr);
    const QPointF at = onScreen(stop).center();
    tap(ui, onScreen(comfortable).center());
    tap(ui, at, 20);
    CHECK(ui.bath.stopsIn() > 0);
}

TEST_CASE("From the page before it, a double touch begins a session and confirms nothing in it")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("prepare"));
    QQuickItem* begin = button(ui, "Begin");
    REQUIRE(begin != nullptr);
    const QPointF at = onScreen(begin).center();
    tap(ui, at);
    REQUIRE(ui.bath.page() == ui::BathPage::Run);
    const Standing first = standing(ui);
    ui.settled();
    tap(ui, at, kLateMs);
    CHECK(standing(ui) == first);
}
