#include "Pages.h"

#include "controls/Router.h"

#include <QDirIterator>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>

namespace firstdew::app {

namespace {

/// Whether a visible item is made by the document of that name.
bool isShown(const QQuickItem& item, const QString& document)
{
    if (!item.isVisible())
        return false;
    if (QString::fromLatin1(item.metaObject()->className()).startsWith(document + QStringLiteral("_QML")))
        return true;
    const auto children = item.childItems();
    return std::any_of(children.begin(), children.end(), [&](const QQuickItem* c) { return isShown(*c, document); });
}

} // namespace

QStringList pageNames()
{
    QStringList names;
    QDirIterator files(QStringLiteral(":/Firstdew/pages"), {QStringLiteral("*.qml")}, QDir::Files);
    while (files.hasNext())
        names << QFileInfo(files.next()).baseName();
    names.sort();
    return names;
}

bool showPage(QQuickWindow& window, const QString& name)
{
    auto* router = qmlEngine(&window)->singletonInstance<controls::Router*>(qmlTypeId("Firstdew", 1, 0, "Router"));
    const QStringList places{QStringLiteral("today"), QStringLiteral("bath"), QStringLiteral("diary"),
                             QStringLiteral("plan")};
    const bool isPlace = places.contains(name.toLower());
    emit router->place(isPlace ? name.toLower() : places.front());
    if (!isPlace)
        emit router->page(name, {});
    return isShown(*window.contentItem(), name);
}

} // namespace firstdew::app
