#pragma once

#include "Enums.h"

#include <QList>
#include <QString>
#include <QStringList>

// What Today shows, as values. Days are days since 1970-01-01; 0 stands for none.
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

} // namespace firstdew::ui
