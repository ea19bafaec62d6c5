#include "Fingers.h"

#include "situation/Assess.h"
#include "words/Names.h"

#include <QDir>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

const LocalDate kToday = *LocalDate::parse("2026-03-20");

/// Somebody who keeps the hands dry after a course that helped. The latest dry spell began `age` days before today.
class Keeper {
public:
    explicit Keeper(viewmodels::Store& store) : m_store(store) {}

    void live(int age)
    {
        const LocalDate start = kToday - (age + 22 + 50);
        add(Person{"Alma", LocalDate::parse("1990-04-23"), {}, {}, {}}, start);
        add(Machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Mains, {}}, start);
        add(SiteUse{Site::Hands, true}, start);
        add(Hdss{DiarySite::Hands, 4}, start);
        add(Course{Site::Hands, CourseTemplate::Seven, {}, start, {}}, start);
        for (const int offset : {0, 1, 3, 6, 9, 14, 21})
            session(start + offset);
        add(Hdss{DiarySite::Hands, 2}, start + 22);
        add(ReviewDone{Site::Hands, true}, start + 22);
        LocalDate day = start + 22;
        for (int i = 0; i < 5; ++i) {
            for (int dry = 1; dry < 10; ++dry)
                add(CheckIn{DiarySite::Hands, Level::Dry, {}}, day + dry, 20);
            day = day + 10;
            add(CheckIn{DiarySite::Hands, Level::Clammy, {}}, day, 20);
            session(day);
        }
        for (day = day + 1; day < kToday; day = day + 1)
            add(CheckIn{DiarySite::Hands, Level::Dry, {}}, day, 20);
    }

private:
    template <class P>
    void add(P payload, LocalDate day, int hour = 8)
    {
        REQUIRE(m_store.append(std::move(payload), LocalTime{day, {hour * 60}}));
    }

    void session(LocalDate day)
    {
        add(Interface::answered({}), day, 21);
        BathPrepared p;
        p.bath = "b" + std::to_string(++m_sessions);
        p.site = Site::Hands;
        p.way = WayOfWorking::Helper;
        p.limit = {20};
        add(p, day, 21);
        Session s;
        s.site = Site::Hands;
        s.comfortable = Milliamps{12};
        s.comfort = Comfort::Comfortable;
        s.bath = p.bath;
        add(s, day, 22);
    }

    viewmodels::Store& m_store;
    int m_sessions = 0;
};

struct Compared {
    Interface ui;
    explicit Compared(QSize size = {390, 3000}, Qt::LayoutDirection direction = Qt::LeftToRight)
        : ui(size, "light", 1, direction, [](const QString&) {})
    {
        Keeper(ui.store).live(6);
    }

    [[nodiscard]] std::optional<situation::Compared> comparison() const
    {
        return ui.store.situation().sites.front().comparison;
    }
    /// With an order whose first session is the shorter one, or the usual one.
    void begin(bool shorterFirst)
    {
        int seed = 0;
        while (situation::shorterAt(seed, 0) != shorterFirst)
            ++seed;
        REQUIRE(ui.store.append(Comparison{DiarySite::Hands, true, 0.5, seed}));
    }
};

} // namespace

TEST_CASE("A comparison is begun with a word of agreement, leads the next session, and is left")
{
    Compared c;
    Interface& ui = c.ui;
    REQUIRE(ui.show("WhyPage"));
    CHECK(shows(ui, "Is a shorter session enough?"));
    CHECK(button(ui, "Start comparing") == nullptr);
    press(ui, "How it works");
    CHECK(shows(ui, "You compare a session of 10 min with your usual one of 20 min, in 8"));
    CHECK(shows(ui, "Agree on it with your prescriber or nurse first, and follow your machine's instructions."));
    press(ui, "Start comparing"); // not before the tick
    CHECK_FALSE(c.comparison());
    press(ui, "My prescriber or nurse agrees");
    press(ui, "Start comparing");
    REQUIRE(c.comparison());
    CHECK(c.comparison()->runs());
    CHECK(shows(ui, "Pair 1 of 8."));
    CHECK(shows(ui, c.comparison()->nextShorter ? "The next session is the shorter one: 10 min."
                                                : "The next session is the usual one: 20 min."));
    CHECK(shows(ui, "The forecast calls for no top-up meanwhile; a clammy day at rest does."));
    press(ui, "Leave the comparison");
    CHECK(c.comparison()->ended == situation::ComparisonEnd::Left);
    CHECK(shows(ui, "You left it."));
    CHECK(shows(ui, "Whether the shorter session holds as long could not be told."));
    CHECK(button(ui, "Leave the comparison") == nullptr);
    CHECK(button(ui, "Compare again") != nullptr);
}

TEST_CASE("Today says that the forecast calls for nothing while a comparison runs")
{
    Compared c;
    c.begin(true);
    REQUIRE(c.ui.show("Today"));
    CHECK(shows(c.ui, "You compare session lengths: pair 1 of 8."));
}

TEST_CASE("The session to come has the length that the comparison asks for, and the same limit and aim")
{
    Compared c;
    Interface& ui = c.ui;
    REQUIRE(ui.show("Bath"));
    ui.bath.askFor(ui::Site::Hands);
    const auto limit = ui.bath.limitText();
    const auto aim = ui.bath.asLastText();
    CHECK(ui.bath.lengthText().contains("20"));
    CHECK(ui.bath.comparedText().isEmpty());
    c.begin(true);
    CHECK(shows(ui, "You compare: this time the shorter session, 10 min."));
    CHECK(plain(ui.bath.lengthText()).startsWith("10 min"));
    CHECK(ui.bath.limitText() == limit);
    CHECK(ui.bath.asLastText() == aim);
    ui.bath.askFor(ui::Site::Feet);
    CHECK(ui.bath.comparedText().isEmpty());
    CHECK(plain(ui.bath.lengthText()).startsWith("30 min"));
}

// Not a test: pictures to be looked at. Run with "[.compared]" and the same variables as "[.pictures]".
TEST_CASE("Pictures of a comparison", "[.compared]")
{
    const QString folder = qEnvironmentVariable("FIRSTDEW_PICTURES");
    REQUIRE_FALSE(folder.isEmpty());
    QDir().mkpath(folder);
    needApplication();
    const QString language = qEnvironmentVariable("FIRSTDEW_LANGUAGE", "en");
    const InLanguage spoken(language);
    const auto size = qEnvironmentVariable("FIRSTDEW_SIZE", "360x720").split('x');
    Compared c({size.value(0).toInt(), size.value(1).toInt()}, QLocale().textDirection());
    const auto keep = [&](const char* name) { c.ui.settled().save(folder + '/' + language + '-' + name + ".png"); };
    REQUIRE(c.ui.show("WhyPage"));
    keep("offered");
    visit(c.ui.window->contentItem(), [](QQuickItem* item) {
        if (QString::fromLatin1(item->metaObject()->className()).startsWith("ComparisonCard"))
            item->setProperty("opened", true);
    });
    keep("about");
    c.begin(true);
    keep("runs");
    REQUIRE(c.ui.show("Today"));
    keep("today");
    REQUIRE(c.ui.show("Bath"));
    c.ui.bath.askFor(ui::Site::Hands);
    keep("session");
}
