#pragma once

#include "diary/Diary.h"

#include <optional>
#include <vector>

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// The fields of a care sheet, in the order of its file.
enum class SheetField {
    Who,
    Given,
    Sites,
    Plan,
    Days,
    Waveform,
    DirectLimit,
    PulsedLimit,
    Raise,
    Lower,
    Swapping,
    Review,
    Notes,
    Pad,
    AtNoResponse,
    Contact,
    Level
};

struct SheetChange {
    SheetField field{};
    bool loosens = false; ///< it allows a current, a waveform or a pace that is not allowed now
    bool operator==(const SheetChange&) const = default;
};

/// What a new care sheet changes for the sites that share a care sheet today, or have none.
struct SheetEffect {
    std::vector<Site> sites;
    std::optional<CareSheet> before;
    std::vector<SheetChange> changes; ///< in the order of the fields
};

/// What accepting `sheet` today would change, site by site. A site where a sheet given later stays in force is left
/// out, and so is one where nothing changes. Empty: the sheet changes nothing.
[[nodiscard]] std::vector<SheetEffect> effectsOf(const CareSheet& sheet, const Diary& diary);

/// Whether something in `effects` loosens: accepting it takes a confirmation of its own.
[[nodiscard]] bool loosens(const std::vector<SheetEffect>& effects);

} // namespace firstdew::protocol

namespace firstdew::facts {
FIRSTDEW_TOKENS(protocol::SheetField, "who", "given", "sites", "plan", "days", "waveform", "direct_limit_ma",
                "pulsed_limit_ma", "raise_s", "lower_s", "swapping_s", "review", "notes", "pad_cm2", "at_no_response",
                "contact", "level_ma");
} // namespace firstdew::facts
