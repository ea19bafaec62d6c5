#include "TimeChart.h"

#include "Edge.h"

namespace firstdew::controls {

namespace {
constexpr float kWash = 0.28F; // of the line, below it
}

TimeChart::TimeChart(QQuickItem* parent) : PaintedChart(parent)
{
    connect(this, &TimeChart::asked, this, &TimeChart::gatherAnew);
    connect(this, &TimeChart::moved, this, &TimeChart::showDays);
}

void TimeChart::setDiary(viewmodels::DiaryModel* diary)
{
    if (m_diary == diary)
        return;
    m_diary = diary;
    connect(diary, &viewmodels::DiaryModel::changed, this, &TimeChart::gatherAnew);
    emit asked();
}

facts::SetOf<facts::Circumstance> TimeChart::without() const { return ui::coreSet(m_without); }

void TimeChart::gatherAnew()
{
    const auto site = ui::core(m_site);
    if (!site || m_diary == nullptr)
        return;
    gather(*site);
    showDays();
}

void TimeChart::showDays()
{
    if (m_diary == nullptr)
        return;
    const facts::LocalDate to = store().situation().today - m_back;
    setDays(to - (std::max(1, m_span) - 1), to);
    emit changed();
}

charts::ChartLook TimeChart::look() const { return PaintedChart::look(kWash); }

} // namespace firstdew::controls
