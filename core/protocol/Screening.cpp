#include "protocol/Screening.h"

#include "protocol/Limits.h"

#include <algorithm>

namespace firstdew::protocol {

namespace {

// Sources: NHS dermatology leaflets (Newcastle; South Tees); Hölzle, Kanerva's Occupational Dermatology 2018.
constexpr std::array kRows{
    RowRule{ScreeningRow::Pregnancy, RowOutcome::Stop, Standing::Published},
    RowRule{ScreeningRow::PoweredImplant, RowOutcome::Stop, Standing::Published},
    RowRule{ScreeningRow::MetalImplant, RowOutcome::Stop, Standing::Published},
    // The leaflets list it for all sessions; the physics concerns paths through the trunk. The cautious reading: all.
    RowRule{ScreeningRow::MetalIud, RowOutcome::Stop, Standing::Published},
    RowRule{ScreeningRow::HeartRhythmOrEpilepsy, RowOutcome::Stop, Standing::FromMemory},
    RowRule{ScreeningRow::TumourOrThrombosis, RowOutcome::Stop, Standing::Published},
    RowRule{ScreeningRow::LossOfSensation, RowOutcome::Stop, Standing::Published},
    RowRule{ScreeningRow::UnderFive, RowOutcome::Stop, Standing::Published},
    RowRule{ScreeningRow::UnderEighteen, RowOutcome::AskFirst, Standing::CommonPractice},
    RowRule{ScreeningRow::EczemaAtSite, RowOutcome::AskFirst, Standing::FromMemory},
    RowRule{ScreeningRow::LargeWound, RowOutcome::AskFirst, Standing::Published},
    // Current does not travel above the neck in these set-ups (common practice, no source); one hospital leaflet
    // lists fixed braces all the same.
    RowRule{ScreeningRow::FixedBraces, RowOutcome::Mention, Standing::CommonPractice},
};

/// The latest answer to one row, from whichever screening asked it last. A yes counts even where it is dated after
/// `day`, by a clock that was ahead or from beyond the date line; a no does not.
bool answeredYes(const Record& record, ScreeningRow row, LocalDate day)
{
    bool yes = false;
    for (const auto& e : record.all<Screening>())
        if (e.payload.asked.contains(row))
            yes = e.payload.yes.contains(row) || (yes && e.happened.date > day);
    return yes;
}

bool trueByAge(const Record& record, ScreeningRow row, LocalDate day)
{
    const auto* person = record.latest<Person>();
    if (person == nullptr || !person->payload.birth)
        return false;
    const int age = ageInYears(*person->payload.birth, day);
    return (row == ScreeningRow::UnderFive && age < kTreatedFromYears) ||
           (row == ScreeningRow::UnderEighteen && age < kAdultFromYears);
}

/// A clearance counts from the day it was given to the day it expires, unless the answer was newly given after it.
bool cleared(const Record& record, ScreeningRow row, LocalDate day)
{
    std::optional<LocalDate> until;
    std::optional<LocalDate> given;
    LocalTime recorded;
    for (const auto& e : record.all<Clearance>())
        if (e.payload.row == row && !e.payload.who.empty() && e.payload.given <= day && e.happened.date <= day) {
            given = e.payload.given;
            recorded = e.happened;
            until = e.payload.expires.value_or(e.payload.given + kClearanceDays);
        }
    if (!given || (until && *until < day))
        return false;
    // A "no" that became a "yes" after the clinician spoke is a new state of things.
    bool before = true;
    for (const auto& e : record.all<Screening>())
        if (e.happened.date <= day && e.payload.asked.contains(row)) {
            const bool now = e.payload.yes.contains(row);
            const bool after = e.happened.date > *given || (e.happened.date == *given && e.happened > recorded);
            if (now && !before && after)
                return false;
            before = now;
        }
    return true;
}

} // namespace

std::span<const RowRule> screeningRows() { return kRows; }

std::vector<RowAnswer> answersOn(const Record& record, LocalDate day)
{
    std::vector<RowAnswer> out;
    for (const RowRule& rule : kRows) {
        if (knownByAge(rule.row))
            continue;
        RowAnswer answer{rule, false, answeredYes(record, rule.row, day), {}};
        for (const auto& e : record.all<Screening>())
            answer.asked = answer.asked || e.payload.asked.contains(rule.row);
        if (cleared(record, rule.row, day))
            for (const auto& e : record.all<Clearance>())
                if (e.payload.row == rule.row && !e.payload.who.empty() && e.payload.given <= day &&
                    e.happened.date <= day)
                    answer.clearedBy = e.payload.who;
        out.push_back(std::move(answer));
    }
    return out;
}

ScreeningVerdict screen(const Record& record, [[maybe_unused]] Site site, LocalDate day)
{
    ScreeningVerdict out;
    for (const RowRule& rule : kRows) {
        if (!answeredYes(record, rule.row, day) && !trueByAge(record, rule.row, day))
            continue;
        if (rule.outcome == RowOutcome::Mention) {
            out.mention.push_back(rule.row);
            continue;
        }
        if (cleared(record, rule.row, day))
            continue;
        const auto outcome = rule.outcome == RowOutcome::Stop ? ScreeningOutcome::Stop : ScreeningOutcome::AskFirst;
        if (outcome > out.outcome) {
            out.outcome = outcome;
            out.deciding.clear();
        }
        if (outcome == out.outcome)
            out.deciding.push_back(rule.row);
    }
    return out;
}

ScreeningDue screeningDue(const Record& record, LocalDate day)
{
    std::optional<LocalDate> full;
    std::optional<LocalDate> any;
    for (const auto& e : record.all<Screening>()) {
        if (e.happened.date > day)
            continue;
        any = e.happened.date;
        if (e.payload.full)
            full = e.happened.date;
    }
    if (!full || day - *full >= kFullScreeningDays)
        return ScreeningDue::Full;
    return any == day ? ScreeningDue::None : ScreeningDue::ShortQuestion;
}

bool everyRowAnswered(const Record& record)
{
    SetOf<ScreeningRow> asked;
    for (const auto& e : record.all<Screening>())
        for (const ScreeningRow row : allOf<ScreeningRow>())
            if (e.payload.asked.contains(row))
                asked.insert(row);
    return std::ranges::all_of(screeningRows(),
                               [&](const RowRule& r) { return knownByAge(r.row) || asked.contains(r.row); });
}

} // namespace firstdew::protocol
