#include "diary/Diary.h"

#include <algorithm>

namespace firstdew::diary {

namespace {

/// Days after which a session that was stopped is no longer asked about (our own choice).
constexpr int kLongestUnwritten = 1;
/// Minutes after which a session that nobody ended is no longer taken to run.
constexpr int kLongestRun = 4 * 60;
/// Minutes by which a clock may be set back while a session runs: the end of daylight saving time and a little more.
constexpr int kSetBack = 90;

constexpr Site aloneFor(DiarySite site)
{
    switch (site) {
    case DiarySite::Hands: return Site::Hands;
    case DiarySite::Feet: return Site::Feet;
    case DiarySite::Armpits: return Site::Armpits;
    }
    return Site::Hands;
}

/// The kind of the latest session or course that treats `site`. A session wins over a course at the same minute.
std::optional<Site> lastTreatedAs(const Diary& diary, DiarySite site)
{
    const auto treating = [&](const auto& e) { return treats(e.payload.site).contains(site); };
    const auto session = std::find_if(diary.sessions.rbegin(), diary.sessions.rend(), treating);
    const auto course = std::find_if(diary.courses.rbegin(), diary.courses.rend(), treating);
    if (session != diary.sessions.rend() && (course == diary.courses.rend() || session->happened >= course->happened))
        return session->payload.site;
    if (course != diary.courses.rend())
        return course->payload.site;
    return std::nullopt;
}

std::optional<Site> treatedAs(const Diary& diary, DiarySite site)
{
    std::optional<Site> as;
    bool dropped = false;
    for (const Site kind : allOf<Site>()) {
        if (!treats(kind).contains(site) || !diary.chosen[kind])
            continue;
        if (*diary.chosen[kind])
            as = kind;
        else
            dropped = true;
    }
    const auto last = lastTreatedAs(diary, site);
    if (as && last && diary.chosen[*last] == true)
        return last;
    if (as)
        return as;
    if (dropped)
        return std::nullopt;
    if (last)
        return last;
    return diary.at(site).reports.empty() ? std::nullopt : std::optional(aloneFor(site));
}

/// Stop was pressed last. Where the app ended before that could be taken back, it stands.
bool isStopped(const LedSession& led)
{
    return !led.events.empty() &&
           (led.events.back().event == BathEventKind::Stop || led.events.back().event == BathEventKind::StopPressed);
}

} // namespace

bool SiteDiary::otherwiseTreated(LocalDate from, LocalDate to) const
{
    return std::any_of(otherwise.begin(), otherwise.end(),
                       [&](const OtherDays& o) { return o.from <= to && (!o.until || *o.until >= from); });
}

const DayReport* SiteDiary::afterSessionOn(LocalDate day) const
{
    const auto on = [day](const std::vector<DayReport>& all) {
        const auto at =
            std::lower_bound(all.begin(), all.end(), day, [](const DayReport& r, LocalDate d) { return r.date < d; });
        return at != all.end() && at->date == day ? &*at : nullptr;
    };
    return on(spellReports) == nullptr ? on(reports) : nullptr;
}

std::optional<bool> Diary::answerSoFar(ScreeningRow row) const
{
    const auto& given = answers[row];
    const auto latest =
        std::find_if(given.rbegin(), given.rend(), [&](const HealthAnswer& a) { return a.when.date <= today; });
    return latest == given.rend() ? std::nullopt : std::optional(latest->yes);
}

const LedSession* Diary::running(MinuteOfDay now) const
{
    const LedSession* led = unwritten();
    if (led == nullptr || isStopped(*led))
        return nullptr;
    constexpr int kMinutesADay = 24 * 60;
    const int since = (today - led->on) * kMinutesADay + now.minute - led->from.minute;
    return since >= -kSetBack && since <= kLongestRun ? led : nullptr;
}

const LedSession* Diary::unwritten() const
{
    const auto found = ledSessions.find(latestLed);
    if (found == ledSessions.end())
        return nullptr;
    const LedSession& led = found->second;
    const bool stopped = isStopped(led);
    const bool recent = today - led.on <= kLongestUnwritten;
    if (!led.prepared || led.logged || led.events.empty() || (stopped && !recent))
        return nullptr;
    return &led;
}

std::optional<std::pair<LocalDate, LocalDate>> Diary::awayAround(LocalDate day) const
{
    std::optional<std::pair<LocalDate, LocalDate>> out;
    for (bool grew = true; grew;) {
        grew = false;
        for (const auto& e : away) {
            const auto& [from, to] = std::pair(e.payload.from, e.payload.to);
            if (out ? from > out->second + 1 || to < out->first - 1 : from > day || to < day)
                continue;
            const auto wider =
                out ? std::pair(std::min(out->first, from), std::max(out->second, to)) : std::pair(from, to);
            grew = grew || out != wider;
            out = wider;
        }
    }
    return out;
}

const DayReport* Diary::reportOn(DiarySite site, LocalDate day) const
{
    const auto& reports = at(site).reports;
    const auto found = std::lower_bound(reports.begin(), reports.end(), day,
                                        [](const DayReport& r, LocalDate d) { return r.date < d; });
    return found != reports.end() && found->date == day ? &*found : nullptr;
}

const Entry<CheckIn>* Diary::checkInOn(DiarySite site, LocalDate day) const
{
    const auto found = std::find_if(checkIns.rbegin(), checkIns.rend(), [&](const auto& e) {
        return e.happened.date < day || (e.happened.date == day && e.payload.site == site);
    });
    return found != checkIns.rend() && found->happened.date == day ? &*found : nullptr;
}

const Entry<CheckIn>* Diary::checkInCorrectedAt(DiarySite site, LocalTime now) const
{
    const auto* latest = checkInOn(site, now.date);
    const bool treated =
        latest != nullptr && std::any_of(sessions.rbegin(), sessions.rend(), [&](const auto& e) {
            return treats(e.payload.site).contains(site) && e.happened >= latest->happened && e.happened < now;
        });
    return treated ? nullptr : latest;
}

const Entry<Session>* Diary::firstSessionOn(DiarySite site, LocalDate day) const
{
    const auto from = std::lower_bound(sessions.begin(), sessions.end(), day,
                                       [](const auto& e, LocalDate d) { return e.happened.date < d; });
    const auto found = std::find_if(from, sessions.end(), [&](const auto& e) {
        return e.happened.date > day || (e.payload.completed && treats(e.payload.site).contains(site));
    });
    return found != sessions.end() && found->happened.date == day ? &*found : nullptr;
}

std::vector<SiteInUse> Diary::sitesInUse() const
{
    std::vector<SiteInUse> out;
    for (const DiarySite site : allOf<DiarySite>())
        if (const auto as = treatedAs(*this, site))
            out.push_back({site, *as, paused[*as]});
    return out;
}

} // namespace firstdew::diary
