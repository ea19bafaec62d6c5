#include "camera/QtCodeCamera.h"

#include <QCamera>
#include <QCameraDevice>
#include <QElapsedTimer>
#include <QMediaCaptureSession>
#include <QMediaDevices>
#include <QVideoFrame>
#include <QVideoSink>
#include <vector>

namespace firstdew::camera {

namespace {

/// A code does not move faster than this; more pictures cost the battery.
constexpr qint64 kEveryMs = 120;

QCameraDevice bestCamera()
{
    const auto all = QMediaDevices::videoInputs();
    for (const QCameraDevice& one : all)
        if (one.position() == QCameraDevice::BackFace)
            return one;
    return QMediaDevices::defaultVideoInput();
}

} // namespace

struct QtCodeCamera::Running {
    QCamera camera{bestCamera()};
    QVideoSink sink;
    QMediaCaptureSession session;
    QElapsedTimer last;
};

QtCodeCamera::QtCodeCamera() = default;
QtCodeCamera::~QtCodeCamera() = default;

bool QtCodeCamera::present() const { return !QMediaDevices::videoInputs().isEmpty(); }

void QtCodeCamera::start(std::function<void(const Picture&)> seen, std::function<void()> failed)
{
    m_running = std::make_unique<Running>();
    m_running->session.setCamera(&m_running->camera);
    m_running->session.setVideoSink(&m_running->sink);
    connect(&m_running->sink, &QVideoSink::videoFrameChanged, this, [this, seen](const QVideoFrame& frame) {
        if (!m_running || (m_running->last.isValid() && m_running->last.elapsed() < kEveryMs))
            return;
        m_running->last.start();
        const QImage image = frame.toImage().convertToFormat(QImage::Format_Grayscale8);
        if (image.isNull())
            return;
        std::vector<unsigned char> grey; // rows of an image may be padded
        grey.reserve(static_cast<std::size_t>(image.width()) * static_cast<std::size_t>(image.height()));
        for (int row = 0; row < image.height(); ++row)
            grey.insert(grey.end(), image.constScanLine(row), image.constScanLine(row) + image.width());
        seen({grey.data(), image.width(), image.height()});
    });
    connect(&m_running->camera, &QCamera::errorOccurred, this, [failed] { failed(); });
    m_running->camera.start();
}

void QtCodeCamera::stop()
{
    if (!m_running)
        return;
    m_running->camera.stop();
    // The camera may be delivering the picture because of which it is stopped.
    const auto let = [this, stopped = m_running.get()] {
        if (m_running.get() == stopped)
            m_running.reset();
    };
    QMetaObject::invokeMethod(this, let, Qt::QueuedConnection);
}

} // namespace firstdew::camera
