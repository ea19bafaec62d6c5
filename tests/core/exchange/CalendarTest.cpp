#include "exchange/Calendar.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

using namespace firstdew;
using namespace firstdew::exchange;

namespace {

LocalDate day(const char* iso) { return *LocalDate::parse(iso); }

class Facts {
public:
    template <class P>
    Facts& add(const char* date, P payload)
    {
        m_facts.push_back({std::to_string(m_facts.size()),
                           "p1",
                           {day(date), {600}},
                           static_cast<long long>(m_facts.size()),
                           "",
                           payload});
        return *this;
    }
    std::vector<CalendarEvent> events(const char* today) const
    {
        return calendarEvents(diary::readDiary(m_facts, "p1", day(today)), "p1");
    }

private:
    std::vector<Fact> m_facts;
};

Course course(Site site, const char* start)
{
    Course c;
    c.site = site;
    c.start = day(start);
    return c;
}

Session session(Site site)
{
    Session s;
    s.site = site;
    return s;
}

const CalendarEvent* find(const std::vector<CalendarEvent>& events, const std::string& uid)
{
    const auto at = std::ranges::find(events, uid, &CalendarEvent::uid);
    return at == events.end() ? nullptr : &*at;
}

std::string unfolded(std::string text)
{
    for (auto at = text.find("\r\n "); at != std::string::npos; at = text.find("\r\n "))
        text.erase(at, 3);
    return text;
}

} // namespace

TEST_CASE("text is escaped as in RFC 5545, section 3.3.11")
{
    // The example of the section itself.
    CHECK(calendarTextValue("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.") ==
          "Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.");
    CHECK(calendarTextValue("a\\b;c,d:e\x01") == "a\\\\b\\;c\\,d:e");
}

TEST_CASE("lines are folded at 75 octets, never inside a character, and unfold to what they were (RFC 5545, 3.1)")
{
    CHECK(foldedLine(std::string(75, 'x')) == std::string(75, 'x') + "\r\n");
    CHECK(foldedLine(std::string(76, 'x')) == std::string(75, 'x') + "\r\n x\r\n");
    CHECK(rc::check([](const std::vector<unsigned short>& picks) {
        const std::vector<std::string> letters{"a", "ä", "雨", "\U0001F4A7"};
        std::string line = "SUMMARY:";
        for (const auto pick : picks)
            for (int i = 0; i < 7; ++i)
                line += letters[(pick + static_cast<unsigned>(i)) % letters.size()];
        const std::string folded = foldedLine(line);
        RC_ASSERT(unfolded(folded) == line + "\r\n");
        for (std::size_t at = 0; at < folded.size();) {
            const auto end = folded.find("\r\n", at);
            RC_ASSERT(end - at <= 75U);
            RC_ASSERT(at == end || (static_cast<unsigned char>(folded[at]) & 0xc0U) != 0x80U);
            at = end + 2;
        }
    }));
}

TEST_CASE("a course's sessions lie on their days at the person's hour, done ones stay and missed ones are called off")
{
    Facts diary;
    diary.add("2026-03-01", course(Site::Feet, "2026-03-02")).add("2026-03-02", session(Site::Feet));
    ReminderSettings settings;
    settings.sessions = {19 * 60 + 30};
    diary.add("2026-03-01", settings);
    const auto events = diary.events("2026-03-02");
    const auto* first = find(events, "p1-feet-course-2026-03-02-1@firstdew");
    REQUIRE(first != nullptr);
    CHECK(first->at == *LocalTime::parse("2026-03-02T19:30"));
    CHECK_FALSE(first->planned);
    CHECK_FALSE(first->cancelled);
    CHECK(first->minutes == 40); // 2 × 15 minutes, and ten around
    const auto* second = find(events, "p1-feet-course-2026-03-02-2@firstdew");
    REQUIRE(second != nullptr);
    CHECK(second->planned);
    CHECK(std::ranges::count(events, true, &CalendarEvent::planned) == 6);
    const auto* next = find(events, "p1-feet-next@firstdew");
    REQUIRE(next != nullptr);
    CHECK(next->cancelled);
}

TEST_CASE("a course that another replaced is called off from today on")
{
    Facts diary;
    diary.add("2026-03-01", course(Site::Hands, "2026-03-02")).add("2026-03-05", course(Site::Hands, "2026-03-06"));
    const auto events = diary.events("2026-03-05");
    const auto* old = find(events, "p1-hands-course-2026-03-02-7@firstdew");
    REQUIRE(old != nullptr);
    CHECK(old->cancelled);
    CHECK(old->at.date == day("2026-03-23"));
    CHECK(find(events, "p1-hands-course-2026-03-02-1@firstdew") == nullptr);
    const auto* fresh = find(events, "p1-hands-course-2026-03-06-7@firstdew");
    REQUIRE(fresh != nullptr);
    CHECK(fresh->planned);
}

TEST_CASE("the next top-up is one rolling entry, hand and foot together once, and a pause calls it off")
{
    Facts diary;
    diary.add("2026-01-01", SiteUse{Site::HandFoot, true}).add("2026-03-02", session(Site::HandFoot));
    const auto events = diary.events("2026-03-03");
    REQUIRE(events.size() == 1);
    CHECK(events[0].uid == "p1-hand-foot-next@firstdew");
    CHECK(events[0].planned);
    CHECK(events[0].at.date > day("2026-03-03"));
    CHECK(events[0].minutes == 50); // 4 × 10 minutes, and ten around

    diary.add("2026-03-04", Pause{Site::HandFoot, true});
    const auto paused = diary.events("2026-03-04");
    REQUIRE(paused.size() == 1);
    CHECK(paused[0].uid == events[0].uid);
    CHECK(paused[0].cancelled);
}

TEST_CASE("the sequence rises with every fact and every day")
{
    CHECK(calendarSequence(11, day("2026-03-02")) > calendarSequence(10, day("2026-03-02")));
    CHECK(calendarSequence(10, day("2026-03-03")) > calendarSequence(10, day("2026-03-02")));
}
