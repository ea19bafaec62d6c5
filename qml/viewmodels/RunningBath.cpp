#include "RunningBath.h"

#include "words/Errors.h"

#include <QUuid>
#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;
using protocol::StepKind;

namespace {

constexpr int kTickMs = 100;
constexpr int kSecondMs = 1000;

/// All that is told by the clock is told at a whole second of its step: that moment is met, and not passed by a tick.
int untilNextTick(const bath::State& state)
{
    return static_cast<int>(std::min<long long>(kTickMs, kSecondMs - state.stepElapsedMs % kSecondMs));
}

BathPrepared preparedOf(const protocol::ScriptRequest& q, Milliamps target)
{
    BathPrepared p;
    p.bath = QUuid::createUuid().toString(QUuid::Id128).toStdString();
    p.site = q.site;
    p.waveform = q.waveform;
    p.age = q.age;
    p.swap = q.swap;
    p.way = q.way;
    p.firstSide = q.firstSide;
    p.limit = q.limit;
    p.target = target;
    p.raise = q.raise;
    p.lower = q.lower;
    p.swapping = q.swapping;
    return p;
}

} // namespace

RunningBath::RunningBath(Store& store, BathCues& cues) : m_store(store), m_cues(cues)
{
    m_ticker.setTimerType(Qt::PreciseTimer);
    connect(&m_ticker, &QTimer::timeout, this, [this] {
        send(BathEventKind::Tick);
        if (m_ticker.isActive())
            m_ticker.start(untilNextTick(*m_state));
    });
}

bool RunningBath::begin(const protocol::Script& script, Milliamps target, const Preparation& answers)
{
    const BathPrepared prepared = preparedOf(script.request, target);
    const Payload begun[] = {answers, prepared};
    if (!m_store.append(begun))
        return false;
    m_id = prepared.bath;
    m_sequence = 0;
    m_state = bath::prepared(script, target);
    m_state->last = m_store.clock().instant();
    watch();
    emit turned();
    // The list was confirmed line by line just now.
    send(BathEventKind::Begin);
    return true;
}

std::optional<BathPrepared> RunningBath::comeBack()
{
    const auto* led = m_store.diary().running();
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
    watch();
    return prepared;
}

/// On disk before anything is said or shown of it. A disk that fails must not stop the lead: safety first.
void RunningBath::keep(const bath::Event& event, Instant now)
{
    BathEvent kept;
    kept.bath = m_id;
    kept.sequence = m_sequence;
    kept.event = event.kind;
    kept.reading = event.reading;
    kept.meanwhile = event.meanwhile;
    kept.wallMs = now.wallMs;
    kept.monotonicMs = now.monotonicMs;
    const Payload payload = kept;
    if (m_store.append({&payload, 1}, Store::Assess::Later))
        ++m_sequence;
}

void RunningBath::send(const bath::Event& event)
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
    if (outcome->journal)
        keep(event, now);
    if (asked)
        emit refused({});
    const bool turns = outcome->state.phase != m_state->phase;
    m_state = outcome->state;
    for (const auto& effect : outcome->effects)
        m_cues.give(effect);
    m_cues.follow(*m_state);
    if (turns) {
        watch();
        emit turned();
    }
    emit moved();
}

bool RunningBath::over() const
{
    return m_state && (m_state->phase == bath::Phase::Finished || m_state->phase == bath::Phase::Stopped);
}

void RunningBath::primary()
{
    if (!m_state)
        return;
    const bool flowing = m_state->current == bath::Current::Flowing;
    switch (m_state->script.steps[m_state->step].kind) {
    case StepKind::CheckList: send(BathEventKind::Begin); break;
    case StepKind::Raise: send(BathEventKind::Raised); break;
    case StepKind::Hold: send(flowing ? BathEventKind::Lowered : BathEventKind::Raised); break;
    case StepKind::Lower: send(BathEventKind::Lowered); break;
    case StepKind::Swap: send(flowing ? BathEventKind::Lowered : BathEventKind::Swapped); break;
    case StepKind::MoveSide: send(flowing ? BathEventKind::Lowered : BathEventKind::MovedSide); break;
    default: break;
    }
}

void RunningBath::end()
{
    m_state.reset();
    watch();
    m_cues.hush();
}

void RunningBath::watch()
{
    if (m_state && !over()) {
        m_cues.begin();
        m_ticker.start(untilNextTick(*m_state));
    } else {
        m_ticker.stop();
        m_cues.end();
    }
}

} // namespace firstdew::viewmodels
