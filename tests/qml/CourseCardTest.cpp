#include "Fingers.h"

using namespace firstdew;
using namespace firstdew::tests;

namespace {

/// Hands in a first course whose second session was missed a fortnight ago.
void behind(Interface& ui)
{
    Course course;
    course.site = Site::Hands;
    course.start = *LocalDate::parse("2026-03-02");
    REQUIRE(ui.store.append(Interface::answered({}), LocalTime::parse("2026-03-01T08:00")));
    REQUIRE(ui.store.append(course, LocalTime::parse("2026-03-02T08:00")));
    REQUIRE(ui.show("Today"));
    ui.settled();
}

/// The text that begins so, as it is shown; empty where there is none.
QString shown(Interface& ui, const QString& begins)
{
    QString found;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isText(item) && item->property("text").toString().startsWith(begins))
            found = item->property("text").toString();
    });
    return found;
}

void choose(Interface& ui, const QString& begins)
{
    QQuickItem* found = nullptr;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && item->property("text").toString().startsWith(begins))
            found = item;
    });
    INFO(begins.toStdString());
    REQUIRE(found != nullptr);
    REQUIRE(QMetaObject::invokeMethod(found, "clicked"));
    ui.settled();
}

} // namespace

TEST_CASE("A missed session is named on Today and on Plan, and where sessions crowd both plans are offered")
{
    Interface ui({390, 844}, "light");
    behind(ui);
    const QString missed = "You missed session 2 on Friday, 6 March. It is now today.";
    CHECK(shown(ui, "You missed") == missed);
    CHECK(shown(ui, "The plan puts 6 session(s) on consecutive days.").endsWith("1 day(s) more than planned."));
    for (const char* page : {"Plan", "Today"}) {
        REQUIRE(ui.show(page));
        CHECK(shown(ui, "You missed") == missed);
        CHECK_FALSE(shown(ui, "Close together, done by").isEmpty());
        CHECK_FALSE(shown(ui, "A day between, done by").isEmpty());
    }
    choose(ui, "A day between, done by");
    REQUIRE(ui.store.diary().coursePaces.size() == 1);
    CHECK(ui.store.diary().coursePaces.front().payload == CoursePace{Site::Hands, Pace::DayBetween});
    CHECK(shown(ui, "A day between, done by").isEmpty());
    CHECK(shown(ui, "You missed") == missed);
}

TEST_CASE("A session of the course is moved from its card on Today")
{
    Interface ui({390, 844}, "light");
    behind(ui);
    choose(ui, "Move it");
    CHECK(shown(ui, "Move session") == "Move session 2");
    choose(ui, "27");
    REQUIRE(ui.store.diary().courseMoves.size() == 1);
    CHECK(ui.store.diary().courseMoves.front().payload == CourseMove{Site::Hands, 2, *LocalDate::parse("2026-03-27")});
    CHECK(shown(ui, "You missed").isEmpty());
}

TEST_CASE("Another treatment is noted with its days, and listed until it is removed")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.show("OtherPage"));
    choose(ui, "Tablets");
    choose(ui, "Save");
    REQUIRE(ui.store.diary().otherTreatments.size() == 1);
    CHECK(ui.store.diary().otherTreatments.front().payload ==
          OtherTreatment{OtherKind::Tablets, "", {}, *LocalDate::parse("2026-03-20"), {}});
    REQUIRE(ui.show("OtherPage"));
    CHECK(shown(ui, "Tablets: since") == "Tablets: since 20 March 2026");
    choose(ui, "Remove Tablets");
    CHECK(ui.store.diary().otherTreatments.empty());
}

TEST_CASE("A course without response is gone through point by point, and goes on to twelve sessions")
{
    Interface ui({390, 844}, "light");
    const auto at = [](const char* day) { return LocalTime::parse(std::string(day) + "T09:00"); };
    REQUIRE(ui.store.append(Interface::answered({}), at("2026-03-01")));
    REQUIRE(ui.store.append(Pause{Site::Hands, true}, at("2026-03-01")));
    Course course;
    course.site = Site::Feet;
    course.start = *LocalDate::parse("2026-02-10");
    REQUIRE(ui.store.append(Hdss{DiarySite::Feet, 3}, at("2026-02-09")));
    REQUIRE(ui.store.append(course, at("2026-02-10")));
    Session session;
    session.site = Site::Feet;
    for (const char* day :
         {"2026-02-10", "2026-02-11", "2026-02-13", "2026-02-16", "2026-02-19", "2026-02-24", "2026-03-03"})
        REQUIRE(ui.store.append(session, at(day)));
    REQUIRE(ui.show("Today"));
    CHECK_FALSE(shown(ui, "Say how much the sweating bothers you now.").isEmpty()); // no score since
    REQUIRE(ui.store.append(Hdss{DiarySite::Feet, 3}, at("2026-03-15")));
    CHECK_FALSE(shown(ui, "After 7 session").isEmpty());
    choose(ui, "Check how you do it");
    CHECK_FALSE(shown(ui, "Was the polarity swapped half-way").isEmpty());
    REQUIRE(ui.show("Today"));
    choose(ui, "Go on to twelve sessions");
    const auto& last = ui.store.diary().courses.back().payload;
    CHECK(last.site == Site::Feet);
    CHECK(last.days.size() == 5);
    CHECK(shown(ui, "Go on to twelve sessions").isEmpty());
}
