#pragma once

#ifndef Q_MOC_RUN
#include "ports/CodeCamera.h"
#endif

#include <QImage>
#include <QObject>
#include <QtQml/qqmlregistration.h>

class QJSEngine;
class QQmlEngine;

namespace firstdew::viewmodels {

/// Looks for a code through the camera, while a page asks for that. Pictures are shown and forgotten.
class ScanModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Whether there is a camera.
    Q_PROPERTY(bool present READ present CONSTANT)
    Q_PROPERTY(bool looking READ looking NOTIFY lookingChanged)
    /// The camera could not be used.
    Q_PROPERTY(bool failed READ failed NOTIFY lookingChanged)

public:
    explicit ScanModel(ports::CodeCamera& camera) : m_camera(camera) {}
    static ScanModel* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] bool present() const { return m_camera.present(); }
    [[nodiscard]] bool looking() const { return m_looking; }
    [[nodiscard]] bool failed() const { return m_failed; }
    /// What the camera sees.
    [[nodiscard]] const QImage& picture() const { return m_picture; }
    Q_INVOKABLE void start();
    Q_INVOKABLE void stop();

signals:
    void lookingChanged();
    void seen();
    /// A code was read; looking has ended.
    void found(const QString& text);

private:
    void examine(const ports::CodeCamera::Picture& picture);

    ports::CodeCamera& m_camera;
    QImage m_picture;
    bool m_looking = false;
    bool m_failed = false;
};

} // namespace firstdew::viewmodels
