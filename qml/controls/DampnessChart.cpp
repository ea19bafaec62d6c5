#include "DampnessChart.h"

#include "Store.h"
#include "outlook/DrySpells.h"
#include "protocol/Sweat.h"
#include "words/Names.h"

#include <QPainter>
#include <algorithm>

namespace firstdew::controls {

using namespace facts;

void DampnessChart::gather(DiarySite site)
{
    const diary::Diary& diary = store().diary();
    const auto leftOut = without();
    const auto stirred = [&](const diary::DayReport& r) {
        return std::any_of(allOf<Circumstance>().begin(), allOf<Circumstance>().end(),
                           [&](Circumstance c) { return leftOut.contains(c) && r.with.contains(c); });
    };
    m_data = {};
    for (const auto& r : diary.at(site).reports)
        if (!stirred(r))
            m_data.levels.emplace_back(r.date, r.level);
    if (withBaths())
        for (const auto& e : diary.sessions)
            if (treats(e.payload.site).contains(site))
                m_data.baths.push_back(e.happened.date);
    for (const auto& e : diary.weighings)
        if (e.payload.site == site)
            m_data.weighings.emplace_back(e.happened.date, protocol::mgPerMinute(e.payload));
    for (const auto& d : outlook::beliefsOf(diary, site))
        m_data.chances.emplace_back(d.date, d.begun);
    m_data.chanceName = tr("Chance");
    for (const auto level : allOf<Level>())
        m_data.levelNames[level] = words::levelName(level);
}

void DampnessChart::setDays(LocalDate from, LocalDate to)
{
    m_data.from = from;
    m_data.to = to;
}

int DampnessChart::levels() const
{
    return static_cast<int>(std::count_if(m_data.levels.begin(), m_data.levels.end(), [&](const auto& l) {
        return l.first >= m_data.from && l.first <= m_data.to;
    }));
}

bool DampnessChart::weighed() const
{
    return std::any_of(m_data.weighings.begin(), m_data.weighings.end(),
                       [&](const auto& w) { return w.first >= m_data.from && w.first <= m_data.to; });
}

void DampnessChart::paint(QPainter* painter) { charts::paintDampness(*painter, area(), m_data, look()); }

int DampnessChart::dayAt(qreal x, qreal y) const
{
    const auto day = charts::dayAt(area(), m_data, look(), {x, y});
    return day ? day->daysSince1970() : 0;
}

qreal DampnessChart::dayWidth() const { return charts::dayWidth(area(), m_data, look()); }

} // namespace firstdew::controls
