#include "Recording.h"

#include "codec/CleanText.h"
#include "codec/FactJson.h"
#include "journal/People.h"

#include <cmath>
#include <fmt/format.h>

namespace firstdew::cli {

using namespace facts;

namespace {

constexpr int kDaysBack = 50 * 366;
constexpr long long kDayMs = 86'400'000;

/// What a person who is new may be called.
std::string newName(const std::string& named)
{
    if (named.size() > 64 || named.find_first_of("/\\") != std::string::npos || !codec::isClean(named) ||
        !codec::isOneLine(named))
        throw Refused{"--person: '" + named + "' is no name; give up to 64 letters, without slashes"};
    return named;
}

} // namespace

LocalTime happenedOption(const std::string& date, const std::string& at, MinuteOfDay otherwise)
{
    const LocalDate day = dateOption("--date", date);
    const auto minute = at.empty() ? otherwise : MinuteOfDay::parse(at);
    if (!minute)
        throw Usage{"--at: '" + at + "' is no time of day; write HH:MM"};
    const LocalDate today(static_cast<int>(nowMs() / kDayMs));
    if (day > today + 1)
        throw Refused{fmt::format("--date: {} has not come yet (today is {}); log a thing on the day it happens",
                                  day.iso(), today.iso())};
    if (day < today - kDaysBack)
        throw Refused{fmt::format("--date: {} is more than 50 years back; check the year", day.iso())};
    return {day, *minute};
}

Milliamps currentOption(const std::string& option, double value)
{
    if (!std::isfinite(value) || value < 0 || value > 100)
        throw Refused{
            fmt::format("{}: {} mA is no possible reading; give what the meter showed, 0 to 100", option, value)};
    return {value};
}

std::vector<Fact> factsIn(const std::string& store, bool toWrite)
{
    const auto there = toWrite ? journal::Journal::openExisting(store) : journal::Journal::openToRead(store);
    if (!there && there.error().code == "store-missing")
        return {};
    if (!there)
        (void)orRefuse(facts::Result<facts::Done>(there.error()));
    return orRefuse(there->readAll());
}

Who personToRecord(const std::vector<Fact>& facts, const std::string& named, bool isNew)
{
    const bool there = !personsCalled(facts, named).empty();
    if (isNew && (named.empty() || there))
        throw Refused{"--new-person: name somebody with --person who is not in this store yet"};
    if (isNew || (facts.empty() && !named.empty()))
        return {journal::drawId(), newName(named)};
    if (!named.empty() && !there)
        throw Refused{
            fmt::format("--person: nobody called '{}' in this store; it knows {}. For somebody new add --new-person",
                        named, peopleIn(facts))};
    const std::string known = personOf(facts, named);
    return {known.empty() ? journal::drawId() : known, {}};
}

std::string record(const std::string& store, Fact fact, const std::string& newName)
{
    std::vector<Fact> both;
    if (!newName.empty())
        both.push_back({"", fact.person, fact.happened, fact.recordedMs, "", Person{newName, {}, {}, {}, {}}});
    both.push_back(std::move(fact));
    return recordAll(store, std::move(both)).back();
}

std::vector<std::string> recordAll(const std::string& store, std::vector<Fact> facts)
{
    for (const Fact& fact : facts)
        (void)orRefuse(codec::canBeKept(fact));
    auto journal = orRefuse(journal::Journal::open(store));
    return orRefuse(journal.appendAll(std::move(facts)));
}

} // namespace firstdew::cli
