#pragma once

#include "situation/SiteView.h"

#include <optional>

namespace firstdew::situation {

/// The plan of the running course, what was missed of it, and whether it crowds. Needs a course.
void planCourseOf(const View& view, SiteSituation& site);

/// The scores before the treatment and since, and what they say of the response. Returns the day of the latest score
/// since the treatment began.
std::optional<LocalDate> judgeResponse(const View& view, SiteSituation& site);

/// Stage and advice of a course that has not been reviewed. `scored` is the day of the latest score.
void courseStage(const View& view, SiteSituation& site, std::optional<LocalDate> scored);

} // namespace firstdew::situation
