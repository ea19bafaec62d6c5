#include "print/PdfFile.h"

#include "journal/OwnFile.h"
#include "print/PaperSheet.h"
#include "print/PdfLanguage.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPdfWriter>

namespace firstdew::print {

using namespace facts;

namespace {

constexpr double kMetresPerInch = 0.0254;

QPageLayout layoutOf(Paper paper)
{
    return {QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter), QPageLayout::Portrait,
            QMarginsF(16, 14, 16, 12), QPageLayout::Millimeter};
}

Error undrawn(const QString& file, int page)
{
    return {"pdf-failed", file.toStdString(),
            "page " + std::to_string(page) + " could not be drawn; nothing was written"};
}

} // namespace

Paper paperHere()
{
    const bool letter = QLocale::system().measurementSystem() == QLocale::ImperialUSSystem;
    return letter ? Paper::Letter : Paper::A4;
}

QSizeF sizeOf(Paper paper) { return layoutOf(paper).paintRectPixels(kDpi).size(); }

Result<int> writePages(const std::vector<Painting>& pages, const QString& title, Paper paper, const QString& file)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    int count = 0;
    {
        QPdfWriter writer(&buffer);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(kDpi);
        writer.setPageLayout(layoutOf(paper));
        writer.setTitle(title);
        writer.setCreator(QStringLiteral("Firstdew"));
        QPainter painter(&writer);
        for (const Painting& paint : pages) {
            if (++count == 1 ? !painter.isActive() : !writer.newPage())
                return undrawn(file, count);
            paint(painter, QSizeF(writer.width(), writer.height()));
        }
    }
    const QByteArray drawn = buffer.data();
    const auto finished =
        inLanguage({drawn.constData(), static_cast<std::size_t>(drawn.size())}, QLocale().bcp47Name().toStdString());
    if (!finished)
        return Error{finished.error().code, file.toStdString(), finished.error().message};
    const auto written = journal::replaceFile(file.toStdString(), *finished);
    if (!written)
        return written.error();
    return count;
}

QImage pictureOf(const Painting& page, Paper paper, int width)
{
    const QPageLayout layout = layoutOf(paper);
    const QRect whole = layout.fullRectPixels(kDpi);
    const QRect painted = layout.paintRectPixels(kDpi);
    QImage image(whole.size(), QImage::Format_RGB32);
    image.fill(Qt::white);
    image.setDotsPerMeterX(qRound(kDpi / kMetresPerInch));
    image.setDotsPerMeterY(qRound(kDpi / kMetresPerInch));
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setViewport(painted); // the page keeps its own scale
    painter.setWindow(0, 0, painted.width(), painted.height());
    page(painter, painted.size());
    painter.end();
    return image.scaledToWidth(width, Qt::SmoothTransformation);
}

} // namespace firstdew::print
