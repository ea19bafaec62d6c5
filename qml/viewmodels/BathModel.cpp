#include "BathModel.h"

#include "BathView.h"
#include "Edge.h"
#include "protocol/Kit.h"
#include "protocol/MayBegin.h"
#include "protocol/Practice.h"
#include "protocol/Skin.h"
#include "protocol/WayIn.h"
#include "situation/Next.h"
#include "words/BathWords.h"
#include "words/Errors.h"
#include "words/Prompts.h"

#include <QPointer>
#include <algorithm>
#include <utility>

namespace firstdew::viewmodels {

using namespace facts;
using protocol::PrepItem;

namespace {

ui::BathPage::Value pageOf(bath::Phase phase)
{
    switch (phase) {
    case bath::Phase::Running: return ui::BathPage::Run;
    case bath::Phase::AwaitingMeanwhile: return ui::BathPage::Meanwhile;
    default: return ui::BathPage::After;
    }
}

} // namespace

BathModel::BathModel(Store& store, BathPorts ports)
    : m_store(store), m_cues(store, ports), m_choice(store, ports.screenReader, [this] { return m_cues.speakers(); }),
      m_bath(store, m_cues)
{
    connect(&m_bath, &RunningBath::moved, this, &BathModel::ticked);
    connect(&m_bath, &RunningBath::turned, this, &BathModel::follow);
    connect(&m_bath, &RunningBath::refused, this, &BathModel::refuse);
    connect(&store, &Store::changed, this, [this] {
        if (m_page == ui::BathPage::Choose)
            m_choice.propose();
        emit changed();
    });
    m_cues.onSilence([self = QPointer(this)](bool silent) {
        if (self && std::exchange(self->m_silent, silent) != silent)
            emit self->ticked();
    });
    m_cues.onChange([self = QPointer(this)] {
        if (!self)
            return;
        if (self->m_page == ui::BathPage::Choose)
            self->m_choice.propose();
        emit self->changed();
    });
    m_cues.onStop([self = QPointer(this)] {
        if (self)
            self->stopUnlessSlip();
    });
    comeBack();
}

/// After a kill or a restart: the same step, and the question what the machine did meanwhile.
void BathModel::comeBack()
{
    if (const auto prepared = m_bath.comeBack()) {
        m_choice.restore(*prepared);
        follow();
    }
}

/// Shows the page of what the session has come to.
void BathModel::follow()
{
    if (m_practice)
        toPage(!m_bath.state() ? ui::BathPage::PracticeStart
               : m_bath.over() ? ui::BathPage::PracticeOver
                               : ui::BathPage::Run);
    else if (m_bath.state())
        toPage(pageOf(m_bath.state()->phase));
}

QString BathModel::siteName() const { return words::siteName(m_choice.site()); }

QString BathModel::limitText() const { return words::limitSentence(m_choice.limit(), m_choice.giver()); }

QString BathModel::watchText() const { return words::watchSentence(m_choice.limit().warnAbove); }

QString BathModel::areaText() const
{
    const auto& diary = m_store.diary();
    const auto site = m_choice.site();
    return words::areaSentence(protocol::limitQueryFor(diary, site, m_choice.waveform()),
                               protocol::areaFrom(diary, site));
}

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
ui::Waveform::Value BathModel::waveform() const { return ui::shown(m_choice.waveform()); }
ui::WayOfWorking::Value BathModel::way() const { return ui::shown(m_choice.way()); }
ui::Side::Value BathModel::firstSide() const { return ui::shown(m_choice.side()); }

diary::Cues BathModel::cues() const { return diary::cuesFor(m_store.diary().preferences.cues, m_choice.way()); }

void BathModel::askFor(ui::Site::Value site)
{
    if (m_practice)
        leavePractice();
    m_changing = false;
    toPage(ui::BathPage::Choose);
    chooseSite(site);
}

void BathModel::chooseSite(ui::Site::Value site)
{
    m_choice.setSite(ui::core(site).value_or(m_choice.site()));
    m_notQuite = false;
    m_follows = false;
    setTold(false);
}

void BathModel::chooseWaveform(ui::Waveform::Value waveform)
{
    m_choice.setWaveform(ui::core(waveform).value_or(m_choice.waveform()));
    setTold(false);
}

void BathModel::chooseWay(ui::WayOfWorking::Value way)
{
    m_choice.setWay(ui::core(way).value_or(m_choice.way()));
    setTold(false);
}

void BathModel::chooseSide(ui::Side::Value side)
{
    m_choice.setSide(ui::core(side).value_or(m_choice.side()));
    setTold(false);
}

void BathModel::toPage(ui::BathPage::Value page)
{
    m_page = page;
    refuse({});
    emit changed();
}

bool BathModel::shortWay() const
{
    return !m_changing && !m_notQuite && !protocol::longWayReason(m_store.diary(), m_choice.site(), m_choice.way());
}

QString BathModel::longWayText() const
{
    const auto reason = protocol::longWayReason(m_store.diary(), m_choice.site(), m_choice.way());
    return reason ? words::longWaySentence(*reason) : QString();
}

QString BathModel::asLastText() const
{
    QStringList parts{words::waveformName(m_choice.waveform()), words::wayName(m_choice.way())};
    if (m_choice.script())
        parts << words::aimName(m_choice.advice().target);
    return parts.join(QStringLiteral(" · "));
}

QStringList BathModel::statement() const
{
    return words::statementLines(protocol::screeningDue(m_store.diary()) != protocol::ScreeningDue::None,
                                 m_choice.site());
}

bool BathModel::told() const
{
    return m_told && m_store.now() >= *m_told && m_store.now() <= m_told->plusMinutes(protocol::kSaidHolds);
}

QStringList BathModel::kit() const
{
    QStringList out;
    for (const auto item : protocol::preparationFor(m_choice.site(), m_choice.machine(), m_choice.way(), false))
        if (item != PrepItem::SkinChecked && item != PrepItem::NoAntiperspirant && item != PrepItem::NotShaved)
            out << words::prepText(item, m_choice.site());
    return out;
}

QString BathModel::beginText() const { return words::beginName(m_choice.waveform()); }

bool BathModel::mustAsk() const
{
    return skinBarred() || verdict().outcome != protocol::ScreeningOutcome::Go ||
           protocol::screeningDue(m_store.diary()) == protocol::ScreeningDue::Full;
}

/// What the gate says, but for what the pages before the session ask.
std::optional<Error> BathModel::gate() const
{
    const auto may =
        bath::mayPrepare(m_store.diary(), m_choice.site(), m_choice.waveform(), m_choice.way(), m_choice.phone());
    const bool asked = !may && (may.error().code.starts_with("screening") || may.error().code == "short-question-due");
    return may || asked ? std::nullopt : std::optional(may.error());
}

QString BathModel::bar() const
{
    const auto error = skinBarred() ? std::nullopt : gate();
    return error ? words::errorSentence(*error) : QString();
}

void BathModel::change()
{
    m_changing = true;
    setTold(false);
}

void BathModel::setTold(bool told)
{
    if (told) {
        m_told = m_store.now();
        m_audible = m_cues.prepare();
        m_cues.speakOfKit(m_choice.waveform());
    } else if (m_told) {
        m_told.reset();
        m_cues.hush();
    }
    emit changed();
}

void BathModel::notQuite()
{
    m_notQuite = true;
    setTold(false);
    goOn();
}

void BathModel::startAsLast()
{
    if (!shortWay() || !told()) {
        setTold(false);
        return;
    }
    if (protocol::screeningDue(m_store.diary()) == protocol::ScreeningDue::ShortQuestion &&
        !m_store.append(Screening{false, {}, {}}))
        return;
    // The statement answers what is asked of the skin, and its button says that the list is seen to.
    m_answers = {};
    m_answers.site = m_choice.site();
    m_asked = kQuestions;
    m_done = {};
    for (const auto item : linesToTick())
        m_done.insert(item);
    begin(RunningBath::Machine::On);
}

void BathModel::enoughForNow()
{
    m_follows = false;
    m_choice.forget();
    setTold(false);
    emit finished();
}

void BathModel::goOn()
{
    if (skinBarred()) {
        toPage(ui::BathPage::Blocked);
        return;
    }
    if (const auto error = gate()) {
        refuse(words::errorSentence(*error));
        return;
    }
    m_changing = false;
    const auto due = protocol::screeningDue(m_store.diary());
    m_askAll = due == protocol::ScreeningDue::Full;
    // The card asks the short question itself.
    if (due == protocol::ScreeningDue::None || (shortWay() && due == protocol::ScreeningDue::ShortQuestion))
        answersDone();
    else
        toPage(ui::BathPage::Screening);
}

void BathModel::back()
{
    const bool toQuestions = m_page == ui::BathPage::Prepare && m_askAll;
    if (!toQuestions)
        m_notQuite = m_changing = false;
    toPage(toQuestions ? ui::BathPage::Screening : ui::BathPage::Choose);
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
        toPage(ui::BathPage::Blocked);
        return;
    }
    if (shortWay()) {
        toPage(ui::BathPage::Choose);
        return;
    }
    m_done = {};
    m_asked = {};
    m_answers = {};
    m_answers.site = m_choice.site();
    m_audible = m_cues.prepare();
    toPage(ui::BathPage::Prepare);
}

QStringList BathModel::blockedBy() const
{
    QStringList out;
    for (const auto site : allOf<DiarySite>())
        if (const auto bar = protocol::skinBar(m_store.diary(), site); bar && treats(m_choice.site()).contains(site))
            out.append(tr("%1: %2").arg(words::siteName(site), words::within(words::skinName(bar->finding))));
    for (const auto row : verdict().deciding)
        out.append(words::screeningShort(row));
    return out;
}

bool BathModel::blockedForGood() const { return skinBarred() || verdict().outcome == protocol::ScreeningOutcome::Stop; }

void BathModel::cleared(const QString& who)
{
    const QString name = who.trimmed();
    if (name.isEmpty()) {
        refuse(tr("Write down who approved it, so that the summary can say so."));
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

void BathModel::askVoice(const QString& language)
{
    m_cues.askVoice(language.toStdString(), [self = QPointer(this)](bool speaks) {
        if (self && std::exchange(self->m_deviceSpeaks, speaks) != speaks)
            emit self->deviceSpeaksChanged();
    });
}

ui::Tongue::Value BathModel::tongue() const { return ui::shown(m_choice.phone().tongue); }

void BathModel::checkVolume() { m_cues.tryOut(); }

void BathModel::start() { begin(RunningBath::Machine::Off); }

void BathModel::begin(RunningBath::Machine machine)
{
    if (!ready())
        return;
    // The answers may have changed since the questions were passed, and the day with them.
    if (skinBarred() || verdict().outcome != protocol::ScreeningOutcome::Go) {
        toPage(ui::BathPage::Blocked);
        return;
    }
    if (const auto gate = protocol::mayBegin(m_store.diary(), m_choice.site(), m_choice.waveform(), m_choice.way(), {},
                                             m_choice.phone());
        !gate) {
        refuse(words::errorSentence(gate.error()));
        return;
    }
    const auto script = m_choice.script();
    m_audible = m_audible || m_cues.prepare(); // it may be there by now
    const bool under = m_choice.way() == WayOfWorking::HandsUnder;
    if (!m_audible && under)
        refuse(words::errorSentence({"voice-needed", "sound", {}}));
    else if (!m_audible) // no prompt, and above all no alarm, would be heard
        refuse(words::errorSentence({"sound-missing", "sound", {}}));
    else if (!script)
        refuse(words::errorSentence(script.error()));
    else
        m_bath.begin(*script, m_choice.advice().target, m_answers, machine);
}

void BathModel::refuse(const QString& why)
{
    if (m_refusal == why)
        return;
    m_refusal = why;
    emit refusalChanged();
}

ui::RunningPage BathModel::running() const
{
    if (!m_bath.state())
        return {};
    ui::RunningPage page = runningPage(*m_bath.state());
    page.unsaved = m_bath.unsaved();
    page.silent = m_silent;
    page.meter.watch = watchText();
    // Where the voice speaks of the list, the list is shown.
    if (page.kind == ui::StepKind::CheckList)
        for (const auto item :
             protocol::preparationFor(m_choice.site(), m_choice.machine(), m_choice.way(), m_answers.smallWounds))
            page.list.append(words::prepText(item, m_choice.site()));
    return page;
}

QString BathModel::verb() const
{
    return m_bath.state() ? words::verbName(m_bath.state()->script.steps[m_bath.state()->step]) : QString();
}

QString BathModel::twin() const
{
    if (!m_bath.state() || !m_bath.said())
        return {};
    const auto& [prompt, at] = *m_bath.said();
    return words::twinSentence(*m_bath.state(), prompt, at);
}

QString BathModel::stoppedText() const
{
    return m_bath.state() ? words::promptText(protocol::stoppedPrompt(m_bath.state()->script.request)) : QString();
}

void BathModel::reading(double mA) { m_bath.send(bath::Event{BathEventKind::Reading, Milliamps{mA}, {}}); }

void BathModel::meanwhile(ui::Meanwhile::Value answer)
{
    if (const auto a = ui::core(answer))
        m_bath.send(bath::Event{BathEventKind::Resumed, {}, *a});
}

ui::AfterPage BathModel::afterwards() const
{
    if (!m_bath.state())
        return {};
    ui::AfterPage page = afterPage(*m_bath.state());
    page.cells = m_choice.machine().power == PowerSource::Cells;
    return page;
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
    if (!m_store.append(s))
        return;
    const auto next = situation::sessionAfter(m_store.diary(), m_store.situation(), s.site);
    if (!next) {
        leave();
        return;
    }
    m_bath.end();
    m_choice.forget();
    askFor(ui::shown(*next));
    m_follows = true;
    emit changed();
}

void BathModel::leave()
{
    m_bath.end();
    m_choice.forget();
    m_notQuite = false;
    m_follows = false;
    m_told.reset();
    toPage(ui::BathPage::Choose);
    emit finished();
}

} // namespace firstdew::viewmodels
