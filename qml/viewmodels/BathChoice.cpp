#include "BathChoice.h"

#include "Edge.h"
#include "protocol/CareSheets.h"
#include "protocol/MayBegin.h"
#include "protocol/WayIn.h"
#include "words/BathWords.h"
#include "words/ComparedWords.h"
#include "words/Errors.h"

#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;

void BathChoice::setSite(Site site)
{
    if (site != m_site || !m_chosen)
        forgetPicks();
    m_site = site;
    m_chosen = true;
    propose();
}

void BathChoice::setWaveform(Waveform waveform)
{
    m_pickedWaveform = waveform;
    m_chosen = true;
    propose();
}

void BathChoice::setWay(WayOfWorking way)
{
    m_pickedWay = way;
    m_chosen = true;
    propose();
}

void BathChoice::setSide(Side side)
{
    m_pickedSide = side;
    m_chosen = true;
    propose();
}

void BathChoice::restore(const BathPrepared& prepared)
{
    m_site = prepared.site;
    m_pickedWaveform = m_waveform = prepared.waveform;
    m_pickedWay = m_way = prepared.way;
    m_pickedSide = m_side = prepared.firstSide;
    m_chosen = true;
}

void BathChoice::forget()
{
    m_chosen = false;
    forgetPicks();
    propose();
}

void BathChoice::forgetPicks()
{
    m_pickedWaveform.reset();
    m_pickedWay.reset();
    m_pickedSide.reset();
}

void BathChoice::propose()
{
    const auto& s = m_store.situation();
    if (!m_chosen && s.first)
        m_site = s.sites[*s.first].treatedAs;
    const auto usual = protocol::choiceFor(m_store.diary(), m_site);
    m_waveform = m_pickedWaveform.value_or(usual.waveform);
    if (!limit().allowed)
        m_waveform = usual.waveform;
    m_side = m_pickedSide.value_or(usual.firstSide);
    m_way = m_pickedWay.value_or(usual.way);
    if (refusalOfWay())
        m_way = usual.way;
    if (refusalOfWay()) // a screen reader is on, or no voice speaks the language
        m_way = protocol::waysFor(m_site, machine(), m_store.situation().age, phone()).front().way; // open ones first
}

QList<ui::SiteChoice> BathChoice::sites() const
{
    QList<ui::SiteChoice> out;
    for (const auto site : allOf<Site>()) {
        const auto phases = protocol::phasesFor(site);
        out.append({ui::shown(site), words::siteName(site), words::minutes(phases.hold.s * phases.phases / 60)});
    }
    return out;
}

QList<ui::WaveformChoice> BathChoice::waveforms() const
{
    QList<ui::WaveformChoice> out;
    for (const auto w : allOf<Waveform>()) {
        const auto answer = limitWith(w);
        out.append({ui::shown(w), words::waveformName(w), answer.allowed,
                    answer.allowed ? QString() : words::limitSource(answer.binding, {})});
    }
    return out;
}

QList<ui::WayChoice> BathChoice::ways() const
{
    QList<ui::WayChoice> out;
    const auto as = phone();
    for (const auto& [way, bar] : protocol::waysFor(m_site, machine(), m_store.situation().age, as)) {
        const auto error = protocol::refusalOfWay(m_site, way, machine(), m_store.situation().age, as);
        out.append(
            {ui::shown(way), words::wayName(way), !bar, error ? words::errorSentence(*error) : words::wayHint(way)});
    }
    return out;
}

std::optional<Error> BathChoice::refusalOfWay() const
{
    return protocol::refusalOfWay(m_site, m_way, machine(), m_store.situation().age, phone());
}

protocol::Phone BathChoice::phone() const
{
    const bool reads = m_screenReader() && !m_store.diary().preferences.pedal;
    return {reads ? protocol::Touch::ScreenReader : protocol::Touch::Plain, protocol::tongueFor(m_speakers())};
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
    q.hold = situation::comparedHold(m_store.situation().sites, m_site);
    return protocol::scriptFor(q);
}

QString BathChoice::compared() const { return words::comparedLength(m_store.situation().sites, m_site); }

std::string BathChoice::giver() const
{
    const auto* sheet = protocol::sheetFor(m_store.diary(), m_site);
    return sheet ? sheet->who : std::string();
}

} // namespace firstdew::viewmodels
