#include "DrySpellChart.h"

#include "Edge.h"
#include "outlook/DrySpells.h"
#include "words/Sentences.h"

#include <QPainter>

namespace firstdew::controls {

using namespace facts;

namespace {
constexpr std::size_t kMostBars = 12;
constexpr float kWideWash = 0.12F;   // of the line
constexpr float kNarrowWash = 0.16F; // on top of it
} // namespace

void DrySpellChart::setDiary(viewmodels::DiaryModel* diary)
{
    if (m_diary == diary)
        return;
    m_diary = diary;
    connect(diary, &viewmodels::DiaryModel::changed, this, &DrySpellChart::gather);
    gather();
}

void DrySpellChart::setSite(ui::DiarySite::Value site)
{
    if (site == m_site)
        return;
    m_site = site;
    gather();
}

void DrySpellChart::gather()
{
    if (m_diary == nullptr)
        return;
    m_data = {};
    m_saying.clear();
    m_todaySaying.clear();
    const auto site = ui::core(m_site);
    const viewmodels::Store& store = m_diary->store();
    const auto spells = site ? outlook::drySpellsOf(store.diary(), *site) : std::nullopt;
    if (spells) {
        m_data.lasting = spells->lasting;
        m_data.usual = spells->usual;
        m_data.day = spells->day;
        m_data.dayName = tr("Today, day %1").arg(spells->day);
        m_data.daysName = tr("Days since the session");
        m_data.shares = {words::percent(0), words::percent(0.5), words::percent(1)};
        for (auto s = spells->spells.rbegin(); s != spells->spells.rend() && m_data.spells.size() < kMostBars; ++s)
            if (s->gotDry)
                m_data.spells.push_back({s->left, s->right, s == spells->spells.rbegin(), s->otherwise});
        m_saying = words::drySpellSentence(*spells);
        m_todaySaying = words::reportSentence(*spells);
    }
    emit changed();
}

void DrySpellChart::paint(QPainter* painter)
{
    charts::paintDrySpells(*painter, area(), m_data,
                           {look(kNarrowWash), washed(kWideWash), washed(kNarrowWash), accent()});
}

} // namespace firstdew::controls
