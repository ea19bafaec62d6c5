#include "Fingers.h"

#include "exchange/FhirCodes.h"
#include "outlook/DrySpells.h"
#include "situation/Working.h"
#include "words/Names.h"

#include <QRegularExpression>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

/// Two weeks wet, a course of seven, and a month dry but for a day.
void live(viewmodels::Store& store, LocalDate today)
{
    const auto at = [&](int daysAgo, int hour) { return LocalTime{today - daysAgo, {hour * 60}}; };
    for (int i = 0; i < 14; ++i)
        store.append(CheckIn{DiarySite::Hands, Level::Wet, {}}, at(60 - i, 20));
    for (const int day : {46, 45, 43, 40, 37, 32, 25})
        store.append(Session{Site::Hands, Waveform::Direct, {}, {}, true, {}, {}, {}, "", "", ""}, at(day, 18));
    for (int i = 0; i < 24; ++i)
        store.append(CheckIn{DiarySite::Hands, i == 10 ? Level::Clammy : Level::Dry, {}}, at(24 - i, 20));
}

QQuickItem* chart(Interface& ui, const char* type)
{
    QQuickItem* found = nullptr;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (found == nullptr && QString::fromLatin1(item->metaObject()->className()).contains(type))
            found = item;
    });
    return found;
}

QStringList texts(Interface& ui)
{
    QStringList out;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isText(item))
            out << item->property("text").toString();
    });
    return out;
}

} // namespace

TEST_CASE("The diary answers first whether it works, with a column for each dry spell")
{
    Interface ui({390, 3000}, "light");
    const LocalDate today = ui.store.situation().today;
    live(ui.store, today);
    REQUIRE(ui.show("Diary"));
    CHECK(shows(ui, "It works"));
    CHECK(shows(ui, "Damp days a week: under 1 now, 7 before the first session."));
    CHECK(shows(ui, "Too early to say if it works")); // the feet
    CHECK(chart(ui, "SpellColumnsChart") != nullptr);
}

TEST_CASE("A tap on a day of the calendar opens it; year and all show weeks")
{
    Interface ui({390, 3000}, "light");
    live(ui.store, ui.store.situation().today);
    REQUIRE(ui.show("Diary"));
    QQuickItem* month = chart(ui, "MonthChart");
    REQUIRE(month != nullptr);
    const int wanted = (ui.store.situation().today - 3).daysSince1970();
    std::optional<QPointF> at;
    for (int y = 0; y < month->height() && !at; y += 6)
        for (int x = 0; x < month->width() && !at; x += 6) {
            int day = 0;
            QMetaObject::invokeMethod(month, "dayAt", Q_RETURN_ARG(int, day), Q_ARG(qreal, x), Q_ARG(qreal, y));
            if (day == wanted)
                at = QPointF(x + 8, y + 8);
        }
    REQUIRE(at);
    press(ui, "Year");
    CHECK(chart(ui, "WeeksChart") != nullptr);
    CHECK(chart(ui, "MonthChart") == nullptr);
    press(ui, "Quarter");
    CHECK(chart(ui, "DampnessChart") != nullptr);
    press(ui, "Month");
    press(ui, "Earlier");
    CHECK(shows(ui, "20 February 2026"));
    press(ui, "Later");
    CHECK(shows(ui, "20 March 2026"));
    tap(ui, month->mapToScene(*at));
    CHECK(shows(ui, ui.appearance.phrases()->dayFull(wanted)));
}

TEST_CASE("Of the chance that dampness has begun one number is told, on one page")
{
    Interface ui({390, 3000}, "light");
    const LocalDate today = ui.store.situation().today;
    live(ui.store, today);
    ui.store.append(CheckIn{DiarySite::Hands, Level::Clammy, {Circumstance::Heat}});
    const QRegularExpression share("\\d+\\s*%");
    for (const char* page : {"Today", "Diary", "Plan"}) {
        REQUIRE(ui.show(page));
        for (const QString& text : texts(ui))
            if (text.contains(share))
                FAIL_CHECK(page << ": " << text.toStdString());
    }
    const auto& hands = ui.store.situation().sites.front();
    const QString now = words::percent(1 - hands.forecast.today.dry);
    REQUIRE(ui.show("WhyPage"));
    CHECK_FALSE(shows(ui, "The chance that dampness has begun is " + now)); // dots come first
    press(ui, "More");
    CHECK(shows(ui, "The chance that dampness has begun is " + now));
    const auto spells = outlook::drySpellsOf(ui.store.diary(), DiarySite::Hands);
    REQUIRE(spells);
    CHECK(words::percent(1 - spells->now.dry) == now);
}

TEST_CASE("The card as last time names one aim, the one that its sentence names")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.showBath("as-last"));
    const QRegularExpression number("([\\d.]+) mA");
    const QString aim = number.match(ui.bath.asLastText()).captured(1);
    CHECK(aim == number.match(ui.bath.adviceText()).captured(1));
}

TEST_CASE("The answers that leave the app in English are those of the page that asks for them")
{
    Interface ui({390, 2000}, "light");
    REQUIRE(ui.show("BotherPage"));
    CHECK(shows(ui, QString::fromUtf8(exchange::kSeverityQuestion.data())));
    for (const auto& answer : exchange::kSeverityCodes)
        CHECK(shows(ui, QString::fromUtf8(answer.code.data()) + "  " + answer.display.data()));
}
