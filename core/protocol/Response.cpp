#include "protocol/Response.h"

#include <algorithm>
#include <fmt/format.h>

namespace firstdew::protocol {

// Gülmez & Solak, J Clin Med 2026;15:640.
Result<Response> responseBy(int hdssStart, int hdssNow)
{
    for (const int score : {hdssStart, hdssNow})
        if (score < 1 || score > 4)
            return Error{
                "hdss-out-of-range", "score",
                fmt::format("the score {} is not between 1 and 4; answer the four-step question again", score)};
    const int better = hdssStart - hdssNow;
    return better >= 2 ? Response::Strong : better == 1 ? Response::Good : Response::None;
}

Course furtherCourse(const Course& course, int done, LocalDate today)
{
    Course out{course.site, CourseTemplate::Prescribed, {}, today, course.free};
    constexpr int kEvery = 2;
    for (int i = 0; i < std::max(1, kMostSessionsToTry - done); ++i)
        out.days.push_back(1 + kEvery * i);
    return out;
}

std::vector<TechniqueCheck> techniqueChecks(Site site, const Machine& machine)
{
    std::vector<TechniqueCheck> out{TechniqueCheck::LevelReached, TechniqueCheck::PolaritySwapped,
                                    TechniqueCheck::NoCream};
    if (site != Site::Armpits) // pads are not under water
        out.push_back(TechniqueCheck::UnderWater);
    out.push_back(TechniqueCheck::Contacts);
    if (machine.power == PowerSource::Cells)
        out.push_back(TechniqueCheck::FreshCells);
    out.push_back(TechniqueCheck::SoftWater);
    return out;
}

} // namespace firstdew::protocol
