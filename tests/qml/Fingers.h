#pragma once

#include "Interface.h"

#include <QMouseEvent>

// Finds what stands on the screen, and taps it as a finger does.
namespace firstdew::tests {

/// One touch after the other, as somebody reads in between, or as soon after the last one as asked.
inline void tap(Interface& ui, QPointF at, int afterMs = 1000)
{
    static quint64 now = 0;
    now += static_cast<quint64>(afterMs);
    for (const auto type : {QEvent::MouseButtonPress, QEvent::MouseButtonRelease}) {
        const bool up = type == QEvent::MouseButtonRelease;
        QMouseEvent event(type, at, ui.window->mapToGlobal(at), Qt::LeftButton, up ? Qt::NoButton : Qt::LeftButton,
                          Qt::NoModifier);
        event.setTimestamp(now);
        QCoreApplication::sendEvent(ui.window, &event);
    }
}

inline QQuickItem* button(Interface& ui, const QString& text)
{
    QQuickItem* found = nullptr;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        if (isButton(item) && plain(item->property("text").toString()) == plain(text))
            found = item;
    });
    return found;
}

inline bool shows(Interface& ui, const QString& part)
{
    bool found = false;
    ui.settled();
    visit(ui.window->contentItem(), [&](QQuickItem* item) {
        found = found || (isText(item) && plain(item->property("text").toString()).contains(plain(part)));
    });
    return found;
}

/// Touches the button of that text.
inline void press(Interface& ui, const QString& text)
{
    QQuickItem* found = button(ui, text);
    INFO(text.toStdString());
    REQUIRE(found != nullptr);
    tap(ui, onScreen(found).center());
    ui.settled();
}

} // namespace firstdew::tests
