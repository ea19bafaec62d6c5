#include "ReadingsChart.h"

#include "DampnessChart.h"
#include "Store.h"
#include "words/Names.h"

#include <QPainter>
#include <algorithm>

namespace firstdew::controls {

using namespace facts;

void ReadingsChart::gather(DiarySite site)
{
    m_data = {};
    for (const auto level : allOf<Level>())
        m_data.names << words::levelName(level);
    m_data.names << DampnessChart::tr("Chance");
    for (const auto& e : store().diary().sessions) {
        const Session& s = e.payload;
        if (!treats(s.site).contains(site) || !(s.comfortable || s.peak))
            continue;
        charts::SessionMark mark{
            e.happened.date, {}, {}, s.comfort == Comfort::Unpleasant || s.comfort == Comfort::Painful};
        if (s.comfortable)
            mark.comfortable = s.comfortable->mA;
        if (s.peak)
            mark.peak = s.peak->mA;
        m_data.sessions.push_back(mark);
    }
}

void ReadingsChart::setDays(LocalDate from, LocalDate to)
{
    m_data.from = from;
    m_data.to = to;
}

int ReadingsChart::count() const
{
    return static_cast<int>(std::count_if(m_data.sessions.begin(), m_data.sessions.end(),
                                          [&](const auto& s) { return s.date >= m_data.from && s.date <= m_data.to; }));
}

void ReadingsChart::paint(QPainter* painter) { charts::paintReadings(*painter, area(), m_data, look()); }

} // namespace firstdew::controls
