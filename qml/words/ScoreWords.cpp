#include "words/ScoreWords.h"

#include <QCoreApplication>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

} // namespace

QString oddsText(outlook::Odds odds)
{
    const outlook::Frequency f = outlook::frequencyOf(odds);
    switch (odds) {
    case outlook::Odds::Hardly: return Words::tr("less than 1 in %1").arg(f.in);
    case outlook::Odds::Nearly: return Words::tr("more than %1 in %2").arg(f.of - 1).arg(f.in);
    default: return Words::tr("about %1 in %2").arg(f.of).arg(f.in);
    }
}

QString chanceBy(LocalDate day, LocalDate today, double chance)
{
    return Words::tr("By %1: %2", "day, chance").arg(nearDay(day, today), oddsText(outlook::oddsOf(chance)));
}

QStringList scoreLines(const outlook::Score& score)
{
    QStringList out;
    for (const outlook::ScoreLine& line : score.lines)
        out << Words::tr("When the chance for the next day was %1, dampness came on %2 of %n day(s).", nullptr,
                         line.days)
                   .arg(oddsText(line.said))
                   .arg(line.damp);
    return out;
}

QString scoreVerdict(const outlook::Score& score)
{
    switch (score.verdict) {
    case outlook::ScoreVerdict::TooFew:
        return Words::tr("After %n more check-in(s) the app can say how its forecasts have done.", nullptr,
                         score.missing);
    case outlook::ScoreVerdict::Fits: return Words::tr("So far the forecasts fit.");
    case outlook::ScoreVerdict::Widened:
        return Words::tr(
            "The dry spells have not gone as forecast. So the forecast now leaves more room on both sides.");
    }
    return {};
}

QString shorterLine(const outlook::Shorter& shorter, LocalDate today)
{
    return Words::tr("Usually dry for %n day(s) since about %1; before that, for %2.", "days, date, days", shorter.now)
        .arg(dayAndMonth(shorter.since, today))
        .arg(shorter.before);
}

QStringList shorterLines(const outlook::Forecast& forecast, LocalDate today)
{
    const auto shorter = outlook::shorterToTell(forecast);
    if (!shorter)
        return {};
    return {shorterLine(*shorter, today),
            Words::tr("Shorter dry spells can have many reasons. If it goes on, tell your nurse or doctor.")};
}

} // namespace firstdew::words
