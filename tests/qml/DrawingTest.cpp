#include "Edge.h"
#include "Interface.h"
#include "words/Drawings.h"

#include <QAccessible>
#include <QDir>
#include <QFile>
#include <QPainter>
#include <QQmlComponent>
#include <QSvgRenderer>
#include <QXmlStreamReader>

#include <memory>
#include <set>

using namespace firstdew;
using namespace firstdew::tests;
using protocol::Drawing;

namespace {

constexpr int kSide = 120;

QImage rendered(const QString& file, const QColor& ground)
{
    QSvgRenderer renderer(file);
    QImage picture(kSide, kSide, QImage::Format_RGB32);
    picture.fill(ground);
    QPainter painter(&picture);
    renderer.render(&painter, QRectF(0, 0, kSide, kSide));
    return picture;
}

/// The share of pixels that are not the ground's.
double covered(const QImage& picture, const QColor& ground)
{
    int count = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            count += picture.pixel(x, y) != ground.rgb() ? 1 : 0;
    return count / static_cast<double>(picture.width() * picture.height());
}

int complaints = 0;
void countComplaint(QtMsgType /*type*/, const QMessageLogContext& /*where*/, const QString& /*what*/) { ++complaints; }

/// The control alone in a window of its own, with what the pages give it.
QImage shownAlone(Interface& ui, Drawing drawing, QString* name)
{
    QQmlComponent component(&ui.engine);
    component.setData("import QtQuick\nimport Firstdew\nWindow { visible: true; width: 160; height: 160; color: "
                      "Theme.card; property int subject; property alias drawing: it; Drawing { id: it; subject: "
                      "parent.Window.window.subject } }",
                      {});
    const std::unique_ptr<QObject> made(
        component.createWithInitialProperties({{"subject", static_cast<int>(drawing)}}));
    INFO(component.errorString().toStdString());
    auto* window = qobject_cast<QQuickWindow*>(made.get());
    REQUIRE(window != nullptr);
    auto* item = window->property("drawing").value<QQuickItem*>();
    REQUIRE(item != nullptr);
    if (auto* told = QAccessible::queryAccessibleInterface(item); told != nullptr && name != nullptr) {
        CHECK(told->role() == QAccessible::Graphic);
        *name = told->text(QAccessible::Name);
    }
    for (int i = 0; i < 4; ++i)
        QCoreApplication::processEvents();
    return window->grabWindow();
}

} // namespace

TEST_CASE("Every drawing has its file in both themes, which Qt reads without complaint and which shows something")
{
    needApplication();
    for (const auto drawing : allOf<Drawing>())
        for (const bool dark : {false, true}) {
            const QString name = words::drawingFile(drawing, dark);
            INFO(name.toStdString());
            QFile file(name);
            REQUIRE(file.open(QIODevice::ReadOnly));
            complaints = 0;
            const auto before = qInstallMessageHandler(countComplaint);
            const bool valid = QSvgRenderer(name).isValid();
            const QColor ground(dark ? 0x182b31 : 0xfffcf5);
            const double share = covered(rendered(name, ground), ground);
            qInstallMessageHandler(before);
            CHECK(valid);
            CHECK(complaints == 0);
            CHECK(share > 0.1);
            CHECK(share < 0.8);
        }
    for (const char* theme : {"light", "dark"}) // and none that nothing shows
        CHECK(QDir(QString(":/assets/drawings/") + theme).count() == allOf<Drawing>().size());
    CHECK(rendered(words::drawingFile(Drawing::HandsInTrays, false), Qt::white) !=
          rendered(words::drawingFile(Drawing::HandsInTrays, true), Qt::white));
}

TEST_CASE("Drawings keep to the plain shapes that SVG Tiny has")
{
    const std::set<QString> shapes{"svg", "g", "path", "rect", "circle"};
    for (const auto drawing : allOf<Drawing>())
        for (const bool dark : {false, true}) {
            QFile file(words::drawingFile(drawing, dark));
            INFO(file.fileName().toStdString());
            REQUIRE(file.open(QIODevice::ReadOnly));
            QXmlStreamReader reader(&file);
            while (!reader.atEnd())
                if (reader.readNext() == QXmlStreamReader::StartElement) {
                    CHECK(shapes.count(reader.name().toString()) == 1);
                    for (const auto& attribute : reader.attributes()) {
                        CHECK_FALSE(attribute.value().contains(QLatin1Char('{')));
                        CHECK_FALSE(attribute.value().contains(QLatin1String("var(")));
                        CHECK(attribute.name() != QLatin1String("style"));
                    }
                }
            CHECK_FALSE(reader.hasError());
        }
}

TEST_CASE("Every drawing has a text of its own for whoever does not see it")
{
    std::set<QString> texts;
    for (const auto drawing : allOf<Drawing>()) {
        const QString text = words::drawingText(drawing);
        INFO(text.toStdString());
        CHECK(text.endsWith('.'));
        CHECK_FALSE(text.contains("bath", Qt::CaseInsensitive));
        CHECK(texts.insert(text).second);
    }
}

TEST_CASE("The control shows the theme's picture and says what it shows")
{
    Interface light({390, 844}, "light");
    QString name;
    const QImage day = shownAlone(light, Drawing::SoakPads, &name);
    CHECK(name == words::drawingText(Drawing::SoakPads));
    CHECK(covered(day, QColor(0xfffcf5)) > 0.1);
    CHECK(shownAlone(light, Drawing::PadsOff, nullptr) != day);
    Interface dark({390, 844}, "dark");
    CHECK(shownAlone(dark, Drawing::SoakPads, nullptr) != day);
}

TEST_CASE("From right to left a drawing is turned over only where left and right mean nothing in it")
{
    const auto shown = [](Drawing drawing, Qt::LayoutDirection direction) {
        Interface ui({390, 844}, "light", 1, direction);
        return shownAlone(ui, drawing, nullptr);
    };
    const QImage turned = shown(Drawing::HelperBeside, Qt::RightToLeft);
    CHECK(turned != shown(Drawing::HelperBeside, Qt::LeftToRight));
    for (const auto drawing : {Drawing::TurnUp, Drawing::HandFootRight, Drawing::WaterLevel, Drawing::FlipSwitch})
        CHECK(shown(drawing, Qt::RightToLeft) == shown(drawing, Qt::LeftToRight));
    QGuiApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST_CASE("The running page and each line of the preparation name their drawings")
{
    Interface ui({390, 844}, "light");
    REQUIRE(ui.show("Bath:prepare"));
    for (const auto& line : ui.bath.preparation())
        CHECK_FALSE(line.drawings.isEmpty());
    REQUIRE(ui.show("Bath:run"));
    CHECK_FALSE(ui.bath.running().drawings.isEmpty());
}
