#include "diary/AppLock.h"

#include <catch2/catch.hpp>

using namespace firstdew::diary;

TEST_CASE("the lock is on for the app if anybody whose record is here wants it")
{
    long long recorded = 0;
    const auto fact = [&](const char* person, const char* id, Payload payload, const char* corrects = "") {
        return Fact{id, person, {LocalDate(20532), {600}}, ++recorded, corrects, std::move(payload)};
    };
    std::vector<Fact> facts{fact("p1", "a", CheckIn{DiarySite::Hands, Level::Dry, {}})};
    CHECK_FALSE(lockWanted(facts));
    facts.push_back(fact("p2", "b", appLockPreference(true)));
    CHECK(lockWanted(facts));
    facts.push_back(fact("p1", "c", appLockPreference(false))); // not theirs to switch off alone
    CHECK(lockWanted(facts));
    facts.push_back(fact("p2", "d", appLockPreference(false)));
    CHECK_FALSE(lockWanted(facts));
    facts.push_back(fact("p2", "e", Retraction{"a slip"}, "d"));
    CHECK(lockWanted(facts));
}

TEST_CASE("a setting of the lock that cannot be read changes nothing")
{
    std::vector<Fact> facts;
    const auto add = [&](const char* value) {
        facts.push_back({std::to_string(facts.size()),
                         "p1",
                         {LocalDate(20532), {600}},
                         static_cast<long long>(facts.size()),
                         "",
                         Preference{appLockPreference(true).key, value}});
    };
    for (const char* value : {"", "ON", "yes", "1"}) {
        add(value);
        CHECK_FALSE(lockWanted(facts));
    }
    add("on");
    CHECK(lockWanted(facts));
    add("maybe");
    CHECK(lockWanted(facts));
    facts.push_back({"x", "p1", {LocalDate(20532), {600}}, 99, "", Preference{"theme", "off"}});
    CHECK(lockWanted(facts));
}
