#pragma once

#include "situation/Working.h"

#include <QString>

namespace firstdew::words {

/// Whether it works, in one line.
[[nodiscard]] QString workingLine(const situation::SiteWorking& working);
/// The figures behind that line, or what is missing, in a few sentences. `forecast` is that of the same site.
[[nodiscard]] QString workingDetail(const situation::SiteWorking& working, const outlook::Forecast& forecast,
                                    facts::LocalDate today);
/// Damp days a week, as every page and the paper write them: whole, or "under 1".
[[nodiscard]] QString dampDays(double aWeek);
/// "2 now, 7 before the first session"; empty if there is nothing to tell.
[[nodiscard]] QString dampDaysChange(const situation::SiteWorking& working);

} // namespace firstdew::words
