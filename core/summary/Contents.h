#pragma once

#include "situation/Assess.h"

namespace firstdew::summary {

using namespace facts;
using diary::Diary;

/// One site's part of the prescriber's page.
struct SiteContents {
    DiarySite site{};
    situation::SiteSituation situation;
    int sessionsPlanned = 0;
    int sessionsDone = 0;
    int sessionsInterrupted = 0;
    int checkIns = 0;
    PerWord<Level, int> byLevel; ///< days at each level
    std::optional<Milliamps> highestComfortable;
    std::optional<MilliampMinutes> meanCharge;
    std::vector<std::pair<LocalDate, Level>> line;
    std::vector<LocalDate> sessions;
    PerWord<Circumstance, int> stirred; ///< days with each circumstance noted
    int courseDone = 0;                 ///< sessions of the first course done by the last day, of sessionsPlanned
    std::vector<std::pair<LocalDate, double>> weighings; ///< mg a minute
};

/// Everything the page says, as numbers and enumerations; the printer puts it into words.
struct Contents {
    std::string personId;
    std::string name;
    LocalDate from;
    LocalDate to;
    std::optional<Machine> machine;
    std::optional<int> cellSessionsLeft; ///< about how many sessions the batteries still last
    std::vector<SiteContents> sites;
    std::vector<Entry<Session>> sessions; ///< all of the period, oldest first
    std::vector<Entry<SideEffect>> sideEffects;
    std::vector<Entry<Clearance>> clearances;
    bool screened = false; ///< whether the health questions were ever answered by then
    std::vector<ScreeningRow> screeningYes;
    std::vector<std::string> questions;
    std::optional<CareSheet> careSheet;
};

/// What the page holds of the days from `from` to the diary's day.
[[nodiscard]] Contents contentsFor(const Diary& diary, LocalDate from);

} // namespace firstdew::summary
