#include "DiaryModel.h"
#include "Edge.h"
#include "situation/DampDays.h"
#include "words/Names.h"

#include <algorithm>
#include <map>

// The charts of the diary in words, for whoever does not see them or wants the numbers.
namespace firstdew::viewmodels {

using namespace facts;

namespace {

struct Days {
    LocalDate from, to;
    [[nodiscard]] bool hold(LocalDate day) const { return day >= from && day <= to; }
};

Days daysOf(const Store& store, int span, int back)
{
    const LocalDate to = store.situation().today - back;
    return {to - (span - 1), to};
}

/// The site with the reports that have none of these circumstances.
diary::SiteDiary reportsOf(const Store& store, DiarySite site, SetOf<Circumstance> without)
{
    diary::SiteDiary out;
    for (const auto& r : store.diary().at(site).reports)
        if (std::ranges::none_of(allOf<Circumstance>(),
                                 [&](Circumstance c) { return without.contains(c) && r.with.contains(c); }))
            out.reports.push_back(r);
    return out;
}

std::vector<const Entry<Session>*> sessionsOf(const Store& store, DiarySite site, Days days)
{
    std::vector<const Entry<Session>*> out;
    for (const auto& e : store.diary().sessions)
        if (treats(e.payload.site).contains(site) && days.hold(e.happened.date))
            out.push_back(&e);
    return out;
}

} // namespace

QString DiaryModel::dampSaying(ui::DiarySite::Value site, int span, int back, bool sessions,
                               const QList<ui::Circumstance::Value>& without, int) const
{
    const auto where = ui::core(site);
    if (!where)
        return {};
    const Days days = daysOf(m_store, span, back);
    std::map<Level, int> counts;
    for (const auto& r : reportsOf(m_store, *where, ui::coreSet(without)).reports)
        if (days.hold(r.date))
            ++counts[r.level];
    QStringList out;
    for (const auto& [level, count] : counts)
        out << DiaryModel::tr("%1: %n day(s)", "", count).arg(words::levelName(level));
    if (out.isEmpty())
        out << DiaryModel::tr("Nothing noted in this time");
    const int done = sessions ? static_cast<int>(sessionsOf(m_store, *where, days).size()) : 0;
    if (done > 0)
        out << DiaryModel::tr("%n session(s)", "", done);
    return out.join(QStringLiteral(". ")) + QLatin1Char('.');
}

QList<ui::TableRow> DiaryModel::dampTable(ui::DiarySite::Value site, int span, int back, bool sessions,
                                          const QList<ui::Circumstance::Value>& without) const
{
    const auto where = ui::core(site);
    if (!where)
        return {};
    const Days days = daysOf(m_store, span, back);
    std::map<LocalDate, QStringList, std::greater<>> lines;
    for (const auto& r : reportsOf(m_store, *where, ui::coreSet(without)).reports)
        if (days.hold(r.date))
            lines[r.date] = {words::levelName(r.level)};
    if (sessions)
        for (const auto* e : sessionsOf(m_store, *where, days))
            lines[e->happened.date] << DiaryModel::tr("session");
    QList<ui::TableRow> out;
    for (const auto& [day, says] : lines)
        out << ui::TableRow{words::fullDay(day), words::listed(says)};
    return out;
}

QList<ui::TableRow> DiaryModel::weekTable(ui::DiarySite::Value site, int span, int back,
                                          const QList<ui::Circumstance::Value>& without) const
{
    const auto where = ui::core(site);
    if (!where)
        return {};
    const Days days = daysOf(m_store, span, back);
    QList<ui::TableRow> out;
    for (const auto& week : situation::dampWeeks(reportsOf(m_store, *where, ui::coreSet(without)), days.from, days.to))
        if (week.days.reported > 0)
            out.prepend(
                {DiaryModel::tr("Week from %1").arg(words::dayOfYear(week.monday)),
                 DiaryModel::tr("%n damp day(s) of %1 with a check-in", "", week.days.damp).arg(week.days.reported)});
    return out;
}

QList<ui::TableRow> DiaryModel::readingTable(ui::DiarySite::Value site, int span, int back) const
{
    const auto where = ui::core(site);
    QList<ui::TableRow> out;
    if (!where)
        return out;
    for (const auto* e : sessionsOf(m_store, *where, daysOf(m_store, span, back))) {
        const Session& s = e->payload;
        QStringList says;
        if (s.comfortable)
            says << words::milliamps(s.comfortable->mA);
        if (s.comfort)
            says << words::comfortName(*s.comfort);
        if (!says.isEmpty())
            out.prepend({words::fullDay(e->happened.date), words::listed(says)});
    }
    return out;
}

} // namespace firstdew::viewmodels
