#include "Recording.h"

#include "codec/FactJson.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fmt/ranges.h>

namespace firstdew::cli {

using namespace facts;

namespace {

constexpr int kDaysBack = 50 * 366;
constexpr long long kDayMs = 86'400'000;

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

std::vector<Fact> factsIn(const std::string& store)
{
    std::error_code ec;
    if (!std::filesystem::exists(store, ec) && !ec)
        return {};
    return orRefuse(orRefuse(journal::Journal::openExisting(store)).readAll());
}

std::string personToRecord(const std::vector<Fact>& facts, const std::string& named, bool isNew)
{
    const auto known = personsIn(facts);
    const bool there = std::ranges::find(known, named) != known.end();
    if (isNew && (named.empty() || there))
        throw Refused{"--new-person: name somebody with --person who is not in this store yet"};
    if (!isNew && !named.empty() && !there && !known.empty())
        throw Refused{
            fmt::format("--person: nobody called '{}' in this store; it knows {}. For somebody new add --new-person",
                        named, fmt::join(known, ", "))};
    return isNew ? named : personOf(facts, named);
}

std::string record(const std::string& store, Fact fact)
{
    (void)orRefuse(codec::canBeKept(fact));
    auto journal = orRefuse(journal::Journal::open(store));
    return orRefuse(journal.append(std::move(fact)));
}

} // namespace firstdew::cli
