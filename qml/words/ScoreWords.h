#pragma once

#include "outlook/Score.h"
#include "outlook/UsualDays.h"
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
/// How much shorter the dry spells have become, as page and paper tell it.
[[nodiscard]] QString shorterLine(const outlook::Shorter& shorter, LocalDate today);
/// The same for the person, with what follows from it; empty where nothing of the kind was found.
[[nodiscard]] QStringList shorterLines(const outlook::Forecast& forecast, LocalDate today);

} // namespace firstdew::words
