#include "Fingers.h"

using namespace firstdew;
using namespace firstdew::tests;

namespace {

QQuickItem* field(Interface& ui, const QString& label)
{
    QQuickItem* found = nullptr;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (item->inherits("QQuickTextField") || item->inherits("QQuickTextInput"))
            if (item->parentItem() != nullptr && item->parentItem()->property("label") == label)
                found = item;
    });
    return found;
}

} // namespace

TEST_CASE("A taught session is marked with who, what was seen and the level agreed, and can be withdrawn")
{
    Interface ui({390, 1800}, "light");
    REQUIRE(ui.show("TaughtPage"));
    QQuickItem* save = button(ui, "Save");
    REQUIRE(save != nullptr);
    CHECK_FALSE(save->isEnabled()); // nobody is named yet
    QQuickItem* who = field(ui, "Who watched");
    REQUIRE(who != nullptr);
    who->setProperty("text", "the nurse");
    CHECK_FALSE(save->isEnabled()); // nothing was seen yet
    press(ui, "Turned up slowly and said when it was enough");
    press(ui, "Knows when to stop and whom to call");
    press(ui, "Swapped at zero");
    press(ui, "Swapped at zero"); // taken back
    REQUIRE(save->isEnabled());
    press(ui, "Save");
    REQUIRE(ui.store.diary().taught.size() == 1);
    const auto& kept = ui.store.diary().taught.front();
    CHECK(kept.payload.who == "the nurse");
    CHECK(kept.payload.ticks == SetOf<TaughtTick>{TaughtTick::TurnedUpSlowly, TaughtTick::WhenToStop});
    CHECK_FALSE(kept.payload.level);
    CHECK(kept.happened.date == ui.store.situation().today);
    REQUIRE(ui.show("TaughtPage"));
    QQuickItem* remove = nullptr;
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && item->property("text").toString().startsWith("Remove"))
            remove = item;
    });
    REQUIRE(remove != nullptr);
    tap(ui, onScreen(remove).center());
    CHECK(ui.store.diary().taught.empty());
}

TEST_CASE("No level above the limit is taken")
{
    Interface ui({390, 844}, "light");
    auto& model = ui.context.taught;
    using firstdew::ui::TaughtTick::OutOfWater;
    const int today = ui.store.todayNumber();
    const auto add = [&](double level) {
        return model.add(firstdew::ui::Site::Hands, today, "nurse", {OutOfWater}, firstdew::ui::Waveform::Direct,
                         level);
    };
    CHECK_FALSE(add(20.5)); // adults, direct: common practice, no source
    CHECK(plain(model.refusal()) == "This is above the limit of 20 mA there. Agree on a level up to the limit.");
    CHECK(ui.store.diary().taught.empty());
    CHECK(add(20));
    CHECK(model.refusal().isEmpty());
    CHECK_FALSE(
        model.add(firstdew::ui::Site::Hands, today + 1, "nurse", {OutOfWater}, firstdew::ui::Waveform::Direct, 8));
    CHECK(model.waveforms(firstdew::ui::Site::Armpits) ==
          QList<firstdew::ui::Waveform::Value>{firstdew::ui::Waveform::Pulsed});
    CHECK(ui.store.diary().taught.size() == 1);
}

TEST_CASE("After a session nobody has taught there, the page asks whether somebody did")
{
    Interface ui({390, 2000}, "light");
    REQUIRE(ui.showBath("after"));
    CHECK(shows(ui, "Did somebody teach you this session?"));
    press(ui, "Mark it");
    CHECK(shows(ui, "A taught session"));
    REQUIRE(ui.context.taught.add(ui.bath.site(), ui.store.todayNumber(), "nurse",
                                  {firstdew::ui::TaughtTick::OutOfWater}, ui.bath.waveform(), 0));
    press(ui, "Back");
    CHECK(ui.bath.page() == firstdew::ui::BathPage::After);
    CHECK_FALSE(shows(ui, "Did somebody teach you this session?"));
}
