#include "protocol/SheetEffect.h"

#include "protocol/Area.h"
#include "protocol/CareSheets.h"

#include <algorithm>

namespace firstdew::protocol {

namespace {

bool same(SheetField field, const CareSheet& a, const CareSheet& b)
{
    switch (field) {
    case SheetField::Who: return a.who == b.who;
    case SheetField::Given: return a.given == b.given;
    case SheetField::Sites: return a.sites == b.sites;
    case SheetField::Plan: return a.plan == b.plan;
    case SheetField::Days: return a.days == b.days;
    case SheetField::Waveform: return a.waveform == b.waveform;
    case SheetField::DirectLimit: return a.directLimit == b.directLimit;
    case SheetField::PulsedLimit: return a.pulsedLimit == b.pulsedLimit;
    case SheetField::Raise: return a.raise == b.raise;
    case SheetField::Lower: return a.lower == b.lower;
    case SheetField::Swapping: return a.swapping == b.swapping;
    case SheetField::Review: return a.review == b.review;
    case SheetField::Notes: return a.notes == b.notes;
    case SheetField::Pad: return a.pad == b.pad;
    case SheetField::AtNoResponse: return a.atNoResponse == b.atNoResponse;
    case SheetField::Contact: return a.contact == b.contact;
    case SheetField::Level: return a.level == b.level;
    }
    return true;
}

bool higher(const std::optional<Milliamps>& before, const std::optional<Milliamps>& after)
{
    return before && (!after || *after > *before);
}

bool quicker(Seconds before, Seconds after) { return after.s < before.s; }

/// Direct current feels twice as strong as pulsed, and the limit of pulsed current is the higher one: to let go of a
/// prescribed waveform or to exchange pulsed for direct loosens. The two differ.
bool freer(const std::optional<Waveform>& before, const std::optional<Waveform>& after)
{
    return before && (!after || *after == Waveform::Direct);
}

bool loosensIn(SheetField field, const CareSheet& before, const CareSheet& after)
{
    const Allowances usual;
    switch (field) {
    case SheetField::Waveform: return freer(before.waveform, after.waveform);
    case SheetField::DirectLimit: return higher(before.directLimit, after.directLimit);
    case SheetField::PulsedLimit: return higher(before.pulsedLimit, after.pulsedLimit);
    case SheetField::Raise: return quicker(before.raise.value_or(usual.raise), after.raise.value_or(usual.raise));
    case SheetField::Lower: return quicker(before.lower.value_or(usual.lower), after.lower.value_or(usual.lower));
    case SheetField::Level: return higher(before.level, after.level);
    case SheetField::Pad: return before.pad && after.pad.value_or(kUnknownPad) > *before.pad;
    default: return false;
    }
}

std::vector<SheetChange> changesBetween(const std::optional<CareSheet>& before, const CareSheet& after)
{
    const CareSheet from = before.value_or(CareSheet{});
    std::vector<SheetChange> out;
    for (const SheetField field : allOf<SheetField>()) {
        const bool dated = field == SheetField::Given && !before;
        if (dated || !same(field, from, after))
            out.push_back({field, loosensIn(field, from, after)});
    }
    return out;
}

} // namespace

std::vector<SheetEffect> effectsOf(const CareSheet& sheet, const Diary& diary)
{
    std::vector<SheetEffect> out;
    for (const Site site : allOf<Site>()) {
        const CareSheet* present = sheetFor(diary, site);
        const bool forSite = sheet.sites.empty() || sheet.sites.contains(site);
        if (!forSite || (present != nullptr && present->given > sheet.given))
            continue;
        const auto before = present != nullptr ? std::optional(*present) : std::nullopt;
        const auto alike = std::ranges::find(out, before, &SheetEffect::before);
        if (alike != out.end())
            alike->sites.push_back(site);
        else if (auto changes = changesBetween(before, sheet); !changes.empty())
            out.push_back({{site}, before, std::move(changes)});
    }
    return out;
}

bool loosens(const std::vector<SheetEffect>& effects)
{
    return std::ranges::any_of(
        effects, [](const SheetEffect& e) { return std::ranges::any_of(e.changes, &SheetChange::loosens); });
}

} // namespace firstdew::protocol
