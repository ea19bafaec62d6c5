#pragma once

#include "situation/Assess.h"

namespace firstdew::situation {

/// The session to offer right after the one at `done`, which was completed today: other skin that is due today, or
/// that usually follows on the same day. Nothing where there is none.
[[nodiscard]] std::optional<Site> sessionAfter(const Diary& diary, const Situation& situation, Site done);

} // namespace firstdew::situation
