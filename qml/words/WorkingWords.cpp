#include "words/WorkingWords.h"

#include "outlook/UsualDays.h"
#include "words/Names.h"
#include "words/ScoreWords.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

using situation::SiteWorking;
using situation::Working;
using situation::WorkingWait;

QString waiting(const SiteWorking& w)
{
    switch (w.wait.value_or(WorkingWait::NoSession)) {
    case WorkingWait::NoSession: return Words::tr("The answer comes with the first sessions and a week of check-ins.");
    case WorkingWait::MoreCheckIns:
        return Words::tr("After %n more check-in(s) there is an answer.", nullptr, w.missing);
    case WorkingWait::MoreSessions:
        return Words::tr("No change yet. That says little before %n more session(s).", nullptr, w.missing);
    }
    return {};
}

} // namespace

QString workingLine(const SiteWorking& working)
{
    switch (working.answer) {
    case Working::TooEarly: return Words::tr("Too early to say if it works");
    case Working::NotYet: return Words::tr("It does not work yet");
    case Working::Partly: return Words::tr("It works in part");
    case Working::Yes: return Words::tr("It works");
    }
    return {};
}

QString dampDays(double aWeek)
{
    const bool some = aWeek > 0 && aWeek < 1;
    return some ? Words::tr("under %1").arg(number(1)) : number(std::round(aWeek));
}

QString dampDaysChange(const SiteWorking& working)
{
    if (!working.dampNow)
        return {};
    // The literal is cut where the tool that gathers texts would take a letter for a digit of the character before.
    return working.dampBefore ? Words::tr("%1\u00a0now, %2\u00a0"
                                          "before the first session")
                                    .arg(dampDays(*working.dampNow), dampDays(*working.dampBefore))
                              : Words::tr("%1\u00a0now").arg(dampDays(*working.dampNow));
}

QString workingDetail(const SiteWorking& working, const outlook::Forecast& forecast, LocalDate today)
{
    QStringList out;
    if (working.wait)
        out << waiting(working);
    if (working.dampNow)
        out << Words::tr("Damp days a week: %1.").arg(dampDaysChange(working));
    if (working.scoreNow && working.scoreBefore)
        out << Words::tr("How much it bothers you: %1\u00a0now, %2\u00a0"
                         "before.")
                   .arg(*working.scoreNow)
                   .arg(*working.scoreBefore);
    if (working.shortSpells)
        out << Words::tr("Your latest dry spells were short.");
    else if (const auto shorter = outlook::shorterToTell(forecast))
        out << shorterLine(*shorter, today);
    else if (outlook::usualIsKnown(forecast)) {
        const auto usual = outlook::usualDays(forecast);
        out << Words::tr("You usually stay dry %1 to %n day(s).", nullptr, usual.to).arg(usual.from);
    }
    if (working.answer == Working::NotYet)
        out << (working.manySessions ? Words::tr("Show your prescriber the summary. Other treatments can help.")
                                     : Words::tr("Many people need 10 to 12 sessions."));
    return out.join(QLatin1Char(' '));
}

} // namespace firstdew::words
