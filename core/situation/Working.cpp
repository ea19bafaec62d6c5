#include "situation/Working.h"

#include <algorithm>
#include <cmath>

namespace firstdew::situation {

namespace {

constexpr double kEveryDay = 7;
constexpr std::size_t kLatestSpells = 3;

/// What one figure says for itself.
enum class Change { None, Some, Much };

Change changeOf(double dampNow, std::optional<double> dampBefore)
{
    const bool damp = dampBefore && *dampBefore > 0;
    const double before = damp ? *dampBefore : kEveryDay;
    return dampNow <= kWorkingShare * before  ? Change::Much
           : dampNow <= kPartlyShare * before ? Change::Some
                                              : Change::None;
}

Change changeOf(protocol::Response response)
{
    switch (response) {
    case protocol::Response::None: return Change::None;
    case protocol::Response::Good: return Change::Some;
    case protocol::Response::Strong: return Change::Much;
    }
    return Change::None;
}

void readScores(const Diary& diary, const SiteSituation& site, SiteWorking& out)
{
    if (!site.hdssStart || !site.hdssNow)
        return;
    for (const auto& e : diary.scores)
        if (e.payload.site == site.site && diary.today - e.happened.date <= protocol::kScoreDays &&
            e.payload.score == *site.hdssNow) {
            out.scoreBefore = site.hdssStart;
            out.scoreNow = site.hdssNow;
        }
}

/// Whether the latest spells that were seen to end were each over within a few days.
bool endedSoon(const std::vector<outlook::Spell>& spells)
{
    std::size_t seen = 0;
    for (auto s = spells.rbegin(); s != spells.rend() && seen < kLatestSpells; ++s) {
        if (!s->right)
            continue;
        if (s->gotDry && *s->right > kShortSpellDays)
            return false;
        ++seen;
    }
    return seen == kLatestSpells;
}

std::optional<Working> answerOf(const std::vector<Change>& changes)
{
    if (changes.empty())
        return std::nullopt;
    const auto all = [&](Change c) { return std::ranges::all_of(changes, [&](Change one) { return one == c; }); };
    return all(Change::Much) ? Working::Yes : all(Change::None) ? Working::NotYet : Working::Partly;
}

SiteWorking tooEarly(SiteWorking out, WorkingWait wait, int missing)
{
    out.answer = Working::TooEarly;
    out.wait = wait;
    out.missing = missing;
    return out;
}

} // namespace

SiteWorking workingAt(const Diary& diary, const SiteSituation& site)
{
    SiteWorking out;
    const auto& own = diary.at(site.site);
    out.sessions = static_cast<int>(own.sessionDays.size());
    out.manySessions = out.sessions >= protocol::kLeastSessionsToJudge;
    if (own.sessionDays.empty())
        return tooEarly(out, WorkingWait::NoSession, 0);

    const LocalDate first = own.sessionDays.front();
    out.dampBefore = dampDaysIn(own, first - kWorkingDays, first - 1).aWeek(kLeastBefore);
    const DampDays now = dampDaysIn(own, std::max(first + 1, diary.today - (kWorkingDays - 1)), diary.today);
    out.dampNow = now.aWeek(kLeastNow);
    readScores(diary, site, out);
    out.shortSpells = endedSoon(site.forecast.spells);

    std::vector<Change> changes;
    if (out.dampNow)
        changes.push_back(changeOf(*out.dampNow, out.dampBefore));
    if (out.scoreNow) // and before
        if (const auto response = protocol::responseBy(*out.scoreBefore, *out.scoreNow))
            changes.push_back(changeOf(*response));
    const auto answer = answerOf(changes);
    if (!answer)
        return tooEarly(out, WorkingWait::MoreCheckIns, kLeastNow - now.reported);
    if (*answer == Working::NotYet && out.sessions < kSessionsOfCourse)
        return tooEarly(out, WorkingWait::MoreSessions, kSessionsOfCourse - out.sessions);
    out.answer = *answer;
    const bool held = out.shortSpells || site.stage == Stage::SweatingAgain;
    if (out.answer == Working::Yes && held)
        out.answer = Working::Partly;
    return out;
}

} // namespace firstdew::situation
