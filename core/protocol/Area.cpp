#include "protocol/Area.h"

#include <cmath>
#include <fmt/format.h>

namespace firstdew::protocol {

namespace {

constexpr double kCm2PerM2 = 10'000;

} // namespace

Result<BodySurface> bodySurface(Centimetres height, Kilograms weight)
{
    const double cm = height.cm;
    const double kg = weight.kg;
    if (!(height >= kShortest && height <= kTallest))
        return Error{"height-out-of-range", "height",
                     fmt::format("{:g} cm is not between {:g} and {:g}; give the height in centimetres", cm,
                                 kShortest.cm, kTallest.cm)};
    if (!(weight >= kLightest && weight <= kHeaviest))
        return Error{"weight-out-of-range", "weight",
                     fmt::format("{:g} kg is not between {:g} and {:g}; give the weight in kilograms", kg, kLightest.kg,
                                 kHeaviest.kg)};
    return BodySurface{{std::sqrt(cm * kg / 3600)}, {0.007184 * std::pow(kg, 0.425) * std::pow(cm, 0.725)}};
}

SquareCentimetres handArea(SquareMetres body, AgeGroup age)
{
    return {body.m2 * kCm2PerM2 * (age == AgeGroup::Adult ? kAdultHandShare : kChildHandShare)};
}

SquareCentimetres soleArea(SquareMetres body) { return {body.m2 * kCm2PerM2 * kSoleShare}; }

std::optional<SquareCentimetres> contactArea(Site site, AgeGroup age, std::optional<SquareMetres> body,
                                             std::optional<SquareCentimetres> pad)
{
    std::optional<SquareCentimetres> area;
    if (body && body->m2 > 0 && site != Site::Armpits)
        area = site == Site::Feet ? soleArea(*body) : handArea(*body, age);
    if (pad && pad->cm2 > 0 && (!area || *pad < *area))
        area = pad;
    return area;
}

} // namespace firstdew::protocol
