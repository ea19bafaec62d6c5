#include "SpellColumnsChart.h"

#include "Edge.h"
#include "words/Names.h"

#include <QPainter>
#include <algorithm>

namespace firstdew::controls {

using namespace facts;

void SpellColumnsChart::setDiary(viewmodels::DiaryModel* diary)
{
    if (m_diary == diary)
        return;
    m_diary = diary;
    connect(diary, &viewmodels::DiaryModel::changed, this, &SpellColumnsChart::gather);
    gather();
}

void SpellColumnsChart::setSite(ui::DiarySite::Value site)
{
    if (site == m_site)
        return;
    m_site = site;
    gather();
}

void SpellColumnsChart::gather()
{
    m_spells.clear();
    const auto site = ui::core(m_site);
    if (m_diary == nullptr || !site)
        return;
    for (const auto& s : m_diary->store().situation().sites) {
        if (s.site != *site)
            continue;
        const auto& spells = s.forecast.spells;
        for (const auto& spell : spells)
            m_spells.push_back({spell.lastSession, spell.gotDry ? spell.left : 0, spell.right, false});
        if (!spells.empty())
            m_spells.back().present = !spells.back().right;
    }
    emit changed();
}

QString SpellColumnsChart::saying() const
{
    QStringList days;
    for (const auto& s : m_spells)
        days << tr("%1: %n day(s) dry", nullptr, s.dry).arg(words::shortDay(s.from));
    return words::listed(days);
}

void SpellColumnsChart::paint(QPainter* painter)
{
    const auto drawn = look(0);
    const auto most = std::min(m_spells.size(), charts::columnsIn(width(), drawn));
    charts::paintSpellColumns(*painter, area(), {m_spells.end() - static_cast<std::ptrdiff_t>(most), m_spells.end()},
                              drawn);
}

} // namespace firstdew::controls
