#include "diary/AppLock.h"

#include "facts/Record.h"

#include <algorithm>

namespace firstdew::diary {

namespace {

constexpr std::string_view kAppLock = "app-lock";
constexpr std::string_view kOn = "on";
constexpr std::string_view kOff = "off";

bool wantedIn(const Record& record)
{
    bool on = false;
    for (const auto& entry : record.all<Preference>())
        if (entry.payload.key == kAppLock && (entry.payload.value == kOn || entry.payload.value == kOff))
            on = entry.payload.value == kOn;
    return on;
}

} // namespace

Preference appLockPreference(bool on) { return {std::string(kAppLock), std::string(on ? kOn : kOff)}; }

bool lockWanted(std::span<const Fact> facts)
{
    std::vector<Fact> told; // settings alone: there may be many people, each with years of entries
    for (const Fact& f : facts)
        if (std::holds_alternative<Preference>(f.payload) || std::holds_alternative<Retraction>(f.payload))
            told.push_back(f);
    const auto persons = personsIn(told);
    return std::any_of(persons.begin(), persons.end(),
                       [&](const std::string& person) { return wantedIn(recordOf(told, person)); });
}

} // namespace firstdew::diary
