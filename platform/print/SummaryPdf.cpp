#include "print/SummaryPdf.h"

#include "print/DetailsPage.h"
#include "print/FrontPage.h"

#include <QFontDatabase>
#include <QPicture>
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

/// How many sites a page has room for, without drawing it anywhere.
std::size_t toldBy(const std::function<std::size_t(QPainter&)>& page)
{
    QPicture nothing;
    QPainter painter(&nothing);
    return page(painter);
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

facts::Result<int> writeSummary(const summary::Contents& contents, Paper paper, const QString& file)
{
    // One to be read in ninety seconds, and one for whoever wants more. That one also takes a site for which the first
    // had no room; several such sites have a page of their own.
    std::vector<Painting> pages{[&](QPainter& painter, QSizeF size) { paintFrontPage(painter, size, contents); }};
    std::size_t told = toldBy([&](QPainter& painter) { return paintFrontPage(painter, sizeOf(paper), contents); });
    while (told + 1 < contents.sites.size()) {
        pages.emplace_back(
            [&contents, told](QPainter& painter, QSizeF size) { paintSitesPage(painter, size, contents, told); });
        told += std::max<std::size_t>(
            1, toldBy([&](QPainter& painter) { return paintSitesPage(painter, sizeOf(paper), contents, told); }));
    }
    pages.emplace_back(
        [&contents, told](QPainter& painter, QSizeF size) { paintDetailsPage(painter, size, contents, told); });
    return writePages(pages, Page::tr("Iontophoresis summary"), paper, file);
}

QImage previewOf(const summary::Contents& contents, Paper paper, int width)
{
    return pictureOf([&](QPainter& painter, QSizeF size) { paintFrontPage(painter, size, contents); }, paper, width);
}

} // namespace firstdew::print
