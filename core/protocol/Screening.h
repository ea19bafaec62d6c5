#pragma once

#include "diary/Diary.h"

#include <span>
#include <string>
#include <vector>

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// Days after which the whole screening is asked again (our own choice, cautious).
inline constexpr int kFullScreeningDays = 28;
/// Days a clearance holds at most, counted from the day it was given (our own choice, cautious).
inline constexpr int kClearanceDays = 180;
inline constexpr int kPregnancyClearanceDays = 28;
/// Not treated before this birthday (NHS dermatology leaflets, Newcastle; South Tees).
inline constexpr int kTreatedFromYears = 5;

enum class RowOutcome { Mention, AskFirst, Stop };
enum class Standing { Published, CommonPractice, FromMemory, OwnCautiousChoice };

/// What a "yes" to a row of the screening means, and how sure the trade is of it.
struct RowRule {
    ScreeningRow row{};
    RowOutcome outcome{};
    Standing standing{};
};

/// Every row of the screening, in the order it is asked.
[[nodiscard]] std::span<const RowRule> screeningRows();

/// Whether every question of the screening was answered at some time, whatever is due again.
[[nodiscard]] bool everyRowAnswered(const Diary& diary);
/// Whether the person treated is under 18 by their birth date: the questions are then put to the adult beside them.
/// False where no birth date is known, although the limits are then a child's.
[[nodiscard]] bool isKnownChild(const Diary& diary);

/// A clinician's word on one row.
struct ClearanceStanding {
    std::string who;
    LocalDate given;
    LocalDate until;    ///< the last day on which it holds
    bool holds = false; ///< today: not expired, and the answer was not newly given after it
};

/// The clearance of a row given last, or nothing where there is none.
[[nodiscard]] std::optional<ClearanceStanding> clearanceOf(const Diary& diary, ScreeningRow row);

/// The day of the yes to a row that still counts, or nothing. A later no ends a yes to a row of AskFirst or Mention. A
/// yes to a row of Stop stays until a clinician has spoken about it (NHS dermatology leaflets, Newcastle; South Tees):
/// only a no after that word ends it, or one of the same day, which takes back a slip of the finger (our own choice).
[[nodiscard]] std::optional<LocalDate> yesSince(const Diary& diary, ScreeningRow row);

/// How a row of the screening stands today.
struct RowAnswer {
    RowRule rule;
    bool asked = false;
    bool yes = false;                           ///< a yes counts, see yesSince()
    LocalDate since;                            ///< the day of that yes
    bool waits = false;                         ///< a no given today does not end it; see yesSince()
    std::optional<ClearanceStanding> clearance; ///< given last, whether it still holds or not
    /// A yes that stands in the way of a session.
    [[nodiscard]] bool blocks() const
    {
        const bool cleared = clearance && clearance->holds;
        return yes && !cleared && rule.outcome != RowOutcome::Mention;
    }
};

/// Every row that is asked, in its order, with the latest answer to it.
[[nodiscard]] std::vector<RowAnswer> answersOf(const Diary& diary);

enum class ScreeningOutcome { Go, AskFirst, Stop };
enum class ScreeningDue { None, ShortQuestion, Full };

struct ScreeningVerdict {
    ScreeningOutcome outcome = ScreeningOutcome::Go;
    std::vector<ScreeningRow> deciding; ///< rows answered yes (or true by age) that are not cleared
    std::vector<ScreeningRow> mention;  ///< worth a word, never a block (fixed braces)
};

/// Weighs the latest answers and unexpired clearances for a session at `site` today.
/// A row never asked decides nothing here: ask screeningDue() as well before any session.
[[nodiscard]] ScreeningVerdict screen(const Diary& diary, Site site);

/// What must be asked before a session today: everything where there is no full screening within
/// 28 days, otherwise the one short question (unless it was answered today).
[[nodiscard]] ScreeningDue screeningDue(const Diary& diary);

} // namespace firstdew::protocol
