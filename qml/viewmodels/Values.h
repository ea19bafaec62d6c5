#pragma once

#include "Enums.h"

#include <QList>
#include <QString>
#include <QStringList>

// What the pages show, as values. Days are days since 1970-01-01; 0 stands for none.
namespace firstdew::ui {

/// One of those whose records are in the store.
class PersonLine {
    Q_GADGET
    QML_VALUE_TYPE(personLine)
    Q_PROPERTY(QString id MEMBER id FINAL)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString adult MEMBER adult FINAL)
    Q_PROPERTY(bool here MEMBER here FINAL)

public:
    QString id;
    QString name;
    QString adult;     ///< the adult beside a child
    bool here = false; ///< the record of this one is shown
    bool operator==(const PersonLine&) const = default;
};

/// How a site stands today, and what is advised.
class SiteToday {
    Q_GADGET
    QML_VALUE_TYPE(siteToday)
    Q_PROPERTY(bool known MEMBER known FINAL)
    Q_PROPERTY(firstdew::ui::DiarySite::Value site MEMBER site FINAL)
    Q_PROPERTY(firstdew::ui::Site::Value treatedAs MEMBER treatedAs FINAL)
    Q_PROPERTY(firstdew::ui::Stage::Value stage MEMBER stage FINAL)
    Q_PROPERTY(firstdew::ui::Advice::Value advice MEMBER advice FINAL)
    Q_PROPERTY(bool calls MEMBER calls FINAL)
    Q_PROPERTY(QString title MEMBER title FINAL)
    Q_PROPERTY(bool checkedIn MEMBER checkedIn FINAL)
    Q_PROPERTY(firstdew::ui::Level::Value level MEMBER level FINAL)
    Q_PROPERTY(QList<firstdew::ui::Circumstance::Value> with MEMBER with FINAL)
    Q_PROPERTY(QStringList reasons MEMBER reasons FINAL)
    Q_PROPERTY(QString putOff MEMBER putOff FINAL)
    Q_PROPERTY(QString why MEMBER why FINAL)
    Q_PROPERTY(bool thisEvening MEMBER thisEvening FINAL)
    Q_PROPERTY(int next MEMBER next FINAL)
    Q_PROPERTY(int spells MEMBER spells FINAL)
    Q_PROPERTY(int censored MEMBER censored FINAL)
    Q_PROPERTY(qreal returnCost MEMBER returnCost FINAL)
    Q_PROPERTY(int due MEMBER due FINAL)
    Q_PROPERTY(bool scoreNeeded MEMBER scoreNeeded FINAL)
    Q_PROPERTY(QString atNoResponse MEMBER atNoResponse FINAL)
    Q_PROPERTY(int otherwise MEMBER otherwise FINAL)
    Q_PROPERTY(bool homeTomorrow MEMBER homeTomorrow FINAL)

public:
    bool known = false; ///< false where there is none to tell of
    DiarySite::Value site{};
    Site::Value treatedAs{}; ///< the session that treats it
    Stage::Value stage{};
    Advice::Value advice{};
    bool calls = false; ///< a top-up or a course is called for
    QString title;
    bool checkedIn = false;
    Level::Value level{};            ///< where checked in
    QList<Circumstance::Value> with; ///< what went with it
    QStringList reasons;             ///< in sentences, the weightiest first
    QString putOff;                  ///< that the person put it off or is away, in a sentence
    QString why;                     ///< the weightiest reason other than that
    bool thisEvening = false;        ///< put off to this evening
    int next = 0;                    ///< day of the next session; 0: none
    int spells = 0;                  ///< dry spells that teach something
    int otherwise = 0;               ///< others, in which another treatment worked
    bool homeTomorrow = true;        ///< tomorrow is not a day away
    int censored = 0;                ///< of them without an end of their own
    qreal returnCost = 0;            ///< sessions that a return of dampness costs
    int due = 0;                     ///< the day on which a top-up is due by the forecast; 0: none
    bool scoreNeeded = false;        ///< the review of the course waits for a score
    QString atNoResponse;            ///< what the care sheet says of a course without response, where there was none
    bool operator==(const SiteToday&) const = default;
};

/// The days ahead of a site, from today on.
class SiteAhead {
    Q_GADGET
    QML_VALUE_TYPE(siteAhead)
    Q_PROPERTY(firstdew::ui::DiarySite::Value site MEMBER site FINAL)
    Q_PROPERTY(bool known MEMBER known FINAL)
    Q_PROPERTY(int next MEMBER next FINAL)
    Q_PROPERTY(QList<qreal> chances MEMBER chances FINAL)
    Q_PROPERTY(QList<bool> sessions MEMBER sessions FINAL)

public:
    DiarySite::Value site{};
    bool known = false; ///< there is a forecast
    int next = 0;       ///< day of the first session among them; 0: none
    QList<qreal> chances;
    QList<bool> sessions; ///< whether one is planned that day
    bool operator==(const SiteAhead&) const = default;
};

/// The level of a site on a day.
class SiteLevel {
    Q_GADGET
    QML_VALUE_TYPE(siteLevel)
    Q_PROPERTY(firstdew::ui::DiarySite::Value site MEMBER site FINAL)
    Q_PROPERTY(bool noted MEMBER noted FINAL)
    Q_PROPERTY(firstdew::ui::Level::Value level MEMBER level FINAL)

public:
    DiarySite::Value site{};
    bool noted = false;
    Level::Value level{}; ///< where noted
    bool operator==(const SiteLevel&) const = default;
};

/// A day before today.
class DayBehind {
    Q_GADGET
    QML_VALUE_TYPE(dayBehind)
    Q_PROPERTY(int day MEMBER day FINAL)
    Q_PROPERTY(bool gap MEMBER gap FINAL)
    Q_PROPERTY(QList<firstdew::ui::SiteLevel> sites MEMBER sites FINAL)

public:
    int day = 0;
    bool gap = false; ///< a site has no check-in
    QList<SiteLevel> sites;
    bool operator==(const DayBehind&) const = default;
};

/// What was noted of a site on a day.
class NotedLevel {
    Q_GADGET
    QML_VALUE_TYPE(notedLevel)
    Q_PROPERTY(bool known MEMBER known FINAL)
    Q_PROPERTY(firstdew::ui::Level::Value level MEMBER level FINAL)
    Q_PROPERTY(QList<firstdew::ui::Circumstance::Value> with MEMBER with FINAL)
    Q_PROPERTY(bool corrected MEMBER corrected FINAL)

public:
    bool known = false;
    Level::Value level{};
    QList<Circumstance::Value> with;
    bool corrected = false; ///< the first entry is kept beside it
    bool operator==(const NotedLevel&) const = default;
};

/// Anything else that was noted of a day.
class DayEntry {
    Q_GADGET
    QML_VALUE_TYPE(dayEntry)
    Q_PROPERTY(QString id MEMBER id FINAL)
    Q_PROPERTY(firstdew::ui::EntryKind::Value kind MEMBER kind FINAL)
    Q_PROPERTY(firstdew::ui::DiarySite::Value site MEMBER site FINAL)
    Q_PROPERTY(firstdew::ui::Site::Value treated MEMBER treated FINAL)
    Q_PROPERTY(bool completed MEMBER completed FINAL)
    Q_PROPERTY(firstdew::ui::Waveform::Value waveform MEMBER waveform FINAL)
    Q_PROPERTY(qreal comfortable MEMBER comfortable FINAL)
    Q_PROPERTY(bool felt MEMBER felt FINAL)
    Q_PROPERTY(firstdew::ui::Comfort::Value comfort MEMBER comfort FINAL)
    Q_PROPERTY(QList<firstdew::ui::SkinFinding::Value> skin MEMBER skin FINAL)
    Q_PROPERTY(QString note MEMBER note FINAL)
    Q_PROPERTY(int score MEMBER score FINAL)
    Q_PROPERTY(qreal gain MEMBER gain FINAL)
    Q_PROPERTY(qreal minutes MEMBER minutes FINAL)
    Q_PROPERTY(qreal rate MEMBER rate FINAL)
    Q_PROPERTY(firstdew::ui::SweatJudged::Value judged MEMBER judged FINAL)

public:
    QString id;
    EntryKind::Value kind{};
    DiarySite::Value site{}; ///< of all but a session
    Site::Value treated{};   ///< of a session
    bool completed = false;
    Waveform::Value waveform{};
    qreal comfortable = -1; ///< mA; below 0: not said
    bool felt = false;      ///< how it felt was said
    Comfort::Value comfort{};
    QList<SkinFinding::Value> skin;
    QString note;
    int score = 0;  ///< 1 to 4
    qreal gain = 0; ///< mg
    qreal minutes = 0;
    qreal rate = 0; ///< mg a minute
    SweatJudged::Value judged{};
    bool operator==(const DayEntry&) const = default;
};

/// A session of a course.
class CourseLine {
    Q_GADGET
    QML_VALUE_TYPE(courseLine)
    Q_PROPERTY(int number MEMBER number FINAL)
    Q_PROPERTY(int day MEMBER day FINAL)
    Q_PROPERTY(bool done MEMBER done FINAL)

public:
    int number = 0; ///< from 1
    int day = 0;
    bool done = false;
    bool operator==(const CourseLine&) const = default;
};

/// The plan of a site.
class SitePlan {
    Q_GADGET
    QML_VALUE_TYPE(sitePlan)
    Q_PROPERTY(bool known MEMBER known FINAL)
    Q_PROPERTY(firstdew::ui::DiarySite::Value site MEMBER site FINAL)
    Q_PROPERTY(firstdew::ui::Site::Value treatedAs MEMBER treatedAs FINAL)
    Q_PROPERTY(firstdew::ui::Stage::Value stage MEMBER stage FINAL)
    Q_PROPERTY(bool paused MEMBER paused FINAL)
    Q_PROPERTY(int next MEMBER next FINAL)
    Q_PROPERTY(QList<firstdew::ui::CourseLine> sessions MEMBER sessions FINAL)
    Q_PROPERTY(int windowEnd MEMBER windowEnd FINAL)
    Q_PROPERTY(bool fits MEMBER fits FINAL)
    Q_PROPERTY(int overrun MEMBER overrun FINAL)
    Q_PROPERTY(QString missed MEMBER missed FINAL)
    Q_PROPERTY(int nextNumber MEMBER nextNumber FINAL)
    Q_PROPERTY(firstdew::ui::Pace::Value pace MEMBER pace FINAL)
    Q_PROPERTY(QString crowded MEMBER crowded FINAL)
    Q_PROPERTY(int lastDay MEMBER lastDay FINAL)
    Q_PROPERTY(int lastBetween MEMBER lastBetween FINAL)

public:
    bool known = false;
    DiarySite::Value site{};
    Site::Value treatedAs{};
    Stage::Value stage{};
    bool paused = false;
    int next = 0; ///< day of the next session; 0: none
    QList<CourseLine> sessions;
    int windowEnd = 0; ///< last day of the course; 0: none
    bool fits = true;
    int overrun = 0;    ///< days past its end
    QString missed;     ///< which session was missed and where it is now, in a sentence; empty: none
    int nextNumber = 0; ///< of the next session of the course; 0: none
    Pace::Value pace{};
    QString crowded;     ///< that sessions crowd, in a sentence; empty: nothing to choose
    int lastDay = 0;     ///< of the last session
    int lastBetween = 0; ///< the same with a day between any two; 0: not to be chosen
    bool operator==(const SitePlan&) const = default;
};

/// The highest current of a kind of session.
class LimitLine {
    Q_GADGET
    QML_VALUE_TYPE(limitLine)
    Q_PROPERTY(firstdew::ui::Site::Value site MEMBER site FINAL)
    Q_PROPERTY(firstdew::ui::Waveform::Value waveform MEMBER waveform FINAL)
    Q_PROPERTY(bool allowed MEMBER allowed FINAL)
    Q_PROPERTY(qreal limit MEMBER limit FINAL)
    Q_PROPERTY(QString source MEMBER source FINAL)

public:
    Site::Value site{};
    Waveform::Value waveform{};
    bool allowed = false;
    qreal limit = 0; ///< mA
    QString source;  ///< in words
    bool operator==(const LimitLine&) const = default;
};

/// The machine and what it runs on.
class MachineKit {
    Q_GADGET
    QML_VALUE_TYPE(machineKit)
    Q_PROPERTY(bool known MEMBER known FINAL)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(bool direct MEMBER direct FINAL)
    Q_PROPERTY(bool pulsed MEMBER pulsed FINAL)
    Q_PROPERTY(firstdew::ui::PolaritySwap::Value swap MEMBER swap FINAL)
    Q_PROPERTY(bool remote MEMBER remote FINAL)
    Q_PROPERTY(firstdew::ui::PowerSource::Value power MEMBER power FINAL)
    Q_PROPERTY(int sessionsLeft MEMBER sessionsLeft FINAL)
    Q_PROPERTY(double pad MEMBER pad FINAL)

public:
    bool known = false;
    QString name;
    bool direct = true;
    bool pulsed = false;
    PolaritySwap::Value swap{};
    bool remote = false;
    PowerSource::Value power{};
    int sessionsLeft = -1; ///< in the batteries; below 0: not known
    double pad = 0;        ///< area of one armpit pad in cm2; 0: not known
    bool operator==(const MachineKit&) const = default;
};

/// When to remind; times as minutes of the day.
class ReminderPlan {
    Q_GADGET
    QML_VALUE_TYPE(reminderPlan)
    Q_PROPERTY(bool on MEMBER on FINAL)
    Q_PROPERTY(int checkIn MEMBER checkIn FINAL)
    Q_PROPERTY(int sessions MEMBER sessions FINAL)
    Q_PROPERTY(int quietFrom MEMBER quietFrom FINAL)
    Q_PROPERTY(int quietUntil MEMBER quietUntil FINAL)
    Q_PROPERTY(bool backupMonthly MEMBER backupMonthly FINAL)

public:
    bool on = true;
    int checkIn = 0;
    int sessions = 0;
    int quietFrom = 0;
    int quietUntil = 0;
    bool backupMonthly = false;
    bool operator==(const ReminderPlan&) const = default;
};

/// The care sheet that counts.
class SheetInUse {
    Q_GADGET
    QML_VALUE_TYPE(sheetInUse)
    Q_PROPERTY(QString who MEMBER who FINAL)
    Q_PROPERTY(QString sites MEMBER sites FINAL)
    Q_PROPERTY(int given MEMBER given FINAL)
    Q_PROPERTY(QStringList lines MEMBER lines FINAL)
    Q_PROPERTY(QString code MEMBER code FINAL)

public:
    QString who;
    QString sites;     ///< where it is in force
    int given = 0;     ///< day
    QStringList lines; ///< what it sets, a field a line
    QString code;      ///< the whole sheet, for a code to scan
    bool operator==(const SheetInUse&) const = default;
};

/// The person whose record is shown.
class PersonInUse {
    Q_GADGET
    QML_VALUE_TYPE(personInUse)
    Q_PROPERTY(bool known MEMBER known FINAL)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString birth MEMBER birth FINAL)
    Q_PROPERTY(qreal height MEMBER height FINAL)
    Q_PROPERTY(qreal weight MEMBER weight FINAL)
    Q_PROPERTY(QString adult MEMBER adult FINAL)
    Q_PROPERTY(bool child MEMBER child FINAL)

public:
    bool known = false;
    QString name;
    QString birth;    ///< YYYY-MM-DD
    qreal height = 0; ///< cm; 0: not said
    qreal weight = 0; ///< kg; 0: not said
    QString adult;    ///< the adult beside a child
    bool child = false;
    bool operator==(const PersonInUse&) const = default;
};

/// A question of the screening, and the latest answer.
class HealthQuestion {
    Q_GADGET
    QML_VALUE_TYPE(healthQuestion)
    Q_PROPERTY(firstdew::ui::ScreeningRow::Value row MEMBER row FINAL)
    Q_PROPERTY(QString question MEMBER question FINAL)
    Q_PROPERTY(firstdew::ui::RowOutcome::Value outcome MEMBER outcome FINAL)
    Q_PROPERTY(bool asked MEMBER asked FINAL)
    Q_PROPERTY(bool yes MEMBER yes FINAL)
    Q_PROPERTY(int since MEMBER since FINAL)
    Q_PROPERTY(bool waits MEMBER waits FINAL)
    Q_PROPERTY(QString clearedBy MEMBER clearedBy FINAL)
    Q_PROPERTY(int clearedUntil MEMBER clearedUntil FINAL)
    Q_PROPERTY(bool blocks MEMBER blocks FINAL)

public:
    ScreeningRow::Value row{};
    QString question;            ///< put to the adult where a child is treated
    RowOutcome::Value outcome{}; ///< of a yes
    bool asked = false;
    bool yes = false;     ///< a yes counts
    int since = 0;        ///< its day
    bool waits = false;   ///< a no given today does not end it
    QString clearedBy;    ///< who said that it is safe; empty: nobody
    int clearedUntil = 0; ///< last day of that; it has expired where `blocks` is true all the same
    bool blocks = false;  ///< a yes that stands in the way
    bool operator==(const HealthQuestion&) const = default;
};

/// Days on which no session is planned.
class AwayDays {
    Q_GADGET
    QML_VALUE_TYPE(awayDays)
    Q_PROPERTY(QString id MEMBER id FINAL)
    Q_PROPERTY(int from MEMBER from FINAL)
    Q_PROPERTY(int to MEMBER to FINAL)

public:
    QString id;
    int from = 0;
    int to = 0;
    bool operator==(const AwayDays&) const = default;
};

/// Another treatment with its days.
class OtherLine {
    Q_GADGET
    QML_VALUE_TYPE(otherLine)
    Q_PROPERTY(QString id MEMBER id FINAL)
    Q_PROPERTY(QString text MEMBER text FINAL)

public:
    QString id;
    QString text; ///< in words
    bool operator==(const OtherLine&) const = default;
};

/// What became of a file.
class FileResult {
    Q_GADGET
    QML_VALUE_TYPE(fileResult)
    Q_PROPERTY(bool tried MEMBER tried FINAL)
    Q_PROPERTY(bool ok MEMBER ok FINAL)
    Q_PROPERTY(QString message MEMBER message FINAL)
    Q_PROPERTY(QString path MEMBER path FINAL)
    Q_PROPERTY(bool otherPerson MEMBER otherPerson FINAL)

public:
    bool tried = false;
    bool ok = false;
    QString message;          ///< why not, in a sentence
    QString path;             ///< where it lies
    bool otherPerson = false; ///< refused because it may be about somebody else, who may be added as a new person
    bool operator==(const FileResult&) const = default;
};

/// A field that a new care sheet changes.
class SheetChange {
    Q_GADGET
    QML_VALUE_TYPE(sheetChange)
    Q_PROPERTY(QString text MEMBER text FINAL)
    Q_PROPERTY(bool loosens MEMBER loosens FINAL)

public:
    QString text; ///< field, new value, present value
    bool loosens = false;
    bool operator==(const SheetChange&) const = default;
};

/// What a new care sheet changes at the sites that share one today.
class SheetEffect {
    Q_GADGET
    QML_VALUE_TYPE(sheetEffect)
    Q_PROPERTY(QString sites MEMBER sites FINAL)
    Q_PROPERTY(QList<firstdew::ui::SheetChange> changes MEMBER changes FINAL)

public:
    QString sites;
    QList<SheetChange> changes;
    bool operator==(const SheetEffect&) const = default;
};

/// A care sheet as read from a file.
class SheetRead {
    Q_GADGET
    QML_VALUE_TYPE(sheetRead)
    Q_PROPERTY(bool tried MEMBER tried FINAL)
    Q_PROPERTY(bool ok MEMBER ok FINAL)
    Q_PROPERTY(QString message MEMBER message FINAL)
    Q_PROPERTY(bool loosens MEMBER loosens FINAL)
    Q_PROPERTY(QList<firstdew::ui::SheetEffect> effects MEMBER effects FINAL)
    Q_PROPERTY(QStringList courses MEMBER courses FINAL)

public:
    bool tried = false;
    bool ok = false;
    QString message;      ///< why not, in a sentence
    bool loosens = false; ///< it allows more than today; accepting it takes a word of its own
    QList<SheetEffect> effects;
    QStringList courses; ///< that begin or go on when it is accepted, a sentence each
    bool operator==(const SheetRead&) const = default;
};

/// A file that may be chosen.
class FoundFile {
    Q_GADGET
    QML_VALUE_TYPE(foundFile)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString path MEMBER path FINAL)

public:
    QString name;
    QString path;
    bool operator==(const FoundFile&) const = default;
};

/// A question for the prescriber.
class QuestionLine {
    Q_GADGET
    QML_VALUE_TYPE(questionLine)
    Q_PROPERTY(QString id MEMBER id FINAL)
    Q_PROPERTY(QString text MEMBER text FINAL)

public:
    QString id;
    QString text;
    bool operator==(const QuestionLine&) const = default;
};

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
