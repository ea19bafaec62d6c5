#include <QGuiApplication>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QQmlApplicationEngine>

// The least that a program on this toolkit can be: an empty window, or an empty page.
int main(int argc, char** argv)
{
    QGuiApplication program(argc, argv);
    const QStringList arguments = QGuiApplication::arguments();
    if (arguments.size() == 3 && arguments.at(1) == QLatin1String("page")) {
        QPdfWriter page(arguments.at(2));
        page.setPageSize(QPageSize(QPageSize::A4));
        QPainter painter(&page);
        return painter.isActive() ? 0 : 1;
    }
    QQmlApplicationEngine engine;
    engine.loadData("import QtQuick\nWindow { width: 390; height: 844; visible: true; color: \"#f6f1e6\" }");
    return engine.rootObjects().isEmpty() ? 1 : QGuiApplication::exec();
}
