#include "Fingers.h"

#include "exchange/CareSheetFile.h"

#include "exchange/QrCode.h"

#include <QDir>
#include <QFile>
#include <QPainter>

#include <random>

using namespace firstdew;
using namespace firstdew::tests;

namespace {

/// A sheet for both hands, given on that day.
CareSheet sheetOf(const char* given, double direct)
{
    CareSheet s;
    s.who = "Dr Vance";
    s.given = *LocalDate::parse(given);
    s.sites = {Site::Hands};
    s.directLimit = Milliamps{direct};
    return s;
}

/// The documents of an invented home, with one care sheet in them.
struct Home {
    explicit Home(const CareSheet& sheet)
    {
        qputenv("HOME", folder.path().toUtf8());
        QDir(folder.path()).mkdir("Documents");
        QFile file(folder.path() + "/Documents/sheet.json");
        REQUIRE(file.open(QIODevice::WriteOnly));
        file.write(QByteArray::fromStdString(exchange::careSheetJson(sheet)));
    }
    ~Home() { qputenv("HOME", before); }
    Home(const Home&) = delete;
    Home& operator=(const Home&) = delete;

    QByteArray before = qgetenv("HOME");
    QTemporaryDir folder;
};

QQuickItem* tapOn(Interface& ui, const QString& text)
{
    QQuickItem* found = button(ui, text);
    REQUIRE(found != nullptr);
    tap(ui, onScreen(found).center());
    return found;
}

/// The sheet's code on paper, `module` pixels a module, as a camera straight above it would see it.
QImage codeOf(const CareSheet& sheet, int module = 6)
{
    const auto code = exchange::qrCodeOf(exchange::careSheetLine(sheet)).value();
    constexpr int kQuiet = 4;
    const int side = (code.size + 2 * kQuiet) * module;
    QImage image(side, side, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    for (int row = 0; row < code.size; ++row)
        for (int column = 0; column < code.size; ++column)
            if (code.at(column, row))
                painter.fillRect((column + kQuiet) * module, (row + kQuiet) * module, module, module, Qt::black);
    return image;
}

/// On a larger grey page, turned by `degrees` and seen from the side so that its far edge is shorter by that share.
QImage held(const QImage& code, double degrees, double shorter)
{
    const double w = code.width();
    QTransform turn;
    turn.rotate(degrees);
    QPolygonF to;
    to << QPointF(w * shorter / 2, 0) << QPointF(w * (1 - shorter / 2), 0) << QPointF(w, w) << QPointF(0, w);
    QTransform tilt;
    REQUIRE(QTransform::quadToQuad(QPolygonF(QRectF(0, 0, w, w)).mid(0, 4), to, tilt));
    const QImage turned = code.transformed(tilt * turn, Qt::SmoothTransformation);
    QImage page(turned.width() + 160, turned.height() + 120, QImage::Format_RGB32);
    page.fill(QColor(200, 196, 188));
    QPainter painter(&page);
    painter.drawImage(80, 60, turned);
    return page;
}

/// In bad light: black and white are `contrast` apart around mid-grey, with noise of that width.
QImage dim(const QImage& image, int contrast, double noise)
{
    std::mt19937 random(7);
    std::normal_distribution<double> grain(0, noise);
    QImage out = image.convertToFormat(QImage::Format_Grayscale8);
    for (int y = 0; y < out.height(); ++y)
        for (int x = 0; x < out.width(); ++x) {
            const double grey = 110 + (qGray(image.pixel(x, y)) / 255.0 - 0.5) * contrast + grain(random);
            out.scanLine(y)[x] = static_cast<uchar>(std::clamp(grey, 0.0, 255.0));
        }
    return out;
}

std::size_t sheets(Interface& ui) { return ui.store.diary().careSheets.size(); }

} // namespace

TEST_CASE("A care sheet that allows more is shown as that, and is used only after a word for it")
{
    Home home(sheetOf("2026-03-19", 14.5));
    Interface ui({600, 1600}, "light");
    REQUIRE(ui.store.append(sheetOf("2026-03-01", 12)));
    REQUIRE(ui.show("CareSheetPage"));
    CHECK(shows(ui, "Limit, direct: 12 mA"));
    tapOn(ui, "sheet.json");
    CHECK(shows(ui, "Allows more than now. Limit, direct: 14.5 mA (now 12 mA)"));
    QQuickItem* use = tapOn(ui, "Use this care sheet");
    CHECK_FALSE(use->isEnabled());
    CHECK(sheets(ui) == 1);
    CHECK_FALSE(ui.context.keep.acceptSheet(home.folder.path() + "/Documents/sheet.json", false));
    tapOn(ui, "My prescriber told me that more is allowed from now on");
    tapOn(ui, "Use this care sheet");
    CHECK(sheets(ui) == 2);
    CHECK(shows(ui, "Limit, direct: 14.5 mA"));
}

TEST_CASE("A care sheet that lowers a limit is used at once, and one from the future is refused")
{
    {
        Home home(sheetOf("2026-03-19", 9));
        Interface ui({600, 1600}, "light");
        REQUIRE(ui.show("CareSheetPage"));
        tapOn(ui, "sheet.json");
        CHECK_FALSE(shows(ui, "Allows more than now."));
        tapOn(ui, "Use this care sheet");
        CHECK(sheets(ui) == 1);
    }
    Home home(sheetOf("2026-03-21", 9)); // tomorrow
    Interface ui({600, 1600}, "light");
    REQUIRE(ui.show("CareSheetPage"));
    tapOn(ui, "sheet.json");
    CHECK(button(ui, "Use this care sheet") == nullptr);
    CHECK(shows(ui, "This care sheet is dated in the future."));
}

TEST_CASE("A care sheet older than the one in use changes nothing, and says so")
{
    Home home(sheetOf("2026-02-01", 15));
    Interface ui({600, 1600}, "light");
    REQUIRE(ui.store.append(sheetOf("2026-03-01", 12)));
    REQUIRE(ui.show("CareSheetPage"));
    tapOn(ui, "sheet.json");
    CHECK(shows(ui, "This care sheet changes nothing"));
    CHECK(button(ui, "Use this care sheet") == nullptr);
}

TEST_CASE("A code held before the camera is read, however it is held, and becomes the course after a word for it")
{
    CareSheet sheet = sheetOf("2026-03-19", 9);
    sheet.plan = CourseTemplate::Prescribed;
    sheet.days = {1, 3, 6};
    const int way = GENERATE(range(0, 6));
    Home home(sheetOf("2026-03-18", 10));
    Interface ui({600, 1600}, "light");
    const QImage code = codeOf(sheet);
    const QImage seen = way == 0   ? held(code, 0, 0)
                        : way == 1 ? held(code, 23, 0)
                        : way == 2 ? held(code, 180, 0.1)
                        : way == 3 ? held(code, -8, 0.12)
                        : way == 4 ? dim(held(code, 5, 0.05), 60, 1)
                                   : dim(held(code, 12, 0), 120, 18);
    INFO(way);
    ui.camera.there = true;
    REQUIRE(ui.show("CareSheetPage"));
    tapOn(ui, "Scan the code");
    CHECK(ui.scan.looking());
    QImage nothing(320, 240, QImage::Format_RGB32);
    nothing.fill(Qt::gray);
    ui.camera.show(nothing);
    CHECK(ui.scan.looking());
    ui.camera.show(seen);
    CHECK_FALSE(ui.scan.looking());
    CHECK(ui.camera.seen == nullptr); // the camera is off
    CHECK(shows(ui, "Both hands: a course of 3 session"));
    CHECK(sheets(ui) == 0);
    tapOn(ui, "Use this care sheet");
    CHECK(sheets(ui) == 1);
    CHECK(ui.store.diary().at(DiarySite::Hands).course()->course.days == std::vector{1, 3, 6});
}

TEST_CASE("A code that is no care sheet, and a camera that fails, are told")
{
    Home home(sheetOf("2026-03-18", 10));
    Interface ui({600, 1600}, "light");
    ui.camera.there = true;
    REQUIRE(ui.show("CareSheetPage"));
    tapOn(ui, "Scan the code");
    const auto code = exchange::qrCodeOf("https://example.org").value();
    QImage image((code.size + 8) * 6, (code.size + 8) * 6, QImage::Format_RGB32);
    image.fill(Qt::white);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const int column = x / 6 - 4;
            const int row = y / 6 - 4;
            if (column >= 0 && row >= 0 && column < code.size && row < code.size && code.at(column, row))
                image.setPixel(x, y, 0);
        }
    ui.camera.show(image);
    CHECK_FALSE(ui.scan.looking());
    CHECK(button(ui, "Use this care sheet") == nullptr);
    tapOn(ui, "Scan the code");
    ui.camera.failed();
    CHECK(shows(ui, "The camera cannot be used. Take a picture of the code and choose that."));
}

TEST_CASE("Without a camera the code is read from a picture of it")
{
    Home home(sheetOf("2026-03-18", 10));
    REQUIRE(
        dim(held(codeOf(sheetOf("2026-03-19", 9)), 4, 0.04), 140, 6).save(home.folder.path() + "/Documents/photo.png"));
    QImage empty(300, 300, QImage::Format_RGB32);
    empty.fill(Qt::white);
    REQUIRE(empty.save(home.folder.path() + "/Documents/wall.jpg"));
    Interface ui({600, 1600}, "light");
    REQUIRE(ui.show("CareSheetPage"));
    CHECK(button(ui, "Scan the code") == nullptr);
    tapOn(ui, "wall.jpg");
    CHECK(button(ui, "Use this care sheet") == nullptr);
    CHECK(shows(ui, "There is no code in this picture that can be read."));
    tapOn(ui, "photo.png");
    tapOn(ui, "Use this care sheet");
    REQUIRE(sheets(ui) == 1);
    CHECK(ui.store.diary().careSheets.front().payload.directLimit == Milliamps{9});
}
