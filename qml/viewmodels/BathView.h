#pragma once

#include "SessionValues.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "bath/Engine.h"
#include "facts/Payloads.h"
#endif

namespace firstdew::viewmodels {

/// What the running page shows, as far as the state of the session says it.
[[nodiscard]] ui::RunningPage runningPage(const bath::State& state);
/// What the page afterwards starts from, as far as the state of the session says it.
[[nodiscard]] ui::AfterPage afterPage(const bath::State& state);
/// The session as the diary keeps it, but for what the person says of it.
[[nodiscard]] facts::Session sessionOf(const bath::State& state);

} // namespace firstdew::viewmodels
