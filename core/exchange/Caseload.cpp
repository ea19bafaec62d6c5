#include "exchange/Caseload.h"

#include "diary/Diary.h"
#include "outlook/UsualDays.h"
#include "protocol/CareSheets.h"
#include "protocol/Skin.h"
#include "protocol/TeachBack.h"

#include <algorithm>
#include <map>

namespace firstdew::exchange {

namespace {

using situation::Advice;
using situation::ReasonKind;
using situation::SiteSituation;
using situation::Stage;

bool says(const SiteSituation& s, ReasonKind kind)
{
    return std::ranges::any_of(s.reasons, [&](const auto& r) { return r.kind == kind; });
}

/// The day on which an answer that stands in the way was given.
LocalDate answeredOn(const diary::Diary& diary, const SiteSituation& s)
{
    LocalDate earliest = diary.today;
    for (const auto& r : s.reasons)
        if (r.row)
            if (const auto since = protocol::yesSince(diary, *r.row))
                earliest = std::min(earliest, *since);
    return earliest;
}

std::optional<LocalDate> overdueSince(const SiteSituation& s, LocalDate today)
{
    if (!callsForTopUp(s.advice) || s.reasons.empty())
        return std::nullopt;
    const LocalDate since = s.reasons.front().date.value_or(s.nextSession.value_or(today));
    return today - since >= kOverdueDays ? std::optional(since) : std::nullopt;
}

void judge(const diary::Diary& diary, const SiteSituation& s, std::vector<CallWhy>& why)
{
    if (const auto bar = protocol::skinBar(diary, s.treatedAs))
        why.push_back({CallReason::SkinEvent, s.site, bar->since});
    if (says(s, ReasonKind::ScreeningStops) || says(s, ReasonKind::ScreeningAsks))
        why.push_back({CallReason::HealthAnswer, s.site, answeredOn(diary, s)});
    if (s.stage == Stage::FirstCourse) {
        const LocalDate began = diary.at(s.site).course()->course.start;
        const LocalDate last = std::max(began, s.lastSession.value_or(began));
        if (diary.today - last >= kStoppedDays)
            why.push_back({CallReason::StoppedInCourse, s.site, last});
    }
    if (says(s, ReasonKind::NoResponse))
        why.push_back({CallReason::NoResponse, s.site, s.lastSession.value_or(diary.today)});
    if (const auto since = overdueSince(s, diary.today))
        why.push_back({CallReason::Overdue, s.site, *since});
    if (const auto shorter = outlook::shorterToTell(s.forecast); shorter && s.stage != Stage::Paused)
        why.push_back({CallReason::Shorter, s.site, shorter->since});
}

std::optional<LocalDate> newestOf(const std::vector<Fact>& facts, const std::string& person, LocalDate today)
{
    std::optional<LocalDate> newest;
    for (const Fact& f : facts)
        if (f.person == person && f.happened.date <= today)
            newest = std::max(newest.value_or(f.happened.date), f.happened.date);
    return newest;
}

Case caseOf(const ReceivedFile& from, const std::string& person, LocalDate today)
{
    const diary::Diary diary = diary::readDiary(from.facts, person, today);
    Case out{person,
             diary.person ? diary.person->name : std::string(),
             from.file,
             newestOf(from.facts, person, today),
             situation::assess(diary).sites,
             {}};
    for (const SiteSituation& s : out.sites)
        judge(diary, s, out.why);
    if (out.newest && today - *out.newest >= kSilentDays)
        out.why.push_back({CallReason::Silent, std::nullopt, *out.newest});
    if (out.why.empty())
        out.why.push_back({CallReason::DoingWell, std::nullopt, out.newest.value_or(today)});
    std::ranges::stable_sort(out.why, [](const CallWhy& a, const CallWhy& b) {
        return std::pair(a.kind, a.since) < std::pair(b.kind, b.since);
    });
    return out;
}

/// For each person the file with the latest entry; of equals the one read first.
std::map<std::string, std::pair<const ReceivedFile*, long long>> newestFiles(const std::vector<ReceivedFile>& files)
{
    std::map<std::string, std::pair<const ReceivedFile*, long long>> newest;
    for (const ReceivedFile& file : files) {
        std::map<std::string, long long> recorded;
        for (const Fact& f : file.facts) {
            auto& latest = recorded.try_emplace(f.person, f.recordedMs).first->second;
            latest = std::max(latest, f.recordedMs);
        }
        for (const auto& [person, latest] : recorded) {
            auto& known = newest[person];
            if (known.first == nullptr || latest > known.second)
                known = {&file, latest};
        }
    }
    return newest;
}

} // namespace

std::vector<Case> caseloadOf(const std::vector<ReceivedFile>& files, LocalDate today)
{
    std::vector<Case> out;
    for (const auto& [person, from] : newestFiles(files))
        out.push_back(caseOf(*from.first, person, today));
    std::ranges::stable_sort(out, [](const Case& a, const Case& b) {
        const auto rank = [](const Case& c) {
            return std::tuple(c.why.front().kind, c.why.front().since, c.name, c.person);
        };
        return rank(a) < rank(b);
    });
    return out;
}

CareSheet sheetToBeginWith(const diary::Diary& diary)
{
    const auto inForce = protocol::sheetsInForce(diary);
    if (!inForce.empty())
        return inForce.front().sheet;
    CareSheet sheet;
    const auto sites = situation::assess(diary).sites;
    for (const SiteSituation& s : sites)
        sheet.sites.insert(s.treatedAs);
    if (std::ranges::all_of(sites, [](const SiteSituation& s) { return s.stage == Stage::NotStarted; }))
        sheet.plan = CourseTemplate::Seven;
    if (sheet.sites.contains(Site::Armpits) && diary.machine)
        sheet.pad = diary.machine->pad;
    if (sites.size() == 1)
        if (const auto* taught = protocol::taughtAt(diary, sites.front().treatedAs); taught && taught->payload.level) {
            sheet.waveform = taught->payload.waveform;
            sheet.level = taught->payload.level;
        }
    return sheet;
}

} // namespace firstdew::exchange
