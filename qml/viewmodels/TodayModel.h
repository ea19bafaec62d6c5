#pragma once

#include "SessionValues.h"
#include "Store.h"
#include "TodayValues.h"

namespace firstdew::viewmodels {

/// What Today shows and does.
class TodayModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QList<firstdew::ui::SiteToday> sites READ sites NOTIFY changed)
    /// The site that matters now; not known where none does.
    Q_PROPERTY(firstdew::ui::SiteToday matter READ matter NOTIFY changed)
    /// The next fourteen days of each site.
    Q_PROPERTY(QList<firstdew::ui::SiteAhead> ahead READ ahead NOTIFY changed)
    Q_PROPERTY(int daysAhead READ daysAhead CONSTANT)
    /// The last seven days before today, the earliest first.
    Q_PROPERTY(QList<firstdew::ui::DayBehind> lately READ lately NOTIFY changed)
    /// Sites are in use, but the machine or the answers to the health questions are not all known.
    Q_PROPERTY(bool unready READ unready NOTIFY changed)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)

public:
    explicit TodayModel(Store& store);
    static TodayModel* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] QList<ui::SiteToday> sites() const;
    [[nodiscard]] ui::SiteToday matter() const;
    [[nodiscard]] QList<ui::SiteAhead> ahead() const;
    [[nodiscard]] int daysAhead() const;
    [[nodiscard]] QList<ui::DayBehind> lately() const;
    [[nodiscard]] bool unready() const;
    [[nodiscard]] bool canUndo() const { return !m_lastCheckIn.empty(); }

    /// What there is to tell of a site today.
    Q_INVOKABLE firstdew::ui::SiteToday of(firstdew::ui::DiarySite::Value site) const;
    /// Records (or, where the day has one, corrects) the level of a site on a day.
    Q_INVOKABLE bool checkIn(firstdew::ui::DiarySite::Value site, firstdew::ui::Level::Value level, int day);
    /// Sets the circumstances of that day's check-in, which must be there.
    Q_INVOKABLE bool setCircumstances(firstdew::ui::DiarySite::Value site,
                                      const QList<firstdew::ui::Circumstance::Value>& with, int day);
    /// Takes back the last check-in made here.
    Q_INVOKABLE void undo();
    /// Answers the call for a top-up.
    Q_INVOKABLE bool answer(firstdew::ui::DiarySite::Value site, firstdew::ui::CallAnswer::Value answer);
    Q_INVOKABLE bool notThisTime(firstdew::ui::DiarySite::Value site, firstdew::ui::NotNow::Value why);
    /// More sessions for a course that brought no response yet.
    Q_INVOKABLE bool goOn(firstdew::ui::Site::Value treatedAs);
    /// How it is done, to be gone through line by line.
    Q_INVOKABLE QList<firstdew::ui::TechniqueLine> technique(firstdew::ui::Site::Value treatedAs) const;
    Q_INVOKABLE bool reviewDone(firstdew::ui::Site::Value treatedAs, bool keepGoing);

signals:
    void changed();
    /// A check-in was taken from a touch in the app, and is on disk.
    void checkedIn();

private:
    [[nodiscard]] ui::SiteToday tell(const situation::SiteSituation& s) const;

    Store& m_store;
    std::string m_lastCheckIn;
    bool m_lastWasCorrection = false;
};

} // namespace firstdew::viewmodels
