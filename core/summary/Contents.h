#pragma once

#include "outlook/Score.h"
#include "protocol/CareSheets.h"
#include "summary/Findings.h"

namespace firstdew::summary {

using namespace facts;
using diary::Diary;

/// The part of the prescriber's page about one site.
struct SiteContents {
    DiarySite site{};
    situation::SiteSituation situation;
    int sessionsPlanned = 0;
    int sessionsDone = 0;
    int sessionsInterrupted = 0;
    int checkIns = 0;
    PerValue<Level, int> byLevel; ///< days at each level
    std::optional<MilliampMinutes> meanCharge;
    std::vector<std::pair<LocalDate, Level>> line;
    std::vector<LocalDate> sessions;
    PerValue<Circumstance, int> stirred; ///< days on which each circumstance was reported
    int courseDone = 0;                  ///< sessions of the course done by the last day, out of sessionsPlanned
    std::optional<LocalDate> courseStart;
    int courseMoved = 0;              ///< of those, done on another day than that of the template
    situation::SiteWorking working;   ///< on the last day, whatever the period
    outlook::Score score;             ///< of the forecasts, whatever the period
    std::vector<HighestLevel> levels; ///< in the period, one for each waveform
    std::vector<ScoreOn> scores;      ///< in the period, and the last one before it
    std::vector<situation::DampWeek> weeks;
    std::vector<std::pair<LocalDate, double>> weighings; ///< mg a minute
};

/// Everything on the page, as numbers and enumerations. platform/print turns it into words.
struct Contents {
    std::string personId;
    std::string name;
    AgeGroup age{};
    std::optional<int> years; ///< of age on the last day; nullopt without a birth date
    Verdict verdict{};
    std::vector<Ask> asks; ///< the most urgent first
    std::vector<OverLimitEpisode> overLimit;
    std::vector<LimitInForce> limits;
    LocalDate from;
    LocalDate to;
    std::optional<Machine> machine;
    std::optional<int> cellSessionsLeft; ///< estimated number of sessions until the cells are empty
    std::vector<SiteContents> sites;
    std::vector<Entry<Session>> sessions; ///< all sessions of the period, oldest first
    std::vector<Entry<SideEffect>> sideEffects;
    std::vector<Entry<OtherTreatment>> otherTreatments; ///< those that worked in the period
    std::vector<Entry<Taught>> taught;                  ///< the taught session of each site, whatever the period
    std::vector<Entry<Clearance>> clearances;
    bool screened = false; ///< whether the health questions were answered by the last day
    std::vector<ScreeningRow> screeningYes;
    std::vector<std::string> questions;
    std::vector<protocol::SheetInForce> careSheets;
};

/// The contents of the page for the days from `from` to the diary's day.
[[nodiscard]] Contents contentsFor(const Diary& diary, LocalDate from);

} // namespace firstdew::summary
