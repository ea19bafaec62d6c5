#pragma once

#include "facts/Enumerations.h"
#include "facts/Result.h"
#include "facts/Units.h"

#include <algorithm>
#include <optional>

namespace firstdew::protocol {

using namespace facts;

/// Palmar hand with its fingers, share of the body surface of an adult (Rhodes et al., Br J Dermatol 2013;169:76-84).
inline constexpr double kAdultHandShare = 0.0087;
/// The palm without its fingers (Rhodes et al. 2013).
inline constexpr double kPalmShare = 0.005;
/// Palmar hand of a child (Nagel & Schunk 1997).
inline constexpr double kChildHandShare = 0.0094;
/// One sole (our own choice).
inline constexpr double kSoleShare = 0.015;

/// Area of one armpit pad while nobody said how large it is (our own choice, cautious): at most 12 mA.
inline constexpr SquareCentimetres kUnknownPad{24};

/// Body surface by two published formulae.
struct BodySurface {
    SquareMetres mosteller; ///< √(cm·kg/3600) (Mosteller, N Engl J Med 1987;317:1098)
    SquareMetres duBois;    ///< 0.007184·kg^0.425·cm^0.725 (Du Bois & Du Bois, Arch Intern Med 1916;17:863)
    /// The smaller of both: a smaller area means a higher density, which is the cautious reading.
    [[nodiscard]] SquareMetres cautious() const { return std::min(mosteller, duBois); }
};

/// What a body can be; wide enough for everybody who may be treated (our own choice).
inline constexpr Centimetres kShortest{40};
inline constexpr Centimetres kTallest{250};
inline constexpr Kilograms kLightest{2};
inline constexpr Kilograms kHeaviest{350};

/// Refused: a height outside kShortest to kTallest, a weight outside kLightest to kHeaviest, anything that is no
/// number.
[[nodiscard]] Result<BodySurface> bodySurface(Centimetres height, Kilograms weight);

/// Palmar surface of one hand with its fingers, and of one sole.
[[nodiscard]] SquareCentimetres handArea(SquareMetres body, AgeGroup age);
[[nodiscard]] SquareCentimetres soleArea(SquareMetres body);

/// The smallest skin area on the path of a session, which sets the density there: one hand, one sole, of hand + foot
/// the hand; a pad where it is smaller, and always at the armpits. Nothing where it is not known; what is zero or less
/// is not known.
[[nodiscard]] std::optional<SquareCentimetres> contactArea(Site site, AgeGroup age, std::optional<SquareMetres> body,
                                                           std::optional<SquareCentimetres> pad);

} // namespace firstdew::protocol
