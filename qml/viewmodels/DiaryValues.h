#pragma once

#include "Enums.h"

#include <QList>
#include <QString>
#include <QStringList>

namespace firstdew::ui {

/// Whether it works at a site.
class SiteAnswer {
    Q_GADGET
    QML_VALUE_TYPE(siteAnswer)
    Q_PROPERTY(bool known MEMBER known FINAL)
    Q_PROPERTY(bool works MEMBER works FINAL)
    Q_PROPERTY(QString line MEMBER line FINAL)
    Q_PROPERTY(QString detail MEMBER detail FINAL)

public:
    bool known = false; ///< false where the site is not in use
    bool works = false; ///< wholly, not only in part
    QString line;       ///< the answer
    QString detail;     ///< the figures behind it, or what is missing
    bool operator==(const SiteAnswer&) const = default;
};

/// The chance of dampness by one of the next days.
class NextDay {
    Q_GADGET
    QML_VALUE_TYPE(nextDay)
    Q_PROPERTY(QString line MEMBER line FINAL)
    Q_PROPERTY(int dots MEMBER dots FINAL)

public:
    QString line;
    int dots = 0; ///< filled ones of twenty
    bool operator==(const NextDay&) const = default;
};

/// What the forecast says of the next days, and how forecasts have done.
class SiteForecast {
    Q_GADGET
    QML_VALUE_TYPE(siteForecast)
    Q_PROPERTY(QList<firstdew::ui::NextDay> next MEMBER next FINAL)
    Q_PROPERTY(QStringList score MEMBER score FINAL)
    Q_PROPERTY(QString verdict MEMBER verdict FINAL)
    Q_PROPERTY(QStringList shorter MEMBER shorter FINAL)

public:
    QList<NextDay> next;
    QStringList score; ///< a sentence for each chance that was forecast often
    QString verdict;
    QStringList shorter; ///< that the dry spells are getting shorter; empty where they are not
    bool operator==(const SiteForecast&) const = default;
};

/// The comparison of a shorter session with the usual one at a site.
class SiteComparison {
    Q_GADGET
    QML_VALUE_TYPE(siteComparison)
    Q_PROPERTY(bool offered MEMBER offered FINAL)
    Q_PROPERTY(bool goesOn MEMBER goesOn FINAL)
    Q_PROPERTY(QStringList lines MEMBER lines FINAL)
    Q_PROPERTY(QStringList about MEMBER about FINAL)

public:
    bool offered = false; ///< one may begin
    bool goesOn = false;  ///< one has begun and not ended
    QStringList lines;    ///< where it stands, or the answer of the latest one; empty if there was none
    QStringList about;    ///< what whoever begins agrees to; empty where none may begin
    bool operator==(const SiteComparison&) const = default;
};

/// A line of what a chart shows, in words.
class TableRow {
    Q_GADGET
    QML_VALUE_TYPE(tableRow)
    Q_PROPERTY(QString what MEMBER what FINAL)
    Q_PROPERTY(QString says MEMBER says FINAL)

public:
    QString what; ///< the day or the week
    QString says;
    bool operator==(const TableRow&) const = default;
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

} // namespace firstdew::ui
