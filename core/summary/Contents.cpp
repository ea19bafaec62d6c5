#include "summary/Contents.h"

#include "protocol/Screening.h"
#include "protocol/Sweat.h"
#include "situation/Sites.h"

#include <algorithm>

namespace firstdew::summary {

namespace {

bool within(LocalDate day, LocalDate from, LocalDate to) { return from <= day && day <= to; }

void countSessions(const Record& record, LocalDate from, LocalDate to, SiteContents& site)
{
    double charge = 0;
    int charged = 0;
    for (const auto& e : record.all<Session>()) {
        if (!treats(e.payload.site).contains(site.site) || !within(e.happened.date, from, to))
            continue;
        ++(e.payload.completed ? site.sessionsDone : site.sessionsInterrupted);
        if (e.payload.comfortable && (!site.highestComfortable || *e.payload.comfortable > *site.highestComfortable))
            site.highestComfortable = e.payload.comfortable;
        if (e.payload.charge) {
            charge += e.payload.charge->mAmin;
            ++charged;
        }
    }
    if (charged > 0)
        site.meanCharge = MilliampMinutes{charge / charged};
    for (const LocalDate d : situation::sessionDays(record, site.site, to))
        if (d >= from)
            site.sessions.push_back(d);
}

SiteContents siteFor(const Record& record, LocalDate from, LocalDate to, const situation::SiteSituation& s)
{
    SiteContents site;
    site.site = s.site;
    site.situation = s;
    if (s.course) {
        site.sessionsPlanned = static_cast<int>(s.course->sessions.size());
        site.courseDone =
            static_cast<int>(std::count_if(s.course->sessions.begin(), s.course->sessions.end(),
                                           [](const auto& one) { return one.state == protocol::CourseState::Done; }));
    }
    for (const auto& report : situation::dayReports(record, s.site, to)) {
        if (report.date < from)
            continue;
        ++site.checkIns;
        ++site.byLevel[report.level];
        site.line.emplace_back(report.date, report.level);
        for (const auto c : allOf<Circumstance>())
            site.stirred[c] += report.with.contains(c) ? 1 : 0;
    }
    for (const auto& e : record.all<Weighing>())
        if (e.payload.site == s.site && within(e.happened.date, from, to))
            site.weighings.emplace_back(e.happened.date, protocol::mgPerMinute(e.payload));
    countSessions(record, from, to, site);
    return site;
}

} // namespace

Contents contentsFor(const Record& record, LocalDate from, LocalDate to)
{
    Contents out;
    out.from = from;
    out.to = to;
    if (const auto* person = record.latest<Person>())
        out.name = person->payload.name;
    if (const auto* machine = record.latest<Machine>())
        out.machine = machine->payload;
    if (const auto* sheet = record.latest<CareSheet>())
        out.careSheet = sheet->payload;
    const auto situation = situation::assess(record, to);
    out.cellSessionsLeft = situation.cellSessionsLeft;
    for (const auto& s : situation.sites)
        out.sites.push_back(siteFor(record, from, to, s));
    for (const auto& e : record.all<Session>())
        if (within(e.happened.date, from, to))
            out.sessions.push_back(e);
    std::stable_sort(out.sessions.begin(), out.sessions.end(),
                     [](const auto& a, const auto& b) { return a.happened < b.happened; });
    for (const auto& e : record.all<SideEffect>())
        if (within(e.happened.date, from, to))
            out.sideEffects.push_back(e);
    for (const auto& e : record.all<Clearance>())
        if (e.happened.date <= to)
            out.clearances.push_back(e);
    for (const auto& e : record.all<Screening>())
        out.screened = out.screened || (e.happened.date <= to && !(e.payload.asked == SetOf<ScreeningRow>{}));
    for (const auto& rule : protocol::screeningRows()) {
        bool yes = false;
        for (const auto& e : record.all<Screening>())
            if (e.happened.date <= to && e.payload.asked.contains(rule.row))
                yes = e.payload.yes.contains(rule.row);
        if (yes)
            out.screeningYes.push_back(rule.row);
    }
    for (const auto& e : record.all<Question>())
        if (within(e.happened.date, from, to))
            out.questions.push_back(e.payload.text);
    return out;
}

} // namespace firstdew::summary
