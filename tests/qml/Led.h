#pragma once

#include "Application.h"
#include "BathModel.h"
#include "Store.h"

#include <QEventLoop>
#include <QTemporaryDir>
#include <catch2/catch.hpp>

#include <algorithm>

namespace firstdew::tests {

using namespace facts;

struct HandClock final : ports::Clock {
    long long ms = 1'774'000'000'000;
    LocalTime localNow() const override { return *LocalTime::parse("2026-03-20T19:00"); }
    Instant instant() const override { return {ms, ms}; }
};

struct Feeling final : ports::Haptics {
    std::vector<std::string> felt;
    bool present() const override { return true; }
    void pulse() override { felt.emplace_back("pulse"); }
    void tick() override { felt.emplace_back("tick"); }
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
    std::function<void()> pressStop;
    void onStop(std::function<void()> stop) override { pressStop = std::move(stop); }
};

struct Speaking final : ports::Voice {
    ports::Lead lead = ports::Lead::App;
    std::vector<std::vector<ports::Planned>> plans;
    long long ends = 0;
    bool led = false;
    ports::Lead leads() override { return lead; }
    [[nodiscard]] bool hasBed() const override { return true; }
    void plan(const std::vector<ports::Planned>& planned, long long endsMs) override
    {
        plans.push_back(planned);
        ends = endsMs;
        led = true;
    }
    void endPlan() override { led = false; }
    ports::Says speaks = ports::Says::Recorded;
    [[nodiscard]] ports::Says says() const override { return speaks; }
    std::function<void()> tellChange;
    void onChange(std::function<void()> tell) override { tellChange = std::move(tell); }
    void nowSays(ports::Says what)
    {
        speaks = what;
        tellChange();
    }
    bool ready = true;
    bool prepare() override { return ready; }
    std::function<void(bool)> tellSilence;
    void onSilence(std::function<void(bool)> tell) override { tellSilence = std::move(tell); }
    std::vector<std::string> said;
    void say(const std::string& prompt) override { said.push_back(prompt); }
    void tone(const std::string&) override {}
    std::vector<std::string> alarms;
    void alarm(const std::string& prompt) override { alarms.push_back(prompt); }
    void hush() override {}
};

struct Awake final : ports::WakeGuard {
    bool on = false;
    void keepAwake(bool wanted) override { on = wanted; }
};

/// An invented person whose bath for the feet has just begun.
struct Led {
    bool application = (needApplication(), true);
    QTemporaryDir folder;
    HandClock clock;
    viewmodels::Store store{clock, (folder.path() + "/record.db").toStdString()};
    Speaking voice;
    Awake awake;
    Feeling haptics;
    Outside outside;
    viewmodels::BathModel bath{store, {voice, awake, haptics, outside}};

    /// Begun, and the waveform confirmed.
    void begin()
    {
        askToBegin();
        REQUIRE(bath.page() == ui::BathPage::Run);
        REQUIRE(bath.running().kind == ui::StepKind::SwitchOn);
        bath.primary();
    }
    /// Time goes by, and the session ticks.
    void pass(int seconds)
    {
        constexpr int kStep = 5;
        for (; seconds > 0; seconds -= kStep) {
            clock.ms += 1000LL * std::min(seconds, kStep);
            QEventLoop tick;
            QObject::connect(&bath, &viewmodels::BathModel::ticked, &tick, &QEventLoop::quit);
            tick.exec();
        }
    }
    void askToBegin(ui::Site::Value site = ui::Site::Feet, ui::WayOfWorking::Value way = ui::WayOfWorking::FreeHand,
                    bool remote = false)
    {
        REQUIRE(store.append(Machine{"Invented", true, true, PolaritySwap::Leads, remote, PowerSource::Mains, {}}));
        REQUIRE(store.append(SiteUse{Site::Feet, true}));
        REQUIRE(store.append(Person{"Alma", LocalDate::parse("1990-04-23"), {}, {}, {}}));
        bath.chooseSite(site);
        bath.chooseWay(way);
        bath.goOn();
        Screening all;
        for (const auto row : allOf<ScreeningRow>())
            all.asked.insert(row);
        REQUIRE(store.append(all));
        bath.answersDone();
        bath.setSmallCuts(ui::SmallCuts::No);
        bath.setAntiperspirant(ui::LastAntiperspirant::No);
        bath.setShaved(ui::LastShave::No);
        for (const auto& line : bath.preparation())
            bath.tick(line.item);
        bath.start();
    }
    std::string title() const { return bath.running().step.toStdString(); }
};

} // namespace firstdew::tests
