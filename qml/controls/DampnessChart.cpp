#include "DampnessChart.h"

#include "Store.h"
#include "outlook/DrySpells.h"
#include "protocol/Sweat.h"
#include "situation/Sites.h"
#include "words/Names.h"

#include <QPainter>

namespace firstdew::controls {

namespace {
constexpr float kWash = 0.28F; // of the line, below it
}

using namespace facts;
using viewmodels::Store;

DampnessChart::DampnessChart(QQuickItem* parent) : PaintedChart(parent)
{
    connect(this, &DampnessChart::changed, this, &DampnessChart::take);
    connect(Store::instance(), &Store::changed, this, &DampnessChart::changed);
}

void DampnessChart::take()
{
    const auto site = viewmodels::valueOf<DiarySite>(m_site);
    m_data = {};
    if (!site || m_span < 1)
        return;
    const Record& record = Store::instance()->record();
    m_data.to = Store::instance()->situation().today;
    m_data.from = m_data.to - (m_span - 1);
    for (const auto& r : situation::dayReports(record, *site, m_data.to))
        if (r.date >= m_data.from)
            m_data.levels.emplace_back(r.date, r.level);
    for (const auto& e : record.all<Session>())
        if (treats(e.payload.site).contains(*site) && e.happened.date >= m_data.from)
            m_data.baths.push_back(e.happened.date);
    for (const auto& e : record.all<Weighing>())
        if (e.payload.site == *site && e.happened.date >= m_data.from)
            m_data.weighings.emplace_back(e.happened.date, protocol::mgPerMinute(e.payload));
    for (const auto& d : outlook::beliefsOf(record, *site, m_data.to))
        if (d.date >= m_data.from)
            m_data.chances.emplace_back(d.date, d.begun);
    m_data.chanceName = tr("Chance");
    for (const auto level : allOf<Level>())
        m_data.levelNames[static_cast<std::size_t>(level)] = words::levelName(level);
}

void DampnessChart::paint(QPainter* painter) { charts::paintDampness(*painter, area(), m_data, look(kWash)); }

QString DampnessChart::dayAt(qreal x, qreal y) const
{
    const auto day = charts::dayAt(area(), m_data, look(kWash), {x, y});
    return day ? viewmodels::text(*day) : QString();
}

} // namespace firstdew::controls
