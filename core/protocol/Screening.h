#pragma once

#include "facts/Record.h"

#include <vector>

namespace firstdew::protocol {

using namespace facts;

enum class ScreeningOutcome { Go, AskFirst, Stop };
enum class ScreeningDue { None, ShortQuestion, Full };

struct ScreeningVerdict {
    ScreeningOutcome outcome = ScreeningOutcome::Go;
    std::vector<ScreeningRow> deciding; ///< rows answered yes (or true by age) that are not cleared
    std::vector<ScreeningRow> mention;  ///< worth a word, never a block (fixed braces)
};

/// Weighs the latest answers and unexpired clearances for a session at `site` on `day`.
/// No screening on record reads as AskFirst with every row undecided: see screeningDue.
[[nodiscard]] ScreeningVerdict screen(const Record& record, Site site, LocalDate day);

/// What must be asked before a session on `day`: everything where there is no full screening within
/// 28 days, otherwise the one short question (unless it was answered today).
[[nodiscard]] ScreeningDue screeningDue(const Record& record, LocalDate day);

} // namespace firstdew::protocol
