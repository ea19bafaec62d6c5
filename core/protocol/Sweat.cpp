#include "protocol/Sweat.h"

#include <cmath>
#include <fmt/format.h>

namespace firstdew::protocol {

namespace {

constexpr double kHeaviestPaper = 100'000; // mg
constexpr double kMinutesOfDay = 1440;

std::optional<Error> refusal(const Weighing& w, SquareMetres body)
{
    for (const auto& [weight, name] : {std::pair{w.before, "before"}, {w.after, "after"}})
        if (!(weight.mg > 0 && weight.mg <= kHeaviestPaper))
            return Error{
                "weight-of-paper", name,
                fmt::format("{:g} mg is no weight of paper; weigh again, in milligrams (1 g is 1000 mg)", weight.mg)};
    if (w.after < w.before)
        return Error{"lighter-after", "after",
                     fmt::format("the paper got lighter, from {:g} to {:g} mg; if the two are not swapped, weigh again "
                                 "with a dry paper",
                                 w.before.mg, w.after.mg)};
    if (!(w.minutes > 0 && w.minutes <= kMinutesOfDay))
        return Error{
            "minutes-out-of-range", "minutes",
            fmt::format("{:g} minutes is not above 0 and at most a day; give how long the paper lay", w.minutes)};
    if (!(body.m2 > 0) || !std::isfinite(body.m2))
        return Error{"no-body-surface", "body", "the body surface is not known; give height and weight"};
    return std::nullopt;
}

} // namespace

NormalSweat normalSweat(DiarySite site)
{
    switch (site) {
    case DiarySite::Hands: return {site, 18.49, 14.06, 46};
    case DiarySite::Feet: return {site, 15.77, 16.87, 50};
    case DiarySite::Armpits: return {site, 42.39, 47.08, 136};
    }
    return {};
}

Result<SweatRate> sweatRate(const Weighing& weighing, SquareMetres body)
{
    if (auto error = refusal(weighing, body))
        return *error;
    SweatRate out;
    out.mgPerMin = mgPerMinute(weighing);
    out.mgPerMinPerM2 = out.mgPerMin / body.m2;
    out.upperNormal = normalSweat(weighing.site).upperNormal;
    out.above = out.mgPerMinPerM2 > out.upperNormal;
    if (weighing.site != DiarySite::Feet)
        out.aboveFiveMinuteCut = out.mgPerMin * 5 > kFiveMinuteCutOff.mg;
    return out;
}

} // namespace firstdew::protocol
