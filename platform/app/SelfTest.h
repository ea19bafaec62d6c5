#pragma once

#include <QString>

class QQuickWindow;

namespace firstdew::viewmodels {
class Appearance;
}

namespace firstdew::app {

/// Collects every warning from now on, so that the self-test can fail on it.
void watchWarnings();

/// Loads every page in both themes and prints the result of each. Saves a picture of each in the folder `pictures`
/// unless that is empty. Returns the number of failures.
int selfTest(QQuickWindow& window, viewmodels::Appearance& appearance, const QString& pictures = {});

/// Saves a picture of the window in `file` once it no longer changes. Returns false if that fails.
bool screenshot(QQuickWindow& window, const QString& file);

/// Prints "first frame", and the monotonic clock in nanoseconds, once a frame with Today's check-in was shown.
void announceFirstFrame(QQuickWindow& window);

} // namespace firstdew::app
