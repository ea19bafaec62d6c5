#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace firstdew::ui {

/// A field of a care sheet that is being filled in.
class SheetLine {
    Q_GADGET
    QML_VALUE_TYPE(sheetLine)
    Q_PROPERTY(QString shown MEMBER shown FINAL)
    Q_PROPERTY(QString problem MEMBER problem FINAL)

public:
    QString shown;
    QString problem; ///< what is wrong with it, in a sentence; empty: nothing
    bool operator==(const SheetLine&) const = default;
};

} // namespace firstdew::ui
