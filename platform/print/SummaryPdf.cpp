#include "print/SummaryPdf.h"

#include "journal/OwnFile.h"
#include "print/DetailsPage.h"
#include "print/FrontPage.h"
#include "print/PdfLanguage.h"

#include <QBuffer>
#include <QFontDatabase>
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
        writer.setPageSize(QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter));
        writer.setPageMargins(QMarginsF(16, 14, 16, 12), QPageLayout::Millimeter);
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

} // namespace firstdew::print
