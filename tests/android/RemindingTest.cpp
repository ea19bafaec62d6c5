#include "Reminding.h"

#include <catch2/catch.hpp>

#include <QGuiApplication>
#include <QTemporaryDir>

#include <algorithm>

using namespace firstdew;
using namespace firstdew::facts;

namespace {

/// A system that shows reminders with the app closed, and remembers what it was given.
struct PlanningNotifier final : ports::Notifier {
    std::vector<std::string> order;
    std::vector<ports::Notice> due;
    std::vector<ports::PlannedNotice> upcoming;
    std::vector<ports::NoticeAnswer> given;

    void show(const std::vector<ports::Notice>& now, const ports::Standing&) override
    {
        order.emplace_back("show");
        due = now;
    }
    std::vector<ports::AskedSite> asked;
    void ask(std::vector<ports::AskedSite> sites) override
    {
        order.emplace_back("ask");
        asked = std::move(sites);
    }
    bool plansAhead() const override { return true; }
    void plan(std::vector<ports::PlannedNotice> all) override
    {
        order.emplace_back("plan");
        upcoming = std::move(all);
    }
    std::vector<ports::NoticeAnswer> answers() override
    {
        order.emplace_back("answers");
        return given;
    }
    void dropAnswers(std::size_t count) override
    {
        given.erase(given.begin(), given.begin() + static_cast<std::ptrdiff_t>(count));
    }
};

struct ClockAt final : ports::Clock {
    LocalTime now;
    explicit ClockAt(const char* at) : now(*LocalTime::parse(at)) {}
    LocalTime localNow() const override { return now; }
    Instant instant() const override { return {0, 0}; }
};

LocalTime at(const char* text) { return *LocalTime::parse(text); }

/// An invented person who treats hands, in an app that was just opened.
struct App {
    static QGuiApplication& program()
    {
        static int count = 1;
        static char name[] = "test_reminding";
        static char* arguments[] = {name, nullptr};
        qputenv("QT_QPA_PLATFORM", "offscreen");
        static auto* one = new QGuiApplication(count, arguments);
        return *one;
    }
    QTemporaryDir folder;
    ClockAt clock{"2026-03-02T09:00"};
    viewmodels::Store store;
    PlanningNotifier notifier;

    explicit App(std::vector<Site> sites = {Site::Hands})
        : store((program(), clock), (folder.path() + QStringLiteral("/record.db")).toStdString())
    {
        REQUIRE(store.isOpen());
        for (const Site site : sites)
            REQUIRE(store.append(SiteUse{site}));
    }

    std::vector<std::pair<LocalTime, Level>> checkIns() const
    {
        std::vector<std::pair<LocalTime, Level>> out;
        for (const auto& line : store.diary().checkIns)
            out.emplace_back(line.happened, line.payload.level);
        return out;
    }
};

std::vector<std::string> ids(const ports::Notice& notice)
{
    std::vector<std::string> out;
    for (const auto& a : notice.actions)
        out.push_back(a.id);
    return out;
}

std::vector<std::string> keys(const std::vector<ports::PlannedNotice>& all)
{
    std::vector<std::string> out;
    for (const auto& p : all)
        out.push_back(p.notice.key);
    return out;
}

} // namespace

TEST_CASE("the reminders to come are handed over, with buttons where one tap can answer")
{
    App app;
    const app::Reminding reminding(app.store, app.notifier);
    REQUIRE_FALSE(app.notifier.upcoming.empty());
    CHECK(app.notifier.upcoming.size() <= 60); // one system keeps only 64
    const auto& first = app.notifier.upcoming.front();
    CHECK(first.notice.key == "check-in:hands:2026-03-02");
    CHECK(first.at == at("2026-03-02T20:00"));
    CHECK(ids(first.notice) == std::vector<std::string>{"dry", "clammy", "wet", "dripping", "later"});
    CHECK_FALSE(first.notice.title.empty());
}

TEST_CASE("each site is asked and answered for itself, with all four levels")
{
    App app({Site::Hands, Site::Feet});
    app.notifier.given = {{"check-in:feet:2026-03-01", "dripping", at("2026-03-01T20:10")}};
    const app::Reminding reminding(app.store, app.notifier);
    REQUIRE(app.store.diary().checkIns.size() == 1);
    CHECK(app.store.diary().checkIns.front().payload == CheckIn{DiarySite::Feet, Level::Dripping, {}});
    const auto left = keys(app.notifier.upcoming);
    CHECK(std::count(left.begin(), left.end(), "check-in:hands:2026-03-02") == 1);
    CHECK(std::count(left.begin(), left.end(), "check-in:feet:2026-03-02") == 1);
}

TEST_CASE("questions that come late stand by themselves, and so do not share their buttons")
{
    App app({Site::Hands, Site::Feet});
    Session yesterday;
    yesterday.site = Site::Hands;
    REQUIRE(app.store.append(yesterday, at("2026-03-01T18:00"))); // so the skin is to be looked at
    app.clock.now = at("2026-03-02T21:30");
    app::Reminding reminding(app.store, app.notifier);
    int questions = 0;
    for (const auto& n : app.notifier.due) {
        const bool question = n.key.starts_with("check-in");
        questions += question ? 1 : 0;
        CHECK(n.late == !question);
    }
    CHECK(questions == 2);
    CHECK(app.notifier.due.size() > 2);
}

TEST_CASE("a home screen is told which sites the check-in asks about, and which have been reported today")
{
    App app({Site::Hands, Site::Feet, Site::Armpits});
    REQUIRE(app.store.append(Pause{Site::Armpits, true}));
    REQUIRE(app.store.append(CheckIn{DiarySite::Feet, Level::Wet, {}}, at("2026-03-01T19:00")));
    const app::Reminding reminding(app.store, app.notifier);
    const LocalDate today = app.clock.now.date;
    CHECK(app.notifier.asked == std::vector<ports::AskedSite>{{"hands", "Hands", {}}, {"feet", "Feet", {}}});
    REQUIRE(app.store.append(CheckIn{DiarySite::Feet, Level::Dry, {}}));
    CHECK(app.notifier.asked == std::vector<ports::AskedSite>{{"hands", "Hands", {}}, {"feet", "Feet", today}});
    CHECK(std::find(app.notifier.order.begin(), app.notifier.order.end(), "ask") <
          std::find(app.notifier.order.begin(), app.notifier.order.end(), "show"));
    // The next morning, with the app still open.
    app.clock.now = at("2026-03-03T00:05");
    app.store.follow();
    CHECK(app.notifier.asked == std::vector<ports::AskedSite>{{"hands", "Hands", {}}, {"feet", "Feet", {}}});
}

TEST_CASE("each of the four levels can be the answer for one site")
{
    const Level level = GENERATE(Level::Dry, Level::Clammy, Level::Wet, Level::Dripping);
    App app({Site::Hands, Site::Feet});
    app.notifier.given = {{"check-in:feet:2026-03-02", std::string(token(level)), at("2026-03-02T08:30")}};
    const app::Reminding reminding(app.store, app.notifier);
    CHECK(app.checkIns() == std::vector<std::pair<LocalTime, Level>>{{at("2026-03-02T08:30"), level}});
    CHECK(app.store.diary().checkIns.front().payload.site == DiarySite::Feet);
    CHECK(app.notifier.given.empty());
}

TEST_CASE("an answer in the quiet hours is an answer")
{
    App app;
    app.notifier.given = {{"check-in:hands:2026-03-01", "clammy", at("2026-03-01T22:40")}};
    const app::Reminding reminding(app.store, app.notifier);
    CHECK(app.checkIns() == std::vector<std::pair<LocalTime, Level>>{{at("2026-03-01T22:40"), Level::Clammy}});
}

TEST_CASE("what is done is planned no more")
{
    App app;
    const app::Reminding reminding(app.store, app.notifier);
    REQUIRE(app.store.append(CheckIn{DiarySite::Hands, Level::Dry, {}}));
    const auto left = keys(app.notifier.upcoming);
    CHECK(std::find(left.begin(), left.end(), "check-in:hands:2026-03-02") == left.end());
    CHECK(std::find(left.begin(), left.end(), "check-in:hands:2026-03-03") != left.end());
}

TEST_CASE("answers from notices are in the record before anything is planned")
{
    App app;
    app.notifier.given = {{"check-in:hands:2026-03-01", "clammy", at("2026-03-01T20:07")},
                          {"check-in:hands:2026-03-02", "later", at("2026-03-02T08:50")}};
    const app::Reminding reminding(app.store, app.notifier);
    CHECK(app.notifier.given.empty());
    REQUIRE(app.notifier.order.size() >= 2);
    CHECK(app.notifier.order.front() == "answers");
    CHECK(app.checkIns() == std::vector<std::pair<LocalTime, Level>>{{at("2026-03-01T20:07"), Level::Clammy}});
    REQUIRE(app.store.diary().remindersHandled.size() == 1);
    CHECK(app.store.diary().remindersHandled.front().payload.until == at("2026-03-02T09:50"));
    CHECK(app.notifier.upcoming.front().at == at("2026-03-02T09:50"));
}

TEST_CASE("an answer given after midnight is about the day that was asked about")
{
    App app;
    app.notifier.given = {{"check-in:hands:2026-03-01", "dry", at("2026-03-02T00:20")}};
    const app::Reminding reminding(app.store, app.notifier);
    CHECK(app.checkIns() == std::vector<std::pair<LocalTime, Level>>{{at("2026-03-01T23:59"), Level::Dry}});
}

TEST_CASE("what was said in the app stands, and what says nothing we know is put aside")
{
    App app;
    REQUIRE(app.store.append(CheckIn{DiarySite::Hands, Level::Wet, {}}, at("2026-03-01T19:00")));
    app.notifier.given = {{"check-in:hands:2026-03-01", "dry", at("2026-03-01T20:00")},
                          {"check-in:nose:2026-03-01", "dry", at("2026-03-01T20:00")},
                          {"check-in:2026-03-01", "dry", at("2026-03-01T20:00")},
                          {"check-in:feet:2026-03-01", "dry", at("2026-03-01T20:00")},
                          {"check-in:hands:2026-02-31", "dry", at("2026-03-01T20:00")},
                          {"cells:2026-03-01", "dry", at("2026-03-01T20:00")},
                          {"check-in:hands:2026-03-01", "damp", at("2026-03-01T20:00")},
                          {}};
    const app::Reminding reminding(app.store, app.notifier);
    CHECK(app.notifier.given.empty());
    CHECK(app.checkIns() == std::vector<std::pair<LocalTime, Level>>{{at("2026-03-01T19:00"), Level::Wet}});
}
