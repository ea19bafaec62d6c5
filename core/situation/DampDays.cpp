#include "situation/DampDays.h"

#include <algorithm>

namespace firstdew::situation {

namespace {

constexpr int kWeek = 7;

std::optional<double> inAWeek(int days, int reported, int least)
{
    if (reported < std::max(1, least))
        return std::nullopt;
    return static_cast<double>(kWeek * days) / reported;
}

void count(const diary::DayReport& report, DampDays& days)
{
    ++days.reported;
    days.damp += report.level >= Level::Clammy ? 1 : 0;
    days.wet += report.level >= Level::Wet ? 1 : 0;
}

auto firstFrom(const diary::SiteDiary& site, LocalDate from)
{
    return std::lower_bound(site.reports.begin(), site.reports.end(), from,
                            [](const diary::DayReport& r, LocalDate d) { return r.date < d; });
}

LocalDate mondayOf(LocalDate day) { return day - static_cast<int>(day.weekday()); }

} // namespace

std::optional<double> DampDays::aWeek(int least) const { return inAWeek(damp, reported, least); }

std::optional<double> DampDays::wetAWeek(int least) const { return inAWeek(wet, reported, least); }

DampDays dampDaysIn(const diary::SiteDiary& site, LocalDate from, LocalDate to)
{
    DampDays out;
    for (auto r = firstFrom(site, from); r != site.reports.end() && r->date <= to; ++r)
        count(*r, out);
    return out;
}

std::vector<DampWeek> dampWeeks(const diary::SiteDiary& site, LocalDate from, LocalDate to)
{
    std::vector<DampWeek> out;
    auto r = firstFrom(site, from);
    for (LocalDate monday = mondayOf(from); monday <= to; monday = monday + kWeek) {
        DampWeek week{monday, {}};
        for (; r != site.reports.end() && r->date <= to && r->date < monday + kWeek; ++r)
            count(*r, week.days);
        out.push_back(week);
    }
    return out;
}

} // namespace firstdew::situation
