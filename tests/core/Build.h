#pragma once

#include "diary/Diary.h"
#include "facts/Record.h"

#include <string>
#include <vector>

// Short ways to write a record down in a test.
namespace build {

using namespace firstdew::facts;

inline LocalDate day(const char* iso) { return LocalDate::parse(iso).value(); }

/// Facts of one invented person, in the order they are added.
class Facts {
public:
    Facts& add(Payload payload, LocalDate date, int minute = 8 * 60)
    {
        const auto n = m_facts.size();
        m_facts.push_back(
            {"f" + std::to_string(n), "p1", {date, {minute}}, static_cast<long long>(n), {}, std::move(payload)});
        return *this;
    }
    Facts& checkIn(DiarySite site, LocalDate date, Level level, SetOf<Circumstance> with = {})
    {
        return add(CheckIn{site, level, with}, date, 20 * 60);
    }
    /// A session after the day's check-in.
    Facts& session(Site site, LocalDate date, Waveform waveform = Waveform::Direct, int minute = 20 * 60 + 30)
    {
        Session s;
        s.site = site;
        s.waveform = waveform;
        return add(s, date, minute);
    }
    Facts& adult() { return add(Person{"Ada", day("1990-01-01"), {}, {}, {}}, day("2000-01-01")); }
    Facts& screened(LocalDate date, SetOf<ScreeningRow> yes = {})
    {
        Screening s;
        for (const auto row : allOf<ScreeningRow>())
            s.asked.insert(row);
        s.yes = yes;
        return add(s, date, 0);
    }
    [[nodiscard]] const std::vector<Fact>& facts() const { return m_facts; }
    [[nodiscard]] Record record() const { return recordOf(m_facts, "p1"); }
    /// The diary as it reads on that day.
    [[nodiscard]] firstdew::diary::Diary on(LocalDate today) const
    {
        return firstdew::diary::readDiary(m_facts, "p1", today);
    }

private:
    std::vector<Fact> m_facts;
};

} // namespace build
