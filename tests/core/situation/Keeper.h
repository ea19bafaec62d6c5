#pragma once

#include "core/Build.h"
#include "situation/Assess.h"

#include <string>

namespace build {

using namespace firstdew;

/// What the record of a Keeper has.
struct Kept {
    bool person = true;
    bool course = true;
    bool scored = true;   ///< before the course and after it, better by two
    bool reviewed = true; ///< the course
    bool goesOn = true;   ///< by that review
    int spells = 5;       ///< dry spells since
};

/// A person who keeps the hands dry after a course that helped.
class Keeper {
public:
    Facts d;
    LocalDate today = day("2026-01-05");

    explicit Keeper(const Kept& kept = {})
    {
        const LocalDate start = today;
        if (kept.person)
            d.adult();
        d.add(Machine{"Invented", true, true, PolaritySwap::Leads, true, PowerSource::Mains, {}}, start);
        d.add(SiteUse{Site::Hands, true}, start);
        if (kept.scored)
            d.add(Hdss{DiarySite::Hands, 4}, start);
        if (kept.course)
            d.add(Course{Site::Hands, CourseTemplate::Seven, {}, start, {}}, start);
        for (const int offset : {0, 1, 3, 6, 9, 14, 21}) {
            today = start + offset;
            session({});
        }
        today = today + 1;
        if (kept.scored)
            d.add(Hdss{DiarySite::Hands, 2}, today);
        if (kept.reviewed)
            d.add(ReviewDone{Site::Hands, kept.goesOn}, today);
        for (int i = 0; i < kept.spells; ++i)
            spell(9 + i % 3, {});
    }

    void session(std::optional<Seconds> hold, bool completed = true, Waveform waveform = Waveform::Direct,
                 Site site = Site::Hands, std::optional<Site> prepared = {})
    {
        d.screened(today);
        BathPrepared p;
        p.bath = "b" + std::to_string(++m_sessions);
        p.site = prepared.value_or(site);
        p.waveform = waveform;
        p.hold = hold;
        p.limit = {15};
        d.add(p, today, 20 * 60 + 15);
        Session s;
        s.site = site;
        s.waveform = waveform;
        s.bath = p.bath;
        s.completed = completed;
        d.add(s, today, 20 * 60 + 30);
    }
    /// Something that happened in the session led last.
    void happened(BathEventKind kind)
    {
        BathEvent e;
        e.bath = "b" + std::to_string(m_sessions);
        e.event = kind;
        d.add(e, today, 20 * 60 + 20);
    }
    void checkIn(Level level, SetOf<Circumstance> with = {}) { d.checkIn(DiarySite::Hands, today, level, with); }
    /// Dry days, the first clammy one, and a session in the evening of it.
    void spell(int days, std::optional<Seconds> hold)
    {
        dryDays(days - 1);
        today = today + 1;
        checkIn(Level::Clammy);
        session(hold);
    }
    void dryDays(int days)
    {
        for (int i = 0; i < days; ++i) {
            today = today + 1;
            checkIn(Level::Dry);
        }
    }
    /// In the evening, after the session of that day, if there was one.
    void begin(int seed = 5) { d.add(Comparison{DiarySite::Hands, true, 0.5, seed}, today, 21 * 60); }

    [[nodiscard]] situation::SiteSituation now() const { return situation::assess(d.on(today)).sites.front(); }
    [[nodiscard]] situation::Compared compared() const { return now().comparison.value(); }
    [[nodiscard]] std::optional<situation::ComparisonBar> bar() const
    {
        return situation::comparisonBar(d.on(today), now());
    }
    /// Length that the app asks for now.
    [[nodiscard]] std::optional<Seconds> asked() const
    {
        return situation::comparedHold(situation::assess(d.on(today)).sites, Site::Hands);
    }
    /// Lives the comparison: spells of so many days after the usual session, and after the shorter one.
    void live(int spells, int usual, int shorter)
    {
        for (int i = 0; i < spells && !compared().ended; ++i) {
            const bool after = m_lastShorter;
            dryDays((after ? shorter : usual) + i % 3 - 2);
            today = today + 1;
            checkIn(Level::Clammy);
            const auto hold = asked();
            session(hold);
            m_lastShorter = hold.has_value();
        }
    }

private:
    int m_sessions = 0;
    bool m_lastShorter = false;
};

} // namespace build
