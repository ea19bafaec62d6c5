#pragma once

#include <QStringList>

class QQuickWindow;

namespace firstdew::app {

/// The names of all pages, sorted.
[[nodiscard]] QStringList pageNames();

/// Goes to the page of that name by the router that every button uses: a place of the bottom bar, or a page over Today.
/// Returns whether the page is shown.
[[nodiscard]] bool showPage(QQuickWindow& window, const QString& name);

} // namespace firstdew::app
