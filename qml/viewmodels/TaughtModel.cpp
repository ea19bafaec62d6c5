#include "TaughtModel.h"

#include "Edge.h"
#include "protocol/CurrentAdvice.h"
#include "protocol/MayBegin.h"
#include "protocol/TeachBack.h"
#include "words/Errors.h"
#include "words/Names.h"
#include "words/TaughtWords.h"

#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

TaughtModel::TaughtModel(Store& store) : m_store(store)
{
    connect(&store, &Store::changed, this, &TaughtModel::changed);
}

QList<ui::TaughtLine> TaughtModel::taught() const
{
    QList<ui::TaughtLine> out;
    for (const auto& e : m_store.diary().taught)
        out.prepend({text(e.id), words::taughtLine(e), words::taughtTicks(e.payload)});
    return out;
}

QString TaughtModel::inShort() const
{
    QStringList out;
    for (const auto& e : protocol::taughtSessions(m_store.diary()))
        out << words::taughtLine(e);
    return out.join(QLatin1Char('\n'));
}

QList<ui::Site::Value> TaughtModel::offered() const
{
    QList<ui::Site::Value> out;
    for (const Site site : allOf<Site>())
        if (protocol::offersTeachBack(m_store.diary(), site))
            out << ui::shown(site);
    return out;
}

QList<ui::TaughtTick::Value> TaughtModel::ticks() const { return ui::everyOne<ui::TaughtTick::Value>(); }

QString TaughtModel::tickName(ui::TaughtTick::Value tick, ui::Site::Value site) const
{
    const auto which = ui::core(tick);
    return which ? words::taughtTickName(*which, ui::core(site).value_or(Site::Hands)) : QString();
}

QList<ui::Waveform::Value> TaughtModel::waveforms(ui::Site::Value site) const
{
    QList<ui::Waveform::Value> out;
    for (const Waveform waveform : allOf<Waveform>())
        if (limit(site, ui::shown(waveform)) > 0)
            out << ui::shown(waveform);
    return out;
}

qreal TaughtModel::limit(ui::Site::Value site, ui::Waveform::Value waveform) const
{
    const auto where = ui::core(site);
    const auto with = ui::core(waveform);
    if (!where || !with)
        return 0;
    const auto answer = protocol::limitFor(protocol::limitQueryFor(m_store.diary(), *where, *with));
    return answer.allowed ? answer.limit.mA : 0;
}

qreal TaughtModel::usualLevel(ui::Site::Value site, ui::Waveform::Value waveform) const
{
    const auto where = ui::core(site);
    const auto with = ui::core(waveform);
    return where && with ? protocol::currentAdviceFor(m_store.diary(), *where, *with, {limit(site, waveform)}).target.mA
                         : 0;
}

bool TaughtModel::add(ui::Site::Value site, int day, const QString& who, const QList<ui::TaughtTick::Value>& ticks,
                      ui::Waveform::Value waveform, double level)
{
    constexpr MinuteOfDay kEvening{20 * 60}; // nobody is asked for the hour
    const auto where = ui::core(site);
    const auto with = ui::core(waveform);
    const LocalDate date(day);
    if (!where || !with || date > m_store.situation().today)
        return false;
    Taught taught{*where, who.trimmed().toStdString(), ui::coreSet(ticks), *with, {}};
    if (level > 0)
        taught.level = Milliamps{level};
    if (const auto may = protocol::checkTaught(m_store.diary(), taught); !may) {
        refuse(words::errorSentence(may.error()));
        return false;
    }
    refuse({});
    const LocalTime when = date == m_store.situation().today ? m_store.now() : LocalTime{date, kEvening};
    return m_store.append(taught, when).has_value();
}

void TaughtModel::refuse(const QString& why)
{
    if (m_refusal == why)
        return;
    m_refusal = why;
    emit refusalChanged();
}

} // namespace firstdew::viewmodels
