#pragma once

#include "Enums.h"
#include "Part.h"

#include <QList>
#include <QObject>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// Where pages ask to go; Main listens.
class Router : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// The first picture was on the screen: what it had no need of may be made.
    Q_PROPERTY(bool drawn MEMBER m_drawn NOTIFY drawnChanged)
    /// A session was asked for from elsewhere, and at which site.
    Q_PROPERTY(bool sessionAsked MEMBER m_sessionAsked NOTIFY sessionAskedChanged)
    Q_PROPERTY(firstdew::ui::Site::Value sessionSite MEMBER m_sessionSite NOTIFY sessionAskedChanged)
    /// How many sheets are open.
    Q_PROPERTY(int sheets READ sheets NOTIFY sheetsChanged)
    /// What the page or sheet that was opened last is about.
    Q_PROPERTY(int day MEMBER m_day NOTIFY subjectChanged)
    Q_PROPERTY(firstdew::ui::DiarySite::Value site MEMBER m_site NOTIFY subjectChanged)
    Q_PROPERTY(firstdew::ui::Site::Value treated MEMBER m_treated NOTIFY subjectChanged)
    Q_PROPERTY(QString entry MEMBER m_entry NOTIFY subjectChanged)

public:
    explicit Router(QObject* parent = nullptr) : QObject(parent) {}
    [[nodiscard]] int sheets() const { return static_cast<int>(m_sheets.size()); }
    /// To the session, for that site.
    Q_INVOKABLE void startBath(firstdew::ui::Site::Value site);
    Q_INVOKABLE void openDay(int day);
    /// A session that was done without the phone, or, with the id of one of that day, how that one really was.
    Q_INVOKABLE void openDone(firstdew::ui::Site::Value treated, int day, const QString& entry);
    Q_INVOKABLE void openWhy(firstdew::ui::DiarySite::Value site);
    Q_INVOKABLE void openCourse(firstdew::ui::Site::Value treated);
    Q_INVOKABLE void openTaught(firstdew::ui::Site::Value treated);
    Q_INVOKABLE void openTechnique(firstdew::ui::Site::Value treated);
    Q_INVOKABLE void openDaySheet(int day);
    Q_INVOKABLE void openNotNow(firstdew::ui::DiarySite::Value site);
    /// Escape and the system's key for back come to goBack() of that window, before anything else sees them.
    Q_INVOKABLE void watch(QObject* window);
    /// A sheet lies on top, or is gone.
    Q_INVOKABLE void opened(QObject* sheet);
    Q_INVOKABLE void closed(QObject* sheet);
    /// Closes the sheet on top; false where there is none.
    Q_INVOKABLE bool closeTopSheet();
    bool eventFilter(QObject* window, QEvent* event) override;
    /// The document of a part.
    Q_INVOKABLE QUrl documentOf(firstdew::ui::Part::Value part) const;
    /// The part of that name; Nothing where there is none.
    Q_INVOKABLE firstdew::ui::Part::Value partNamed(const QString& name) const;

signals:
    /// To one of the places of the bottom bar.
    void place(firstdew::ui::Place::Value place);
    /// That page over the place.
    void page(firstdew::ui::Part::Value page);
    /// That sheet over everything.
    void sheet(firstdew::ui::Part::Value sheet);
    void back();
    /// Whether goBack() of the window has something to leave. Where it has not, the way back is the system's.
    void backLeads(bool leads);
    void sheetsChanged();
    /// That key scrolls the page in front.
    void turned(int key);
    /// That sheet has just been opened.
    void rises(QObject* sheet);
    void drawnChanged();
    void sessionAskedChanged();
    void subjectChanged();

private:
    bool m_drawn = false;
    bool m_sessionAsked = false;
    ui::Site::Value m_sessionSite{};
    int m_day = 0;
    ui::DiarySite::Value m_site{};
    ui::Site::Value m_treated{};
    QString m_entry;
    QList<QObject*> m_sheets; ///< that are open, the last on top
};

} // namespace firstdew::controls
