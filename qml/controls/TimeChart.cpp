#include "TimeChart.h"

#include "Store.h"

namespace firstdew::controls {

namespace {
constexpr float kWash = 0.28F; // of the line, below it
}

using viewmodels::Store;

TimeChart::TimeChart(QQuickItem* parent) : PaintedChart(parent)
{
    connect(this, &TimeChart::asked, this, &TimeChart::takeAnew);
    connect(this, &TimeChart::moved, this, &TimeChart::move);
    connect(Store::instance(), &Store::changed, this, &TimeChart::takeAnew);
}

void TimeChart::takeAnew()
{
    if (const auto site = viewmodels::valueOf<facts::DiarySite>(m_site)) {
        take(*site);
        move();
    }
}

void TimeChart::move()
{
    const facts::LocalDate to = Store::instance()->situation().today - m_back;
    show(to - (std::max(1, m_span) - 1), to);
    emit changed();
}

charts::ChartLook TimeChart::look() const { return PaintedChart::look(kWash); }

} // namespace firstdew::controls
