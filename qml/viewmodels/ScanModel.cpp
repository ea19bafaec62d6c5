#include "ScanModel.h"

#include "exchange/QrRead.h"

namespace firstdew::viewmodels {

void ScanModel::start()
{
    m_failed = false;
    m_looking = true;
    emit lookingChanged();
    m_camera.start([this](const ports::CodeCamera::Picture& picture) { examine(picture); },
                   [this] {
                       m_looking = false;
                       m_failed = true;
                       emit lookingChanged();
                   });
}

void ScanModel::stop()
{
    if (!m_looking)
        return;
    m_camera.stop();
    m_looking = false;
    m_picture = {};
    emit lookingChanged();
}

void ScanModel::examine(const ports::CodeCamera::Picture& picture)
{
    if (!m_looking)
        return;
    const auto pixels = static_cast<std::size_t>(picture.width) * static_cast<std::size_t>(picture.height);
    m_picture = QImage(picture.grey, picture.width, picture.height, picture.width, QImage::Format_Grayscale8).copy();
    emit seen();
    const auto text = exchange::readQrCode({picture.grey, pixels}, picture.width, picture.height);
    if (!text)
        return; // the next picture may show it
    stop();
    emit found(QString::fromStdString(*text));
}

} // namespace firstdew::viewmodels
