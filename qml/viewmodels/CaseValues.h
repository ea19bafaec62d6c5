#pragma once

#include <QObject>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace firstdew::ui {

/// A person of the caseload.
class CaseLine {
    Q_GADGET
    QML_VALUE_TYPE(caseLine)
    Q_PROPERTY(QString id MEMBER id FINAL)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QStringList why MEMBER why FINAL)
    Q_PROPERTY(bool call MEMBER call FINAL)
    Q_PROPERTY(bool skin MEMBER skin FINAL)

public:
    QString id;
    QString name;
    QStringList why;   ///< a sentence each, the weightiest first
    bool call = false; ///< needs a call
    bool skin = false; ///< because of the skin
    bool operator==(const CaseLine&) const = default;
};

/// A file that could not be read.
class UnreadFile {
    Q_GADGET
    QML_VALUE_TYPE(unreadFile)
    Q_PROPERTY(QString name MEMBER name FINAL)
    Q_PROPERTY(QString why MEMBER why FINAL)

public:
    QString name;
    QString why; ///< and what to do, in a sentence
    bool operator==(const UnreadFile&) const = default;
};

} // namespace firstdew::ui
