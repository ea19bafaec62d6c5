#include "words/ComparedWords.h"

#include "words/BathWords.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace firstdew::words {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

using situation::Compared;
using situation::ComparisonEnd;
using situation::ComparisonRest;

/// Minutes under current of the whole session.
QString underCurrent(Site site, std::optional<Seconds> hold)
{
    const auto plan = protocol::phasesFor(site);
    return minutes(hold.value_or(plan.hold).s * plan.phases / 60);
}

int wholeDays(double days) { return std::max(1, static_cast<int>(std::lround(days))); }

QString restSentence(ComparisonRest rest)
{
    switch (rest) {
    case ComparisonRest::Paused: return Words::tr("It rests while you pause this site.");
    case ComparisonRest::OtherKind: return Words::tr("It rests while hands and feet are treated together.");
    case ComparisonRest::NoCheckIns: return Words::tr("It rests until the next check-in.");
    case ComparisonRest::Barred: return Words::tr("It rests while no session is possible.");
    case ComparisonRest::Sweating: return Words::tr("It rests because the sweating is back.");
    }
    return {};
}

QString endSentence(ComparisonEnd end)
{
    switch (end) {
    case ComparisonEnd::AllPairs: return Words::tr("All pairs are complete.");
    case ComparisonEnd::PlainlyLess: return Words::tr("It ended early, because the answer was clear.");
    case ComparisonEnd::Left: return Words::tr("You left it.");
    case ComparisonEnd::Skin: return Words::tr("It ended because of the skin.");
    case ComparisonEnd::Sweating: return Words::tr("It ended because the sweating was back.");
    case ComparisonEnd::Course: return Words::tr("It ended with the new course.");
    case ComparisonEnd::OtherTreatment: return Words::tr("It ended with the other treatment.");
    case ComparisonEnd::Lapsed: return Words::tr("It ended because three sessions in a row did not count.");
    }
    return {};
}

QString answerSentence(const Compared& compared)
{
    const auto held = situation::heldIn(compared);
    const auto answer = held ? outlook::answerOf(*held) : outlook::HoldAnswer::NotTold;
    if (answer == outlook::HoldAnswer::NotTold)
        return Words::tr("Whether the shorter session holds as long could not be told.");
    const int shorter = wholeDays(held->shorterMedian());
    const int usual = wholeDays(held->usualMedian);
    return answer == outlook::HoldAnswer::AsLong
               ? Words::tr("The shorter session held about as long: about %n day(s), and the usual one %1.", nullptr,
                           shorter)
                     .arg(usual)
               : Words::tr("The shorter session held less long: about %n day(s) instead of %1.", nullptr, shorter)
                     .arg(usual);
}

/// Between which shares of the usual time the truth probably lies.
QString surelySentence(const Compared& compared)
{
    const auto held = situation::heldIn(compared);
    if (!held || !held->bounded())
        return {};
    return Words::tr("By these %n dry spell(s) it probably holds for %1 to %2 of the usual time.", nullptr,
                     static_cast<int>(compared.done.size()))
        .arg(percent(held->low), percent(held->high));
}

} // namespace

QStringList aboutComparison(Site treatedAs)
{
    return {
        Words::tr("You compare a session of %1 with your usual one of %2, in %n pair(s) of dry spells. Chance decides "
                  "which comes first.",
                  nullptr, outlook::kPairs)
            .arg(underCurrent(treatedAs, situation::shorterHold(treatedAs, situation::kShorterOffered)),
                 underCurrent(treatedAs, {})),
        Words::tr("Only the time is shorter. Current and limits stay as they are."),
        Words::tr("Meanwhile the forecast calls for no top-up. The first clammy day at rest does, unless the skin is "
                  "still settling on the day after a session. So you may be clammy more often."),
        Words::tr("Only sessions that the app leads to the end count. Check in every day."),
        Words::tr("It can take months. It ends earlier if the shorter session clearly holds less long, or if the skin "
                  "or the sweating requires it. You can leave at any time."),
        Words::tr("Agree on it with your prescriber or nurse first, and follow your machine's instructions.")};
}

QStringList comparisonLines(const Compared& compared, Site treatedAs)
{
    QStringList out{Words::tr("Pair %1 of %2.").arg(compared.pair()).arg(outlook::kPairs)};
    if (compared.rests) {
        out << restSentence(*compared.rests);
        if (compared.rests == ComparisonRest::NoCheckIns || compared.rests == ComparisonRest::OtherKind)
            out << Words::tr("Until then your sessions are the usual ones, and the forecast calls for top-ups again.");
        return out;
    }
    if (compared.under)
        out << (compared.underShorter ? Words::tr("This dry spell followed the shorter session.")
                                      : Words::tr("This dry spell followed the usual session."));
    const auto hold =
        compared.nextShorter ? std::optional(situation::shorterHold(treatedAs, compared.shorter)) : std::nullopt;
    const QString length = underCurrent(treatedAs, hold);
    out << (hold ? Words::tr("The next session is the shorter one: %1.").arg(length)
                 : Words::tr("The next session is the usual one: %1.").arg(length))
        << Words::tr("The forecast calls for no top-up meanwhile. A clammy day at rest does.");
    return out;
}

QStringList comparisonAnswer(const Compared& compared, LocalDate today)
{
    QStringList out{
        Words::tr("From %1 to %2.").arg(dayAndMonth(compared.since, today), dayAndMonth(compared.endedOn, today)) +
            QLatin1Char(' ') + endSentence(*compared.ended),
        answerSentence(compared)};
    const QString surely = surelySentence(compared);
    if (!surely.isEmpty())
        out << surely;
    out << Words::tr("Sessions are as long as usual again. Talk to your prescriber or nurse about the answer.");
    return out;
}

QString comparisonOnPaper(const Compared& compared)
{
    const QString head =
        Words::tr("Shorter session compared with the usual one since %1").arg(dayOfYear(compared.since));
    if (!compared.ended)
        return head + QStringLiteral(": ") +
               Words::tr("pair %1 of %2; no answer yet").arg(compared.pair()).arg(outlook::kPairs);
    QStringList parts{endSentence(*compared.ended), answerSentence(compared)};
    const QString surely = surelySentence(compared);
    if (!surely.isEmpty())
        parts << surely;
    return head + QStringLiteral(". ") + parts.join(QLatin1Char(' '));
}

QString comparedLength(std::span<const situation::SiteSituation> sites, Site site)
{
    const bool compares =
        std::ranges::any_of(sites, [&](const auto& s) { return s.treatedAs == site && s.compares(); });
    if (!compares)
        return {};
    const auto hold = situation::comparedHold(sites, site);
    const QString length = underCurrent(site, hold);
    return hold ? Words::tr("You compare: this time the shorter session, %1.").arg(length)
                : Words::tr("You compare: this time the usual session, %1.").arg(length);
}

} // namespace firstdew::words
