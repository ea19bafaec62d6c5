#pragma once

#include "situation/SiteView.h"

#include <optional>

namespace firstdew::situation {

/// The plan of the running course, what was missed of it, and whether it crowds. Needs a course.
void planCourseOf(const View& view, SiteSituation& site);

/// The days from today on, `days` of them at most, on which a session of the running course is called for if nobody
/// opens the app meanwhile: each day is planned as of itself, so a session missed is called for again on the day it
/// moves to.
[[nodiscard]] std::vector<LocalDate> courseDaysAhead(const Diary& diary, const diary::SiteInUse& use, int days);

/// The scores before the treatment and since, and what they say of the response. Returns the day of the latest score
/// since the treatment began.
std::optional<LocalDate> judgeResponse(const View& view, SiteSituation& site);

/// Stage and advice of a course that has not been reviewed. `scored` is the day of the latest score.
void courseStage(const View& view, SiteSituation& site, std::optional<LocalDate> scored);

} // namespace firstdew::situation
