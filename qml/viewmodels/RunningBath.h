#pragma once

#include "BathCues.h"
#include "Store.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "bath/Engine.h"
#endif

namespace firstdew::viewmodels {

/// One session from its beginning to its end: ticks, has every event heard, felt and shown, then keeps it, and finds
/// its place again after the app was gone. A disk that hangs or fails holds nothing up that protects the person.
class RunningBath : public QObject {
    Q_OBJECT

public:
    RunningBath(Store& store, BathCues& cues);

    /// Nothing where no session runs or waits to be written down.
    [[nodiscard]] const std::optional<bath::State>& state() const { return m_state; }
    [[nodiscard]] const std::string& id() const { return m_id; }
    /// Finished or stopped, and not yet let go of.
    [[nodiscard]] bool over() const;
    /// Whether events wait that could not be kept so far.
    [[nodiscard]] bool unsaved() const { return m_unsaved; }
    /// Keeps what waits to be kept, and waits for the disk.
    void flush();
    ~RunningBath() override;

    /// Whether the machine is said to be on, at zero and in the waveform planned when the session begins.
    enum class Machine { Off, On };
    /// Begins by that script: the answers and the plan are recorded first. False where they could not be.
    bool begin(const protocol::Script& script, facts::Milliamps target, const facts::Preparation& answers,
               Machine machine);
    /// Leads through that script with the machine off, from its check list on. Nothing of it is recorded, and nothing
    /// outside the app shows it; where nobody led for a while, it is over.
    void practise(const protocol::Script& script, facts::Milliamps target);
    [[nodiscard]] bool practising() const { return m_practice; }
    /// Takes up the session that the record has without an end. Gives how it was prepared, or nothing.
    std::optional<facts::BathPrepared> comeBack();
    void send(const bath::Event& event) { handle(event, true); }
    void send(facts::BathEventKind kind) { send(bath::Event{kind, {}, {}}); }
    /// What the large button does in the present step.
    void primary();
    /// Stops, but for a slip of the hand: see bath::stopsIn().
    void stopUnlessSlip();
    void takeBackStop();
    /// Seconds in which a stop can be taken back; 0 where nobody stopped.
    [[nodiscard]] int stopsIn() const;
    /// What was asked or told last in this step, and when, in milliseconds of the session.
    struct Said {
        protocol::Prompt prompt{};
        long long atMs = 0;
    };
    [[nodiscard]] const std::optional<Said>& said() const { return m_said; }
    /// Lets go of it, silent and with the screen free to go off.
    void end();

signals:
    /// Time went on, or something happened.
    void moved();
    /// Running, waiting for a word, finished or stopped: another page is due.
    void turned();
    /// What was asked for is not possible now; an empty text takes that back.
    void refused(const QString& why);

private:
    /// What follows from it is heard and felt unless it is told not to be.
    void handle(const bath::Event& event, bool heard);
    void keep(const std::vector<bath::Kept>& events);
    /// Begins to keep what waits, in the background.
    void write();
    /// Says whether events wait because they could not be kept, and tries again later.
    void tellWaiting(bool failed);
    /// Time counts, and the screen stays on, while the session is not over.
    void watch();

    Store& m_store;
    BathCues& m_cues;
    QTimer m_ticker;
    std::optional<bath::State> m_state;
    bool m_practice = false; ///< m_state is of practice
    std::string m_id;
    int m_sequence = 0;
    std::vector<facts::BathEvent> m_waiting; ///< to be kept, in this order
    QTimer m_writer;
    bool m_unsaved = false;
    std::optional<Said> m_said;
};

} // namespace firstdew::viewmodels
