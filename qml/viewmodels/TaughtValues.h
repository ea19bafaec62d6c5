#pragma once

#include <QMetaType>
#include <QString>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace firstdew::ui {

/// A session that somebody watched and taught.
class TaughtLine {
    Q_GADGET
    QML_VALUE_TYPE(taughtLine)
    Q_PROPERTY(QString id MEMBER id FINAL)
    Q_PROPERTY(QString text MEMBER text FINAL)
    Q_PROPERTY(QStringList ticks MEMBER ticks FINAL)

public:
    QString id;
    QString text;
    QStringList ticks;
    bool operator==(const TaughtLine&) const = default;
};

} // namespace firstdew::ui
