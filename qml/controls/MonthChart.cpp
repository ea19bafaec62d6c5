#include "MonthChart.h"

#include "Edge.h"
#include "words/Names.h"

#include <QLocale>
#include <QPainter>
#include <algorithm>

namespace firstdew::controls {

using namespace facts;

namespace {
constexpr int kWeek = 7;
}

MonthChart::MonthChart(QQuickItem* parent) : TimeChart(parent)
{
    connect(this, &MonthChart::selectedChanged, this, [this] { update(); });
}

void MonthChart::gather(DiarySite site)
{
    const diary::Diary& diary = store().diary();
    const auto leftOut = without();
    m_data.levels.clear();
    m_data.sessions.clear();
    for (const auto& r : diary.at(site).reports)
        if (std::ranges::none_of(allOf<Circumstance>(),
                                 [&](Circumstance c) { return leftOut.contains(c) && r.with.contains(c); }))
            m_data.levels[r.date] = r.level;
    if (withBaths())
        for (const auto& e : diary.sessions)
            if (treats(e.payload.site).contains(site))
                m_data.sessions.insert(e.happened.date);
    m_data.today = store().situation().today;
}

void MonthChart::setDays(LocalDate, LocalDate to)
{
    const QLocale locale;
    const int start = words::firstWeekday() - 1; // Monday is 0
    const int intoWeek = (static_cast<int>(to.weekday()) - start + kWeek) % kWeek;
    const LocalDate first = to - intoWeek - kWeek * (charts::MonthData::kWeeks - 1);
    if (first != m_data.first)
        m_data.selected.reset();
    m_data.first = first;
    m_data.weekdays.clear();
    for (int i = 0; i < kWeek; ++i)
        m_data.weekdays << locale.standaloneDayName((start + i) % kWeek + 1, QLocale::NarrowFormat);
}

int MonthChart::levels() const
{
    return static_cast<int>(std::count_if(m_data.levels.begin(), m_data.levels.end(), [&](const auto& l) {
        return l.first >= m_data.first && l.first < m_data.first + charts::MonthData::kDays;
    }));
}

void MonthChart::select(int day)
{
    m_data.selected = day == 0 ? std::nullopt : std::optional(LocalDate(day));
    emit selectedChanged();
}

void MonthChart::step(int days)
{
    const LocalDate last = std::min(m_data.first + (charts::MonthData::kDays - 1), m_data.today);
    const LocalDate next = m_data.selected ? *m_data.selected + days : last;
    select(std::clamp(next, m_data.first, std::max(m_data.first, last)).daysSince1970());
}

int MonthChart::dayAt(qreal x, qreal y) const
{
    const auto day = charts::dayAt(area(), m_data, look(), {x, y});
    return day ? day->daysSince1970() : 0;
}

qreal MonthChart::dotRadius(ui::Level::Value level) { return charts::dotRadius(ui::core(level).value_or(Level::Dry)); }

void MonthChart::paint(QPainter* painter) { charts::paintMonth(*painter, area(), m_data, look()); }

} // namespace firstdew::controls
