#include "protocol/WayIn.h"

#include "protocol/CareSheets.h"
#include "protocol/MayBegin.h"
#include "protocol/Skin.h"

#include <algorithm>

namespace firstdew::protocol {

namespace {

const Entry<Session>* latestCompleted(const Diary& diary, Site site)
{
    const auto found = std::find_if(diary.sessions.rbegin(), diary.sessions.rend(),
                                    [&](const auto& e) { return e.payload.completed && e.payload.site == site; });
    return found == diary.sessions.rend() ? nullptr : &*found;
}

long long completedAt(const Diary& diary, Site site)
{
    return std::ranges::count_if(diary.sessions,
                                 [&](const auto& e) { return e.payload.completed && e.payload.site == site; });
}

/// The led session that began last, of those that fit.
template <class Fits>
const diary::LedSession* latestLed(const Diary& diary, Fits fits)
{
    const diary::LedSession* latest = nullptr;
    const auto began = [](const diary::LedSession& led) {
        return led.events.empty() ? 0LL : led.events.front().wallMs;
    };
    for (const auto& [id, led] : diary.ledSessions)
        if (led.prepared && fits(*led.prepared, led) &&
            (latest == nullptr || led.on > latest->on || (led.on == latest->on && began(led) >= began(*latest))))
            latest = &led;
    return latest;
}

bool wentWrong(const diary::LedSession& led)
{
    return std::ranges::any_of(led.events, [&](const BathEvent& e) {
        switch (e.event) {
        case BathEventKind::Discomfort:
        case BathEventKind::OutOfWater:
        case BathEventKind::Stop:
        case BathEventKind::Away:
        case BathEventKind::Resumed: return true;
        case BathEventKind::StopPressed: return &e == &led.events.back();
        case BathEventKind::Reading: return e.reading && led.prepared && *e.reading > led.prepared->limit;
        default: return false;
        }
    });
}

bool wentWrong(const Session& s)
{
    return !s.completed || s.comfort == Comfort::Unpleasant || s.comfort == Comfort::Painful || harms(s.skin) ||
           s.skin.contains(SkinFinding::Itch) || s.skin.contains(SkinFinding::Pain);
}

/// A led session of that skin had current and was never written down.
bool unwrittenSince(const Diary& diary, Site site, LocalDate day)
{
    return std::ranges::any_of(diary.ledSessions, [&](const auto& entry) {
        const auto& led = entry.second;
        return led.prepared && !led.logged && led.on >= day && shareSkin(led.prepared->site, site) &&
               std::ranges::any_of(led.events, [](const BathEvent& e) { return e.event == BathEventKind::SwitchedOn; });
    });
}

bool skinSuffersSince(const Diary& diary, Site site, LocalDate day)
{
    return std::ranges::any_of(diary.skin, [&](const auto& e) {
        return e.happened.date >= day && treats(site).contains(e.payload.site) &&
               (harms(e.payload.skin) || irritates(e.payload.skin));
    });
}

/// Whether the machine is not the one of the latest completed session, or swaps another way than the one led last.
bool otherKit(const Diary& diary, Site site, const Session& latest)
{
    if (!diary.machine)
        return true;
    if (!latest.machine.empty() && latest.machine != diary.machine->name)
        return true;
    const auto* led =
        latestLed(diary, [&](const BathPrepared& p, const auto& l) { return p.site == site && l.logged; });
    return led != nullptr && led->prepared->swap != diary.machine->swap;
}

std::optional<Waveform> lastWaveform(const Diary& diary, Site site, const diary::LedSession* led)
{
    const auto logged = std::find_if(diary.sessions.rbegin(), diary.sessions.rend(),
                                     [&](const auto& e) { return e.payload.site == site; });
    if (logged != diary.sessions.rend() && (led == nullptr || logged->happened.date > led->on))
        return logged->payload.waveform;
    return led != nullptr ? std::optional(led->prepared->waveform) : std::nullopt;
}

bool completedOn(const Diary& diary, Site site, LocalDate day)
{
    return std::ranges::any_of(diary.sessions, [&](const auto& e) {
        return e.payload.completed && e.payload.site == site && e.happened.date == day;
    });
}

} // namespace

bool incidentAtLatest(const Diary& diary, Site site)
{
    const auto latest = std::find_if(diary.sessions.rbegin(), diary.sessions.rend(),
                                     [&](const auto& e) { return shareSkin(e.payload.site, site); });
    if (latest == diary.sessions.rend())
        return unwrittenSince(diary, site, LocalDate{});
    const LocalDate day = latest->happened.date;
    const auto led = diary.ledSessions.find(latest->payload.bath);
    return wentWrong(latest->payload) || (led != diary.ledSessions.end() && wentWrong(led->second)) ||
           unwrittenSince(diary, site, day) || skinSuffersSince(diary, site, day);
}

std::optional<LongWayReason> longWayReason(const Diary& diary, Site site, WayOfWorking way)
{
    if (completedAt(diary, site) < kLongWaySessions)
        return LongWayReason::FirstTimes;
    if (incidentAtLatest(diary, site))
        return LongWayReason::Incident;
    const auto& latest = *latestCompleted(diary, site);
    if (diary.today - latest.happened.date >= kLongWayDays)
        return LongWayReason::LongAgo;
    if (otherKit(diary, site, latest.payload))
        return LongWayReason::OtherKit;
    const bool under = way == WayOfWorking::HandsUnder;
    if (under &&
        latestLed(diary, [&](const BathPrepared& p, const auto& l) { return p.way == way && l.logged; }) == nullptr)
        return LongWayReason::HandsUnder;
    return std::nullopt;
}

SessionChoice choiceFor(const Diary& diary, Site site)
{
    const auto* led = latestLed(diary, [&](const BathPrepared& p, const auto&) { return p.site == site; });
    const auto last = lastWaveform(diary, site, led);
    const bool borne = last != Waveform::Direct || !directNotTolerated(diary, site);
    const bool open = last && limitFor(limitQueryFor(diary, site, *last)).allowed && borne;
    const Machine machine = diary.machine.value_or(Machine{});
    const AgeGroup age = ageGroupOn(diary.person ? diary.person->birth : std::nullopt, diary.today);
    SessionChoice out{open ? *last : waveformFor(diary, site), waysFor(site, machine, age).front().way, Side::Right};
    if (led != nullptr) {
        out.firstSide = led->prepared->firstSide;
        if (!barOf(site, led->prepared->way, machine, age))
            out.way = led->prepared->way;
    }
    return out;
}

std::optional<Site> usuallyFollowedBy(const Diary& diary, Site site)
{
    if (site != Site::Hands && site != Site::Feet)
        return std::nullopt;
    const Site other = site == Site::Hands ? Site::Feet : Site::Hands;
    const auto* before = latestCompleted(diary, other);
    if (before == nullptr || before->happened.date >= diary.today || !completedOn(diary, site, before->happened.date) ||
        !completedOn(diary, site, diary.today))
        return std::nullopt;
    // The last time at `site` before today was that day, too.
    const auto last = std::find_if(diary.sessions.rbegin(), diary.sessions.rend(), [&](const auto& e) {
        return e.payload.completed && e.payload.site == site && e.happened.date < diary.today;
    });
    return last->happened.date == before->happened.date ? std::optional(other) : std::nullopt;
}

} // namespace firstdew::protocol
