#include "print/SummaryPdf.h"

#include "journal/OwnFile.h"
#include "print/DetailsPage.h"
#include "print/FrontPage.h"
#include "print/PdfLanguage.h"

#include <QBuffer>
#include <QFontDatabase>
#include <QPageLayout>
#include <QPdfWriter>
#include <QResource>
#include <algorithm>

namespace firstdew::print {

namespace {

using namespace facts;

/// Uses the data inside the program without a copy.
void loadTypeface(const char* name)
{
    const QResource file(QStringLiteral(":/firstdew/fonts/%1").arg(QLatin1String(name)));
    QFontDatabase::addApplicationFontFromData(
        QByteArray::fromRawData(reinterpret_cast<const char*>(file.data()), file.size()));
}

} // namespace

void loadTypefaces()
{
    for (const char* name : {"Inter-Regular.ttf", "Inter-SemiBold.ttf"})
        loadTypeface(name);
}

void loadTypefacesFor(const QString& text)
{
    static bool loaded = false;
    if (loaded || std::none_of(text.begin(), text.end(), [](QChar c) { return c.script() == QChar::Script_Arabic; }))
        return;
    loaded = true;
    for (const char* name : {"NotoSansArabic-Regular.ttf", "NotoSansArabic-Bold.ttf"})
        loadTypeface(name);
}

constexpr double kMetresPerInch = 0.0254;

QPageLayout layoutOf(Paper paper)
{
    return {QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter), QPageLayout::Portrait,
            QMarginsF(16, 14, 16, 12), QPageLayout::Millimeter};
}

/// One to be read in ninety seconds, and one for whoever wants more.
constexpr int kPages = 2;

facts::Result<int> writeSummary(const summary::Contents& contents, Paper paper, const QString& file)
{
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(kDpi);
        writer.setPageLayout(layoutOf(paper));
        writer.setTitle(Page::tr("Iontophoresis summary"));
        writer.setCreator(QStringLiteral("Firstdew"));
        QPainter painter(&writer);
        if (!painter.isActive())
            return Error{"pdf-failed", file.toStdString(), "the page could not be drawn; nothing was written"};
        const QSizeF size(writer.width(), writer.height());
        paintFrontPage(painter, size, contents);
        if (!writer.newPage())
            return Error{"pdf-failed", file.toStdString(), "the second page could not be begun; nothing was written"};
        paintDetailsPage(painter, size, contents);
    }
    const QByteArray drawn = buffer.data();
    const auto finished =
        inLanguage({drawn.constData(), static_cast<std::size_t>(drawn.size())}, QLocale().bcp47Name().toStdString());
    if (!finished)
        return Error{finished.error().code, file.toStdString(), finished.error().message};
    const auto written = journal::replaceFile(file.toStdString(), *finished);
    if (!written)
        return written.error();
    return kPages;
}

QImage previewOf(const summary::Contents& contents, Paper paper, int width)
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
    paintFrontPage(painter, painted.size(), contents);
    painter.end();
    return image.scaledToWidth(width, Qt::SmoothTransformation);
}

} // namespace firstdew::print
