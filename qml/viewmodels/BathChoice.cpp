#include "BathChoice.h"

#include "protocol/CareSheets.h"
#include "protocol/MayBegin.h"
#include "words/BathWords.h"
#include "words/Errors.h"

#include <QVariantMap>
#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

void BathChoice::setSite(Site site)
{
    m_site = site;
    m_chosen = true;
    settle();
}

void BathChoice::take(const BathPrepared& prepared)
{
    m_site = prepared.site;
    m_waveform = prepared.waveform;
    m_way = prepared.way;
    m_side = prepared.firstSide;
    m_chosen = true;
}

void BathChoice::forget()
{
    m_chosen = false;
    settle();
}

void BathChoice::settle()
{
    const auto& s = m_store.situation();
    if (!m_chosen && s.first)
        m_site = s.sites[*s.first].treatedAs;
    m_waveform = protocol::waveformFor(m_store.diary(), m_site);
    settleWay();
}

void BathChoice::settleWay()
{
    if (refusalOfWay())
        m_way = protocol::waysFor(m_site, machine(), m_store.situation().age).front().way; // open ones first
}

QVariantList BathChoice::sites() const
{
    QVariantList out;
    for (const auto site : allOf<Site>()) {
        const auto& used = m_store.situation().sites;
        const bool inUse = std::any_of(used.begin(), used.end(), [&](const auto& s) { return s.treatedAs == site; });
        const auto phases = protocol::phasesFor(site);
        out.append(QVariantMap{{"site", static_cast<int>(site)},
                               {"name", words::siteName(site)},
                               {"minutes", words::minutes(phases.hold.s * phases.phases / 60)},
                               {"inUse", inUse}});
    }
    return out;
}

QVariantList BathChoice::waveforms() const
{
    QVariantList out;
    for (const auto w : allOf<Waveform>()) {
        const auto answer = limitWith(w);
        out.append(QVariantMap{{"waveform", token(w)},
                               {"name", words::waveformName(w)},
                               {"allowed", answer.allowed},
                               {"why", answer.allowed ? QString() : words::limitSource(answer.binding, {})}});
    }
    return out;
}

QVariantList BathChoice::ways() const
{
    QVariantList out;
    for (const auto& [way, bar] : protocol::waysFor(m_site, machine(), m_store.situation().age)) {
        const auto error = protocol::refusalOfWay(m_site, way, machine(), m_store.situation().age);
        out.append(QVariantMap{{"way", token(way)},
                               {"name", words::wayName(way)},
                               {"allowed", !bar},
                               {"hint", error ? words::errorSentence(*error) : words::wayHint(way)}});
    }
    return out;
}

std::optional<Error> BathChoice::refusalOfWay() const
{
    return protocol::refusalOfWay(m_site, m_way, machine(), m_store.situation().age);
}

Machine BathChoice::machine() const { return m_store.diary().machine.value_or(Machine{}); }

protocol::LimitAnswer BathChoice::limitWith(Waveform waveform) const
{
    return protocol::limitFor(protocol::limitQueryFor(m_store.diary(), m_site, waveform));
}

protocol::CurrentAdvice BathChoice::advice() const
{
    return protocol::currentAdviceFor(m_store.diary(), m_site, m_waveform, limit().limit);
}

Result<protocol::Script> BathChoice::script() const
{
    protocol::ScriptRequest q;
    q.site = m_site;
    q.waveform = m_waveform;
    q.age = m_store.situation().age;
    q.swap = machine().swap;
    q.way = m_way;
    q.firstSide = m_side;
    q.limit = limit().limit;
    const auto allowances = protocol::allowancesFor(m_store.diary(), m_site);
    q.raise = allowances.raise;
    q.lower = allowances.lower;
    q.swapping = allowances.swapping;
    return protocol::scriptFor(q);
}

std::string BathChoice::giver() const
{
    const auto* sheet = protocol::sheetFor(m_store.diary(), m_site);
    return sheet ? sheet->who : std::string();
}

} // namespace firstdew::viewmodels
