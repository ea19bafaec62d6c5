#include "WeeksChart.h"

#include "situation/DampDays.h"

#include <QPainter>
#include <algorithm>

namespace firstdew::controls {

using namespace facts;

void WeeksChart::gather(DiarySite site)
{
    const diary::Diary& diary = store().diary();
    const auto leftOut = without();
    m_site = {};
    for (const auto& r : diary.at(site).reports)
        if (std::ranges::none_of(allOf<Circumstance>(),
                                 [&](Circumstance c) { return leftOut.contains(c) && r.with.contains(c); }))
            m_site.reports.push_back(r);
    m_data.sessions.clear();
    if (withBaths())
        for (const auto& e : diary.sessions)
            if (treats(e.payload.site).contains(site))
                m_data.sessions.push_back(e.happened.date);
}

void WeeksChart::setDays(LocalDate from, LocalDate to)
{
    m_data.from = from;
    m_data.to = to;
    m_data.weeks.clear();
    for (const auto& week : situation::dampWeeks(m_site, from, to))
        m_data.weeks.push_back({week.monday, week.days.aWeek(situation::kLeastInWeek),
                                week.days.wetAWeek(situation::kLeastInWeek).value_or(0)});
}

int WeeksChart::known() const
{
    return static_cast<int>(
        std::count_if(m_data.weeks.begin(), m_data.weeks.end(), [](const auto& w) { return w.damp.has_value(); }));
}

void WeeksChart::paint(QPainter* painter) { charts::paintWeeks(*painter, area(), m_data, look()); }

} // namespace firstdew::controls
