#pragma once

#include "facts/Fact.h"

#include <span>

namespace firstdew::diary {

using namespace facts;

/// The setting of the app lock as it is stored. It is no member of Preferences, which are one person's.
[[nodiscard]] Preference appLockPreference(bool on);

/// Whether anybody whose facts these are wants the app locked. There is one app for all of them: one record would be
/// open through another. `facts` are in the order recorded.
[[nodiscard]] bool lockWanted(std::span<const Fact> facts);

} // namespace firstdew::diary
