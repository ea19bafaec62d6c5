#include "BathChoice.h"

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
    const auto* sheet = m_store.record().latest<CareSheet>();
    const Machine m = machine();
    const bool pulsed = m_site == Site::Armpits || (sheet && sheet->payload.waveform == Waveform::Pulsed) ||
                        (s.age == AgeGroup::Child && m.pulsed) || !m.direct;
    m_waveform = pulsed ? Waveform::Pulsed : Waveform::Direct;
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

Machine BathChoice::machine() const
{
    const auto* m = m_store.record().latest<Machine>();
    return m ? m->payload : Machine{};
}

protocol::LimitAnswer BathChoice::limitWith(Waveform waveform) const
{
    return protocol::limitFor(protocol::limitQueryFor(m_store.record(), m_site, waveform, m_store.situation().today));
}

protocol::CurrentAdvice BathChoice::advice() const
{
    return protocol::currentAdviceFor(m_store.record(), m_site, m_waveform, limit().limit, m_store.situation().today);
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
    if (const auto* sheet = m_store.record().latest<CareSheet>()) {
        q.raise = sheet->payload.raise.value_or(q.raise);
        q.lower = sheet->payload.lower.value_or(q.lower);
        q.swapping = sheet->payload.swapping.value_or(q.swapping);
    }
    return protocol::scriptFor(q);
}

std::string BathChoice::giver() const
{
    const auto* sheet = m_store.record().latest<CareSheet>();
    return sheet ? sheet->payload.who : std::string();
}

} // namespace firstdew::viewmodels
