#pragma once

#include "facts/Record.h"

#include <vector>

namespace firstdew::situation {

using namespace facts;

/// A diary site in use and the kind of session that treats it.
struct SiteInUse {
    DiarySite site{};
    Site treatedAs{};
    bool paused = false;
};

/// The diary sites a person follows, in the order hands, feet, armpits. A site counts when it was chosen,
/// or when, never chosen nor dropped, something was recorded about it.
[[nodiscard]] std::vector<SiteInUse> sitesInUse(const Record& record);

/// Whether `record` holds a running session: prepared, begun, and neither logged nor stopped.
[[nodiscard]] bool bathRunning(const Record& record);

/// Days on which a completed session treated `site`, ascending, each once, none after `until`.
[[nodiscard]] std::vector<LocalDate> sessionDays(const Record& record, DiarySite site, LocalDate until);

/// The level and circumstances of one day: the highest report of the day, and what went with it.
struct DayReport {
    LocalDate date;
    Level level{};
    SetOf<Circumstance> with;
};

/// One report per day for `site`, ascending, none after `until`.
[[nodiscard]] std::vector<DayReport> dayReports(const Record& record, DiarySite site, LocalDate until);

} // namespace firstdew::situation
