#include "QrPicture.h"

#include "exchange/QrCode.h"

#include <QPainter>
#include <cmath>

namespace firstdew::controls {

namespace {
constexpr int kQuiet = 4; // modules, ISO/IEC 18004
} // namespace

QrPicture::QrPicture(QQuickItem* parent) : QQuickPaintedItem(parent)
{
    connect(this, &QrPicture::changed, this, [this] { update(); });
}

void QrPicture::paint(QPainter* painter)
{
    const auto code = exchange::qrCodeOf(m_text.toStdString());
    if (!code)
        return;
    // Whole pixels, so that no module is blurred.
    const int across = code->size + 2 * kQuiet;
    const qreal module = std::max(1.0, std::floor(std::min(width(), height()) / across));
    const QPointF corner((width() - module * across) / 2, (height() - module * across) / 2);
    painter->fillRect(QRectF(corner, QSizeF(module * across, module * across)), Qt::white);
    for (int row = 0; row < code->size; ++row)
        for (int column = 0; column < code->size; ++column)
            if (code->at(column, row))
                painter->fillRect(QRectF(corner.x() + (column + kQuiet) * module, corner.y() + (row + kQuiet) * module,
                                         module, module),
                                  Qt::black);
}

} // namespace firstdew::controls
