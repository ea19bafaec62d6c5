#include "Application.h"
#include "BathModel.h"
#include "PlanModel.h"
#include "Store.h"
#include "SummaryModel.h"
#include "ports/Absent.h"

#include <catch2/catch.hpp>

#include <QFile>
#include <QTemporaryDir>

#include <algorithm>

using namespace firstdew;
using namespace firstdew::facts;

namespace {

struct HandClock final : ports::Clock {
    long long ms = 1'774'000'000'000;
    LocalTime localNow() const override { return *LocalTime::parse("2026-03-20T19:00"); }
    Instant instant() const override { return {ms, ms}; }
};

struct Feeling final : ports::Haptics {
    std::vector<std::string> felt;
    bool present() const override { return true; }
    void pulse() override { felt.emplace_back("pulse"); }
    void alarm() override { felt.emplace_back("alarm"); }
    void still() override { felt.emplace_back("still"); }
    auto count(const char* what) const { return std::count(felt.begin(), felt.end(), what); }
};

struct Outside final : ports::SessionNotice {
    std::vector<ports::SessionStep> shown;
    bool up = false;
    void show(const ports::SessionStep& step) override
    {
        shown.push_back(step);
        up = true;
    }
    void over() override { up = false; }
};

struct Speaking final : ports::Voice {
    bool ready = true;
    bool prepare() override { return ready; }
    void say(const std::string&) override {}
    void tone(const std::string&) override {}
    void alarm(const std::string&) override {}
    void hush() override {}
};

struct Awake final : ports::WakeGuard {
    bool on = false;
    void keepAwake(bool wanted) override { on = wanted; }
};

/// An invented person whose bath for the feet has just begun.
struct Led {
    bool application = (tests::needApplication(), true);
    QTemporaryDir folder;
    HandClock clock;
    viewmodels::Store store{clock, (folder.path() + "/record.db").toStdString()};
    Speaking voice;
    Awake awake;
    Feeling haptics;
    Outside outside;
    viewmodels::BathModel bath{store, {voice, awake, haptics, outside}};

    void begin()
    {
        askToBegin();
        REQUIRE(bath.page() == "run");
    }
    void askToBegin()
    {
        REQUIRE(store.append(Machine{"Invented", true, true, PolaritySwap::Leads, false, PowerSource::Mains}));
        REQUIRE(store.append(SiteUse{Site::Feet, true}));
        bath.chooseSite(ui::Site::Feet);
        bath.goOn();
        Screening all;
        for (const auto row : allOf<ScreeningRow>())
            all.asked.insert(row);
        REQUIRE(store.append(all));
        bath.answersDone();
        bath.setSmallWounds(false);
        bath.setAntiperspirant(-1);
        bath.setShaved(-1);
        for (const QVariant& line : bath.preparation())
            bath.tick(line.toMap()["item"].toInt());
        bath.start();
    }
    std::string title() const { return bath.running()["step"].toString().toStdString(); }
};

} // namespace

TEST_CASE("No session begins where its alarm could not be heard")
{
    Led s;
    s.voice.ready = false;
    s.askToBegin();
    CHECK(s.bath.page() == "prepare");
    CHECK(s.bath.refusal() == "A part of this program is missing. Install Firstdew again.");
    CHECK(s.store.diary().ledSessions.empty());
    CHECK_FALSE(s.awake.on);
}

TEST_CASE("Outside the app the session is shown from its beginning to its end, with the time at which a step is over")
{
    Led s;
    s.begin();
    CHECK(s.awake.on);
    CHECK(s.outside.up);
    REQUIRE_FALSE(s.outside.shown.empty());
    CHECK(s.outside.shown.back().title == s.title());

    s.clock.ms += 20'000;
    s.bath.primary(); // it is comfortable: the phase begins
    REQUIRE(s.bath.running()["kind"] == "hold");
    CHECK(s.outside.shown.back().title == s.title());
    const auto phase = s.outside.shown.back();
    CHECK(phase.endWallMs == s.clock.ms + 15 * 60'000); // feet: fifteen minutes a phase, common practice, no source

    const auto before = s.outside.shown.size();
    s.clock.ms += 30'000;
    s.bath.reading(8);
    CHECK(s.outside.shown.size() == before); // the same to the eye is not shown again

    s.bath.loweredEarly(); // the phase waits at zero: no countdown may go on
    CHECK(s.outside.shown.size() == before + 1);
    CHECK_FALSE(s.outside.shown.back().endWallMs);
    CHECK(s.outside.shown.back().text != phase.text);
    s.clock.ms += 60'000;
    s.bath.primary(); // raised again
    REQUIRE(s.outside.shown.back().endWallMs);
    CHECK(*s.outside.shown.back().endWallMs == s.clock.ms + 15 * 60'000 - 30'000);

    s.bath.stop();
    CHECK_FALSE(s.outside.up);
    CHECK_FALSE(s.awake.on);
    CHECK(s.haptics.felt.back() == "still");
}

TEST_CASE("Each step is felt where the person wants it, the alarm always")
{
    const bool wanted = GENERATE(true, false);
    Led s;
    REQUIRE(s.store.append(diary::vibrationPreference(wanted)));
    s.begin();
    s.bath.primary();
    CHECK((s.haptics.count("pulse") > 0) == wanted);
    CHECK(s.haptics.count("alarm") == 0);
    s.bath.reading(40); // above any limit
    CHECK(s.haptics.count("alarm") == 1);
    s.bath.reading(5);
    CHECK(s.haptics.felt.back() == "still");
}

TEST_CASE("Whoever chose nothing feels each step")
{
    Led s;
    CHECK(viewmodels::wantsVibration(s.store));
    viewmodels::PlanModel(s.store).setVibration(false);
    CHECK_FALSE(viewmodels::wantsVibration(s.store));
}

TEST_CASE("After an interruption nothing outside the app says what the machine does, until the person has said it")
{
    Led s;
    s.begin();
    s.bath.primary();
    REQUIRE(s.outside.up);
    s.clock.ms += 30 * 60'000;
    s.bath.reading(8); // not there for half an hour
    tests::needApplication();
    for (int i = 0; i < 200 && s.bath.page() != "meanwhile"; ++i)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    REQUIRE(s.bath.page() == "meanwhile");
    CHECK_FALSE(s.outside.up);
    s.bath.meanwhile("switched-off");
    CHECK(s.outside.up == (s.bath.page() == "run"));
}

TEST_CASE("The page that was made is shown in the person's own program, and it is said where none shows it")
{
    struct Programs final : ports::Opener {
        std::vector<std::string> given;
        bool open(const std::string& path) override
        {
            given.push_back(path);
            return given.size() == 1;
        }
    } programs;
    Led s;
    ports::AbsentSharer nobody;
    viewmodels::SummaryModel summary(s.store, nobody, programs, s.folder.path());
    summary.share();
    REQUIRE(QFile::exists(summary.file()));
    CHECK(summary.open(summary.file()));
    CHECK(programs.given == std::vector<std::string>{summary.file().toStdString()});
    CHECK_FALSE(summary.open(summary.file()));
}
