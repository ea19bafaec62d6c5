#pragma once

#include "outlook/Score.h"
#include "words/Names.h"

#include <QString>
#include <QStringList>

// How sure a forecast is and how forecasts have done, for page and paper.
namespace firstdew::words {

/// "about 1 in 5".
[[nodiscard]] QString oddsText(outlook::Odds odds);
/// "By tomorrow: about 1 in 5", the chance that dampness has begun by then.
[[nodiscard]] QString chanceBy(LocalDate day, LocalDate today, double chance);
/// How often dampness came where the forecast said about the same, one sentence for each line.
[[nodiscard]] QStringList scoreLines(const outlook::Score& score);
/// What follows from them.
[[nodiscard]] QString scoreVerdict(const outlook::Score& score);

} // namespace firstdew::words
