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

bool trueByAge(const Diary& diary, ScreeningRow row)
{
    if (!diary.person || !diary.person->birth)
        return false;
    const int age = ageInYears(*diary.person->birth, diary.today);
    return (row == ScreeningRow::UnderFive && age < kTreatedFromYears) ||
           (row == ScreeningRow::UnderEighteen && age < kAdultFromYears);
}

/// A "no" that became a "yes" after the clinician spoke is a new state of things, whatever the clock said then: of the
/// answers dated ahead the diary has each yes alone.
bool changedAfter(const Diary& diary, const Entry<Clearance>& clearance)
{
    bool before = true;
    for (const auto& answer : diary.answers[clearance.payload.row]) {
        const LocalDate given = clearance.payload.given;
        const bool after = answer.when.date > given || (answer.when.date == given && answer.when > clearance.happened);
        if (answer.yes && !before && after)
            return true;
        before = answer.yes;
    }
    return false;
}

bool spokenOf(const Diary& diary, ScreeningRow row, LocalDate from, LocalDate to)
{
    return std::ranges::any_of(diary.clearances, [&](const auto& e) {
        const Clearance& c = e.payload;
        return c.row == row && !isBlank(c.who) && c.given >= from && c.given <= to;
    });
}

/// Whether a no given on `day` ends a yes that counts since `since`.
bool noEnds(const Diary& diary, const RowRule& rule, LocalDate since, LocalDate day)
{
    return rule.outcome != RowOutcome::Stop || day == since || spokenOf(diary, rule.row, since, day);
}

/// The day of the yes that counts once `given` was answered in that order.
std::optional<LocalDate> yesAfter(const Diary& diary, const RowRule& rule, std::span<const diary::HealthAnswer> given)
{
    std::optional<LocalDate> since;
    for (const auto& answer : given) {
        if (answer.yes)
            since = since.value_or(answer.when.date);
        else if (since && noEnds(diary, rule, *since, answer.when.date))
            since.reset();
    }
    return since;
}

const RowRule& ruleOf(ScreeningRow row) { return *std::ranges::find(kRows, row, &RowRule::row); }

bool cleared(const Diary& diary, ScreeningRow row)
{
    const auto standing = clearanceOf(diary, row);
    return standing && standing->holds;
}

} // namespace

std::span<const RowRule> screeningRows() { return kRows; }

std::optional<ClearanceStanding> clearanceOf(const Diary& diary, ScreeningRow row)
{
    const Entry<Clearance>* latest = nullptr;
    for (const auto& e : diary.clearances)
        if (e.payload.row == row && !isBlank(e.payload.who) && e.payload.given <= diary.today &&
            (latest == nullptr || e.payload.given >= latest->payload.given))
            latest = &e;
    if (latest == nullptr)
        return std::nullopt;
    const Clearance& c = latest->payload;
    const LocalDate longest = c.given + (row == ScreeningRow::Pregnancy ? kPregnancyClearanceDays : kClearanceDays);
    const LocalDate until = c.expires ? std::min(*c.expires, longest) : longest;
    return ClearanceStanding{c.who, c.given, until, until >= diary.today && !changedAfter(diary, *latest)};
}

std::optional<LocalDate> yesSince(const Diary& diary, ScreeningRow row)
{
    const auto& byTime = diary.answers[row];
    if (const auto since = yesAfter(diary, ruleOf(row), byTime))
        return since;
    // A clock that was set back in between must not put a no after the yes that came later.
    auto asRecorded = byTime;
    std::ranges::sort(asRecorded, {}, &diary::HealthAnswer::position);
    return yesAfter(diary, ruleOf(row), asRecorded);
}

std::vector<RowAnswer> answersOf(const Diary& diary)
{
    std::vector<RowAnswer> out;
    for (const RowRule& rule : kRows) {
        if (knownByAge(rule.row))
            continue;
        const auto since = yesSince(diary, rule.row);
        const bool waits = since && !noEnds(diary, rule, *since, diary.today);
        out.push_back({rule, diary.answerSoFar(rule.row).has_value(), since.has_value(), since.value_or(LocalDate{}),
                       waits, clearanceOf(diary, rule.row)});
    }
    return out;
}

ScreeningVerdict screen(const Diary& diary, [[maybe_unused]] Site site)
{
    ScreeningVerdict out;
    for (const RowRule& rule : kRows) {
        if (!yesSince(diary, rule.row) && !trueByAge(diary, rule.row))
            continue;
        if (rule.outcome == RowOutcome::Mention) {
            out.mention.push_back(rule.row);
            continue;
        }
        if (cleared(diary, rule.row))
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

ScreeningDue screeningDue(const Diary& diary)
{
    if (!diary.fullScreening || diary.today - *diary.fullScreening >= kFullScreeningDays)
        return ScreeningDue::Full;
    return diary.anyScreening == diary.today ? ScreeningDue::None : ScreeningDue::ShortQuestion;
}

bool isKnownChild(const Diary& diary)
{
    return diary.person && diary.person->birth && ageGroupOn(diary.person->birth, diary.today) == AgeGroup::Child;
}

bool everyRowAnswered(const Diary& diary)
{
    return std::ranges::all_of(screeningRows(),
                               [&](const RowRule& r) { return knownByAge(r.row) || diary.answerSoFar(r.row); });
}

} // namespace firstdew::protocol
