#pragma once

#include "BathChoice.h"
#include "RunningBath.h"
#include "SessionValues.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which these bring in
#include "protocol/Preparation.h"
#include "protocol/Screening.h"
#endif

namespace firstdew::viewmodels {

/// Leads from page to page of one session: choice, safety questions, preparation, the running session, afterwards.
class BathModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(firstdew::ui::BathPage::Value page READ page NOTIFY changed)
    Q_PROPERTY(QList<firstdew::ui::SiteChoice> sites READ sites NOTIFY changed)
    Q_PROPERTY(firstdew::ui::Site::Value site READ site NOTIFY changed)
    Q_PROPERTY(QString siteName READ siteName NOTIFY changed)
    Q_PROPERTY(QList<firstdew::ui::WaveformChoice> waveforms READ waveforms NOTIFY changed)
    Q_PROPERTY(firstdew::ui::Waveform::Value waveform READ waveform NOTIFY changed)
    Q_PROPERTY(QList<firstdew::ui::WayChoice> ways READ ways NOTIFY changed)
    Q_PROPERTY(firstdew::ui::WayOfWorking::Value way READ way NOTIFY changed)
    Q_PROPERTY(firstdew::ui::Side::Value firstSide READ firstSide NOTIFY changed)
    Q_PROPERTY(bool sided READ sided NOTIFY changed)
    Q_PROPERTY(bool allowed READ allowed NOTIFY changed)
    Q_PROPERTY(QString limitText READ limitText NOTIFY changed)
    /// Above which current the skin is to be watched; empty where there is no such level below the limit.
    Q_PROPERTY(QString watchText READ watchText NOTIFY changed)
    /// The skin that counts for the limit.
    Q_PROPERTY(QString areaText READ areaText NOTIFY changed)
    Q_PROPERTY(QString adviceText READ adviceText NOTIFY changed)
    Q_PROPERTY(QString lengthText READ lengthText NOTIFY changed)
    /// How long the session is this time, where a comparison of lengths runs; empty elsewhere.
    Q_PROPERTY(QString comparedText READ comparedText NOTIFY changed)
    /// Whether one card and one statement are enough before this session.
    Q_PROPERTY(bool shortWay READ shortWay NOTIFY changed)
    /// Whether the choice is open, with a card to go back to.
    Q_PROPERTY(bool changing READ changing NOTIFY changed)
    /// Why the list is gone through line by line; empty where it need not be.
    Q_PROPERTY(QString longWayText READ longWayText NOTIFY changed)
    /// How it is to be: current, way of working and aim, in one line.
    Q_PROPERTY(QString asLastText READ asLastText NOTIFY changed)
    /// What the person says of health and skin, a line each.
    Q_PROPERTY(QStringList statement READ statement NOTIFY changed)
    /// Whether that was said to be true just now.
    Q_PROPERTY(bool told READ told NOTIFY changed)
    /// What is set up before the machine is switched on, a line each.
    Q_PROPERTY(QStringList kit READ kit NOTIFY changed)
    Q_PROPERTY(QString beginText READ beginText NOTIFY changed)
    /// Whether answers are asked for before the statement: all health questions, or what stands in the way.
    Q_PROPERTY(bool mustAsk READ mustAsk NOTIFY changed)
    /// Why no session can begin here today, other than by an answer; empty where one can.
    Q_PROPERTY(QString bar READ bar NOTIFY changed)
    /// Whether this session follows another one of today.
    Q_PROPERTY(bool follows READ follows NOTIFY changed)
    Q_PROPERTY(bool askAll READ askAll NOTIFY changed)
    Q_PROPERTY(QStringList blockedBy READ blockedBy NOTIFY changed)
    Q_PROPERTY(bool blockedForGood READ blockedForGood NOTIFY changed)
    Q_PROPERTY(QList<firstdew::ui::PrepLine> preparation READ preparation NOTIFY changed)
    /// Whether all that is asked of the skin there has been answered.
    Q_PROPERTY(bool skinTold READ skinTold NOTIFY changed)
    /// Whether the machine's batteries last for one more session at most.
    Q_PROPERTY(bool cellsLow READ cellsLow NOTIFY changed)
    Q_PROPERTY(QStringList waits READ waits NOTIFY changed)
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    Q_PROPERTY(firstdew::ui::RunningPage running READ running NOTIFY ticked)
    Q_PROPERTY(firstdew::ui::AfterPage afterwards READ afterwards NOTIFY changed)
    /// The step in one word or two.
    Q_PROPERTY(QString verb READ verb NOTIFY ticked)
    /// What is asked for or told besides the step, in words: the visible twin of a prompt. Empty where nothing is.
    Q_PROPERTY(QString twin READ twin NOTIFY ticked)
    /// Seconds in which a stop can be taken back; 0 where nobody stopped.
    Q_PROPERTY(int stopsIn READ stopsIn NOTIFY ticked)
    Q_PROPERTY(QString stoppedText READ stoppedText NOTIFY ticked)
    Q_PROPERTY(QString refusal READ refusal NOTIFY refusalChanged)

    /// Whether a session is running or waits for an answer: nothing else may take the screen.
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    /// Whether this is practice: the machine stays off, and nothing is recorded.
    Q_PROPERTY(bool practice READ practice NOTIFY changed)
    /// Whether there is a session there to practise.
    Q_PROPERTY(bool canPractise READ canPractise NOTIFY changed)
    /// In practice, why no real session can begin today; empty where one can.
    Q_PROPERTY(QString practiceBar READ practiceBar NOTIFY changed)
    /// In practice, how long the step takes in a real session; empty where it is no longer.
    Q_PROPERTY(QString practiceLength READ practiceLength NOTIFY ticked)
    /// What a step lasts in practice at most.
    Q_PROPERTY(int practiceSeconds READ practiceSeconds CONSTANT)
    /// Whether steps can be felt on this device; PlanModel.vibration is whether the person wants that.
    Q_PROPERTY(bool canVibrate READ canVibrate CONSTANT)
    /// Whether a screen reader is on, as far as the system says so.
    Q_PROPERTY(bool screenReader READ screenReader NOTIFY changed)
    /// Whether a soft sound runs through a session, which tells by its end that nobody leads any more.
    Q_PROPERTY(bool hasBed READ hasBed NOTIFY changed)
    /// Who says the prompts in the person's language.
    Q_PROPERTY(firstdew::ui::Tongue::Value tongue READ tongue NOTIFY changed)
    Q_PROPERTY(bool deviceSpeaks READ deviceSpeaks NOTIFY deviceSpeaksChanged)

public:
    BathModel(Store& store, BathPorts ports);
    static BathModel* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] ui::BathPage::Value page() const { return m_page; }
    [[nodiscard]] bool busy() const { return m_page == ui::BathPage::Run || m_page == ui::BathPage::Meanwhile; }
    [[nodiscard]] bool practice() const { return m_practice; }
    [[nodiscard]] bool canPractise() const;
    [[nodiscard]] QString practiceBar() const;
    [[nodiscard]] QString practiceLength() const;
    [[nodiscard]] int practiceSeconds() const;
    [[nodiscard]] bool deviceSpeaks() const { return m_deviceSpeaks; }
    [[nodiscard]] ui::Tongue::Value tongue() const;
    [[nodiscard]] bool hasBed() const { return m_cues.hasBed(); }
    [[nodiscard]] bool screenReader() const { return m_cues.screenReader(); }
    [[nodiscard]] bool canVibrate() const { return m_cues.canVibrate(); }
    [[nodiscard]] QList<ui::SiteChoice> sites() const { return m_choice.sites(); }
    [[nodiscard]] ui::Site::Value site() const;
    [[nodiscard]] QString siteName() const;
    [[nodiscard]] QList<ui::WaveformChoice> waveforms() const { return m_choice.waveforms(); }
    [[nodiscard]] ui::Waveform::Value waveform() const;
    [[nodiscard]] QList<ui::WayChoice> ways() const { return m_choice.ways(); }
    [[nodiscard]] ui::WayOfWorking::Value way() const;
    [[nodiscard]] ui::Side::Value firstSide() const;
    /// What the session plays.
    [[nodiscard]] diary::Cues cues() const;
    [[nodiscard]] bool sided() const { return m_choice.site() == facts::Site::HandFoot; }
    [[nodiscard]] bool allowed() const { return m_choice.limit().allowed; }
    [[nodiscard]] QString limitText() const;
    [[nodiscard]] QString watchText() const;
    [[nodiscard]] QString areaText() const;
    [[nodiscard]] QString adviceText() const;
    [[nodiscard]] QString lengthText() const;
    [[nodiscard]] QString comparedText() const { return m_choice.compared(); }
    [[nodiscard]] bool shortWay() const;
    [[nodiscard]] bool changing() const { return m_changing && m_page == ui::BathPage::Choose; }
    [[nodiscard]] QString longWayText() const;
    [[nodiscard]] QString asLastText() const;
    [[nodiscard]] QStringList statement() const;
    [[nodiscard]] bool told() const;
    [[nodiscard]] QStringList kit() const;
    [[nodiscard]] QString beginText() const;
    [[nodiscard]] bool mustAsk() const;
    [[nodiscard]] QString bar() const;
    [[nodiscard]] bool follows() const { return m_follows; }
    [[nodiscard]] bool askAll() const { return m_askAll; }
    [[nodiscard]] QStringList blockedBy() const;
    [[nodiscard]] bool blockedForGood() const;
    [[nodiscard]] QList<ui::PrepLine> preparation() const;
    [[nodiscard]] bool skinTold() const { return m_asked == kQuestions; }
    [[nodiscard]] bool cellsLow() const;
    [[nodiscard]] QStringList waits() const;
    [[nodiscard]] bool ready() const;
    [[nodiscard]] ui::RunningPage running() const;
    [[nodiscard]] ui::AfterPage afterwards() const;
    [[nodiscard]] QString verb() const;
    [[nodiscard]] QString twin() const;
    [[nodiscard]] int stopsIn() const { return m_bath.stopsIn(); }
    [[nodiscard]] QString stoppedText() const;
    [[nodiscard]] QString refusal() const { return m_refusal; }

    /// A session there was asked for, from another page.
    Q_INVOKABLE void askFor(firstdew::ui::Site::Value site);
    Q_INVOKABLE void chooseSite(firstdew::ui::Site::Value site);
    Q_INVOKABLE void chooseWaveform(firstdew::ui::Waveform::Value waveform);
    Q_INVOKABLE void chooseWay(firstdew::ui::WayOfWorking::Value way);
    Q_INVOKABLE void chooseSide(firstdew::ui::Side::Value side);
    /// The choice can be changed, then goOn().
    Q_INVOKABLE void change();
    /// The statement is true, or that is taken back.
    Q_INVOKABLE void setTold(bool told);
    /// Something of the statement is not quite so: every line is gone through.
    Q_INVOKABLE void notQuite();
    /// The short way: the statement is true, the kit is set up, the machine is on, at zero and in the waveform chosen.
    Q_INVOKABLE void startAsLast();
    /// No further session today.
    Q_INVOKABLE void enoughForNow();
    /// From the choice to the safety questions, or past them where they were answered today.
    Q_INVOKABLE void goOn();
    Q_INVOKABLE void back();
    /// The short question: nothing has changed / something has.
    Q_INVOKABLE void nothingChanged();
    Q_INVOKABLE void somethingChanged();
    /// All questions are answered, in the record: on to the preparation, or to what stands in the way.
    Q_INVOKABLE void answersDone();
    /// A clinician's word on the answers that ask for one.
    Q_INVOKABLE void cleared(const QString& who);
    Q_INVOKABLE void tick(firstdew::ui::PrepItem::Value item);
    Q_INVOKABLE void setSmallCuts(firstdew::ui::SmallCuts::Value answer);
    Q_INVOKABLE void setAntiperspirant(firstdew::ui::LastAntiperspirant::Value answer);
    Q_INVOKABLE void setShaved(firstdew::ui::LastShave::Value answer);
    Q_INVOKABLE void checkVolume();
    /// Asks whether the device has a voice of its own for that language; deviceSpeaks says so when it is known.
    Q_INVOKABLE void askVoice(const QString& language);
    Q_INVOKABLE void start();

    Q_INVOKABLE void primary() { m_bath.primary(); }
    Q_INVOKABLE void reading(double mA);
    Q_INVOKABLE void discomfort() { m_bath.send(facts::BathEventKind::Discomfort); }
    /// The current is at zero in the middle of a phase, which waits there until it is raised again.
    Q_INVOKABLE void loweredEarly() { m_bath.send(facts::BathEventKind::Lowered); }
    Q_INVOKABLE void outOfWater() { m_bath.send(facts::BathEventKind::OutOfWater); }
    Q_INVOKABLE void stop() { m_bath.send(facts::BathEventKind::Stop); }
    /// The same, but that a drip on the screen can be taken back for a few seconds.
    /// Keeps what waits to be kept, and waits for the disk.
    void flush() { m_bath.flush(); }
    Q_INVOKABLE void stopUnlessSlip() { m_bath.stopUnlessSlip(); }
    Q_INVOKABLE void takeBackStop() { m_bath.takeBackStop(); }
    Q_INVOKABLE void meanwhile(firstdew::ui::Meanwhile::Value answer);

    /// A comfort below 0 was not said.
    Q_INVOKABLE void save(int comfort, double comfortable, const QList<firstdew::ui::SkinFinding::Value>& skin,
                          const QString& note);
    Q_INVOKABLE void leave();

    /// To the page that practice begins from; nothing while a session runs or waits to be written down.
    Q_INVOKABLE void practise();
    Q_INVOKABLE void beginPractice();
    /// Out of practice at once, to the choice of a session.
    Q_INVOKABLE void leavePractice();

signals:
    void changed();
    void ticked();
    void refusalChanged();
    void deviceSpeaksChanged();
    void finished();

private:
    /// Asked of the skin before the list.
    inline static const facts::SetOf<protocol::PrepItem> kQuestions{
        protocol::PrepItem::WoundsCovered, protocol::PrepItem::NoAntiperspirant, protocol::PrepItem::NotShaved};
    [[nodiscard]] bool skinBarred() const;
    [[nodiscard]] protocol::ScreeningVerdict verdict() const;
    /// What is seen to and ticked; what an answer tells is not asked again.
    [[nodiscard]] std::vector<protocol::PrepItem> linesToTick() const;
    void answered(protocol::PrepItem item, bool said);
    [[nodiscard]] bool isDone(protocol::PrepItem item) const { return m_done.contains(item); }
    void toPage(ui::BathPage::Value page);
    void begin(RunningBath::Machine machine);
    [[nodiscard]] std::optional<facts::Error> gate() const;
    void follow();
    void comeBack();
    void refuse(const QString& why);

    Store& m_store;
    BathCues m_cues;
    BathChoice m_choice;
    RunningBath m_bath;
    ui::BathPage::Value m_page = ui::BathPage::Choose;
    QString m_refusal;
    bool m_askAll = false;
    bool m_changing = false; ///< the choice is open
    bool m_notQuite = false; ///< the statement did not hold
    bool m_follows = false;
    bool m_practice = false;
    std::optional<facts::LocalTime> m_told; ///< when the statement was said to be true
    facts::SetOf<protocol::PrepItem> m_done;
    facts::Preparation m_answers;
    facts::SetOf<protocol::PrepItem> m_asked; ///< of kQuestions, those that were answered
    bool m_deviceSpeaks = false;
    bool m_silent = false;  ///< sound is gone, by the last word of the voice
    bool m_audible = false; ///< prompts and alarm can be made heard
};

} // namespace firstdew::viewmodels
