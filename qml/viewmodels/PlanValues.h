#pragma once

#include "Enums.h"

#include <QList>
#include <QString>
#include <QStringList>

// What the plan shows, as values. Days are days since 1970-01-01; 0 stands for none.
namespace firstdew::ui {

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
    Q_PROPERTY(QString watch MEMBER watch FINAL)
    Q_PROPERTY(QString area MEMBER area FINAL)

public:
    Site::Value site{};
    Waveform::Value waveform{};
    bool allowed = false;
    qreal limit = 0; ///< mA
    QString source;  ///< in words
    QString watch;   ///< above which current the skin is to be watched, in a sentence; empty: no such level
    QString area;    ///< the skin that counts, in a sentence, with the last current of a kind of session
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

} // namespace firstdew::ui
