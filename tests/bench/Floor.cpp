#include <QGuiApplication>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QTextStream>

#include <chrono>

// The floor of the measurements: the least program with an empty window, or with an empty page. The window prints
// "first frame", and the monotonic clock in nanoseconds, as the app does with --test-first-frame.
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
    auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().value(0));
    if (window == nullptr)
        return 1;
    auto* once = new QObject(window);
    QObject::connect(window, &QQuickWindow::frameSwapped, once, [once] {
        const auto now = std::chrono::steady_clock::now().time_since_epoch();
        QTextStream(stdout) << "first frame " << std::chrono::nanoseconds(now).count() << Qt::endl;
        once->deleteLater();
    });
    return QGuiApplication::exec();
}
