#include "Fingers.h"

#include <fmt/format.h>

#include <QDeadlineTimer>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QQmlContext>
#include <QQmlExpression>

#include <algorithm>
#include <cmath>

using namespace firstdew;
using namespace firstdew::tests;

TEST_CASE("With both hands under, a tap anywhere and any key stop")
{
    const bool key = GENERATE(false, true);
    INFO((key ? "a key" : "a tap"));
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("under"));
    REQUIRE(ui.bath.running().exits == firstdew::ui::Exits::TapAnywhere);
    ui.settled();
    if (key) {
        QKeyEvent press(QEvent::KeyPress, Qt::Key_A, Qt::NoModifier, "a");
        QCoreApplication::sendEvent(ui.window, &press);
    } else {
        tap(ui, {195, 300});
    }
    CHECK(ui.bath.stopsIn() > 0);
    CHECK(shows(ui, "Stopped. Current at zero, machine off. Then take your hands or feet out."));
    tap(ui, {195, 700}); // a second drip ends nothing sooner, and takes nothing back
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Run);
    QDeadlineTimer soon(8000);
    while (ui.bath.page() == firstdew::ui::BathPage::Run && !soon.hasExpired())
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents, 200);
    CHECK(ui.bath.page() == firstdew::ui::BathPage::After);
}

TEST_CASE("A stop by a drip on the screen is taken back within five seconds, and the session goes on where it was")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    const auto before = ui.bath.running();
    QQuickItem* stop = button(ui, "Stop");
    REQUIRE(stop != nullptr);
    const QPointF where = onScreen(stop).center();
    tap(ui, where);
    REQUIRE(ui.bath.stopsIn() == 5);
    tap(ui, where); // what takes it back lies elsewhere
    REQUIRE(ui.bath.stopsIn() > 0);
    QQuickItem* back = nullptr;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && item->property("text").toString().startsWith("That was a slip"))
            back = item;
    });
    REQUIRE(back != nullptr);
    CHECK_FALSE(onScreen(back).contains(where));
    tap(ui, onScreen(back).center());
    CHECK(ui.bath.stopsIn() == 0);
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Run);
    CHECK(ui.bath.running().kind == before.kind);
    const auto& led = ui.store.diary().ledSessions.at(ui.store.diary().latestLed);
    for (const auto& event : led.events)
        CHECK(event.event != BathEventKind::Stop);
}

TEST_CASE("A reading that has not moved is said with one touch")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    CHECK(button(ui, "Still 15 mA") == nullptr);
    ui.bath.reading(15);
    QQuickItem* still = button(ui, "Still 15 mA");
    REQUIRE(still != nullptr);
    tap(ui, onScreen(still).center());
    ui.bath.stop();
    ui.bath.leave(); // everything is written down
    const auto& led = ui.store.diary().ledSessions.at(ui.store.diary().latestLed);
    CHECK(std::ranges::count_if(led.events, [](const BathEvent& e) { return e.reading == Milliamps{15}; }) == 2);
}

TEST_CASE("What the voice asks for is on the screen, too")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    CHECK(ui.bath.twin().isEmpty());
    ui.bath.reading(15);
    ui.bath.discomfort();
    const QString down = "Turn down to " + ui.bath.running().meter.target;
    CHECK(shows(ui, down));
    ui.bath.reading(ui.bath.running().meter.target.section(' ', 0, 0).toDouble());
    CHECK_FALSE(shows(ui, down));
}

TEST_CASE("Escape leaves what is on top, one after the other, and never a running session")
{
    Interface ui({390, 960}, "light");
    const auto escape = [&] {
        QKeyEvent press(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
        QCoreApplication::sendEvent(ui.window, &press);
        ui.settled();
        return press.isAccepted();
    };
    const auto place = [&] { return ui.window->property("place").toInt(); };
    REQUIRE(ui.show("People"));
    QQuickItem* add = button(ui, "Add somebody");
    REQUIRE(add != nullptr);
    tap(ui, onScreen(add).center());
    REQUIRE(button(ui, "Add") != nullptr);
    CHECK(escape()); // the sheet
    CHECK(button(ui, "Add") == nullptr);
    CHECK(button(ui, "Add somebody") != nullptr);
    CHECK(escape()); // the page
    CHECK(button(ui, "Add somebody") == nullptr);
    REQUIRE(ui.show("Diary"));
    CHECK(escape()); // the place
    CHECK(place() == static_cast<int>(firstdew::ui::Place::Today));
    CHECK_FALSE(escape()); // nothing is left to leave
    REQUIRE(ui.showBath("run"));
    CHECK(escape());
    CHECK(place() == static_cast<int>(firstdew::ui::Place::Session));
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Run);
    QKeyEvent one(QEvent::KeyPress, Qt::Key_1, Qt::ControlModifier);
    QCoreApplication::sendEvent(ui.window, &one);
    QMetaObject::invokeMethod(ui.window, "go", Q_ARG(QVariant, static_cast<int>(firstdew::ui::Place::Today)));
    CHECK(place() == static_cast<int>(firstdew::ui::Place::Session));
}

TEST_CASE("Practice begins from Plan, says on every picture that the machine stays off, and is left at once")
{
    Interface ui({390, 2400}, "light");
    const auto facts = ui.store.allFacts().size();
    const QString banner = "Practice: machine stays off";
    REQUIRE(ui.show("Plan"));
    press(ui, "Practice");
    REQUIRE(ui.bath.page() == firstdew::ui::BathPage::PracticeStart);
    CHECK(shows(ui, banner));
    CHECK(shows(ui, "You could not start a real session today"));
    press(ui, "Begin practice");
    CHECK(shows(ui, banner));
    press(ui, "All checked, begin");
    CHECK(shows(ui, banner));
    CHECK(shows(ui, "Stays off"));
    const bool byEscape = GENERATE(false, true);
    if (byEscape) {
        QKeyEvent escape(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
        QCoreApplication::sendEvent(ui.window, &escape);
    } else {
        press(ui, "Stop");
        CHECK(shows(ui, banner)); // over what stands there while a stop can be taken back
        press(ui, "Leave practice");
    }
    ui.settled();
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Choose);
    CHECK_FALSE(shows(ui, banner));
    CHECK(ui.window->property("place").toInt() == static_cast<int>(firstdew::ui::Place::Session));
    CHECK(ui.store.allFacts().size() == facts);
}

TEST_CASE("Practice is left where another place is opened")
{
    Interface ui({390, 1200}, "light");
    REQUIRE(ui.showBath("practice-hold"));
    QMetaObject::invokeMethod(ui.window, "go", Q_ARG(QVariant, static_cast<int>(firstdew::ui::Place::Today)));
    ui.settled();
    CHECK(ui.window->property("place").toInt() == static_cast<int>(firstdew::ui::Place::Today));
    CHECK_FALSE(ui.bath.practice());
}

TEST_CASE("Where dry hands are asked for, the buttons work and a tap beside them stops nothing")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("under-dry"));
    REQUIRE(ui.bath.running().kind == firstdew::ui::StepKind::SwitchOn);
    ui.settled();
    tap(ui, {195, 100});
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Run);
    QQuickItem* confirmed = button(ui, "On, at zero, direct current");
    REQUIRE(confirmed != nullptr);
    tap(ui, onScreen(confirmed).center());
    CHECK(ui.bath.running().kind == firstdew::ui::StepKind::Announce);
}

TEST_CASE("The running page names site and waveform, and after a restart it shows the list that the voice speaks of")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    CHECK(shows(ui, "Direct current"));
    CHECK(shows(ui, "Both feet"));
    CHECK_FALSE(shows(ui, "Warm tap water"));
    QQuickItem* out = button(ui, "I took them out");
    REQUIRE(out != nullptr);
    tap(ui, onScreen(out).center());
    REQUIRE(ui.bath.running().kind == firstdew::ui::StepKind::CheckList);
    CHECK(shows(ui, "Warm tap water"));
    QQuickItem* again = button(ui, "All checked, begin");
    REQUIRE(again != nullptr);
    tap(ui, onScreen(again).center());
    CHECK(ui.bath.running().kind == firstdew::ui::StepKind::SwitchOn);
}

TEST_CASE("An interrupted session is followed by the skin question like a finished one")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("after"));
    QQuickItem* keep = button(ui, "Save in the diary");
    REQUIRE(keep != nullptr);
    CHECK_FALSE(keep->isEnabled());
    CHECK(shows(ui, "Look at your skin and say how it is."));
}

TEST_CASE("The running page says that nothing can be heard, as long as that is so")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("run"));
    REQUIRE(ui.voice.tellSilence);
    CHECK_FALSE(shows(ui, "You cannot hear Firstdew"));
    ui.voice.tellSilence(true);
    CHECK(shows(ui, "You cannot hear Firstdew right now. Watch the screen, or stop."));
    ui.voice.tellSilence(false);
    CHECK_FALSE(shows(ui, "You cannot hear Firstdew"));
}

TEST_CASE("The level above which the skin is to be watched stands beside the limit, in the choice and while it runs")
{
    Interface ui({390, 844}, "light");
    Machine machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Cells, {}};
    machine.pad = SquareCentimetres{24};
    REQUIRE(ui.store.append(machine));
    const QString sentence = "Watch your skin above 4.8 mA."; // 0.2 mA/cm² over the pad
    REQUIRE(ui.showBath("screening"));
    ui.bath.back();
    ui.bath.chooseSite(firstdew::ui::Site::Armpits);
    CHECK(shows(ui, sentence));
    ui.bath.chooseSite(firstdew::ui::Site::Feet); // 20 mA is less than that for an adult's feet
    CHECK_FALSE(shows(ui, "Watch your skin"));
    REQUIRE(ui.showBath("armpits"));
    CHECK(shows(ui, sentence));
}

TEST_CASE("The number pad writes the decimal sign of the language and reads it back")
{
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::German));
    {
        Interface ui({390, 844}, "light");
        REQUIRE(ui.showBath("run"));
        QQuickItem* enter = button(ui, "Enter meter reading");
        REQUIRE(enter != nullptr);
        tap(ui, onScreen(enter).center());
        for (const char* key : {"7", ",", "5"}) {
            QQuickItem* pressed = button(ui, key);
            REQUIRE(pressed != nullptr);
            tap(ui, onScreen(pressed).center());
        }
        enter = button(ui, "Enter");
        REQUIRE(enter != nullptr);
        tap(ui, onScreen(enter).center());
        ui.settled();
        CHECK(ui.bath.running().meter.lastReading == 7.5);
    }
    QLocale::setDefault(before);
}

namespace {

std::vector<Screening> screenings(Interface& ui)
{
    std::vector<Screening> out;
    for (const auto& fact : ui.store.allFacts())
        if (const auto* screening = std::get_if<Screening>(&fact.payload))
            out.push_back(*screening);
    return out;
}

/// All questions were answered a week ago, and feet treated three times since.
void treatsFeet(Interface& ui)
{
    ui.store.append(Interface::answered({}), LocalTime::parse("2026-03-10T18:00"));
    for (const char* day : {"2026-03-11", "2026-03-13", "2026-03-15"}) {
        Session s;
        s.site = Site::Feet;
        s.comfort = Comfort::Comfortable;
        s.comfortable = Milliamps{12};
        ui.store.append(s, LocalTime::parse(std::string(day) + "T18:00"));
    }
    REQUIRE(app::showPage(*ui.window, "Bath"));
    ui.bath.askFor(firstdew::ui::Site::Feet);
}

const QString kBegin = "On, at zero, direct current: begin";

} // namespace

TEST_CASE("The short way: one statement and one button, and the record holds what the long way records")
{
    Interface ui({320, 568}, "light");
    treatsFeet(ui);
    REQUIRE(ui.bath.shortWay());
    const auto asked = screenings(ui).size();
    QQuickItem* begin = button(ui, kBegin);
    REQUIRE(begin != nullptr);
    CHECK_FALSE(begin->isEnabled());
    CHECK(screenings(ui).size() == asked);
    press(ui, "True");
    CHECK(screenings(ui).size() == asked); // said, and not yet acted on
    press(ui, kBegin);
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Run);
    CHECK(ui.bath.running().kind == firstdew::ui::StepKind::Raise);
    REQUIRE(screenings(ui).size() == asked + 1);
    CHECK_FALSE(screenings(ui).back().full);
    REQUIRE(ui.store.diary().preparations.size() == 1);
    const Preparation skin = ui.store.diary().preparations.back().payload;
    CHECK(skin == Preparation{Site::Feet, {}, {}, false});
    const auto& led = ui.store.diary().ledSessions.at(ui.store.diary().latestLed);
    REQUIRE(led.prepared);
    CHECK(led.prepared->site == Site::Feet);
}

TEST_CASE("The gate is the same on the short way: an answer that changed meanwhile blocks the session")
{
    Interface ui({390, 844}, "light");
    treatsFeet(ui);
    press(ui, "True");
    ui.store.append(Interface::answered({ScreeningRow::Pregnancy}));
    ui.bath.startAsLast();
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Blocked);
    CHECK(ui.store.diary().ledSessions.empty());
}

TEST_CASE("Where the statement is not quite true, everything is asked and gone through line by line")
{
    Interface ui({390, 844}, "light");
    treatsFeet(ui);
    press(ui, "Not quite");
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Screening);
    press(ui, "Nothing has changed");
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Prepare);
    CHECK(shows(ui, "Both feet: antiperspirant with aluminium in the last 24 hours?"));
    for (int i = 0; i < 3; ++i)
        press(ui, "No");
    const auto lines = ui.bath.preparation();
    CHECK(lines.size() >= 5);
    for (const auto& line : lines) {
        CHECK(shows(ui, line.text));
        CHECK_FALSE(ui.bath.ready());
        press(ui, "Checked");
    }
    press(ui, "Begin");
    CHECK(ui.bath.page() == firstdew::ui::BathPage::Run);
    CHECK(ui.bath.running().kind == firstdew::ui::StepKind::SwitchOn);
}

TEST_CASE("An answer that asks for a wait stays on its page, and the session cannot begin")
{
    Interface ui({390, 844}, "light");
    treatsFeet(ui);
    press(ui, "Not quite");
    press(ui, "Nothing has changed");
    press(ui, "Within a few hours");
    CHECK(shows(ui, "Both feet: antiperspirant with aluminium in the last 24 hours?"));
    CHECK(shows(ui, "Both feet: no antiperspirant with aluminium for 24 hours"));
    press(ui, "Next");
    press(ui, "No");
    CHECK_FALSE(ui.bath.ready());
}

TEST_CASE("The statement holds only while it is looked at")
{
    Interface ui({390, 844}, "light");
    treatsFeet(ui);
    press(ui, "True");
    REQUIRE(ui.bath.told());
    REQUIRE(app::showPage(*ui.window, "Today"));
    ui.settled();
    CHECK_FALSE(ui.bath.told());
}

TEST_CASE("What was chosen for a session is kept through check-ins and offered again after a restart")
{
    Interface ui({390, 1400}, "light");
    treatsFeet(ui);
    press(ui, "Change");
    press(ui, "Pulsed current");
    press(ui, "Somebody helps me");
    ui.store.append(CheckIn{DiarySite::Hands, Level::Dry, {}});
    CHECK(ui.bath.waveform() == firstdew::ui::Waveform::Pulsed);
    CHECK(ui.bath.way() == firstdew::ui::WayOfWorking::Helper);
    press(ui, "Continue");
    CHECK(ui.bath.shortWay());
    CHECK(shows(ui, "Pulsed current · Somebody helps me"));
    press(ui, "True");
    press(ui, "On, at zero, pulsed light on: begin");
    REQUIRE(ui.bath.page() == firstdew::ui::BathPage::Run);
    ui.bath.stop();
    ui.bath.leave();
    ui.bath.askFor(firstdew::ui::Site::Feet);
    CHECK(ui.bath.waveform() == firstdew::ui::Waveform::Pulsed);
    CHECK(ui.bath.way() == firstdew::ui::WayOfWorking::Helper);
    CHECK_FALSE(ui.bath.shortWay()); // it was stopped
    CHECK(ui.bath.longWayText().contains("not right"));
}

TEST_CASE("The button that a page is for is in view without scrolling, on the smallest screen and at twice the text")
{
    const QSize size = GENERATE(QSize(390, 844), QSize(320, 568));
    const double scale = GENERATE(1.0, 2.0);
    Interface ui(size, "light", scale);
    int seen = 0;
    const auto mainIn = [&](const QString& page, const QString& text) {
        INFO(page.toStdString() << " at " << size.width() << " x " << size.height() << ", text " << scale);
        REQUIRE(ui.show(page));
        QQuickItem* found = button(ui, text);
        INFO(text.toStdString());
        REQUIRE(found != nullptr);
        const QRectF where = onScreen(found);
        CHECK(where.top() >= 0);
        CHECK(where.bottom() <= size.height());
        ++seen;
    };
    mainIn("Bath:screening", "That is all");
    mainIn("Bath:line", "Checked");
    mainIn("Bath:prepare", "Begin");
    mainIn("Bath:run", "Stop");
    mainIn("Bath:after", "Save in the diary");
    mainIn("FirstStart", "I have read this");
    mainIn("HealthQuestions", "Save");
    mainIn("RemindersPage", "Save");
    mainIn("WeighPage", "Save");
    mainIn("SkinPage", "Save");
    mainIn("CoursePlan", "Plan the course");
    REQUIRE(ui.show("Bath"));
    ui.bath.leave();
    mainIn("Bath", "Continue");
    mainIn("Bath:as-last", "On, at zero, pulsed light on: begin");
    CHECK(seen == 13);
}

TEST_CASE("Verb, digits and Stop of the running page are ten millimetres high on a phone, and read from two metres")
{
    constexpr double kMillimetres = 25.4 / 160; // of a device-independent pixel
    constexpr double kFar = 2000;
    constexpr double kWanted = 10; // product requirement
    std::string table = "letters from two metres, on 390 x 844:\n";
    for (const char* step : {"raise", "run", "alarm", "under"}) {
        Interface ui({390, 844}, "light");
        REQUIRE(ui.showBath(step));
        ui.settled();
        const auto high = [&](const QString& text) {
            double most = 0;
            visit(ui.window->contentItem(), [&](QQuickItem* item) {
                if (!isText(item) || item->property("text") != text)
                    return;
                QFont font = item->property("font").value<QFont>();
                // As large as it is drawn, where it had to become smaller to fit.
                if (!isFace(item)) {
                    QQmlExpression drawn(qmlContext(item), item, "fontInfo.pixelSize");
                    font.setPixelSize(std::max(1, drawn.evaluate().toInt()));
                } else {
                    CHECK(item->property("lineCount").toInt() == 1);
                }
                most = std::max(most, QFontMetricsF(font).capHeight() * kMillimetres);
            });
            table += fmt::format("{:>6} {:<10} {:5.1f} mm {:5.1f}'\n", step, text.toStdString(), most,
                                 std::atan(most / kFar) * 180 * 60 / M_PI);
            return most;
        };
        const auto r = ui.bath.running();
        const bool alarm = step == std::string("alarm");
        INFO(step);
        CHECK(high(alarm ? "Down" : ui.bath.verb()) >= kWanted);
        CHECK(high(alarm ? r.meter.reading : r.timed ? r.remaining : r.meter.target) >= kWanted);
        CHECK(high("Stop") >= kWanted);
    }
    WARN(table);
}
