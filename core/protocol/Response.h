#pragma once

#include "facts/Payloads.h"
#include "facts/Result.h"

#include <vector>

namespace firstdew::protocol {

using namespace facts;

enum class Response { None, Good, Strong };

/// A score decides for so many days; later it is asked again (our own choice, cautious).
inline constexpr int kScoreDays = 14;
/// Sessions before which a course without response has not failed: control often comes only then (Hölzle & Alberti,
/// Dermatologica 1987;175:126-35), and more sessions went with more response (Gülmez & Solak, J Clin Med 2026;15:640).
inline constexpr int kLeastSessionsToJudge = 10;
/// Sessions up to which going on is offered (Hölzle & Alberti 1987: ten to twelve).
inline constexpr int kMostSessionsToTry = 12;

/// Response by HDSS change (scores 1-4): better by 2 or more strong, by 1 good, else none.
[[nodiscard]] Result<Response> responseBy(int hdssStart, int hdssNow);

/// The course that goes on after `done` sessions brought no response, up to kMostSessionsToTry: a session every other
/// day (our own choice, between three a week and five a week) on the person's weekdays, from `today` on.
[[nodiscard]] Course furtherCourse(const Course& course, int done, LocalDate today);

/// What goes wrong most often where a course brings no response or the current will not rise (our own choice of list).
enum class TechniqueCheck {
    LevelReached,    ///< was the current as high as is comfortable?
    PolaritySwapped, ///< half of the session each way
    NoCream,         ///< cream keeps the current off
    UnderWater,      ///< everything to be treated, and nothing on the plate
    Contacts,        ///< both leads in, trays apart
    FreshCells,
    SoftWater ///< conducts badly
};
/// The checks that fit a session at `site` with that machine, in the order to go through them.
[[nodiscard]] std::vector<TechniqueCheck> techniqueChecks(Site site, const Machine& machine);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_TOKENS(protocol::Response, "none", "good", "strong");
FIRSTDEW_TOKENS(protocol::TechniqueCheck, "level-reached", "polarity-swapped", "no-cream", "under-water", "contacts",
                "fresh-cells", "soft-water");
} // namespace firstdew::facts
