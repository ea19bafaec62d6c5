#include "Pages.h"

#include "controls/Router.h"

#include <QDirIterator>
#include <QHash>
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
    static const QHash<QString, ui::Place::Value> places{{QStringLiteral("Today"), ui::Place::Today},
                                                         {QStringLiteral("Bath"), ui::Place::Session},
                                                         {QStringLiteral("Diary"), ui::Place::Diary},
                                                         {QStringLiteral("Plan"), ui::Place::Plan}};
    emit router->place(places.value(name, ui::Place::Today));
    if (!places.contains(name))
        emit router->page(router->partNamed(name));
    return isShown(*window.contentItem(), name);
}

} // namespace firstdew::app
