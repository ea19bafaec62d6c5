#pragma once

#include "diary/Diary.h"
#include "facts/Fact.h"

#include <vector>

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// The course that a care sheet prescribes for one kind of session.
struct PrescribedCourse {
    Course course; ///< day 1 is the day on which the sheet is accepted
    /// The same course runs already: it goes on, and nothing is recorded.
    bool goesOn = false;
    /// Another course runs there: it ends, and this one takes its place.
    bool replaces = false;
    bool operator==(const PrescribedCourse&) const = default;
};

/// The courses that follow from accepting `sheet` today, one for each kind of session that it names. A kind is left out
/// where the sheet prescribes no course, where a sheet given later stays in force, and where the sheet in force
/// prescribed the same course: a new limit begins no course anew.
[[nodiscard]] std::vector<PrescribedCourse> coursesOf(const CareSheet& sheet, const Diary& diary);

/// What is recorded when `sheet` is accepted today, in this order: the sheet, its sites as in use, its courses. Other
/// kinds of session that treat the same skin are no longer in use; the rest of their skin is treated by itself.
[[nodiscard]] std::vector<Payload> acceptanceOf(const CareSheet& sheet, const Diary& diary);

} // namespace firstdew::protocol
