#include "BathModel.h"

#include "bath/Dose.h"
#include "protocol/CurrentAdvice.h"
#include "protocol/MayBegin.h"
#include "situation/Sites.h"
#include "words/Errors.h"
#include "words/Sentences.h"

#include <QQmlEngine>
#include <QUuid>
#include <algorithm>

namespace firstdew::viewmodels {


using namespace facts;
using protocol::PrepItem;
using protocol::StepKind;

namespace {

BathModel* theModel = nullptr;
constexpr int kTickMs = 100; // a step is announced at most this late
/// A clearance with no end of its own is asked again after this time (our own choice, cautious).
constexpr int kClearanceDays = 180;

QString clock(int seconds)
{
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

QString prepText(PrepItem item)
{
    switch (item) {
    case PrepItem::JewelleryOff: return BathModel::tr("Jewellery, watch and piercings off (not needed above the neck)");
    case PrepItem::SkinChecked: return BathModel::tr("Skin looked at: no new redness, blister or burn");
    case PrepItem::WoundsCovered: return BathModel::tr("Cuts under a thin layer of petroleum jelly, only on the broken skin");
    case PrepItem::NoAntiperspirant: return BathModel::tr("No antiperspirant with aluminium there for 24 hours");
    case PrepItem::NotShaved: return BathModel::tr("Not shaved there for three days");
    case PrepItem::WarmWater: return BathModel::tr("Warm tap water, about %1 ml in each bath").arg(protocol::kWaterPerBathMl);
    case PrepItem::BathsOnTable: return BathModel::tr("Bath for the hand on a table that is not metal");
    case PrepItem::BathsOnFloor: return BathModel::tr("Bath for the foot on the floor");
    case PrepItem::PlateUnderGrid: return BathModel::tr("Each plate under its grid; skin never touches a plate");
    case PrepItem::PadsSoaked: return BathModel::tr("Pads soaked through, and tight");
    case PrepItem::LeadsIn: return BathModel::tr("Machine off, current at zero, leads in");
    case PrepItem::SomebodyNear: return BathModel::tr("Somebody near, or a remote control at hand");
    case PrepItem::CellsIn: return BathModel::tr("Batteries in");
    }
    return {};
}

QString currentReason(protocol::CurrentReason reason, const QString& last)
{
    using protocol::CurrentReason;
    switch (reason) {
    case CurrentReason::FirstTime: return BathModel::tr("First time here: begin low, and go by what is comfortable.");
    case CurrentReason::AfterComfortable: return BathModel::tr("%1 was comfortable last time.").arg(last);
    case CurrentReason::AfterDiscomfort: return BathModel::tr("%1 was unpleasant last time, so less.").arg(last);
    case CurrentReason::AtLimit: return BathModel::tr("This is the limit.");
    case CurrentReason::AfterInterruption: return BathModel::tr("The last bath was not finished, so the same level again.");
    case CurrentReason::TryPulsed: return BathModel::tr("Pulsed current is felt less; try it, if your machine has it.");
    case CurrentReason::SameAgain: return BathModel::tr("The same level as last time, until it was comfortable.");
    case CurrentReason::TryDirect: return BathModel::tr("Direct current may work better now; ask the adult or nurse who helps.");
    }
    return {};
}

} // namespace

BathModel* BathModel::instance() { return theModel; }

BathModel* BathModel::create(QQmlEngine*, QJSEngine*)
{
    QQmlEngine::setObjectOwnership(theModel, QQmlEngine::CppOwnership);
    return theModel;
}

BathModel::BathModel(Store& store, BathPorts ports) : m_store(store), m_cues(store, ports)
{
    theModel = this;
    m_ticker.setInterval(kTickMs);
    connect(&m_ticker, &QTimer::timeout, this, [this] { send(BathEventKind::Tick); });
    connect(&store, &Store::changed, this, [this] {
        if (m_page == QLatin1String("choose"))
            settle();
        emit changed();
    });
    settle();
    comeBack();
}

Machine BathModel::machine() const
{
    const auto* m = m_store.record().latest<Machine>();
    return m ? m->payload : Machine{};
}

AgeGroup BathModel::age() const
{
    return m_store.situation().age;
}

/// Picks what the person most likely wants: the site that matters now, the current that suits it.
void BathModel::settle()
{
    const auto& s = m_store.situation();
    if (!m_siteChosen && s.first)
        m_site = s.sites[*s.first].treatedAs;
    const auto* sheet = m_store.record().latest<CareSheet>();
    const Machine m = machine();
    const bool pulsed = m_site == Site::Armpits || (sheet && sheet->payload.waveform == Waveform::Pulsed) ||
                        (age() == AgeGroup::Child && m.pulsed) || !m.direct;
    m_waveform = pulsed ? Waveform::Pulsed : Waveform::Direct;
    const auto ways = protocol::waysFor(m_site);
    if (std::find(ways.begin(), ways.end(), m_way) == ways.end())
        m_way = ways.front();
}

QVariantList BathModel::sites() const
{
    QVariantList out;
    for (const auto site : allOf<Site>()) {
        const auto& used = m_store.situation().sites;
        const bool inUse = std::any_of(used.begin(), used.end(), [&](const auto& s) { return s.treatedAs == site; });
        out.append(QVariantMap{{"site", token(site)},
                               {"name", words::siteName(site)},
                               {"minutes", tr("%1 min").arg(protocol::phasesFor(site).hold.s * protocol::phasesFor(site).phases / 60)},
                               {"inUse", inUse}});
    }
    return out;
}

QString BathModel::siteName() const
{
    return words::siteName(m_site);
}

QVariantList BathModel::waveforms() const
{
    QVariantList out;
    for (const auto w : allOf<Waveform>()) {
        const auto answer = protocol::limitFor(protocol::limitQueryFor(m_store.record(), m_site, w, m_store.situation().today));
        out.append(QVariantMap{{"waveform", token(w)},
                               {"name", words::waveformName(w)},
                               {"allowed", answer.allowed},
                               {"why", answer.allowed ? QString() : words::limitSource(answer.binding, {})}});
    }
    return out;
}

QVariantList BathModel::ways() const
{
    QVariantList out;
    for (const auto w : protocol::waysFor(m_site))
        out.append(QVariantMap{{"way", token(w)}, {"name", words::wayName(w)}, {"hint", words::wayHint(w)}});
    return out;
}

protocol::LimitAnswer BathModel::limit() const
{
    return protocol::limitFor(protocol::limitQueryFor(m_store.record(), m_site, m_waveform, m_store.situation().today));
}

QString BathModel::sayMa(Milliamps m) const
{
    return words::milliamps(m.mA);
}

QString BathModel::limitText() const
{
    const auto answer = limit();
    const auto* sheet = m_store.record().latest<CareSheet>();
    const QString by = words::limitSource(answer.binding, sheet ? sheet->payload.who : std::string());
    return answer.allowed ? tr("Limit %1. %2.").arg(sayMa(answer.limit), by) : tr("Not possible. %1.").arg(by);
}

Milliamps BathModel::target() const
{
    return protocol::currentAdviceFor(m_store.record(), m_site, m_waveform, limit().limit, m_store.situation().today).target;
}

QString BathModel::adviceText() const
{
    if (!allowed())
        return {};
    const auto advice = protocol::currentAdviceFor(m_store.record(), m_site, m_waveform, limit().limit, m_store.situation().today);
    QStringList out{tr("Aim for about %1.").arg(sayMa(advice.target))};
    for (const auto r : advice.reasons)
        out.append(currentReason(r, advice.last ? sayMa(*advice.last) : QString()));
    return out.join(QLatin1Char(' '));
}

Result<protocol::Script> BathModel::script() const
{
    protocol::ScriptRequest q;
    q.site = m_site;
    q.waveform = m_waveform;
    q.age = age();
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

QString BathModel::lengthText() const
{
    const auto s = script();
    if (!s)
        return {};
    return tr("%1 min of current, about %2 min in all").arg(s->holdTotal().s / 60).arg((s->total().s + 59) / 60);
}

void BathModel::chooseSite(const QString& site)
{
    m_site = valueOf<Site>(site).value_or(m_site);
    m_siteChosen = true;
    settle();
    emit changed();
}

void BathModel::chooseWaveform(const QString& waveform)
{
    m_waveform = valueOf<Waveform>(waveform).value_or(m_waveform);
    emit changed();
}

void BathModel::chooseWay(const QString& way)
{
    m_way = valueOf<WayOfWorking>(way).value_or(m_way);
    emit changed();
}

void BathModel::chooseSide(const QString& side)
{
    m_side = valueOf<Side>(side).value_or(m_side);
    emit changed();
}

void BathModel::toPage(const QString& page)
{
    m_page = page;
    refuse({});
    emit changed();
}

void BathModel::goOn()
{
    const LocalDate today = m_store.situation().today;
    if (const auto may = protocol::mayBegin(m_store.record(), m_site, m_waveform, today); !may && may.error().code == "session-today") {
        refuse(words::errorSentence(may.error()));
        return;
    }
    const auto due = protocol::screeningDue(m_store.record(), today);
    m_yes = {};
    for (const auto& rule : protocol::screeningRows())
        for (const auto& e : m_store.record().all<Screening>())
            if (e.payload.asked.contains(rule.row))
                e.payload.yes.contains(rule.row) ? m_yes.insert(rule.row) : m_yes.erase(rule.row);
    m_askAll = due == protocol::ScreeningDue::Full;
    if (due == protocol::ScreeningDue::None)
        answersDone();
    else
        toPage(QStringLiteral("screening"));
}

void BathModel::back()
{
    toPage(m_page == QLatin1String("prepare") && m_askAll ? QStringLiteral("screening") : QStringLiteral("choose"));
}

QVariantList BathModel::questions() const
{
    QVariantList out;
    for (const auto& rule : protocol::screeningRows())
        out.append(QVariantMap{{"row", token(rule.row)}, {"text", words::screeningQuestion(rule.row)}, {"yes", m_yes.contains(rule.row)}});
    return out;
}

void BathModel::toggleAnswer(const QString& row)
{
    const auto r = valueOf<ScreeningRow>(row);
    if (!r)
        return;
    m_yes.contains(*r) ? m_yes.erase(*r) : m_yes.insert(*r);
    emit changed();
}

void BathModel::nothingChanged()
{
    m_store.append(Screening{false, {}, {}});
    answersDone();
}

void BathModel::somethingChanged()
{
    m_askAll = true;
    emit changed();
}

void BathModel::answersDone()
{
    if (m_page == QLatin1String("screening") && m_askAll) {
        Screening s;
        for (const auto& rule : protocol::screeningRows())
            s.asked.insert(rule.row);
        s.yes = m_yes;
        if (!m_store.append(s))
            return;
    }
    const auto verdict = protocol::screen(m_store.record(), m_site, m_store.situation().today);
    if (verdict.outcome != protocol::ScreeningOutcome::Go) {
        toPage(QStringLiteral("blocked"));
        return;
    }
    m_done = {};
    m_answers = {};
    m_answers.site = m_site;
    m_cues.prepare();
    toPage(QStringLiteral("prepare"));
}

QStringList BathModel::blockedBy() const
{
    QStringList out;
    for (const auto row : protocol::screen(m_store.record(), m_site, m_store.situation().today).deciding)
        out.append(words::screeningShort(row));
    return out;
}

bool BathModel::blockedForGood() const
{
    return protocol::screen(m_store.record(), m_site, m_store.situation().today).outcome == protocol::ScreeningOutcome::Stop;
}

void BathModel::cleared(const QString& who)
{
    const QString name = who.trimmed();
    if (name.isEmpty()) {
        refuse(tr("Write down who cleared it, so that the summary can say so."));
        return;
    }
    std::vector<Payload> words;
    for (const auto row : protocol::screen(m_store.record(), m_site, m_store.situation().today).deciding)
        words.emplace_back(Clearance{row, name.toStdString(), m_store.situation().today, m_store.situation().today + kClearanceDays});
    if (m_store.appendAll(std::move(words)))
        answersDone();
}

bool BathModel::isDone(PrepItem item) const
{
    return m_done.contains(item);
}

QVariantList BathModel::preparation() const
{
    QVariantList out;
    for (const auto item : protocol::preparationFor(m_site, machine(), m_way, m_answers.smallWounds))
        out.append(QVariantMap{{"item", static_cast<int>(item)}, {"text", prepText(item)}, {"done", isDone(item)}});
    return out;
}

QStringList BathModel::waits() const
{
    QStringList out;
    for (const auto& w : protocol::waitsFor(m_answers, m_store.now()))
        out.append(tr("Ready %1 from %2: %3").arg(words::nearDay(w.until.date, m_store.situation().today), QString::fromStdString(w.until.at.text()), prepText(w.item)));
    return out;
}

bool BathModel::ready() const
{
    const auto list = protocol::preparationFor(m_site, machine(), m_way, m_answers.smallWounds);
    return allowed() && protocol::waitsFor(m_answers, m_store.now()).empty() &&
           std::all_of(list.begin(), list.end(), [&](PrepItem i) { return isDone(i); });
}

void BathModel::tick(int item)
{
    const auto i = static_cast<PrepItem>(item);
    m_done.contains(i) ? m_done.erase(i) : m_done.insert(i);
    emit changed();
}

void BathModel::setSmallWounds(bool on)
{
    m_answers.smallWounds = on;
    emit changed();
}

void BathModel::setAntiperspirant(int hoursAgo)
{
    m_answers.antiperspirant = hoursAgo < 0 ? std::nullopt : std::optional(m_store.now().plusMinutes(-60 * hoursAgo));
    emit changed();
}

void BathModel::setShaved(int daysAgo)
{
    m_answers.shaved = daysAgo < 0 ? std::nullopt : std::optional(m_store.now().plusMinutes(-24 * 60 * daysAgo));
    emit changed();
}

void BathModel::checkVolume()
{
    m_cues.tryOut();
}

void BathModel::start()
{
    if (!ready())
        return;
    // The answers may have changed since the questions were passed, and the day with them.
    const auto gate = protocol::mayBegin(m_store.record(), m_site, m_waveform, m_store.situation().today);
    if (!gate) {
        if (protocol::screen(m_store.record(), m_site, m_store.situation().today).outcome != protocol::ScreeningOutcome::Go)
            toPage(QStringLiteral("blocked"));
        else
            refuse(words::errorSentence(gate.error()));
        return;
    }
    const auto s = script();
    if (!s) {
        refuse(words::errorSentence(s.error()));
        return;
    }
    const auto& q = s->request;
    BathPrepared p;
    p.bath = QUuid::createUuid().toString(QUuid::Id128).toStdString();
    p.site = q.site;
    p.waveform = q.waveform;
    p.age = q.age;
    p.swap = q.swap;
    p.way = q.way;
    p.firstSide = q.firstSide;
    p.limit = q.limit;
    p.target = target();
    p.raise = q.raise;
    p.lower = q.lower;
    p.swapping = q.swapping;
    if (!m_store.appendAll({m_answers, p}))
        return;
    m_bath = p.bath;
    m_sequence = 0;
    m_state = bath::prepared(*s, target());
    m_state->last = m_store.clock().instant();
    m_cues.begin();
    m_ticker.start();
    toPage(QStringLiteral("run"));
    // The list was confirmed line by line just now.
    send(BathEventKind::Begin);
}

void BathModel::send(const bath::Event& event)
{
    if (!m_state)
        return;
    const Instant now = m_store.clock().instant();
    auto outcome = bath::step(*m_state, event, now);
    if (!outcome) {
        if (event.kind != BathEventKind::Tick)
            refuse(words::errorSentence(outcome.error()));
        return;
    }
    if (outcome->journal) {
        BathEvent kept;
        kept.bath = m_bath;
        kept.sequence = m_sequence;
        kept.event = event.kind;
        kept.reading = event.reading;
        kept.meanwhile = event.meanwhile;
        kept.wallMs = now.wallMs;
        kept.monotonicMs = now.monotonicMs;
        // On disk before anything is said or shown of it. A disk that fails must not stop the lead: safety first.
        if (m_store.appendQuietly(kept))
            ++m_sequence;
    }
    if (event.kind != BathEventKind::Tick)
        refuse({});
    m_state = outcome->state;
    perform(outcome->effects);
    if (m_state)
        m_cues.follow(*m_state);
    emit ticked();
}

void BathModel::perform(const std::vector<bath::Effect>& effects)
{
    for (const auto& e : effects) {
        m_cues.give(e);
        if (e.kind == bath::EffectKind::AskMeanwhile)
            toPage(QStringLiteral("meanwhile"));
    }
    if (!m_state)
        return;
    if (m_state->phase == bath::Phase::Finished || m_state->phase == bath::Phase::Stopped) {
        m_ticker.stop();
        m_cues.end();
        toPage(QStringLiteral("after"));
    } else if (m_state->phase == bath::Phase::Running && m_page == QLatin1String("meanwhile")) {
        toPage(QStringLiteral("run"));
    }
}

void BathModel::refuse(const QString& why)
{
    if (m_refusal == why)
        return;
    m_refusal = why;
    emit refusalChanged();
}

/// After a kill or a restart: the same step, and the question what the machine did meanwhile.
void BathModel::comeBack()
{
    const auto& record = m_store.record();
    const auto* prepared = record.latest<BathPrepared>();
    if (!prepared || !situation::bathRunning(record))
        return;
    std::vector<BathEvent> events;
    for (const auto& e : record.all<BathEvent>())
        if (e.payload.bath == prepared->payload.bath)
            events.push_back(e.payload);
    std::sort(events.begin(), events.end(), [](const auto& a, const auto& b) { return a.sequence < b.sequence; });
    m_bath = prepared->payload.bath;
    m_sequence = events.empty() ? 0 : events.back().sequence + 1;
    m_site = prepared->payload.site;
    m_waveform = prepared->payload.waveform;
    m_way = prepared->payload.way;
    m_side = prepared->payload.firstSide;
    m_siteChosen = true;
    auto state = bath::replay(prepared->payload, events);
    if (!state) {
        refuse(words::errorSentence(state.error()));
        return;
    }
    m_state = *state;
    if (m_state->phase == bath::Phase::AwaitingMeanwhile) {
        m_cues.begin();
        m_ticker.start();
        toPage(QStringLiteral("meanwhile"));
    } else {
        toPage(m_state->phase == bath::Phase::Running ? QStringLiteral("run") : QStringLiteral("after"));
    }
}

QVariantMap BathModel::running() const
{
    if (!m_state)
        return {};
    const auto& s = *m_state;
    const auto& steps = s.script.steps;
    const auto& step = steps[s.step];
    const auto& q = s.script.request;
    const int remaining = bath::remainingInStep(s).s;
    const bool timed = step.timed;
    QString next;
    if (s.step + 1 < steps.size()) {
        const auto& n = steps[s.step + 1];
        next = n.kind == StepKind::Hold ? tr("%1, %2").arg(words::stepName(n), clock(n.length.s)) : words::stepName(n);
    }
    const bool paused = s.current == bath::Current::Zero && step.kind == StepKind::Hold;
    QString primaryText;
    const bool under = q.way == WayOfWorking::HandsUnder;
    switch (step.kind) {
    case StepKind::CheckList: primaryText = tr("All checked, begin"); break;
    case StepKind::Raise: primaryText = under ? QString() : tr("It is comfortable"); break;
    case StepKind::Hold: primaryText = paused ? tr("Raised again") : QString(); break;
    case StepKind::Lower: primaryText = under ? QString() : tr("It is at zero"); break;
    case StepKind::Swap: primaryText = under ? QString() : tr("Swapped"); break;
    case StepKind::MoveSide: primaryText = under ? QString() : tr("Changed side"); break;
    default: break;
    }
    if (s.current == bath::Current::Flowing && (step.kind == StepKind::Swap || step.kind == StepKind::MoveSide || (under && s.alarm)))
        primaryText = tr("It is at zero");
    const double length = std::max(1, step.length.s);
    return {{"step", words::stepName(step)},
            {"kind", token(step.kind)},
            {"sentence", paused ? tr("The phase waits at zero. Raise again when you are ready.") : words::stepSentence(step, q.site, q.swap, q.way)},
            {"remaining", timed ? clock(remaining) : QString()},
            {"remainingSpoken", tr("%1 min %2 s left").arg(remaining / 60).arg(remaining % 60)},
            {"progress", timed ? 1.0 - remaining / length : 0.0},
            {"timed", timed},
            {"phase", step.phase > 0 ? tr("Phase %1 of %2").arg(step.phase).arg(protocol::phasesFor(q.site).phases) : QString()},
            {"side", step.side ? words::sideName(*step.side) : QString()},
            {"next", next},
            {"target", sayMa(s.target())},
            {"limit", sayMa(q.limit)},
            {"reading", s.lastReading ? sayMa(s.lastReading->current) : tr("none yet")},
            {"hasReading", s.lastReading.has_value()},
            {"limitMa", q.limit.mA},
            {"lastReading", s.lastReading ? s.lastReading->current.mA : s.target().mA},
            {"alarm", s.alarm},
            {"flowing", s.current != bath::Current::Zero},
            {"under", under},
            {"primary", primaryText},
            {"paused", paused},
            {"all", tr("%1 min in all").arg((bath::remainingInAll(s).s + 59) / 60)},
            {"canRead", step.phase > 0},
            {"restarts", s.restarts}};
}

void BathModel::primary()
{
    if (!m_state)
        return;
    const StepKind kind = m_state->script.steps[m_state->step].kind;
    const bool flowing = m_state->current == bath::Current::Flowing;
    switch (kind) {
    case StepKind::CheckList: send(BathEventKind::Begin); break;
    case StepKind::Raise: send(BathEventKind::Raised); break;
    case StepKind::Hold: send(flowing ? BathEventKind::Lowered : BathEventKind::Raised); break;
    case StepKind::Lower: send(BathEventKind::Lowered); break;
    case StepKind::Swap: send(flowing ? BathEventKind::Lowered : BathEventKind::Swapped); break;
    case StepKind::MoveSide: send(flowing ? BathEventKind::Lowered : BathEventKind::MovedSide); break;
    default: break;
    }
}

void BathModel::reading(double mA)
{
    send(bath::Event{BathEventKind::Reading, Milliamps{mA}, {}});
}

void BathModel::discomfort()
{
    send(BathEventKind::Discomfort);
}

void BathModel::loweredEarly()
{
    send(BathEventKind::Lowered);
}

void BathModel::outOfWater()
{
    send(BathEventKind::OutOfWater);
}

void BathModel::stop()
{
    send(BathEventKind::Stop);
}

void BathModel::meanwhile(const QString& answer)
{
    if (const auto a = valueOf<Meanwhile>(answer))
        send(bath::Event{BathEventKind::Resumed, {}, *a});
}

QVariantMap BathModel::afterwards() const
{
    if (!m_state)
        return {};
    const double most = m_state->script.request.limit.mA;
    double peak = 0;
    double within = 0;
    for (const auto* list : {&m_state->readings, &m_state->interrupted})
        for (const auto& r : *list) {
            peak = std::max(peak, r.current.mA);
            // What set off the alarm is not proposed as comfortable.
            if (r.current.mA <= most)
                within = std::max(within, r.current.mA);
        }
    return {{"completed", m_state->phase == bath::Phase::Finished},
            {"peak", peak},
            {"comfortable", within > 0 ? within : m_state->target().mA},
            {"limit", most},
            {"cells", m_store.situation().cellSessionsLeft.value_or(-1)}};
}

void BathModel::save(const QString& comfort, double comfortable, const QStringList& skin, const QString& note)
{
    if (!m_state)
        return;
    Session s;
    s.site = m_state->script.request.site;
    s.waveform = m_state->script.request.waveform;
    s.completed = m_state->phase == bath::Phase::Finished;
    s.comfort = valueOf<Comfort>(comfort);
    s.skin = setOf<SkinFinding>(skin);
    const double peak = afterwards()["peak"].toDouble();
    if (peak > 0)
        s.peak = Milliamps{peak};
    if (comfortable > 0)
        s.comfortable = Milliamps{comfortable};
    std::vector<bath::MeterReading> all = m_state->interrupted;
    all.insert(all.end(), m_state->readings.begin(), m_state->readings.end());
    if (all.size() > 1)
        s.charge = bath::chargeOf(all);
    s.machine = machine().name;
    s.bath = m_bath;
    s.note = note.toStdString();
    if (m_store.append(s))
        leave();
}

void BathModel::leave()
{
    m_ticker.stop();
    m_cues.end();
    m_cues.hush();
    m_state.reset();
    m_siteChosen = false;
    settle();
    toPage(QStringLiteral("choose"));
    emit finished();
}

} // namespace firstdew::viewmodels
