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
                 Clearance, SkinClearance, Preparation, Course, CourseMove, CoursePace, ReviewDone, Away, Pause, Hdss,
                 Weighing, SideEffect, OtherTreatment, Taught, CallAnswered, ReminderSettings, ReminderHandled,
                 CareSheet, Question, Preference, Comparison, Retraction>;

template <class Each, class... P>
void forEachOf(Each each, std::type_identity<std::variant<P...>>)
{
    (each(std::type_identity<P>{}), ...);
}

/// Calls `each` with the type identity of every kind of payload, in the order of `Payload`.
template <class Each>
void forEachPayload(Each each)
{
    forEachOf(each, std::type_identity<Payload>{});
}

/// One recorded thing. A fact never changes. A correction is another fact whose `corrects` names the
/// first one; the correction recorded last counts.
struct Fact {
    std::string id;         ///< 32 random hex digits; the journal fills in an empty one
    std::string person;     ///< id of the person whose record this belongs to
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

/// Ids of all persons with at least one fact, in the order of their first fact.
[[nodiscard]] std::vector<std::string> personsIn(std::span<const Fact> facts);

/// Whether a text has nothing to read: it is empty or all of it is white space, also of other scripts.
[[nodiscard]] bool isBlank(std::string_view text);

} // namespace firstdew::facts
