#pragma once

#include "diary/Diary.h"

#include <optional>

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// Burns and blisters are the known harm of this treatment (common practice, no source).
[[nodiscard]] constexpr bool harms(SetOf<SkinFinding> skin)
{
    return skin.contains(SkinFinding::Blister) || skin.contains(SkinFinding::Burn);
}

/// Redness, itch or pain that is still there the next day speaks against a rise (our own choice, cautious).
[[nodiscard]] constexpr bool irritates(SetOf<SkinFinding> skin)
{
    return skin.contains(SkinFinding::Redness) || skin.contains(SkinFinding::Itch) || skin.contains(SkinFinding::Pain);
}

/// A blister or burn that bars a site.
struct SkinBar {
    DiarySite site{};
    SkinFinding finding{}; ///< burn before blister
    LocalDate since;
};

/// What bars a site: its latest blister or burn, noted with a session or in the diary, until a clinician's word given
/// on that day or later is recorded after it. Nothing where the site is free.
[[nodiscard]] std::optional<SkinBar> skinBar(const Diary& diary, DiarySite site);

/// The first bar among the skin that a session at `site` treats.
[[nodiscard]] std::optional<SkinBar> skinBar(const Diary& diary, Site site);

} // namespace firstdew::protocol
