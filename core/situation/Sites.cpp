#include "situation/Sites.h"

#include <algorithm>
#include <optional>

namespace firstdew::situation {

namespace {

constexpr Site aloneFor(DiarySite site)
{
    switch (site) {
    case DiarySite::Hands: return Site::Hands;
    case DiarySite::Feet: return Site::Feet;
    case DiarySite::Armpits: return Site::Armpits;
    }
    return Site::Hands;
}

/// The last word on a kind of session: chosen, dropped, or never mentioned.
std::optional<bool> chosen(const Record& record, Site site)
{
    std::optional<bool> out;
    for (const auto& e : record.all<SiteUse>())
        if (e.payload.site == site)
            out = e.payload.inUse;
    return out;
}

/// The kind of the latest course or session that treats `site`.
std::optional<Site> lastTreatedAs(const Record& record, DiarySite site)
{
    std::optional<Site> out;
    LocalTime at{LocalDate(-10000000), {}};
    const auto look = [&](const auto& entries) {
        for (const auto& e : entries)
            if (treats(e.payload.site).contains(site) && e.happened >= at) {
                out = e.payload.site;
                at = e.happened;
            }
    };
    look(record.all<Course>());
    look(record.all<Session>());
    return out;
}

bool mentioned(const Record& record, DiarySite site)
{
    const auto& checkIns = record.all<CheckIn>();
    return lastTreatedAs(record, site).has_value() ||
           std::any_of(checkIns.begin(), checkIns.end(), [&](const auto& e) { return e.payload.site == site; });
}

bool paused(const Record& record, Site site)
{
    bool out = false;
    for (const auto& e : record.all<Pause>())
        if (e.payload.site == site)
            out = e.payload.paused;
    return out;
}

} // namespace

std::vector<SiteInUse> sitesInUse(const Record& record)
{
    std::vector<SiteInUse> out;
    for (const DiarySite site : allOf<DiarySite>()) {
        std::optional<Site> as;
        bool dropped = false;
        for (const Site kind : allOf<Site>()) {
            if (!treats(kind).contains(site))
                continue;
            const auto word = chosen(record, kind);
            if (word == true)
                as = kind;
            else if (word == false)
                dropped = true;
        }
        const auto last = lastTreatedAs(record, site);
        if (as && last && chosen(record, *last) == true)
            as = last;
        if (!as && !dropped && mentioned(record, site))
            as = last.value_or(aloneFor(site));
        if (as)
            out.push_back({site, *as, paused(record, *as)});
    }
    return out;
}

bool bathRunning(const Record& record)
{
    const auto* prepared = record.latest<BathPrepared>();
    if (prepared == nullptr)
        return false;
    const auto& bath = prepared->payload.bath;
    const auto& sessions = record.all<Session>();
    if (std::any_of(sessions.begin(), sessions.end(), [&](const auto& e) { return e.payload.bath == bath; }))
        return false;
    const BathEvent* last = nullptr;
    for (const auto& e : record.all<BathEvent>())
        if (e.payload.bath == bath && (last == nullptr || e.payload.sequence > last->sequence))
            last = &e.payload;
    return last != nullptr && last->event != BathEventKind::Stop;
}

std::vector<LocalDate> sessionDays(const Record& record, DiarySite site, LocalDate until)
{
    std::vector<LocalDate> out;
    for (const auto& e : record.all<Session>()) {
        const bool counts = e.payload.completed && treats(e.payload.site).contains(site) && e.happened.date <= until;
        if (counts && (out.empty() || out.back() != e.happened.date))
            out.push_back(e.happened.date);
    }
    return out;
}

std::vector<DayReport> dayReports(const Record& record, DiarySite site, LocalDate until)
{
    std::vector<DayReport> out;
    for (const auto& e : record.all<CheckIn>()) {
        if (e.payload.site != site || e.happened.date > until)
            continue;
        if (out.empty() || out.back().date != e.happened.date)
            out.push_back({e.happened.date, e.payload.level, e.payload.with});
        else if (e.payload.level >= out.back().level)
            out.back() = {e.happened.date, e.payload.level, e.payload.with};
    }
    return out;
}

} // namespace firstdew::situation
