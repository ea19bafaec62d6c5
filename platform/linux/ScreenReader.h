#pragma once

#include <QDBusConnection>

namespace firstdew::linuxside {

/// Whether a screen reader is on, as the desktop's accessibility bus says (org.a11y.Status, ScreenReaderEnabled).
/// False where nobody answers.
[[nodiscard]] bool screenReaderIsOn(const QDBusConnection& bus);

} // namespace firstdew::linuxside
