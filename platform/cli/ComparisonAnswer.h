#pragma once

#include "Verb.h"

#include "situation/Assess.h"

namespace firstdew::cli {

/// How long a shorter session holds, as `fit`, `outlook` and `comparison` tell it.
[[nodiscard]] nlohmann::json holdRatioJson(const outlook::HoldRatio& held);
[[nodiscard]] std::string holdRatioText(const outlook::HoldRatio& held);

/// The comparison of a site; null, or nothing, where there was none.
[[nodiscard]] nlohmann::json comparisonJson(const situation::SiteSituation& site);
[[nodiscard]] std::string comparisonText(const situation::SiteSituation& site);

} // namespace firstdew::cli
