#pragma once

#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "bath/Engine.h"
#include "facts/Payloads.h"
#endif

#include <QVariantMap>

namespace firstdew::viewmodels {

/// What the running page shows: words, numbers and what may be done.
[[nodiscard]] QVariantMap runningView(const bath::State& state);
/// What the page afterwards starts from: completed, peak, comfortable (the highest reading up
/// to the limit, 0 where nobody read the meter), target, limit.
[[nodiscard]] QVariantMap afterView(const bath::State& state);
/// The session as the diary keeps it, but for what the person says of it.
[[nodiscard]] facts::Session sessionOf(const bath::State& state);

} // namespace firstdew::viewmodels
