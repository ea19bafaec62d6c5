#pragma once

#include "situation/Assess.h"
#include "words/Names.h"

#include <QString>
#include <QStringList>

#include <span>

// The comparison of a shorter session with the usual one, for page and paper.
namespace firstdew::words {

/// What a comparison at that site is, before anybody agrees to it.
[[nodiscard]] QStringList aboutComparison(Site treatedAs);
/// Where the one that has not ended stands: the pair, the next session, or why it rests.
[[nodiscard]] QStringList comparisonLines(const situation::Compared& compared, Site treatedAs);
/// How it ended, and the answer in plain words.
[[nodiscard]] QStringList comparisonAnswer(const situation::Compared& compared, LocalDate today);
/// The same in a line on paper; also where it goes on.
[[nodiscard]] QString comparisonOnPaper(const situation::Compared& compared);
/// How long the session to come is, if a comparison runs there; empty if none does.
[[nodiscard]] QString comparedLength(std::span<const situation::SiteSituation> sites, Site site);

} // namespace firstdew::words
