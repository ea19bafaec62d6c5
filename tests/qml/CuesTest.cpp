#include "Announce.h"
#include "Led.h"
#include "PlanModel.h"
#include "Store.h"
#include "SummaryModel.h"
#include "ports/Absent.h"
#include "words/Announced.h"
#include "words/Prompts.h"

#include <catch2/catch.hpp>

#include <QElapsedTimer>
#include <QEventLoop>
#include <QFile>
#include <QTemporaryDir>
#include <QThread>

#include <algorithm>
#include <sqlite3.h>
#include <variant>

using namespace firstdew;
using namespace firstdew::facts;
using namespace firstdew::tests;

TEST_CASE("No session begins where its alarm could not be heard")
{
    Led s;
    s.voice.ready = false;
    s.askToBegin();
    CHECK(s.bath.page() == ui::BathPage::Prepare);
    CHECK(s.bath.refusal() ==
          "No sound comes from here, so you would not hear the alarm. Switch the sound on, then begin.");
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

    s.pass(20);
    s.bath.primary(); // it is comfortable: the phase begins
    REQUIRE(s.bath.running().kind == ui::StepKind::Hold);
    CHECK(s.outside.shown.back().title == s.title());
    const auto phase = s.outside.shown.back();
    CHECK(phase.endWallMs == s.clock.ms + 15 * 60'000); // feet: fifteen minutes a phase, common practice, no source

    const auto before = s.outside.shown.size();
    s.pass(30);
    s.bath.reading(8);
    CHECK(s.outside.shown.size() == before); // the same to the eye is not shown again

    s.bath.loweredEarly(); // the phase waits at zero: no countdown may go on
    CHECK(s.outside.shown.size() == before + 1);
    CHECK_FALSE(s.outside.shown.back().endWallMs);
    CHECK(s.outside.shown.back().ends.empty());
    CHECK(s.outside.shown.back().title != phase.title);
    s.pass(60);
    s.bath.primary(); // raised again
    REQUIRE(s.outside.shown.back().endWallMs);
    CHECK(*s.outside.shown.back().endWallMs == s.clock.ms + 15 * 60'000 - 30'000);

    s.bath.stop();
    CHECK_FALSE(s.outside.up);
    CHECK_FALSE(s.awake.on);
    CHECK(s.haptics.felt.back() == "still");
}

TEST_CASE("Stop outside the app does what Stop on the page does: said at once, taken back on the page, then final")
{
    Led s;
    s.begin();
    s.bath.primary();
    CHECK(s.outside.shown.back().stop == "Stop");
    REQUIRE(s.outside.pressStop);
    s.outside.pressStop();
    CHECK(s.bath.stopsIn() > 0);
    CHECK(s.bath.page() == ui::BathPage::Run);
    s.bath.takeBackStop();
    CHECK(s.bath.stopsIn() == 0);
    REQUIRE(s.outside.up);
    s.outside.pressStop();
    s.outside.pressStop(); // pressed twice, it neither waits longer nor takes itself back
    s.pass(5);
    CHECK(s.bath.page() == ui::BathPage::After);
    CHECK_FALSE(s.outside.up);
    s.outside.pressStop(); // a notice that is late to go
    CHECK(s.bath.page() == ui::BathPage::After);
}

TEST_CASE("Outside the app nothing says which part of the body is treated, or how strong the current is")
{
    Led s;
    s.begin();
    s.pass(20);
    s.bath.primary();
    s.bath.reading(8);
    REQUIRE_FALSE(s.outside.shown.empty());
    for (const auto& step : s.outside.shown)
        for (const char* word : {"eet", "rmpit", "mA", "sweat", "Sweat", "ontophores"})
            CHECK((step.title + step.ends).find(word) == std::string::npos);
}

TEST_CASE("A notice that outlives the session stops nothing")
{
    Led s;
    Outside outside;
    {
        viewmodels::BathModel gone(s.store, {s.voice, s.awake, s.haptics, outside});
        REQUIRE(outside.pressStop);
    }
    CHECK_NOTHROW(outside.pressStop());
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
    for (int i = 0; i < 200 && s.bath.page() != ui::BathPage::Meanwhile; ++i)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    REQUIRE(s.bath.page() == ui::BathPage::Meanwhile);
    CHECK_FALSE(s.outside.up);
    s.bath.meanwhile(ui::Meanwhile::SwitchedOff);
    CHECK(s.outside.up == (s.bath.page() == ui::BathPage::Run));
}

TEST_CASE("Both hands under is refused without a remote control, and without a voice, with words")
{
    Led plain;
    plain.askToBegin(ui::Site::Hands, ui::WayOfWorking::HandsUnder);
    CHECK(plain.bath.way() == ui::WayOfWorking::Helper);
    CHECK(plain.bath.ways().back().allowed == false);
    CHECK(plain.bath.ways().back().hint.contains("remote control"));

    Led mute;
    mute.voice.ready = false;
    mute.askToBegin(ui::Site::Hands, ui::WayOfWorking::HandsUnder, true);
    REQUIRE(mute.bath.way() == ui::WayOfWorking::HandsUnder);
    CHECK(mute.bath.page() == ui::BathPage::Prepare);
    CHECK(mute.bath.refusal().contains("the voice cannot be made ready"));
    mute.voice.ready = true; // it is there now
    mute.bath.start();
    CHECK(mute.bath.page() == ui::BathPage::Run);
}

TEST_CASE("An absence is asked aloud, with the alarm, and what answers it makes it silent")
{
    Led s;
    s.begin();
    s.bath.primary();
    s.clock.ms += 20'000;
    for (int i = 0; i < 200 && s.bath.page() != ui::BathPage::Meanwhile; ++i)
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    REQUIRE(s.bath.page() == ui::BathPage::Meanwhile);
    CHECK(s.haptics.count("alarm") == 1);
    CHECK(s.voice.alarms == std::vector<std::string>{"what-did-it-do"});
    const auto stills = s.haptics.count("still");
    s.bath.meanwhile(ui::Meanwhile::KeptRunning);
    CHECK(s.bath.page() == ui::BathPage::Run);
    CHECK(s.haptics.count("still") > stills);
}

TEST_CASE("The running page is told when sound is gone and when it is back")
{
    Led s;
    s.begin();
    REQUIRE(s.voice.tellSilence);
    int ticks = 0;
    QObject::connect(&s.bath, &viewmodels::BathModel::ticked, &s.bath, [&] { ++ticks; });
    CHECK_FALSE(s.bath.running().silent);
    s.voice.tellSilence(true);
    CHECK(s.bath.running().silent);
    CHECK(ticks == 1);
    s.voice.tellSilence(false);
    CHECK_FALSE(s.bath.running().silent);
    CHECK(ticks == 2);
}

TEST_CASE("A voice that leads by itself is told once what is to come, and anew after each thing that happens")
{
    Led s;
    s.voice.lead = ports::Lead::Line;
    s.begin();
    s.bath.primary(); // it is comfortable: the hold begins
    REQUIRE(s.bath.running().kind == ui::StepKind::Hold);
    REQUIRE(s.voice.led);
    const auto plans = s.voice.plans.size();
    const auto said = s.voice.said.size();
    const auto& plan = s.voice.plans.back();
    CHECK(std::any_of(plan.begin(), plan.end(), [](const auto& p) { return p.id == "half-way"; }));
    CHECK(std::any_of(plan.begin(), plan.end(), [](const auto& p) { return p.id == "lower-to-zero"; }));
    s.pass(65); // over a minute, at which it asks for the meter by itself
    CHECK(s.voice.said.size() == said);
    CHECK(s.voice.plans.size() == plans);
    s.bath.reading(12);
    CHECK(s.voice.plans.size() == plans + 1);
    CHECK(s.voice.said.size() == said);
    s.bath.reading(60); // far above the limit
    CHECK(s.voice.alarms.size() == 1);
    CHECK(s.voice.plans.back().front().kind == ports::Planned::Kind::Alarm);
    s.bath.stop();
    CHECK_FALSE(s.voice.led);
}

TEST_CASE("Where the voice does not lead any more, or only stands by, the app says everything itself")
{
    Led s;
    s.voice.lead = ports::Lead::Line;
    s.begin();
    s.bath.primary();
    const auto said = s.voice.said.size();
    SECTION("lost") { s.voice.lead = ports::Lead::App; }
    SECTION("stands by")
    {
        s.voice.lead = ports::Lead::Reserve;
        s.bath.reading(9);
    }
    s.pass(65);
    CHECK(s.voice.said.size() == said + 1);
    CHECK(s.voice.said.back() == "look-at-meter");
}

TEST_CASE("A voice that outlives the session tells nobody of its silence")
{
    Led s;
    Speaking voice;
    {
        viewmodels::BathModel gone(s.store, {voice, s.awake, s.haptics, s.outside});
        REQUIRE(voice.tellSilence);
    }
    CHECK_NOTHROW(voice.tellSilence(true));
}

TEST_CASE("Hours and days that an answer stands for ask for the wait that they leave")
{
    Led s;
    s.voice.ready = false; // it stays with the preparation
    s.askToBegin();
    REQUIRE(s.bath.page() == ui::BathPage::Prepare);
    s.bath.setAntiperspirant(ui::LastAntiperspirant::HalfADay);
    REQUIRE(s.bath.waits().size() == 1); // 24 hours, of which 12 are over at 19:00
    CHECK(s.bath.waits().constFirst().contains("07:00"));
    s.bath.setAntiperspirant(ui::LastAntiperspirant::No);
    CHECK(s.bath.waits().isEmpty());
    s.bath.setShaved(ui::LastShave::Today);
    CHECK(s.bath.waits().size() == 1);
    s.bath.setShaved(ui::LastShave::No);
    s.bath.setSmallCuts(ui::SmallCuts::No);
    CHECK(s.bath.skinTold());
    s.bath.setShaved(ui::LastShave::NotSaid);
    CHECK_FALSE(s.bath.skinTold());
}

TEST_CASE("A store that is locked holds up neither the alarm nor the session, and the page says so")
{
    Led s;
    s.begin();
    s.bath.primary();
    sqlite3* other = nullptr; // a program that writes and does not come to an end
    REQUIRE(sqlite3_open((s.folder.path() + "/record.db").toUtf8(), &other) == SQLITE_OK);
    REQUIRE(sqlite3_exec(other, "BEGIN IMMEDIATE", nullptr, nullptr, nullptr) == SQLITE_OK);
    int failures = 0;
    QObject::connect(&s.store, &viewmodels::Store::failed, &s.store, [&] { ++failures; });
    QElapsedTimer since;
    since.start();
    s.bath.reading(40);
    CHECK(since.elapsed() < 300);
    CHECK(s.bath.running().alarm);
    CHECK(s.voice.alarms.size() == 1);
    // While the store does not answer, the page does: the longest time in which it could not was below that of the
    // alarm.
    QElapsedTimer turn;
    long long longest = 0;
    for (int i = 0; i < 1000 && !s.bath.running().unsaved; ++i) {
        turn.start();
        QCoreApplication::processEvents(QEventLoop::AllEvents);
        longest = std::max(longest, turn.elapsed());
        QThread::msleep(10);
    }
    CHECK(longest < 300);
    CHECK(s.bath.running().unsaved);
    CHECK(failures == 0); // no sheet covers the session
    sqlite3_close(other);
    s.bath.stop();
    s.bath.save(-1, 0, {ui::SkinFinding::Fine}, "");
    CHECK(s.bath.page() == ui::BathPage::Choose);
    std::vector<int> sequence;
    for (const auto& f : s.store.allFacts())
        if (const auto* e = std::get_if<BathEvent>(&f.payload))
            sequence.push_back(e->sequence);
    REQUIRE(sequence.size() >= 5);
    for (std::size_t i = 0; i < sequence.size(); ++i)
        CHECK(sequence[i] == static_cast<int>(i));
}

TEST_CASE("A session that ended is asked about although the app was closed before it was written down")
{
    Led s;
    s.begin();
    s.bath.primary();
    s.bath.reading(8);
    s.bath.stop();
    s.bath.leave(); // closed
    viewmodels::BathModel again(s.store, {s.voice, s.awake, s.haptics, s.outside});
    CHECK(again.page() == ui::BathPage::After);
    CHECK(again.afterwards().comfortable == 8.0);
}

TEST_CASE("After three runs in a day it is enough, whether in one session or in several")
{
    Led s;
    for (int run = 0; run < 3; ++run) {
        if (run == 0)
            s.begin();
        else {
            s.askToBegin();
            REQUIRE(s.bath.page() == ui::BathPage::Run);
            s.bath.primary();
        }
        s.bath.primary();
        s.bath.stop();
        s.bath.save(-1, 0, {ui::SkinFinding::Fine}, "");
    }
    s.askToBegin();
    CHECK(s.bath.page() == ui::BathPage::Prepare);
    CHECK(s.bath.refusal().startsWith("It is enough for today."));
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
    viewmodels::SummaryModel summary(s.store, nobody, programs, s.folder.path() + "/outgoing");
    summary.share();
    REQUIRE(QFile::exists(summary.file()));
    CHECK(summary.open(summary.file()));
    CHECK(programs.given == std::vector<std::string>{summary.file().toStdString()});
    CHECK_FALSE(summary.open(summary.file()));
}

TEST_CASE("With a screen reader on, both hands under is offered once a pedal or a switch is there")
{
    bool reads = true;
    Led s;
    viewmodels::BathModel bath(s.store, {s.voice, s.awake, s.haptics, s.outside, [&] { return reads; }});
    REQUIRE(s.store.append(Machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Mains, {}}));
    REQUIRE(s.store.append(SiteUse{Site::Hands, true}));
    REQUIRE(s.store.append(Person{"Alma", LocalDate::parse("1990-04-23"), {}, {}, {}}));
    bath.chooseSite(ui::Site::Hands);
    const auto offered = [&] {
        for (const auto& way : bath.ways())
            if (way.way == ui::WayOfWorking::HandsUnder)
                return way.allowed;
        return false;
    };
    CHECK_FALSE(offered());
    CHECK(bath.screenReader());
    REQUIRE(s.store.append(diary::pedalPreference(true)));
    CHECK(offered());
    REQUIRE(s.store.append(diary::pedalPreference(false)));
    reads = false;
    CHECK(offered());
    Screening all;
    for (const auto row : allOf<ScreeningRow>())
        all.asked.insert(row);
    REQUIRE(s.store.append(all));
    bath.chooseWay(ui::WayOfWorking::HandsUnder);
    reads = true; // switched on after the choice: the gate asks again
    bath.goOn();
    CHECK(bath.refusal().startsWith("With a screen reader on"));
    CHECK(bath.page() == ui::BathPage::Choose);
}

namespace {

/// A screen reader that is on or off.
struct Reader final : ports::Announcer {
    bool on = true;
    std::vector<std::pair<std::string, bool>> told; ///< and whether at once
    std::vector<std::string> pages;
    [[nodiscard]] bool listens() const override { return on; }
    void announce(const std::string& text, Urgency urgency) override
    {
        told.emplace_back(text, urgency == Urgency::AtOnce);
    }
    void page(const std::string& title) override { pages.push_back(title); }
    [[nodiscard]] auto count(const std::string& text) const
    {
        return std::count_if(told.begin(), told.end(),
                             [&](const auto& t) { return t.first.find(text) != std::string::npos; });
    }
};

/// As Led, with a screen reader.
struct Read {
    Led led;
    Reader reader;
    viewmodels::BathModel bath{led.store,
                               {led.voice, led.awake, led.haptics, led.outside, [this] { return reader.on; }, &reader}};

    void begin()
    {
        led.askToBegin();
        led.bath.leave(); // the record alone is wanted of it
        bath.chooseSite(ui::Site::Feet);
        bath.chooseWay(ui::WayOfWorking::FreeHand);
        bath.goOn();
        bath.setSmallCuts(ui::SmallCuts::No);
        bath.setAntiperspirant(ui::LastAntiperspirant::No);
        bath.setShaved(ui::LastShave::No);
        for (const auto& line : bath.preparation())
            bath.tick(line.item);
        bath.start();
        REQUIRE(bath.page() == ui::BathPage::Run);
    }
};

} // namespace

TEST_CASE("What a screen reader is told of a session: prompts, the phase, the alarm once with its reading, and its end")
{
    using bath::EffectKind;
    bath::State state;
    state.script.request.site = facts::Site::Feet;
    state.script.steps.resize(2);
    state.script.steps[0].kind = protocol::StepKind::Raise;
    state.script.steps[0].phase = 1;
    state.script.steps[0].prompt = protocol::Prompt::RaiseSlowly;
    const auto of = [&](EffectKind kind, std::optional<protocol::Prompt> prompt = {}, bool known = false) {
        return words::announced({kind, prompt}, state, known).value_or(words::Announced{});
    };
    CHECK(of(EffectKind::Say, protocol::Prompt::HalfWay) ==
          words::Announced{words::promptText(protocol::Prompt::HalfWay), false});
    CHECK(of(EffectKind::AskMeter, protocol::Prompt::LookAtMeter).text ==
          words::promptText(protocol::Prompt::LookAtMeter));
    CHECK(of(EffectKind::StepChanged) == words::Announced{"Phase 1 of 2", false});
    state.lastReading = bath::MeterReading{0, facts::Milliamps{21}, 1, 1, {}, 0};
    CHECK(of(EffectKind::Alarm, protocol::Prompt::TooHigh) ==
          words::Announced{words::promptText(protocol::Prompt::TooHigh) + QString::fromUtf8(" 21\u00a0mA."), true});
    CHECK(of(EffectKind::Alarm, protocol::Prompt::TooHigh, true).text.isEmpty());
    CHECK(of(EffectKind::AlarmOff) == words::Announced{"The alarm is over.", true});
    CHECK(of(EffectKind::Completed).text.isEmpty());
    state.stoppedBy = bath::StoppedBy::Enough;
    CHECK(of(EffectKind::Interrupted).text.startsWith("It is enough for today"));
}

TEST_CASE(
    "What was saved is told in a word, a check-in with its level, and what a session records of itself not at all")
{
    tests::needApplication();
    CHECK(words::savedName(CheckIn{DiarySite::Hands, Level::Clammy, {}}) == "Hands: Clammy. Saved.");
    CHECK(words::savedName(Retraction{"withdrawn"}) == "Taken back.");
    CHECK(words::savedName(Hdss{DiarySite::Hands, 2}) == "Saved.");
    CHECK(words::savedName(BathEvent{}).isEmpty());
    CHECK(words::savedName(diary::pedalPreference(true)).isEmpty());
}

TEST_CASE(
    "With a screen reader on, it says the words and the app plays tones and the alarm: nobody talks over the other")
{
    Read s;
    s.begin();
    s.led.voice.said.clear();
    s.reader.told.clear();
    s.bath.primary(); // the waveform is confirmed
    s.bath.primary(); // the current is up
    REQUIRE(s.bath.running().kind == ui::StepKind::Hold);
    CHECK(s.reader.count("Phase 1 of 2") == 2); // of two steps
    CHECK(s.led.voice.said.empty());
    s.bath.reading(40);
    REQUIRE(s.bath.running().alarm);
    CHECK(s.led.voice.alarms == std::vector<std::string>{""}); // the tone without words
    CHECK(s.reader.told.back() ==
          std::pair(words::promptText(protocol::Prompt::TooHigh).toStdString() + " 40\u00a0mA.", true));
    const auto alarms = s.led.voice.alarms.size();
    s.led.clock.ms += 4000;
    QEventLoop wait;
    QObject::connect(&s.bath, &viewmodels::BathModel::ticked, &wait, &QEventLoop::quit);
    wait.exec();
    CHECK(s.led.voice.alarms.size() > alarms);  // sounds again
    CHECK(s.reader.count(" 40\u00a0mA.") == 1); // told once
    s.bath.reading(10);
    CHECK(s.reader.told.back() == std::pair(std::string("The alarm is over."), true));

    CHECK_FALSE(s.bath.hasBed()); // no page speaks of a sound that does not run
    s.reader.on = false;          // switched off in the middle: the voice goes on
    CHECK(s.bath.hasBed());
    const auto before = s.reader.told.size();
    s.bath.reading(40);
    CHECK(s.led.voice.alarms.back() == "too-high");
    CHECK(s.reader.told.size() == before);
}

TEST_CASE("What was saved, what was refused and a value just changed are announced while somebody listens")
{
    Led s;
    Reader reader;
    viewmodels::Announce announce(s.store, s.bath);
    announce.value("12 mA"); // nobody listens yet
    announce.use(reader);
    announce.value("12 mA");
    CHECK(reader.told.back() == std::pair(std::string("12 mA"), false));
    REQUIRE(s.store.append(Hdss{DiarySite::Hands, 2}));
    CHECK(reader.told.back() == std::pair(std::string("Saved."), false));
    announce.page("Diary");
    CHECK(reader.pages == std::vector<std::string>{"Diary"});
    s.bath.cleared(""); // by nobody
    REQUIRE_FALSE(s.bath.refusal().isEmpty());
    CHECK(reader.told.back() == std::pair(s.bath.refusal().toStdString(), true));
    const auto before = reader.told.size();
    reader.on = false;
    announce.value("13 mA");
    announce.page("Plan");
    CHECK(reader.told.size() == before);
    CHECK(reader.pages.size() == 1);
}
