#pragma once

#include "DiaryValues.h"
#include "PlanValues.h"
#include "Store.h"

namespace firstdew::viewmodels {

/// The diary as it is read and added to.
class DiaryModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QList<firstdew::ui::DiarySite::Value> sites READ sites NOTIFY changed)
    /// Days from the first check-in or session to today; 0 where there is none.
    Q_PROPERTY(int daysKept READ daysKept NOTIFY changed)
    /// Other treatments, the latest first.
    Q_PROPERTY(QList<firstdew::ui::OtherLine> otherTreatments READ otherTreatments NOTIFY changed)

public:
    explicit DiaryModel(Store& store);
    static DiaryModel* create(QQmlEngine*, QJSEngine*);
    [[nodiscard]] const Store& store() const { return m_store; }

    [[nodiscard]] QList<ui::DiarySite::Value> sites() const;
    [[nodiscard]] int daysKept() const;
    [[nodiscard]] QList<ui::OtherLine> otherTreatments() const;
    /// The check-in of that site and day.
    Q_INVOKABLE firstdew::ui::NotedLevel noted(firstdew::ui::DiarySite::Value site, int day) const;
    /// Whether the treatment works there.
    Q_INVOKABLE firstdew::ui::SiteAnswer working(firstdew::ui::DiarySite::Value site) const;
    /// What the forecast says of the next days if no session comes first, and how forecasts have done there. Worked out
    /// from the whole record when a page asks.
    Q_INVOKABLE firstdew::ui::SiteForecast forecast(firstdew::ui::DiarySite::Value site) const;
    /// Where the comparison of session lengths stands there, and whether one may begin.
    Q_INVOKABLE firstdew::ui::SiteComparison comparison(firstdew::ui::DiarySite::Value site) const;
    /// Begins one, with an order drawn by chance. False where none may begin.
    Q_INVOKABLE bool beginComparison(firstdew::ui::DiarySite::Value site);
    Q_INVOKABLE bool leaveComparison(firstdew::ui::DiarySite::Value site);
    /// Whether so many check-ins tell how long the site stays dry.
    Q_INVOKABLE static bool tells(int checkIns);
    // What the charts show of a site, in words: the days from `span` + `back` - 1 before today to `back` before,
    // without those that had one of these circumstances.
    /// How many days there were of each level, and how many sessions. `anew` is not used: it asks again when it
    /// changes.
    Q_INVOKABLE QString dampSaying(firstdew::ui::DiarySite::Value site, int span, int back, bool sessions,
                                   const QList<firstdew::ui::Circumstance::Value>& without, int anew) const;
    /// Each day that has a check-in or a session, the latest first.
    Q_INVOKABLE QList<firstdew::ui::TableRow> dampTable(firstdew::ui::DiarySite::Value site, int span, int back,
                                                        bool sessions,
                                                        const QList<firstdew::ui::Circumstance::Value>& without) const;
    /// Each week that has check-ins, the latest first.
    Q_INVOKABLE QList<firstdew::ui::TableRow> weekTable(firstdew::ui::DiarySite::Value site, int span, int back,
                                                        const QList<firstdew::ui::Circumstance::Value>& without) const;
    /// The highest comfortable reading of each session, the latest first.
    Q_INVOKABLE QList<firstdew::ui::TableRow> readingTable(firstdew::ui::DiarySite::Value site, int span,
                                                           int back) const;
    /// What else was noted of that day.
    Q_INVOKABLE QList<firstdew::ui::DayEntry> others(int day) const;
    Q_INVOKABLE bool addHdss(firstdew::ui::DiarySite::Value site, int score);
    Q_INVOKABLE bool addSideEffect(firstdew::ui::DiarySite::Value site,
                                   const QList<firstdew::ui::SkinFinding::Value>& skin, const QString& note);
    Q_INVOKABLE bool addWeighing(firstdew::ui::DiarySite::Value site, double beforeMg, double afterMg, double minutes);
    /// Records another treatment; no sites: everywhere; `until` 0: it goes on.
    Q_INVOKABLE bool addOther(firstdew::ui::OtherKind::Value what, const QString& name,
                              const QList<firstdew::ui::DiarySite::Value>& sites, int from, int until);
    /// The kinds of session that treat what is in use.
    Q_INVOKABLE QList<firstdew::ui::Site::Value> treated() const;
    /// The current of the last session there.
    Q_INVOKABLE firstdew::ui::Waveform::Value lastWaveform(firstdew::ui::Site::Value site) const;
    /// Records a session that was done without the phone, on that day; or, where `corrects` is the id of one, how that
    /// one really was. What was measured stays with it. A comfort below 0 was not said.
    Q_INVOKABLE bool addSession(firstdew::ui::Site::Value site, int day, firstdew::ui::Waveform::Value waveform,
                                bool completed, int comfort, const QList<firstdew::ui::SkinFinding::Value>& skin,
                                const QString& note, const QString& corrects);
    /// Takes the entry of that id out of the count; the record keeps it.
    Q_INVOKABLE bool withdraw(const QString& id);

signals:
    void changed();

private:
    [[nodiscard]] ui::SweatJudged::Value judged(const facts::Weighing& w) const;

    Store& m_store;
};

} // namespace firstdew::viewmodels
