#include "RunningBath.h"

#include "bath/Tick.h"
#include "protocol/Practice.h"
#include "words/Errors.h"

#include <QUuid>
#include <algorithm>
#include <utility>
#include <variant>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

/// What happened is on the screen before the disk is asked, which may take its time.
constexpr int kWriteAfterMs = 250;
/// A disk that failed is asked again after this time.
constexpr int kTryAgainMs = 5'000;

} // namespace

RunningBath::RunningBath(Store& store, BathCues& cues) : m_store(store), m_cues(cues)
{
    m_ticker.setTimerType(Qt::PreciseTimer);
    connect(&m_ticker, &QTimer::timeout, this, [this] {
        send(BathEventKind::Tick);
        if (m_ticker.isActive())
            m_ticker.start(bath::untilNextTick(*m_state));
    });
    m_writer.setSingleShot(true);
    connect(&m_writer, &QTimer::timeout, this, &RunningBath::write);
}

RunningBath::~RunningBath() { flush(); }

bool RunningBath::begin(const protocol::Script& script, Milliamps target, const Preparation& answers, Machine machine)
{
    bath::State state = bath::prepared(script, target, bath::earlierToday(m_store.diary(), script.request.site));
    if (bath::enoughForToday(state)) {
        emit refused(words::errorSentence({"enough-for-today", "site", {}}));
        return false;
    }
    m_id = QUuid::createUuid().toString(QUuid::Id128).toStdString();
    const Payload begun[] = {answers, bath::preparationOf(state, m_id)};
    if (!m_store.append(begun))
        return false;
    m_sequence = 0;
    state.last = state.kept = m_store.clock().instant();
    m_state = std::move(state);
    watch();
    // The list was confirmed just now; where the machine is on already, nobody has to be told to switch it on.
    handle(bath::Event{BathEventKind::Begin, {}, {}}, machine == Machine::Off);
    if (machine == Machine::On)
        send(BathEventKind::SwitchedOn);
    flush(); // a session that is killed from here on is asked about
    emit turned();
    return true;
}

void RunningBath::practise(const protocol::Script& script, Milliamps target)
{
    bath::State state = bath::prepared(protocol::practiceOf(script), target);
    state.last = state.kept = m_store.clock().instant();
    m_id.clear();
    m_practice = true;
    m_state = std::move(state);
    watch();
    m_cues.perform({bath::EffectKind::Say, m_state->script.steps[m_state->step].prompt}, *m_state);
    emit turned();
    emit moved();
}

std::optional<BathPrepared> RunningBath::comeBack()
{
    const diary::LedSession* led = m_store.diary().unwritten();
    if (led == nullptr)
        return std::nullopt;
    const BathPrepared prepared = *led->prepared;
    const std::vector<BathEvent> events = led->events;
    auto state = bath::replay(prepared, events);
    if (!state) {
        emit refused(words::errorSentence(state.error()));
        return std::nullopt;
    }
    m_id = prepared.bath;
    m_sequence = events.empty() ? 0 : events.back().sequence + 1;
    m_state = *state;
    if (m_state->phase == bath::Phase::AwaitingMeanwhile)
        keep({{{BathEventKind::Away, {}, {}}, m_state->last}}); // the last moment in which it led
    watch();
    return prepared;
}

void RunningBath::keep(const std::vector<bath::Kept>& events)
{
    if (m_practice)
        return;
    for (const auto& [event, at] : events) {
        BathEvent kept;
        kept.bath = m_id;
        kept.sequence = m_sequence++;
        kept.event = event.kind;
        kept.reading = event.reading;
        kept.meanwhile = event.meanwhile;
        kept.wallMs = at.wallMs;
        kept.monotonicMs = at.monotonicMs;
        m_waiting.push_back(std::move(kept));
    }
    if (!m_waiting.empty() && !m_writer.isActive())
        m_writer.start(m_unsaved ? kTryAgainMs : kWriteAfterMs);
}

void RunningBath::write()
{
    const std::vector<Payload> batch(m_waiting.begin(), m_waiting.end());
    const bool begun = m_store.appendBehind(batch, [this, count = batch.size()](bool kept) {
        if (kept)
            m_waiting.erase(m_waiting.begin(), m_waiting.begin() + static_cast<std::ptrdiff_t>(count));
        tellWaiting(!kept);
    });
    if (!begun)
        m_writer.start(kWriteAfterMs);
}

void RunningBath::tellWaiting(bool failed)
{
    const bool before = std::exchange(m_unsaved, failed);
    if (before != m_unsaved)
        emit moved();
    if (!m_waiting.empty())
        m_writer.start(failed ? kTryAgainMs : kWriteAfterMs);
}

void RunningBath::flush()
{
    m_store.awaitWrites();
    m_writer.stop();
    if (m_waiting.empty())
        return;
    const std::vector<Payload> batch(m_waiting.begin(), m_waiting.end());
    const bool kept = m_store.append(batch, Store::Assess::Later);
    if (kept)
        m_waiting.clear();
    tellWaiting(!kept);
}

void RunningBath::handle(const bath::Event& event, bool heard)
{
    if (!m_state)
        return;
    const bool asked = event.kind != BathEventKind::Tick;
    const Instant now = m_store.clock().instant();
    auto outcome = bath::step(*m_state, event, now);
    if (!outcome) {
        if (asked)
            emit refused(words::errorSentence(outcome.error()));
        return;
    }
    const bool turns = outcome->state.phase != m_state->phase;
    if (m_practice && outcome->state.phase == bath::Phase::AwaitingMeanwhile) {
        end(); // no machine was on: there is nothing to ask about
        emit turned();
        return;
    }
    if (m_state->pressed && !outcome->state.pressed)
        m_said.reset(); // "Stopped" is not true any more
    if (turns && m_state->phase == bath::Phase::AwaitingMeanwhile)
        m_cues.hush(); // the question is answered
    m_state = outcome->state;
    for (const auto& effect : outcome->effects) {
        if (effect.kind == bath::EffectKind::StepChanged)
            m_said.reset();
        else if (effect.prompt)
            m_said = Said{*effect.prompt, m_state->sessionMs};
        if (heard)
            m_cues.performUnlessAhead(effect, *m_state, now);
    }
    if (!m_practice) {
        m_cues.lookAhead(*m_state, now, asked || turns);
        m_cues.follow(*m_state);
    }
    if (asked)
        emit refused({});
    if (turns) {
        watch();
        emit turned();
    }
    emit moved();
    keep(outcome->keep);
}

bool RunningBath::over() const
{
    return m_state && (m_state->phase == bath::Phase::Finished || m_state->phase == bath::Phase::Stopped);
}

void RunningBath::primary()
{
    if (!m_state)
        return;
    if (const auto event = bath::mainEvent(*m_state))
        send(*event);
}

void RunningBath::stopUnlessSlip()
{
    if (!m_state || over() || m_state->pressed)
        return;
    m_cues.hush();
    send(BathEventKind::StopPressed);
}

void RunningBath::takeBackStop()
{
    if (!m_state || !m_state->pressed)
        return;
    m_cues.hush();
    send(BathEventKind::StopTakenBack);
}

int RunningBath::stopsIn() const { return m_state ? bath::stopsIn(*m_state, m_store.clock().instant()).s : 0; }

void RunningBath::end()
{
    m_said.reset();
    flush();
    m_state.reset();
    watch();
    m_practice = false;
    m_cues.hush();
}

void RunningBath::watch()
{
    const bool leading = m_state && !over();
    m_store.setLeading(leading && !m_practice);
    if (leading) {
        m_cues.begin();
        m_ticker.start(bath::untilNextTick(*m_state));
    } else {
        m_ticker.stop();
        m_cues.end();
    }
}

} // namespace firstdew::viewmodels
