#include "Fingers.h"

#include <QLocale>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

/// A hand that counts what it feels.
struct Counting final : ports::Haptics {
    int ticks = 0;
    int others = 0;
    bool present() const override { return true; }
    void pulse() override { ++others; }
    void tick() override { ++ticks; }
    void alarm() override { ++others; }
    void still() override { ++others; }
};

/// The button that is read out by that name.
QQuickItem* spoken(Interface& ui, const QString& name)
{
    QQuickItem* found = nullptr;
    QStringList others;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (!isButton(item))
            return;
        for (QObject* child : item->children())
            if (child->inherits("QQuickAccessibleAttached")) {
                others << child->property("name").toString();
                if (others.constLast() == name)
                    found = item;
            }
    });
    INFO(name.toStdString() << " among " << others.join(" | ").toStdString());
    REQUIRE(found != nullptr);
    return found;
}

void touch(Interface& ui, const QString& name)
{
    QQuickItem* found = spoken(ui, name);
    INFO(name.toStdString());
    CHECK(QRectF(0, 0, ui.window->width(), ui.window->height()).contains(onScreen(found)));
    tap(ui, onScreen(found).center());
    ui.settled();
}

} // namespace

TEST_CASE("A birthday is picked in five touches, without scrolling on the smallest screen")
{
    Interface ui({320, 568}, "light");
    REQUIRE(ui.show("People"));
    const QString before = "Birthday: 23 April 1990";
    QQuickItem* row = spoken(ui, before);
    row->forceActiveFocus(Qt::TabFocusReason); // comes into view
    touch(ui, before);
    for (const char* next : {"1980\u20131989", "1984", "February"})
        touch(ui, QString::fromUtf8(next));
    touch(ui, "Wednesday, 29 February 1984");
    CHECK(spoken(ui, "Birthday: 29 February 1984") != nullptr);
}

TEST_CASE("The calendar keeps the language's first weekday, and closes what cannot be chosen")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.show("AwayPage"));
    CHECK(onScreen(spoken(ui, "From: Friday, 20 March")).height() == 48);
    touch(ui, "From: Friday, 20 March");
    // March 2026 begins on a Sunday; in Britain the week begins on Monday.
    const QRectF sunday = onScreen(spoken(ui, "Sunday, 1 March 2026"));
    const QRectF monday = onScreen(spoken(ui, "Monday, 2 March 2026"));
    CHECK(monday.left() < sunday.left());
    CHECK(monday.top() > sunday.top());
    touch(ui, "Wednesday, 25 March 2026");
    touch(ui, "To: Wednesday, 25 March");
    CHECK_FALSE(spoken(ui, "Tuesday, 24 March 2026")->isEnabled());
    touch(ui, "The month after");
    touch(ui, "Saturday, 11 April 2026");
    press(ui, "Add");
    REQUIRE(ui.store.diary().away.size() == 1);
    CHECK(ui.store.diary().away.front().payload ==
          Away{LocalDate::parse("2026-03-25").value(), LocalDate::parse("2026-04-11").value()});
}

TEST_CASE("A time is picked in three touches")
{
    Interface ui({320, 568}, "light");
    REQUIRE(ui.show("RemindersPage"));
    touch(ui, "Daily check-in: 20:00");
    touch(ui, "07:00");
    touch(ui, "07:45");
    press(ui, "Save");
    REQUIRE(ui.store.diary().reminderSettings);
    CHECK(ui.store.diary().reminderSettings->checkIn == MinuteOfDay{7 * 60 + 45});
}

TEST_CASE("A session done without the phone is written down, and corrected without losing what was measured")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.show("Today"));
    press(ui, "I did one");
    press(ui, "Yesterday");
    press(ui, "Save");
    const auto& sessions = ui.store.diary().sessions;
    REQUIRE(sessions.size() == 2);
    CHECK(sessions.back().happened.date == LocalDate::parse("2026-03-19"));
    CHECK(sessions.back().payload.machine == "Invented");
    CHECK(sessions.back().payload.completed);
    CHECK(sessions.back().payload.skin.empty()); // nothing is taken for said that was not

    const auto first = sessions.front();
    REQUIRE(first.payload.comfortable == Milliamps{12});
    ui.show("Diary");
    QMetaObject::invokeMethod(ui.engine.singletonInstance<QObject*>(qmlTypeId("Firstdew", 1, 0, "Router")), "openDone",
                              Q_ARG(firstdew::ui::Site::Value, firstdew::ui::Site::Hands),
                              Q_ARG(int, first.happened.date.daysSince1970()),
                              Q_ARG(QString, QString::fromStdString(first.id)));
    CHECK(shows(ui, "Correct this session"));
    press(ui, "Unpleasant");
    press(ui, "Save");
    const auto mended = ui.store.diary().sessions.front();
    CHECK(ui.store.diary().sessions.size() == 2);
    CHECK(mended.corrected);
    CHECK(mended.happened == first.happened);
    CHECK(mended.payload.comfort == Comfort::Unpleasant);
    CHECK(mended.payload.comfortable == Milliamps{12});
}

TEST_CASE("One check-in gives one light tick, one that could not be stored none")
{
    Interface ui({390, 2000}, "light");
    Counting hand;
    ui.context.feelCheckIns(hand);
    REQUIRE(ui.show("Today"));
    tap(ui, onScreen(spoken(ui, "Hands: Wet")).center());
    CHECK(ui.store.diary().checkInOn(DiarySite::Hands, ui.store.now().date) != nullptr);
    CHECK(hand.ticks == 1);
    CHECK(ui.context.today.checkIn(ui::DiarySite::Hands, ui::Level::Dry, ui.store.todayNumber()));
    CHECK(hand.ticks == 2);
    CHECK_FALSE(ui.context.today.checkIn(static_cast<ui::DiarySite::Value>(99), ui::Level::Dry, 1));
    CHECK(hand.ticks == 2);
    CHECK(hand.others == 0);
}

TEST_CASE("Where hours are counted to twelve, the time picker offers them so and its buttons hold their words")
{
    const QLocale before;
    QLocale::setDefault(QLocale("en_US"));
    Interface ui({320, 700}, "light");
    ui.appearance.countHours(words::Hours::Twelve);
    REQUIRE(ui.show("RemindersPage"));
    CHECK(shows(ui, "8:00 PM"));
    press(ui, "8:00 PM");
    for (const char* hour : {"12:00 AM", "11:00 AM", "12:00 PM", "11:00 PM"}) {
        QQuickItem* found = button(ui, hour);
        INFO(hour);
        REQUIRE(found != nullptr);
        CHECK(found->implicitHeight() <= found->height() + 0.5);
    }
    CHECK_FALSE(shows(ui, "23:00"));
    ui.appearance.countHours(words::Hours::TwentyFour);
    CHECK(shows(ui, "23:00"));
    ui.appearance.countHours(words::Hours::AsLocale);
    QLocale::setDefault(before);
}
