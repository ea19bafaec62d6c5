#include "summary/Findings.h"

#include "bath/Dose.h"
#include "protocol/CareSheets.h"
#include "protocol/MayBegin.h"
#include "protocol/Screening.h"
#include "protocol/Skin.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace firstdew::summary {

namespace {

using situation::SiteSituation;

/// What the readings of a led session show above its limit, if anything.
std::optional<OverLimitEpisode> episodeOf(const diary::LedSession& led)
{
    const auto state = bath::replay(*led.prepared, led.events);
    if (!state)
        return std::nullopt;
    OverLimitEpisode out{led.on, led.prepared->site, led.prepared->waveform, {}, led.prepared->limit, Seconds{0}};
    for (const auto* readings : {&state->interrupted, &state->readings}) {
        const auto dose = bath::doseOf(*readings, out.site, out.limit, std::nullopt);
        for (const auto& over : dose.overLimit) {
            out.peak = std::max(out.peak, over.peak);
            out.seconds->s += static_cast<int>(std::lround(over.toSecond - over.fromSecond));
        }
        for (const auto& r : *readings) // one reading alone has no length
            if (r.current > out.limit)
                out.peak = std::max(out.peak, r.current);
    }
    return out.peak > out.limit ? std::optional(out) : std::nullopt;
}

/// The limit that would hold today, whatever else forbids a session.
std::optional<Milliamps> limitToday(const Diary& diary, Site site, Waveform waveform)
{
    const auto answer = protocol::limitFor(protocol::limitQueryFor(diary, site, waveform));
    return answer.allowed ? std::optional(answer.limit) : std::nullopt;
}

/// The limit to judge a logged session by: that of its led session; otherwise today's; where that waveform is not open
/// today, the trade's. Armpits have no direct current, so any counts as above.
Milliamps limitFor(const Diary& diary, const Session& session)
{
    const auto led = diary.ledSessions.find(session.bath);
    if (led != diary.ledSessions.end() && led->second.prepared)
        return led->second.prepared->limit;
    if (const auto limit = limitToday(diary, session.site, session.waveform))
        return *limit;
    auto query = protocol::limitQueryFor(diary, session.site, session.waveform);
    query.machine.reset();
    query.sheets.clear();
    return protocol::limitFor(query).limit;
}

/// Whether a blister or burn was noted at the session's skin, with it or by the next day.
bool harmed(const Diary& diary, const Entry<Session>& e)
{
    return protocol::harms(e.payload.skin) || std::ranges::any_of(diary.skin, [&](const auto& found) {
               const int later = found.happened.date - e.happened.date;
               return treats(e.payload.site).contains(found.payload.site) && later >= 0 && later <= 1 &&
                      protocol::harms(found.payload.skin);
           });
}

std::optional<Verdict> verdictOf(const Diary& diary, const SiteSituation& site)
{
    switch (situation::workingAt(diary, site).answer) {
    case situation::Working::TooEarly: return std::nullopt;
    case situation::Working::NotYet: return Verdict::NotYet;
    case situation::Working::Partly: return Verdict::Partly;
    case situation::Working::Yes: return Verdict::Working;
    }
    return std::nullopt;
}

} // namespace

std::vector<OverLimitEpisode> overLimitFrom(const Diary& diary, LocalDate from)
{
    std::vector<OverLimitEpisode> out;
    std::set<std::string> told;
    for (const auto& [id, led] : diary.ledSessions)
        if (led.prepared && led.on >= from && led.on <= diary.today)
            if (const auto episode = episodeOf(led)) {
                out.push_back(*episode);
                told.insert(id);
            }
    for (const auto& e : diary.sessions) {
        const Session& s = e.payload;
        if (e.happened.date < from || told.contains(s.bath) || !s.peak)
            continue;
        const Milliamps limit = limitFor(diary, s);
        if (*s.peak > limit)
            out.push_back({e.happened.date, s.site, s.waveform, *s.peak, limit, std::nullopt});
    }
    std::ranges::stable_sort(out, {}, &OverLimitEpisode::date);
    return out;
}

std::vector<LimitInForce> limitsInForce(const Diary& diary)
{
    std::vector<LimitInForce> out;
    for (const Site site : allOf<Site>()) {
        const auto uses = diary.sitesInUse();
        if (std::ranges::none_of(uses, [&](const auto& use) { return use.treatedAs == site; }))
            continue;
        for (const Waveform waveform : allOf<Waveform>()) {
            const auto answer = protocol::limitFor(protocol::limitQueryFor(diary, site, waveform));
            if (!answer.allowed)
                continue;
            std::string setBy;
            if (answer.binding == protocol::LimitRow::CareSheet)
                for (const CareSheet& sheet : protocol::sheetsBinding(diary, site)) {
                    const auto& written = waveform == Waveform::Direct ? sheet.directLimit : sheet.pulsedLimit;
                    if (written && *written == answer.limit)
                        setBy = sheet.who;
                }
            out.push_back({site, waveform, answer, setBy});
        }
    }
    return out;
}

std::vector<HighestLevel> highestLevels(const Diary& diary, DiarySite site, LocalDate from)
{
    std::vector<HighestLevel> out;
    for (const auto& e : diary.sessions) {
        const Session& s = e.payload;
        if (e.happened.date < from || !s.comfortable || !treats(s.site).contains(site) || harmed(diary, e))
            continue;
        const HighestLevel here{*s.comfortable, s.waveform, e.happened.date, limitToday(diary, s.site, s.waveform)};
        const auto known = std::ranges::find(out, s.waveform, &HighestLevel::waveform);
        if (known == out.end())
            out.push_back(here);
        else if (here.level > known->level)
            *known = here;
    }
    std::ranges::sort(out, {}, &HighestLevel::waveform);
    return out;
}

std::vector<ScoreOn> scoresFrom(const Diary& diary, DiarySite site, LocalDate from)
{
    std::vector<ScoreOn> out;
    for (const auto& e : diary.scores) {
        if (e.payload.site != site)
            continue;
        if (e.happened.date < from)
            out.clear(); // only the last one before the period
        out.push_back({e.happened.date, e.payload.score});
    }
    return out;
}

std::vector<Ask> asksOf(const Diary& diary, const situation::Situation& situation, LocalDate from)
{
    std::vector<Ask> out;
    for (const SiteSituation& s : situation.sites)
        if (const auto bar = protocol::skinBar(diary, s.site))
            out.push_back({AskKind::LookAtSkin, s.site, {}, bar->since, 0, bar->finding});
    if (const auto over = overLimitFrom(diary, from); !over.empty())
        out.push_back({AskKind::OverLimit, {}, {}, over.back().date, static_cast<int>(over.size())});
    for (const auto& answer : protocol::answersOf(diary))
        if (answer.blocks())
            out.push_back({AskKind::HealthAnswer, {}, answer.rule.row, answer.since, 0});
    for (const SiteSituation& s : situation.sites)
        if (std::ranges::any_of(s.reasons, [](const auto& r) { return r.kind == situation::ReasonKind::NoResponse; }))
            out.push_back({AskKind::NoResponse, s.site, {}, s.lastSession, 0});
    for (const auto& inForce : protocol::sheetsInForce(diary))
        if (inForce.sheet.review && *inForce.sheet.review <= diary.today)
            out.push_back({AskKind::Review, {}, {}, inForce.sheet.review, 0});
    const auto asked = std::ranges::count_if(
        diary.questions, [&](const auto& e) { return e.happened.date >= from && e.happened.date <= diary.today; });
    if (asked > 0)
        out.push_back({AskKind::Questions, {}, {}, {}, static_cast<int>(asked)});
    return out;
}

Verdict verdictOf(const Diary& diary, const situation::Situation& situation)
{
    const bool blocked =
        std::ranges::any_of(protocol::answersOf(diary), [](const auto& answer) { return answer.blocks(); });
    Verdict out = blocked ? Verdict::Blocked : diary.sessions.empty() ? Verdict::NotStarted : Verdict::TooEarly;
    for (const SiteSituation& s : situation.sites) {
        if (protocol::skinBar(diary, s.site))
            return Verdict::StopAndLook;
        if (const auto here = verdictOf(diary, s))
            out = std::min(out, *here);
    }
    return out;
}

} // namespace firstdew::summary
