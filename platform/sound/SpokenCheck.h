#pragma once

#include "sound/Timeline.h"

#include <optional>

namespace firstdew::sound {

/// What a synthesizer put into a clip.
struct Loudness {
    double seconds = 0; ///< in which something is heard
    double db = -120;   ///< root of the mean square in that time, below full scale
    bool operator==(const Loudness&) const = default;
};
/// Of samples at kRate.
[[nodiscard]] Loudness loudnessOf(const Samples& samples);

/// Why a clip is no spoken text.
enum class Unspoken {
    Silent,   ///< too soft to be heard once it is made as loud as the others
    TooShort, ///< nobody can have said that many letters in this time
    TooLong   ///< as where letters are spelt, or a noise goes on and on
};
/// Whether a clip can be a text of that many letters (white space and marks do not count).
[[nodiscard]] std::optional<Unspoken> faultOf(const Loudness& heard, int letters);

/// The clip without silence at its ends but for a lead, as loud as the recorded ones (assets/voice/make.py).
[[nodiscard]] Samples evened(const Samples& samples);

} // namespace firstdew::sound
