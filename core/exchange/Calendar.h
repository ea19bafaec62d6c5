#pragma once

#include "diary/Diary.h"

#include <string>
#include <vector>

// Planned sessions for a calendar program: iCalendar (RFC 5545) with floating local times, since a session belongs to
// the person's own day wherever they are.
namespace firstdew::exchange {

using namespace facts;
using diary::Diary;

struct CalendarEvent {
    std::string uid; ///< stable for one planned session, whatever becomes of it
    Site site{};
    LocalTime at;
    int minutes = 0;
    bool planned = true; ///< still to be done: rings beforehand
    bool cancelled = false;
    bool operator==(const CalendarEvent&) const = default;
};

/// The sessions of courses (done and planned where they lie now, missed and dropped ones cancelled) and the next top-up
/// of every site in use, by assess(); at the hour set for sessions. `person` goes into the stable ids.
[[nodiscard]] std::vector<CalendarEvent> calendarEvents(const Diary& diary, const std::string& person);

/// Words of the interface's language.
struct CalendarText {
    std::string calendar;
    PerValue<Site, std::string> session;
    std::string alarm;
};

/// The events as one VCALENDAR. `sequence` must not fall from one export to the next and has to rise when anything
/// moved (see calendarSequence); `stampMs` is the moment of writing. An alarm rings half an hour before what is
/// planned.
[[nodiscard]] std::string calendarFile(const std::vector<CalendarEvent>& events, const CalendarText& text,
                                       long sequence, long long stampMs);

/// A number that rises with every fact and every day, the two things that move a plan.
[[nodiscard]] long calendarSequence(std::size_t facts, LocalDate today);

/// A content line, folded at 75 octets between characters, ended by CRLF (RFC 5545, 3.1).
[[nodiscard]] std::string foldedLine(const std::string& line);
/// A TEXT value with backslash, semicolon, comma and line breaks escaped (RFC 5545, 3.3.11).
[[nodiscard]] std::string calendarTextValue(const std::string& text);

} // namespace firstdew::exchange
