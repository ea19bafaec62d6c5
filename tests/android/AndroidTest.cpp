#include "FakeJava.h"
#include "android/AndroidDevice.h"
#include "android/AndroidFileChooser.h"
#include "android/AndroidNotifier.h"
#include "android/AndroidOwnerCheck.h"
#include "journal/OwnFile.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <numeric>
#include <unistd.h>

using namespace firstdew;
using namespace firstdew::androidside;
using firstdew::tests::FakeJava;
using nlohmann::json;

namespace {

/// A phone that remembers what it was asked.
struct Phone {
    FakeJava java;
    std::vector<std::pair<std::string, json>> asked;
    json answer = json::object();
    std::string trouble;

    Phone()
    {
        java.bridge = [this](const std::string& verb, const std::string& document) {
            asked.emplace_back(verb, json::parse(document));
            if (!trouble.empty())
                throw FakeJava::Thrown(trouble);
            return answer.dump();
        };
    }
    ~Phone()
    {
        CHECK(java.faults == std::vector<std::string>{});
        CHECK(java.globals() == 0);
        CHECK(java.locals() == 0);
        CHECK(java.strings() == 0);
    }
    json wanted() const { return asked.back().second["wanted"]; }
};

facts::LocalTime at(const char* text) { return *facts::LocalTime::parse(text); }

const std::map<std::string, std::string> kWords{{"channel-bath", "Bad"}};

ports::PlannedNotice checkIn(const char* when)
{
    return {{std::string("check-in:hands:") + std::string(when).substr(0, 10),
             "Check in",
             "How are your hands?",
             {{"dry", "Trocken"}}},
            at(when)};
}

} // namespace

TEST_CASE("the Java side is found by the app's own loader and asked in JSON")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    phone.answer = {{"exact", true}};
    const auto told = java.ask("sync", {{"text", "Hände 💧"}});
    REQUIRE(told);
    CHECK((*told)["exact"] == true);
    CHECK(phone.asked.back().first == "sync");
    CHECK(phone.asked.back().second["text"] == "Hände 💧");
}

TEST_CASE("what goes over is ASCII alone, since JNI's strings are not quite UTF-8")
{
    FakeJava java;
    std::string sent;
    java.bridge = [&](const std::string&, const std::string& document) { return sent = document; };
    {
        const JavaSide side(java.machine(), java.context());
        REQUIRE(side.ask("share", {{"file", "/Über uns/💧.pdf"}, {"broken", "\xff"}}));
    }
    CHECK(std::all_of(sent.begin(), sent.end(), [](char c) { return c > 0; }));
    CHECK(json::parse(sent)["file"] == "/Über uns/💧.pdf");
    CHECK(java.faults.empty());
}

TEST_CASE("what Java throws comes back as an error, and the next call works")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    phone.trouble = "java.lang.SecurityException: no";
    const auto refused = java.ask("sync", json::object());
    REQUIRE_FALSE(refused);
    CHECK(refused.error().code == "java");
    CHECK(refused.error().input == "sync");
    CHECK(refused.error().message == "java.lang.SecurityException: no");
    phone.trouble.clear();
    CHECK(java.ask("sync", json::object()));
}

TEST_CASE("an answer that is no JSON object is an error")
{
    FakeJava java;
    for (const char* answer : {"", "[1]", "{", "nonsense"}) {
        java.bridge = [&](const std::string&, const std::string&) { return answer; };
        const JavaSide side(java.machine(), java.context());
        CHECK_FALSE(side.ask("answers", json::object()));
    }
    CHECK(java.globals() == 0);
}

TEST_CASE("without the Java side every call is refused and nothing breaks")
{
    FakeJava java;
    java.bridgeIsThere = false;
    {
        const JavaSide side(java.machine(), java.context());
        CHECK(side.ask("sync", json::object()).error().code == "no-java");
        AndroidNotifier notifier(side, kWords);
        notifier.show({{"k", "t", "x", {}}}, {});
        CHECK_FALSE(notifier.leave());
        CHECK_FALSE(AndroidSharer(side).share("/a.pdf", "application/pdf"));
    }
    CHECK(java.faults.empty());
    CHECK(java.globals() == 0);

    const JavaSide none(nullptr, nullptr);
    CHECK(none.ask("sync", json::object()).error().code == "no-java");
}

TEST_CASE("a thread that Java does not know is made known to it")
{
    Phone phone;
    phone.java.attached = false;
    const JavaSide java(phone.java.machine(), phone.java.context());
    CHECK(java.ask("sync", json::object()));
    CHECK(phone.java.attached);
}

TEST_CASE("what is due and what is planned go over as one list, each key once")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    AndroidNotifier notifier(java, kWords);
    notifier.plan({checkIn("2026-03-02T20:00"), checkIn("2026-03-03T20:00")});
    CHECK(phone.wanted() == json::array({{{"key", "check-in:hands:2026-03-02"},
                                          {"at", "2026-03-02T20:00"},
                                          {"title", "Check in"},
                                          {"text", "How are your hands?"},
                                          {"actions", {{{"id", "dry"}, {"label", "Trocken"}}}}},
                                         {{"key", "check-in:hands:2026-03-03"},
                                          {"at", "2026-03-03T20:00"},
                                          {"title", "Check in"},
                                          {"text", "How are your hands?"},
                                          {"actions", {{{"id", "dry"}, {"label", "Trocken"}}}}}}));
    CHECK(phone.asked.back().second["words"]["channel-bath"] == "Bad");

    notifier.show({{"check-in:hands:2026-03-02", "Check in", "How are your hands?", {{"later", "Später"}}},
                   {"cells:2026-03-02", "Cells", "Change them", {}}},
                  {});
    REQUIRE(phone.wanted().size() == 3);
    CHECK(phone.wanted()[0]["at"] == "1970-01-01T00:00");
    CHECK(phone.wanted()[0]["actions"] == json::array({{{"id", "later"}, {"label", "Später"}}}));
    CHECK(phone.wanted()[1]["key"] == "cells:2026-03-02");
    CHECK(phone.wanted()[1]["actions"].empty());
    CHECK(phone.wanted()[2]["key"] == "check-in:hands:2026-03-03");

    notifier.show({}, {});
    CHECK(phone.wanted().size() == 2);
    notifier.plan({});
    CHECK(phone.wanted().empty());
}

TEST_CASE("the same again is not sent again, and a failure is tried again")
{
    Phone phone;
    phone.answer = {{"exact", false}, {"allowed", true}};
    const JavaSide java(phone.java.machine(), phone.java.context());
    AndroidNotifier notifier(java, kWords);
    phone.trouble = "java.lang.IllegalStateException";
    notifier.plan({checkIn("2026-03-02T20:00")});
    CHECK_FALSE(notifier.leave());
    phone.trouble.clear();
    notifier.plan({checkIn("2026-03-02T20:00")});
    notifier.plan({checkIn("2026-03-02T20:00")});
    notifier.show({}, {});
    CHECK(phone.asked.size() == 2);
    REQUIRE(notifier.leave());
    CHECK_FALSE(notifier.leave()->exact);
    CHECK(notifier.leave()->allowed);

    notifier.speak({{"channel-bath", "Baño"}});
    CHECK(phone.asked.size() == 3);
    CHECK(phone.asked.back().second["words"]["channel-bath"] == "Baño");
}

TEST_CASE("answers from notices come over with their times and are dropped when they are in the record")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    AndroidNotifier notifier(java, kWords);
    phone.answer = {{"answers",
                     {{{"key", "check-in:hands:2026-03-02"},
                       {"answer", "clammy"},
                       {"at", "2026-03-02T20:07"},
                       {"recorded", 1772478420000}}}}};
    const auto answers = notifier.answers();
    REQUIRE(answers.size() == 1);
    CHECK(answers.front().answer == "clammy");
    CHECK(answers.front().key == "check-in:hands:2026-03-02");
    CHECK(answers.front().at == at("2026-03-02T20:07"));
    notifier.dropAnswers(1);
    CHECK(phone.asked.back() == std::pair<std::string, json>{"taken", {{"count", 1}}});

    for (const json& bad :
         {json{{"key", 1}}, json("text"), json{{"key", "k"}, {"answer", "dry"}, {"at", "at eight"}}}) {
        phone.answer = {{"answers", json::array({bad})}};
        const auto read = notifier.answers();
        REQUIRE(read.size() == 1);
        CHECK(read.front().key.empty());
        CHECK(read.front().answer.empty());
    }
    phone.trouble = "java.lang.IllegalStateException";
    CHECK(notifier.answers().empty());
    CHECK(phone.asked.back().first == "answers");
}

TEST_CASE("sharing, the screen and the running bath")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    CHECK(AndroidSharer(java).share("/data/summary.pdf", "application/pdf"));
    CHECK(phone.asked.back() ==
          std::pair<std::string, json>{"share", {{"file", "/data/summary.pdf"}, {"type", "application/pdf"}}});
    AndroidWakeGuard(java).keepAwake(true);
    CHECK(phone.asked.back() == std::pair<std::string, json>{"awake", {{"on", true}}});
    BathNotice bath(java);
    bath.show({"Hold still", 1772478420000, "Ends at 20:07", "Stop"});
    CHECK(phone.asked.back() ==
          std::pair<std::string, json>{"bath", {{"title", "Hold still"}, {"stop", "Stop"}, {"end", 1772478420000}}});
    bath.show({"Raise slowly", std::nullopt, {}, "Stop"});
    CHECK(phone.asked.back().second["end"] == 0);
    const auto before = phone.asked.size();
    for (int tick = 0; tick < 20; ++tick)
        bath.alive();
    CHECK(phone.asked.size() == before + 1); // ticks come faster than Java has to hear of them
    CHECK(phone.asked.back().first == "alive");
    bath.over();
    CHECK(phone.asked.back().first == "bath-over");
    phone.trouble = "android.app.ForegroundServiceStartNotAllowedException";
    bath.show({"Hold still", 1772478420000, {}, "Stop"}); // the bath goes on without
    CHECK_FALSE(AndroidSharer(java).share("/data/summary.pdf", "application/pdf"));
}

TEST_CASE("the phone's voice is asked for a clip, and its word is for the last one that was wanted")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    std::vector<bool> answers;
    AndroidClipMaker maker(java);
    maker.answered(true); // nobody asked
    maker.drop();
    CHECK(phone.asked.empty());
    maker.speak("pt_BR", "Segure firme.", "/cache/fresh.wav", [&](bool written) { answers.push_back(written); });
    CHECK(phone.asked.back() ==
          std::pair<std::string, json>{
              "speak", {{"language", "pt_BR"}, {"text", "Segure firme."}, {"file", "/cache/fresh.wav"}}});
    CHECK(answers.empty());
    maker.answered(true);
    maker.answered(false); // once
    CHECK(answers == std::vector<bool>{true});
    // An answer may ask for the next one.
    maker.speak("ar", "a", "/a",
                [&](bool) { maker.speak("ar", "b", "/b", [&](bool written) { answers.push_back(written); }); });
    maker.answered(true);
    CHECK(phone.asked.back().second["text"] == "b");
    maker.drop();
    CHECK(phone.asked.back().first == "speak-no-more");
    maker.answered(true);
    CHECK(answers.size() == 1);
}

TEST_CASE("what the person does outside the app reaches it, on the thread of Java, as long as it listens")
{
    Phone phone;
    CHECK_FALSE(phone.java.tell("stop"));
    BathNotice* notice = nullptr;
    int answered = 0;
    {
        const JavaSide java(phone.java.machine(), phone.java.context());
        BathNotice bath(java);
        notice = &bath;
        bath.stopPressed(); // nobody has asked to hear of it
        int stopped = 0;
        bath.onStop([&] { ++stopped; });
        java.listen([&](const std::string& what) {
            if (what == "stop")
                notice->stopPressed();
            else
                ++answered;
        });
        CHECK(phone.java.tell("stop"));
        CHECK(stopped == 1);
        CHECK(answered == 0);
        CHECK(phone.java.tell("answered"));
        CHECK(answered == 1);
        CHECK(stopped == 1);
    }
    CHECK(phone.java.tell("answered")); // Java still has the function, which outlives the app's objects
    CHECK(answered == 1);
}

TEST_CASE("a phone without the Java side has nobody to listen to")
{
    FakeJava java;
    java.bridgeIsThere = false;
    {
        const JavaSide side(java.machine(), java.context());
        side.listen([](const std::string&) {});
        CHECK_FALSE(java.tell("stop"));
    }
    CHECK(java.faults.empty());
    JavaSide(nullptr, nullptr).listen([](const std::string&) {});
}

TEST_CASE("the sites of the check-in go over with the reminders, the answered ones with their day")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    AndroidNotifier notifier(java, kWords);
    notifier.ask({{"hands", "Hände", facts::LocalDate::parse("2026-03-02")}, {"feet", "Füße", {}}});
    CHECK(phone.asked.empty()); // with the next list, so that no list is sent without its reminders
    notifier.show({}, {});
    CHECK(phone.asked.back().second["asked"] ==
          json::array({{{"site", "hands"}, {"name", "Hände"}, {"answered", "2026-03-02"}},
                       {{"site", "feet"}, {"name", "Füße"}, {"answered", ""}}}));
    notifier.show({}, {});
    CHECK(phone.asked.size() == 1);
}

TEST_CASE("a file is opened where an app shows it")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    CHECK(AndroidOpener(java).open("/data/summary.pdf"));
    CHECK(phone.asked.back() == std::pair<std::string, json>{"open", {{"file", "/data/summary.pdf"}}});
    phone.trouble = "android.content.ActivityNotFoundException";
    CHECK_FALSE(AndroidOpener(java).open("/data/summary.pdf"));
}

TEST_CASE("the phone shakes shortly for a step and long for an alarm, and is still when told")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    AndroidHaptics haptics(java);
    phone.answer = {{"present", true}};
    CHECK(haptics.present());
    phone.answer = {{"present", false}};
    CHECK_FALSE(haptics.present());
    const auto timings = [&] {
        CHECK(phone.asked.back().first == "vibrate");
        return phone.asked.back().second["timings"].get<std::vector<int>>();
    };
    haptics.pulse();
    const auto pulse = timings();
    haptics.alarm();
    const auto alarm = timings();
    REQUIRE(pulse.size() == 2); // waits, shakes
    CHECK(pulse.back() <= 100);
    CHECK(alarm.size() > pulse.size());
    // Over before the engine repeats an alarm that stands, every three seconds.
    CHECK(std::accumulate(alarm.begin(), alarm.end(), 0) < 3000);
    haptics.still();
    CHECK(timings().empty());
    phone.trouble = "java.lang.SecurityException: no";
    haptics.alarm(); // a session goes on without
    CHECK_FALSE(haptics.present());
}

TEST_CASE("the chosen document is told once, when the app is in front again")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    AndroidFileChooser chooser(java, "/nowhere");
    std::vector<std::optional<std::string>> told;
    const auto hear = [&](std::optional<std::string> path) { told.push_back(std::move(path)); };
    chooser.lookForAnswer();
    CHECK(phone.asked.empty()); // nobody waits
    REQUIRE(chooser.choose("a title", "pgp", hear));
    CHECK(phone.asked.back().first == "choose");
    phone.answer = {{"answered", false}, {"path", ""}};
    chooser.lookForAnswer();
    CHECK(told.empty());
    phone.answer = {{"answered", true}, {"path", "/cache/chosen/a.pgp"}};
    chooser.lookForAnswer();
    chooser.lookForAnswer();
    CHECK(told == std::vector<std::optional<std::string>>{"/cache/chosen/a.pgp"});

    REQUIRE(chooser.choose("a title", "pgp", hear));
    phone.answer = {{"answered", true}, {"path", ""}};
    chooser.lookForAnswer();
    CHECK(told.back() == std::nullopt);

    phone.trouble = "android.content.ActivityNotFoundException";
    CHECK_FALSE(chooser.choose("a title", "pgp", hear));
}

TEST_CASE("what is saved lies in the cache until Java has copied it to the place that the person chose")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    const auto folder = std::filesystem::temp_directory_path() / ("firstdew-saving-" + std::to_string(::getpid()));
    AndroidFileChooser chooser(java, folder);
    std::vector<facts::Result<std::optional<ports::SavedAs>>> told;
    const auto hear = [&](facts::Result<std::optional<ports::SavedAs>> end) { told.push_back(std::move(end)); };
    REQUIRE(chooser.save("a title", {{"a.pgp", "sealed"}}, hear));
    const std::string copy = (folder / "a.pgp").string();
    CHECK(phone.asked.back() == std::pair{std::string("save"), json{{"files", {copy}}}});
    CHECK(journal::readFile(copy, 100).value() == "sealed");
    phone.answer = {{"answered", false}, {"failed", false}, {"where", ""}};
    chooser.lookForAnswer();
    CHECK(told.empty());
    phone.answer = {{"answered", true}, {"failed", false}, {"where", "mine.pgp"}};
    chooser.lookForAnswer();
    chooser.lookForAnswer();
    REQUIRE(told.size() == 1);
    CHECK(told.back().value()->where == "mine.pgp");
    CHECK(told.back().value()->file == copy);

    REQUIRE(chooser.save("a title", {{"b.csv", "1"}, {"c.csv", "2"}}, hear));
    CHECK_FALSE(std::filesystem::exists(copy));
    phone.answer = {{"answered", true}, {"failed", true}, {"where", "Card"}};
    chooser.lookForAnswer();
    REQUIRE_FALSE(told.back());
    CHECK(told.back().error().code == "save-failed");

    REQUIRE(chooser.save("a title", {{"b.csv", "1"}, {"c.csv", "2"}}, hear));
    phone.answer = {{"answered", true}, {"failed", false}, {"where", ""}};
    chooser.lookForAnswer();
    REQUIRE(told.back());
    CHECK_FALSE(*told.back()); // cancelled

    chooser.dropCopies();
    CHECK(phone.asked.back().first == "drop-copies");
    CHECK(std::filesystem::is_empty(folder));
    std::filesystem::remove(folder);
    phone.trouble = "android.content.ActivityNotFoundException";
    CHECK_FALSE(chooser.save("a title", {{"a.pgp", "sealed"}}, hear));
    std::filesystem::remove_all(folder);
}

TEST_CASE("the phone's own lock is asked for, and only its word confirms")
{
    using Verdict = AndroidOwnerCheck::Verdict;
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    AndroidOwnerCheck check(java);
    for (const bool secure : {false, true}) {
        phone.answer = {{"secure", secure}};
        CHECK(check.available() == secure);
    }
    std::vector<Verdict> verdicts;
    const AndroidOwnerCheck::Asking asking{{}, {}, [&](Verdict v) { verdicts.push_back(v); }};
    check.answered(true); // nobody asked
    check.ask("Open Firstdew", asking);
    CHECK(phone.asked.back() == std::pair<std::string, nlohmann::json>("confirm", {{"why", "Open Firstdew"}}));
    CHECK(verdicts.empty());
    check.answered(true);
    check.answered(true); // once
    check.ask("Open Firstdew", asking);
    check.answered(false);
    check.ask("Open Firstdew", asking);
    check.drop();
    check.answered(true);
    CHECK(verdicts == std::vector{Verdict::Confirmed, Verdict::Dropped});
    phone.trouble = "java.lang.IllegalStateException";
    CHECK_FALSE(check.available());
    check.ask("Open Firstdew", asking);
    CHECK(verdicts.back() == Verdict::Unable);
}

TEST_CASE("the phone's edges, its clock and a tick come from Java")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    AndroidSafeArea area(java);
    int changes = 0;
    area.look(); // nobody listens yet
    area.onChange([&] { ++changes; });
    phone.answer = {{"left", 0.0}, {"top", 47.5}, {"right", 0.0}, {"bottom", 34.0}};
    CHECK(area.insets() == ports::Insets{0, 47.5, 0, 34});
    CHECK(phone.asked.back().first == "insets");
    area.look();
    CHECK(changes == 1);

    phone.answer = {{"twentyFour", false}};
    AndroidClockFormat format(java);
    CHECK(format.hours() == ports::Hours::Twelve);
    format.onChange([&] { ++changes; });
    format.look();
    CHECK(changes == 1);
    phone.answer = {{"twentyFour", true}};
    format.look();
    CHECK(changes == 2);
    CHECK(format.hours() == ports::Hours::TwentyFour);

    AndroidHaptics(java).tick();
    CHECK(phone.asked.back().first == "tick");

    phone.trouble = "java.lang.IllegalStateException";
    CHECK(area.insets() == ports::Insets{});
    format.look();
    CHECK(format.hours() == ports::Hours::AsLocale);
}

TEST_CASE("a screen reader is asked for, told what is announced and of another page, and missed by nobody")
{
    Phone phone;
    const JavaSide java(phone.java.machine(), phone.java.context());
    AndroidAnnouncer announcer(java);
    phone.answer = {{"on", true}};
    CHECK(announcer.listens());
    CHECK(phone.asked.back().first == "reader");
    phone.answer = {{"on", false}};
    CHECK_FALSE(announcer.listens());
    announcer.announce("Hände: feucht.", ports::Announcer::Urgency::InTurn);
    CHECK(phone.asked.back() == std::pair<std::string, json>{"announce", {{"text", "Hände: feucht."}}});
    announcer.page("Tagebuch");
    CHECK(phone.asked.back() == std::pair<std::string, json>{"announce", {{"text", "Tagebuch"}}});
    phone.trouble = "java.lang.IllegalStateException: no";
    announcer.announce("x", ports::Announcer::Urgency::AtOnce); // the app goes on without
    CHECK_FALSE(announcer.listens());
}
