#include "situation/Comparison.h"

#include "outlook/Intervals.h"
#include "outlook/UsualDays.h"
#include "protocol/MayBegin.h"
#include "protocol/Screening.h"
#include "protocol/Skin.h"
#include "situation/Assess.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace firstdew::situation {

namespace {

constexpr int kSpells = 2 * outlook::kPairs;

/// A day on which the site was treated in the comparison.
struct GivenDay {
    LocalDate day;
    std::optional<Waveform> waveform; ///< nullopt: no session of that day can count
    Seconds hold;                     ///< of its phases
};

/// A led session that went through without a break, or nullptr.
const diary::LedSession* ledInOneGo(const Diary& diary, const Session& session)
{
    const auto led = diary.ledSessions.find(session.bath);
    if (!session.completed || led == diary.ledSessions.end() || !led->second.prepared)
        return nullptr;
    const bool broken = std::ranges::any_of(led->second.events, [](const BathEvent& e) {
        return e.event == BathEventKind::OutOfWater || e.event == BathEventKind::Resumed ||
               e.event == BathEventKind::Away;
    });
    return broken ? nullptr : &led->second;
}

Seconds holdOf(const BathPrepared& prepared) { return prepared.hold.value_or(protocol::phasesFor(prepared.site).hold); }

/// The days with a session of that skin after `from`, ascending.
std::vector<GivenDay> givenAfter(const Diary& diary, const diary::SiteInUse& use, LocalTime from)
{
    std::vector<GivenDay> out;
    for (const auto& e : diary.sessions) {
        if (e.happened <= from || !treats(e.payload.site).contains(use.site))
            continue;
        if (!out.empty() && out.back().day == e.happened.date) {
            out.back().waveform.reset();
            continue;
        }
        out.push_back({e.happened.date, std::nullopt, {}});
        const auto* led = ledInOneGo(diary, e.payload);
        if (led == nullptr || e.payload.site != use.treatedAs || led->prepared->site != use.treatedAs)
            continue;
        out.back().waveform = e.payload.waveform;
        out.back().hold = holdOf(*led->prepared);
    }
    return out;
}

struct End {
    ComparisonEnd why{};
    LocalDate on;
};

void consider(std::optional<End>& first, ComparisonEnd why, LocalDate on)
{
    if (!first || on < first->on)
        first = End{why, on};
}

/// The day of the second wet report that calls for a new course, if any.
std::optional<LocalDate> wetTwice(const Diary& diary, DiarySite site, LocalDate since)
{
    const auto& days = diary.at(site).sessionDays;
    const DayReport* before = nullptr;
    for (const DayReport& r : diary.at(site).reports) {
        const bool wet = r.date >= since && r.level >= Level::Wet;
        const bool sessionBetween = before != nullptr && std::ranges::any_of(days, [&](LocalDate d) {
                                        return d >= before->date && d < r.date;
                                    });
        if (wet && !r.stirred() && before != nullptr && r.date - before->date <= kWetWithin && !sessionBetween)
            return r.date;
        before = wet ? &r : nullptr;
    }
    return std::nullopt;
}

/// What ends the comparison from outside, whichever comes first.
std::optional<End> endedFromOutside(const Diary& diary, DiarySite site, const Entry<Comparison>& begun,
                                    const Entry<Comparison>& latest)
{
    std::optional<End> out;
    const LocalDate since = begun.happened.date;
    if (!latest.payload.on)
        consider(out, ComparisonEnd::Left, std::clamp(latest.happened.date, since, std::max(since, diary.today)));
    for (const auto* found : {&diary.skin, &diary.skinAhead})
        for (const auto& e : *found)
            if (e.payload.site == site && e.happened.date >= since && protocol::harms(e.payload.skin))
                consider(out, ComparisonEnd::Skin, std::min(e.happened.date, diary.today));
    for (const auto* sessions : {&diary.sessions, &diary.sessionsAhead})
        for (const auto& e : *sessions)
            if (treats(e.payload.site).contains(site) && e.happened.date >= since && protocol::harms(e.payload.skin))
                consider(out, ComparisonEnd::Skin, std::min(e.happened.date, diary.today));
    if (const auto day = wetTwice(diary, site, since))
        consider(out, ComparisonEnd::Sweating, *day);
    for (const auto& set : diary.at(site).courses)
        if (set.set >= begun.happened)
            consider(out, ComparisonEnd::Course, set.set.date);
    for (const auto& other : diary.at(site).otherwise)
        if (other.from <= diary.today && (!other.until || *other.until >= since))
            consider(out, ComparisonEnd::OtherTreatment, std::max(other.from, since));
    return out;
}

/// Goes through the sessions of a comparison in order.
class Walk {
public:
    Walk(const Diary& diary, const diary::SiteInUse& use, const Entry<Comparison>& begun, LocalDate until)
        : m_diary(diary), m_use(use), m_seed(begun.payload.seed), m_until(until)
    {
        m_out.since = begun.happened.date;
        m_out.shorter = begun.payload.shorter;
        m_days = givenAfter(diary, use, begun.happened);
        std::erase_if(m_days, [&](const GivenDay& d) { return d.day > until; });
    }

    Compared go()
    {
        int uncounted = 0;
        for (std::size_t i = 0; i < m_days.size() && !m_out.ended; ++i) {
            const bool last = i + 1 == m_days.size();
            const LocalDate until = last ? m_until : m_days[i + 1].day;
            if (take(m_days[i], until, last))
                uncounted = 0;
            else if (++uncounted == kMostUncounted)
                end(ComparisonEnd::Lapsed, m_days[i].day);
        }
        // A spell of which nothing is reported yet tells nothing if a session ends it now: its length is asked for
        // again.
        const bool present = m_out.under && (m_presentLeft > 0 || m_days.back().day == m_until);
        m_out.nextShorter = shorterAt(m_seed, number() + (present ? 1 : 0));
        return m_out;
    }

private:
    [[nodiscard]] int number() const { return static_cast<int>(m_out.done.size()); }

    void end(ComparisonEnd why, LocalDate on)
    {
        m_out.ended = why;
        m_out.endedOn = on;
    }

    /// Whether the session of that day counts.
    bool take(const GivenDay& given, LocalDate until, bool last)
    {
        const bool shorter = shorterAt(m_seed, number());
        const Seconds asked =
            shorter ? shorterHold(m_use.treatedAs, m_out.shorter) : protocol::phasesFor(m_use.treatedAs).hold;
        if (!given.waveform || given.hold != asked || (m_waveform && *given.waveform != *m_waveform))
            return false;
        const auto spell = outlook::spellAfter(m_diary, m_use.site, given.day, until);
        if (spell.otherwise)
            return false;
        if (last && !spell.right) { // it goes on
            m_out.under = true;
            m_out.underShorter = shorter;
            m_presentLeft = spell.left;
            return true;
        }
        if (spell.left == 0 && !spell.right)
            return false;
        m_waveform = given.waveform;
        add(spell, shorter);
        return true;
    }

    void add(const outlook::Spell& spell, bool shorter)
    {
        outlook::Interval held{static_cast<double>(spell.left), std::nullopt};
        if (spell.right)
            held.right = *spell.right;
        m_out.done.push_back({held, shorter});
        const LocalDate over = spell.lastSession + spell.right.value_or(spell.watched);
        if (number() == kSpells)
            end(ComparisonEnd::AllPairs, over);
        else if (std::ranges::find(outlook::kEarlyLooks, number() / 2) != std::end(outlook::kEarlyLooks) &&
                 number() % 2 == 0 && outlook::plainlyLess(m_out.done))
            end(ComparisonEnd::PlainlyLess, over);
    }

public:
    /// Takes in the present spell as one cut short on the day on which the comparison ended from outside.
    void cutShort(Compared& out) const
    {
        if (!out.under)
            return;
        out.under = false;
        if (m_presentLeft > 0)
            out.done.push_back({{static_cast<double>(m_presentLeft), std::nullopt}, out.underShorter});
    }

private:
    const Diary& m_diary;
    const diary::SiteInUse& m_use;
    int m_seed;
    LocalDate m_until;
    std::vector<GivenDay> m_days;
    std::optional<Waveform> m_waveform;
    int m_presentLeft = 0; ///< days for which the present spell has held for certain
    Compared m_out;
};

LocalDate lastCheckIn(const Diary& diary, DiarySite site, LocalDate since)
{
    const auto& reports = diary.at(site).reports;
    return reports.empty() ? since : std::max(since, reports.back().date);
}

/// Whether the health answers, the birth date, the machine or the skin bars every session.
bool barred(const Diary& diary, Site site)
{
    return protocol::screen(diary, site).outcome != protocol::ScreeningOutcome::Go || !diary.person ||
           !diary.person->birth || protocol::waveformBar(diary, site) || protocol::skinBar(diary, site);
}

std::optional<ComparisonRest> restOf(const Diary& diary, const diary::SiteInUse& use, const Compared& c)
{
    if (use.paused)
        return ComparisonRest::Paused;
    if (use.treatedAs == Site::HandFoot)
        return ComparisonRest::OtherKind;
    if (barred(diary, use.treatedAs))
        return ComparisonRest::Barred;
    if (diary.today >= restsFrom(diary, use.site, c))
        return ComparisonRest::NoCheckIns;
    return std::nullopt;
}

} // namespace

int Compared::pair() const { return std::min(outlook::kPairs, static_cast<int>(done.size()) / 2 + 1); }

bool shorterAt(int seed, int number)
{
    // One step of splitmix64 for each pair (Steele, Lea & Flood, OOPSLA 2014; constants from memory).
    std::uint64_t x =
        static_cast<std::uint64_t>(seed) + (static_cast<std::uint64_t>(number / 2) + 1) * 0x9e3779b97f4a7c15ULL;
    x = (x ^ (x >> 30)) * 0xbf58476d1ce4e5b9ULL;
    x = (x ^ (x >> 27)) * 0x94d049bb133111ebULL;
    x ^= x >> 31;
    const bool shorterFirst = x % 2 == 1;
    return shorterFirst == (number % 2 == 0);
}

std::optional<Compared> comparisonAt(const Diary& diary, const diary::SiteInUse& use)
{
    const Entry<Comparison>* begun = nullptr;
    const Entry<Comparison>* latest = nullptr;
    for (const auto& e : diary.comparisons) {
        if (e.payload.site != use.site)
            continue;
        if (e.payload.on)
            begun = &e;
        latest = &e;
    }
    if (begun == nullptr || begun->happened.date > diary.today)
        return std::nullopt;
    const auto outside = endedFromOutside(diary, use.site, *begun, *latest);
    Walk walk(diary, use, *begun, outside ? std::min(outside->on, diary.today) : diary.today);
    Compared out = walk.go();
    if (!out.ended && outside) {
        walk.cutShort(out);
        out.ended = outside->why;
        out.endedOn = outside->on;
    }
    if (!out.ended)
        out.rests = restOf(diary, use, out);
    return out;
}

LocalDate restsFrom(const Diary& diary, DiarySite site, const Compared& compared)
{
    return lastCheckIn(diary, site, compared.since) + kSilentDays;
}

Seconds shorterHold(Site site, double shorter)
{
    const int whole = protocol::phasesFor(site).hold.s;
    const int least = static_cast<int>(std::ceil(protocol::kLeastHold * whole));
    return {std::clamp(static_cast<int>(std::lround(shorter * whole / 30)) * 30, least, whole)};
}

std::optional<Seconds> comparedHold(std::span<const SiteSituation> sites, Site site)
{
    for (const SiteSituation& s : sites)
        if (s.treatedAs == site && s.comparison && s.comparison->runs() && s.comparison->nextShorter)
            return shorterHold(site, s.comparison->shorter);
    return std::nullopt;
}

std::optional<outlook::HoldRatio> heldIn(const Compared& compared)
{
    const auto ratio = outlook::holdRatioOf(compared.done);
    return ratio ? std::optional(*ratio) : std::nullopt;
}

namespace {

bool skinFoundLately(const Diary& diary, DiarySite site)
{
    const auto recent = [&](const auto& e) { return diary.today - e.happened.date < kSkinDays; };
    const auto found = [](SetOf<SkinFinding> skin) {
        skin.erase(SkinFinding::Fine);
        return !skin.empty();
    };
    return std::ranges::any_of(
               diary.skin,
               [&](const auto& e) { return e.payload.site == site && recent(e) && found(e.payload.skin); }) ||
           std::ranges::any_of(diary.sessions, [&](const auto& e) {
               return treats(e.payload.site).contains(site) && recent(e) && found(e.payload.skin);
           });
}

/// Whether the latest sessions of that skin were led through by the app with the usual length and one waveform.
bool sessionsAlike(const Diary& diary, const SiteSituation& s)
{
    int alike = 0;
    std::optional<Waveform> waveform;
    for (auto e = diary.sessions.rbegin(); e != diary.sessions.rend() && alike < kSessionsBefore; ++e) {
        if (!treats(e->payload.site).contains(s.site))
            continue;
        const auto* led = ledInOneGo(diary, e->payload);
        if (led == nullptr || led->prepared->site != s.treatedAs || led->prepared->hold ||
            (waveform && *waveform != e->payload.waveform))
            return false;
        waveform = e->payload.waveform;
        ++alike;
    }
    return alike == kSessionsBefore;
}

bool fewSpells(const SiteSituation& s)
{
    const auto known = std::ranges::count_if(
        s.forecast.spells, [](const outlook::Spell& x) { return !x.otherwise && (x.right || x.left > 0); });
    return known < kSpellsBefore || !outlook::usualIsKnown(s.forecast);
}

} // namespace

std::optional<ComparisonBar> comparisonBar(const Diary& diary, const SiteSituation& s)
{
    if (s.comparison && !s.comparison->ended)
        return ComparisonBar::Runs;
    if (!diary.person || protocol::ageGroupOn(diary.person->birth, diary.today) != AgeGroup::Adult)
        return ComparisonBar::AdultsOnly;
    if (s.treatedAs == Site::HandFoot)
        return ComparisonBar::TwoSites;
    // With a course, these stages come only after its review.
    const bool top = s.stage == Stage::KeepingDry || s.stage == Stage::FirstDew;
    if (!top || diary.at(s.site).course() == nullptr)
        return ComparisonBar::NotKeepingDry;
    if (!s.response || *s.response == protocol::Response::None)
        return ComparisonBar::NoResponse;
    if (s.advice == Advice::Blocked || barred(diary, s.treatedAs))
        return ComparisonBar::Barred;
    if (skinFoundLately(diary, s.site))
        return ComparisonBar::SkinRecently;
    if (diary.at(s.site).otherwiseTreated(diary.today, diary.today))
        return ComparisonBar::OtherTreatment;
    if (outlook::shorterToTell(s.forecast))
        return ComparisonBar::Shortening;
    if (fewSpells(s))
        return ComparisonBar::FewSpells;
    if (!sessionsAlike(diary, s))
        return ComparisonBar::SessionsUnlike;
    if (diary.today - lastCheckIn(diary, s.site, diary.today - kSilentDays) >= kSilentDays)
        return ComparisonBar::NoCheckIns;
    return std::nullopt;
}

} // namespace firstdew::situation
