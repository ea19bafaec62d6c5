#include "BathModel.h"

#include "BathView.h"
#include "Edge.h"
#include "protocol/Kit.h"
#include "protocol/MayBegin.h"
#include "protocol/Skin.h"
#include "words/BathWords.h"
#include "words/Errors.h"

#include <QPointer>
#include <algorithm>

namespace firstdew::viewmodels {

using namespace facts;
using protocol::PrepItem;

namespace {

/// A clearance with no end of its own is asked again after this time (our own choice, cautious).

QString pageOf(bath::Phase phase)
{
    switch (phase) {
    case bath::Phase::Running: return QStringLiteral("run");
    case bath::Phase::AwaitingMeanwhile: return QStringLiteral("meanwhile");
    default: return QStringLiteral("after");
    }
}

} // namespace

BathModel::BathModel(Store& store, BathPorts ports)
    : m_store(store), m_cues(store, ports), m_choice(store), m_bath(store, m_cues)
{
    connect(&m_bath, &RunningBath::moved, this, &BathModel::ticked);
    connect(&m_bath, &RunningBath::turned, this, &BathModel::follow);
    connect(&m_bath, &RunningBath::refused, this, &BathModel::refuse);
    connect(&store, &Store::changed, this, [this] {
        if (m_page == QLatin1String("choose"))
            m_choice.settle();
        emit changed();
    });
    comeBack();
}

/// After a kill or a restart: the same step, and the question what the machine did meanwhile.
void BathModel::comeBack()
{
    if (const auto prepared = m_bath.comeBack()) {
        m_choice.take(*prepared);
        follow();
    }
}

/// Shows the page of what the session has come to.
void BathModel::follow()
{
    if (m_bath.state())
        toPage(pageOf(m_bath.state()->phase));
}

QString BathModel::siteName() const { return words::siteName(m_choice.site()); }

QString BathModel::limitText() const { return words::limitSentence(m_choice.limit(), m_choice.giver()); }

QString BathModel::adviceText() const
{
    if (!allowed())
        return {};
    const auto advice = m_choice.advice();
    const auto script = m_choice.script();
    return words::adviceSentence(advice, script ? bath::prepared(*script, advice.target).target() : advice.target);
}

QString BathModel::lengthText() const
{
    const auto script = m_choice.script();
    return script ? words::lengthSentence(*script) : QString();
}

ui::Site::Value BathModel::site() const { return ui::shown(m_choice.site()); }

void BathModel::chooseSite(ui::Site::Value site)
{
    m_choice.setSite(ui::core(site).value_or(m_choice.site()));
    emit changed();
}

void BathModel::chooseWaveform(const QString& waveform)
{
    m_choice.setWaveform(valueOf<Waveform>(waveform).value_or(m_choice.waveform()));
    emit changed();
}

void BathModel::chooseWay(const QString& way)
{
    m_choice.setWay(valueOf<WayOfWorking>(way).value_or(m_choice.way()));
    m_choice.settleWay();
    emit changed();
}

void BathModel::chooseSide(const QString& side)
{
    m_choice.setSide(valueOf<Side>(side).value_or(m_choice.side()));
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
    if (skinBarred()) {
        toPage(QStringLiteral("blocked"));
        return;
    }
    if (const auto may = protocol::mayBegin(m_store.diary(), m_choice.site(), m_choice.waveform(), m_choice.way());
        !may && !may.error().code.starts_with("screening") && may.error().code != "short-question-due") {
        refuse(words::errorSentence(may.error()));
        return;
    }
    const auto due = protocol::screeningDue(m_store.diary());
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

bool BathModel::skinBarred() const { return protocol::skinBar(m_store.diary(), m_choice.site()).has_value(); }

protocol::ScreeningVerdict BathModel::verdict() const { return protocol::screen(m_store.diary(), m_choice.site()); }

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
    if (skinBarred() || verdict().outcome != protocol::ScreeningOutcome::Go) {
        toPage(QStringLiteral("blocked"));
        return;
    }
    m_done = {};
    m_asked = {};
    m_answers = {};
    m_answers.site = m_choice.site();
    m_audible = m_cues.prepare();
    toPage(QStringLiteral("prepare"));
}

QStringList BathModel::blockedBy() const
{
    QStringList out;
    for (const auto site : allOf<DiarySite>())
        if (const auto bar = protocol::skinBar(m_store.diary(), site); bar && treats(m_choice.site()).contains(site))
            out.append(tr("%1: %2").arg(words::siteName(site), words::skinName(bar->finding)));
    for (const auto row : verdict().deciding)
        out.append(words::screeningShort(row));
    return out;
}

bool BathModel::blockedForGood() const { return skinBarred() || verdict().outcome == protocol::ScreeningOutcome::Stop; }

void BathModel::cleared(const QString& who)
{
    const QString name = who.trimmed();
    if (name.isEmpty()) {
        refuse(tr("Write down who cleared it, so that the summary can say so."));
        return;
    }
    std::vector<Payload> words;
    for (const auto site : allOf<DiarySite>())
        if (treats(m_choice.site()).contains(site) && protocol::skinBar(m_store.diary(), site))
            words.emplace_back(SkinClearance{site, name.toStdString(), m_store.situation().today});
    const bool onlySkin = !words.empty();
    for (const auto row : verdict().deciding)
        words.emplace_back(Clearance{row, name.toStdString(), m_store.situation().today, {}});
    if (!m_store.append(words))
        return;
    onlySkin ? goOn() : answersDone();
}

std::vector<PrepItem> BathModel::linesToTick() const
{
    auto lines = protocol::preparationFor(m_choice.site(), m_choice.machine(), m_choice.way(), m_answers.smallWounds);
    std::erase_if(lines, [](PrepItem i) { return i == PrepItem::NoAntiperspirant || i == PrepItem::NotShaved; });
    return lines;
}

QVariantList BathModel::preparation() const
{
    QVariantList out;
    for (const auto item : linesToTick())
        out.append(
            QVariantMap{{"item", static_cast<int>(item)}, {"text", words::prepText(item)}, {"done", isDone(item)}});
    return out;
}

QStringList BathModel::waits() const
{
    QStringList out;
    for (const auto& w : protocol::waitsFor(m_answers, m_store.now()))
        out.append(words::waitSentence(w, m_store.situation().today));
    return out;
}

bool BathModel::ready() const
{
    const auto list = linesToTick();
    return allowed() && skinTold() && protocol::waitsFor(m_answers, m_store.now()).empty() &&
           std::all_of(list.begin(), list.end(), [&](PrepItem i) { return isDone(i); });
}

void BathModel::tick(int item)
{
    const auto i = static_cast<PrepItem>(item);
    m_done.contains(i) ? m_done.erase(i) : m_done.insert(i);
    emit changed();
}

void BathModel::answered(PrepItem item)
{
    m_asked.insert(item);
    emit changed();
}

void BathModel::setSmallWounds(bool on)
{
    m_answers.smallWounds = on;
    answered(PrepItem::WoundsCovered);
}

void BathModel::setAntiperspirant(int hoursAgo)
{
    m_answers.antiperspirant = hoursAgo < 0 ? std::nullopt : std::optional(m_store.now().plusMinutes(-60 * hoursAgo));
    answered(PrepItem::NoAntiperspirant);
}

void BathModel::setShaved(int daysAgo)
{
    m_answers.shaved = daysAgo < 0 ? std::nullopt : std::optional(m_store.now().plusMinutes(-24 * 60 * daysAgo));
    answered(PrepItem::NotShaved);
}

void BathModel::askVoice(const QString& language)
{
    m_cues.askVoice(language.toStdString(), [self = QPointer(this)](bool speaks) {
        if (self && std::exchange(self->m_deviceSpeaks, speaks) != speaks)
            emit self->deviceSpeaksChanged();
    });
}

void BathModel::checkVolume() { m_cues.tryOut(); }

void BathModel::start()
{
    if (!ready())
        return;
    // The answers may have changed since the questions were passed, and the day with them.
    if (skinBarred() || verdict().outcome != protocol::ScreeningOutcome::Go) {
        toPage(QStringLiteral("blocked"));
        return;
    }
    if (const auto gate = protocol::mayBegin(m_store.diary(), m_choice.site(), m_choice.waveform(), m_choice.way());
        !gate) {
        refuse(words::errorSentence(gate.error()));
        return;
    }
    if (const auto barred = m_choice.refusalOfWay()) {
        refuse(words::errorSentence(*barred));
        return;
    }
    const auto script = m_choice.script();
    m_audible = m_audible || m_cues.prepare(); // it may be there by now
    const bool under = m_choice.way() == WayOfWorking::HandsUnder;
    if (!m_audible && under)
        refuse(words::errorSentence({"voice-needed", "sound", {}}));
    else if (!m_audible) // no prompt, and above all no alarm, would be heard
        refuse(words::errorSentence({"part-missing", "sound", {}}));
    else if (!script)
        refuse(words::errorSentence(script.error()));
    else
        m_bath.begin(*script, m_choice.advice().target, m_answers);
}

void BathModel::refuse(const QString& why)
{
    if (m_refusal == why)
        return;
    m_refusal = why;
    emit refusalChanged();
}

QVariantMap BathModel::running() const
{
    if (!m_bath.state())
        return {};
    QVariantMap view = runningView(*m_bath.state());
    view["unsaved"] = m_bath.unsaved();
    // Where the voice speaks of the list, the list is shown.
    QStringList list;
    if (view["kind"] == token(protocol::StepKind::CheckList))
        for (const auto item :
             protocol::preparationFor(m_choice.site(), m_choice.machine(), m_choice.way(), m_answers.smallWounds))
            list.append(words::prepText(item));
    view["list"] = list;
    return view;
}

void BathModel::reading(double mA) { m_bath.send(bath::Event{BathEventKind::Reading, Milliamps{mA}, {}}); }

void BathModel::meanwhile(const QString& answer)
{
    if (const auto a = valueOf<Meanwhile>(answer))
        m_bath.send(bath::Event{BathEventKind::Resumed, {}, *a});
}

QVariantMap BathModel::afterwards() const
{
    if (!m_bath.state())
        return {};
    QVariantMap view = afterView(*m_bath.state());
    view["cells"] = m_choice.machine().power == PowerSource::Cells;
    return view;
}

bool BathModel::cellsLow() const { return protocol::cellsLow(m_store.situation().cellSessionsLeft); }

void BathModel::save(int comfort, double comfortable, const QList<ui::SkinFinding::Value>& skin, const QString& note)
{
    if (!m_bath.state())
        return;
    Session s = sessionOf(*m_bath.state());
    s.comfort = ui::core(static_cast<ui::Comfort::Value>(comfort));
    s.skin = ui::coreSet(skin);
    if (comfortable > 0)
        s.comfortable = Milliamps{comfortable};
    s.machine = m_choice.machine().name;
    s.bath = m_bath.id();
    s.note = note.toStdString();
    m_bath.flush();
    if (m_store.append(s))
        leave();
}

void BathModel::leave()
{
    m_bath.end();
    m_choice.forget();
    toPage(QStringLiteral("choose"));
    emit finished();
}

} // namespace firstdew::viewmodels
