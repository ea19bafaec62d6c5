#pragma once

#include <QImage>
#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace firstdew::viewmodels {

/// A page that is shown as it would be printed now.
class PageSource : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a model of its own prints each page")

public:
    using QObject::QObject;
    /// In pixels of that width; no picture where there is nothing to print.
    [[nodiscard]] virtual QImage page(int width) const = 0;

signals:
    void changed();
};

} // namespace firstdew::viewmodels
