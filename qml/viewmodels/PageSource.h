#pragma once

#include <QImage>
#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace firstdew::viewmodels {

/// A page that is shown as it would be printed now.
class PageSource : public QObject {
    Q_OBJECT
    QML_ANONYMOUS

public:
    using QObject::QObject;
    /// In pixels of that width; no picture where there is nothing to print.
    [[nodiscard]] virtual QImage page(int width) const = 0;

signals:
    void changed();
};

} // namespace firstdew::viewmodels
