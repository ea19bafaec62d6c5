#pragma once

#ifndef Q_MOC_RUN
#include "ports/CodeCamera.h"
#endif

#include <QObject>

#include <memory>

namespace firstdew::camera {

/// The system's first camera by Qt Multimedia; one on the back of a device comes before others.
class QtCodeCamera final : public QObject, public ports::CodeCamera {
    Q_OBJECT

public:
    QtCodeCamera();
    ~QtCodeCamera() override;
    [[nodiscard]] bool present() const override;
    void start(std::function<void(const Picture&)> seen, std::function<void()> failed) override;
    void stop() override;

private:
    struct Running;
    std::unique_ptr<Running> m_running;
};

} // namespace firstdew::camera
