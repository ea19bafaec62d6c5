#include "exchange/Calendar.h"

#include "exchange/Utc.h"
#include "protocol/Course.h"
#include "protocol/Script.h"
#include "situation/Assess.h"

#include <algorithm>
#include <fmt/format.h>

namespace firstdew::exchange {

namespace {

constexpr int kAroundMinutes = 10; // to prepare, and to raise and lower between: our own choice

int minutesOf(Site site)
{
    const auto plan = protocol::phasesFor(site);
    return plan.hold.s * plan.phases / 60 + kAroundMinutes;
}

class Planner {
public:
    Planner(const Diary& diary, const std::string& person)
        : m_diary(diary), m_person(person), m_today(diary.today), m_situation(situation::assess(diary)),
          m_at(diary.reminderSettings.value_or(ReminderSettings{}).sessions)
    {
    }

    std::vector<CalendarEvent> events()
    {
        for (const auto& course : m_diary.courses)
            dropped(course.payload);
        for (const auto& site : m_situation.sites) {
            if (site.course)
                course(site);
            next(site);
        }
        return std::move(m_events);
    }

private:
    const Diary& m_diary;
    std::string m_person;
    LocalDate m_today;
    situation::Situation m_situation;
    MinuteOfDay m_at;
    std::vector<CalendarEvent> m_events;

    std::string uid(Site site, const std::string& what) const
    {
        return fmt::format("{}-{}-{}@firstdew", m_person, token(site), what);
    }

    CalendarEvent& event(Site site, const std::string& what, LocalDate date)
    {
        const std::string id = uid(site, what);
        const auto at = std::ranges::find(m_events, id, &CalendarEvent::uid);
        if (at == m_events.end())
            return m_events.emplace_back(CalendarEvent{id, site, {date, m_at}, minutesOf(site), true, false});
        at->at.date = date;
        return *at;
    }

    static std::string courseKey(LocalDate start, int number)
    {
        return fmt::format("course-{}-{}", start.iso(), number);
    }

    /// Sessions of a course that was given up; those of the course that stands are put right afterwards.
    void dropped(const Course& course)
    {
        const auto days = protocol::templateDays(course.plan, course.days, course.start);
        if (!days)
            return;
        int number = 0;
        for (const int day : days->days) {
            const LocalDate date = course.start + (day - 1);
            ++number;
            if (date < m_today)
                continue; // what is past stays in the calendar as it was
            CalendarEvent& e = event(course.site, courseKey(course.start, number), date);
            e.planned = false;
            e.cancelled = true;
        }
    }

    void course(const situation::SiteSituation& site)
    {
        const diary::CourseSet* set = m_diary.at(site.site).course();
        if (set == nullptr)
            return;
        const Course* running = &set->course;
        const bool stands = site.stage == situation::Stage::FirstCourse && site.advice != situation::Advice::Blocked;
        for (const auto& session : site.course->sessions) {
            const bool planned = session.state == protocol::CourseState::Planned;
            CalendarEvent& e = event(running->site, courseKey(running->start, session.number), session.date);
            e.planned = planned && stands;
            e.cancelled = planned && !stands;
        }
    }

    /// One rolling entry for the next top-up, so that a new forecast moves it rather than adding another.
    void next(const situation::SiteSituation& site)
    {
        const bool wanted = site.nextSession && site.stage != situation::Stage::FirstCourse &&
                            site.stage != situation::Stage::Paused && site.advice != situation::Advice::Blocked;
        const LocalDate date = wanted ? std::max(*site.nextSession, m_today) : m_today;
        const auto known = std::ranges::find(m_events, uid(site.treatedAs, "next"), &CalendarEvent::uid);
        const bool other =
            known != m_events.end() && !known->cancelled; // hand + foot: the other site's is here already
        if (other && (!wanted || known->at.date <= date))
            return;
        CalendarEvent& e = event(site.treatedAs, "next", date);
        e.planned = wanted;
        e.cancelled = !wanted;
    }
};

/// As RFC 5545 writes an instant: without the punctuation of ISO 8601's extended form.
std::string stampOf(long long ms)
{
    std::string out = utcText(ms);
    std::erase_if(out, [](char c) { return c == '-' || c == ':'; });
    return out;
}

std::string floating(const LocalTime& at)
{
    return fmt::format("{:04}{:02}{:02}T{:02}{:02}00", at.date.year(), at.date.month(), at.date.day(),
                       at.at.minute / 60, at.at.minute % 60);
}

} // namespace

std::vector<CalendarEvent> calendarEvents(const Diary& diary, const std::string& person)
{
    return Planner(diary, person).events();
}

long calendarSequence(std::size_t facts, LocalDate today)
{
    return static_cast<long>(facts) + std::max(0, today.daysSince1970());
}

std::string calendarTextValue(const std::string& text)
{
    std::string out;
    for (const char c : text) {
        if (c == '\n')
            out += "\\n";
        else if (c == '\\' || c == ';' || c == ',')
            out += std::string("\\") + c;
        else if (static_cast<unsigned char>(c) >= 0x20 || c == '\t')
            out += c;
    }
    return out;
}

std::string foldedLine(const std::string& line)
{
    constexpr std::size_t most = 75;
    std::string out;
    std::size_t at = 0;
    std::size_t room = most;
    while (line.size() - at > room) {
        std::size_t end = at + room;
        while ((static_cast<unsigned char>(line[end]) & 0xc0U) == 0x80U)
            --end; // not inside a character of UTF-8
        out += line.substr(at, end - at) + "\r\n ";
        at = end;
        room = most - 1; // the space that marks a continuation counts
    }
    return out + line.substr(at) + "\r\n";
}

std::string calendarFile(const std::vector<CalendarEvent>& events, const CalendarText& text, long sequence,
                         long long stampMs)
{
    std::string out;
    const auto line = [&out](const std::string& content) { out += foldedLine(content); };
    line("BEGIN:VCALENDAR");
    line("VERSION:2.0");
    line("PRODID:-//Firstdew//Firstdew//EN");
    line("METHOD:PUBLISH");
    line("X-WR-CALNAME:" + calendarTextValue(text.calendar));
    for (const CalendarEvent& e : events) {
        line("BEGIN:VEVENT");
        line("UID:" + e.uid);
        line("DTSTAMP:" + stampOf(stampMs));
        line(fmt::format("SEQUENCE:{}", sequence));
        line("DTSTART:" + floating(e.at));
        line(fmt::format("DURATION:PT{}M", e.minutes));
        line("SUMMARY:" + calendarTextValue(text.session[e.site]));
        line(e.cancelled ? "STATUS:CANCELLED" : "STATUS:CONFIRMED");
        line("CLASS:PRIVATE");
        if (e.planned) {
            line("BEGIN:VALARM");
            line("ACTION:DISPLAY");
            line("DESCRIPTION:" + calendarTextValue(text.alarm));
            line("TRIGGER:-PT30M");
            line("END:VALARM");
        }
        line("END:VEVENT");
    }
    line("END:VCALENDAR");
    return out;
}

} // namespace firstdew::exchange
