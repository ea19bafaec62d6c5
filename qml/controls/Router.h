#pragma once

#include <QObject>
#include <QVariantMap>
#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// Where pages ask to go; Main listens.
class Router : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// The first picture was on the screen: what it had no need of may be made.
    Q_PROPERTY(bool drawn MEMBER m_drawn NOTIFY drawnChanged)
    /// The site a bath was asked for from elsewhere; "" when none.
    Q_PROPERTY(QString bathSite MEMBER m_bathSite NOTIFY bathSiteChanged)

public:
    explicit Router(QObject* parent = nullptr) : QObject(parent) {}
    /// To the bath, for that site.
    Q_INVOKABLE void startBath(const QString& site);

signals:
    /// To one of the places of the bottom bar: today, bath, diary or plan.
    void place(const QString& name);
    /// The page of that file over the place, with those of its properties set.
    void page(const QString& name, const QVariantMap& properties);
    /// The sheet of that file over everything, with those of its properties set.
    void sheet(const QString& name, const QVariantMap& properties);
    void back();
    void drawnChanged();
    void bathSiteChanged();

private:
    bool m_drawn = false;
    QString m_bathSite;
};

} // namespace firstdew::controls
