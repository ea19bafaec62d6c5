#pragma once

#include "facts/Payloads.h"

#include <span>
#include <string>
#include <type_traits>
#include <variant>
#include <vector>

namespace firstdew::facts {

using Payload =
    std::variant<Person, SiteUse, Machine, CellsChanged, CheckIn, Session, BathPrepared, BathEvent, Screening,
                 Clearance, Preparation, Course, CourseMove, ReviewDone, Away, Pause, Hdss, Weighing, SideEffect,
                 CallAnswered, ReminderSettings, ReminderHandled, CareSheet, Question, Preference, Retraction>;

template <class Each, class... P>
void forEachOf(Each each, std::type_identity<std::variant<P...>>)
{
    (each(std::type_identity<P>{}), ...);
}

/// Calls `each` with the type identity of every kind of payload, in their order.
template <class Each>
void forEachPayload(Each each)
{
    forEachOf(each, std::type_identity<Payload>{});
}

/// One thing recorded, never changed afterwards. A correction is a further fact whose `corrects`
/// names the first one; the latest recorded correction counts.
struct Fact {
    std::string id;         ///< 32 hex digits, random; the journal gives one where it is empty
    std::string person;     ///< whose record; ids of persons are chosen at creation, e.g. "p1"
    LocalTime happened;     ///< by the person's clock
    long long recordedMs{}; ///< wall clock at recording, ms since 1970 UTC
    std::string corrects;   ///< id of the fact this one replaces, or empty
    Payload payload;
    bool operator==(const Fact&) const = default;
};

/// The token of the payload's kind, e.g. "check-in".
[[nodiscard]] inline std::string_view kindOf(const Payload& payload)
{
    return std::visit([](const auto& p) { return p.kind; }, payload);
}

/// Ids of all persons with at least one fact, in order of first record.
[[nodiscard]] std::vector<std::string> personsIn(std::span<const Fact> facts);

} // namespace firstdew::facts
