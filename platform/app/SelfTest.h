#pragma once

#include <QStringList>

class QQuickWindow;

namespace firstdew::viewmodels {
class Appearance;
}

namespace firstdew::app {

/// Keeps every warning that QML gives, so that a test can fail on it.
void watchWarnings();
[[nodiscard]] QStringList warningsSeen();

/// Loads every place and every page in both themes; says what each did and, where `pictures` names a folder, leaves a
/// picture of each there. Gives the number of failures.
int selfTest(QQuickWindow& window, viewmodels::Appearance& appearance, const QString& pictures = {});

/// Draws it into `file` once it has settled; false where it could not.
bool screenshot(QQuickWindow& window, const QString& file);

} // namespace firstdew::app
