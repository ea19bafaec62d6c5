#pragma once

#include "Enums.h"

#include <QList>
#include <QString>
#include <QStringList>

// What the pages of a session show, as values. Days are days since 1970-01-01; 0 stands for none.
namespace firstdew::ui {

/// A site that a session may treat.
class SiteChoice {
    Q_GADGET
    QML_VALUE_TYPE(siteChoice)
    Q_PROPERTY(firstdew::ui::Site::Value site MEMBER site FINAL)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString minutes MEMBER minutes FINAL)

public:
    Site::Value site{};
    QString name;
    QString minutes; ///< of current, in words
    bool operator==(const SiteChoice&) const = default;
};

/// A waveform that a session may have.
class WaveformChoice {
    Q_GADGET
    QML_VALUE_TYPE(waveformChoice)
    Q_PROPERTY(firstdew::ui::Waveform::Value waveform MEMBER waveform FINAL)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(bool allowed MEMBER allowed FINAL)
    Q_PROPERTY(QString why MEMBER why FINAL)

public:
    Waveform::Value waveform{};
    QString name;
    bool allowed = false;
    QString why; ///< it is not allowed, in words
    bool operator==(const WaveformChoice&) const = default;
};

/// A way of working that a session may have.
class WayChoice {
    Q_GADGET
    QML_VALUE_TYPE(wayChoice)
    Q_PROPERTY(firstdew::ui::WayOfWorking::Value way MEMBER way FINAL)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(bool allowed MEMBER allowed FINAL)
    Q_PROPERTY(QString hint MEMBER hint FINAL)

public:
    WayOfWorking::Value way{};
    QString name;
    bool allowed = false;
    QString hint; ///< what it asks for, or why it is not allowed
    bool operator==(const WayChoice&) const = default;
};

/// A line to tick before a session.
class PrepLine {
    Q_GADGET
    QML_VALUE_TYPE(prepLine)
    Q_PROPERTY(firstdew::ui::PrepItem::Value item MEMBER item FINAL)
    Q_PROPERTY(QString text MEMBER text FINAL)
    Q_PROPERTY(bool done MEMBER done FINAL)
    Q_PROPERTY(QList<firstdew::ui::Subject::Value> drawings MEMBER drawings FINAL)

public:
    PrepItem::Value item{};
    QString text;
    bool done = false;
    QList<Subject::Value> drawings; ///< in the order in which they are done
    bool operator==(const PrepLine&) const = default;
};

/// A check of how the treatment is done.
class TechniqueLine {
    Q_GADGET
    QML_VALUE_TYPE(techniqueLine)
    Q_PROPERTY(QString text MEMBER text FINAL)
    Q_PROPERTY(QList<firstdew::ui::Subject::Value> drawings MEMBER drawings FINAL)

public:
    QString text;
    QList<Subject::Value> drawings; ///< in the order in which they are done
    bool operator==(const TechniqueLine&) const = default;
};

/// The machine's meter: what it should show and what it showed.
class MeterView {
    Q_GADGET
    QML_VALUE_TYPE(meterView)
    Q_PROPERTY(QString target MEMBER target FINAL)
    Q_PROPERTY(QString limit MEMBER limit FINAL)
    Q_PROPERTY(QString watch MEMBER watch FINAL)
    Q_PROPERTY(qreal limitMa MEMBER limitMa FINAL)
    Q_PROPERTY(qreal mostReading MEMBER mostReading FINAL)
    Q_PROPERTY(QString reading MEMBER reading FINAL)
    Q_PROPERTY(bool hasReading MEMBER hasReading FINAL)
    Q_PROPERTY(qreal lastReading MEMBER lastReading FINAL)

public:
    QString target;
    QString limit;
    QString watch; ///< above which current the skin is to be watched; empty: no such level below the limit
    qreal limitMa = 0;
    qreal mostReading = 0;   ///< mA; a reading above it is refused as a slip
    QString reading;         ///< the last one
    bool hasReading = false; ///< since the current was raised
    qreal lastReading = 0;   ///< mA; the target before the first reading
    bool operator==(const MeterView&) const = default;
};

/// Everything that the running page shows.
class RunningPage {
    Q_GADGET
    QML_VALUE_TYPE(runningPage)
    Q_PROPERTY(bool known MEMBER known FINAL)
    Q_PROPERTY(QString step MEMBER step FINAL)
    Q_PROPERTY(firstdew::ui::StepKind::Value kind MEMBER kind FINAL)
    Q_PROPERTY(QString sentence MEMBER sentence FINAL)
    Q_PROPERTY(QStringList list MEMBER list FINAL)
    Q_PROPERTY(QList<firstdew::ui::Subject::Value> drawings MEMBER drawings FINAL)
    Q_PROPERTY(QString phase MEMBER phase FINAL)
    Q_PROPERTY(QString side MEMBER side FINAL)
    Q_PROPERTY(QString waveform MEMBER waveform FINAL)
    Q_PROPERTY(QString next MEMBER next FINAL)
    Q_PROPERTY(QString note MEMBER note FINAL)
    Q_PROPERTY(bool timed MEMBER timed FINAL)
    Q_PROPERTY(QString remaining MEMBER remaining FINAL)
    Q_PROPERTY(QString remainingSpoken MEMBER remainingSpoken FINAL)
    Q_PROPERTY(qreal progress MEMBER progress FINAL)
    Q_PROPERTY(QString all MEMBER all FINAL)
    Q_PROPERTY(firstdew::ui::MeterView meter MEMBER meter FINAL)
    Q_PROPERTY(bool canRead MEMBER canRead FINAL)
    Q_PROPERTY(bool alarm MEMBER alarm FINAL)
    Q_PROPERTY(firstdew::ui::Exits::Value exits MEMBER exits FINAL)
    Q_PROPERTY(QString out MEMBER out FINAL)
    Q_PROPERTY(firstdew::ui::MainButton::Value main MEMBER main FINAL)
    Q_PROPERTY(QString mainText MEMBER mainText FINAL)
    Q_PROPERTY(bool pads MEMBER pads FINAL)
    Q_PROPERTY(QString keptRunning MEMBER keptRunning FINAL)
    Q_PROPERTY(bool unsaved MEMBER unsaved FINAL)
    Q_PROPERTY(bool silent MEMBER silent FINAL)

public:
    bool known = false; ///< false where no session runs
    QString step;
    StepKind::Value kind{};
    QString sentence;               ///< what to do now
    QStringList list;               ///< to check, where the voice speaks of it
    QList<Subject::Value> drawings; ///< of what hands do now, in that order
    QString phase;
    QString side; ///< of the step; empty: none
    QString waveform;
    QString next;
    QString note;       ///< what is asked again at the swap
    bool timed = false; ///< the step ends by the clock
    QString remaining;
    QString remainingSpoken;
    qreal progress = 0; ///< 0 to 1
    QString all;        ///< what is left of the session
    MeterView meter;
    bool canRead = false; ///< a reading may be entered
    bool alarm = false;   ///< the last reading is above the limit
    Exits::Value exits{};
    QString out; ///< says that a limb or a pad came off
    MainButton::Value main{};
    QString mainText;
    bool pads = false;    ///< pads, and not water
    QString keptRunning;  ///< the answer that the machine ran on
    bool unsaved = false; ///< events wait to be kept
    bool silent = false;  ///< sound is gone
    bool operator==(const RunningPage&) const = default;
};

/// What the page after a session starts from.
class AfterPage {
    Q_GADGET
    QML_VALUE_TYPE(afterPage)
    Q_PROPERTY(bool completed MEMBER completed FINAL)
    Q_PROPERTY(QString why MEMBER why FINAL)
    Q_PROPERTY(bool pads MEMBER pads FINAL)
    Q_PROPERTY(bool cells MEMBER cells FINAL)
    Q_PROPERTY(qreal comfortable MEMBER comfortable FINAL)
    Q_PROPERTY(qreal target MEMBER target FINAL)
    Q_PROPERTY(qreal limit MEMBER limit FINAL)

public:
    bool completed = false;
    QString why; ///< it ended early, where the person did not end it
    bool pads = false;
    bool cells = false;    ///< the machine runs on batteries
    qreal comfortable = 0; ///< mA, the highest reading up to the limit; 0: none
    qreal target = 0;      ///< mA
    qreal limit = 0;       ///< mA
    bool operator==(const AfterPage&) const = default;
};

} // namespace firstdew::ui
