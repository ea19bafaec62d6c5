#pragma once

#include "diary/Diary.h"
#include "facts/Result.h"
#include "protocol/Limits.h"
#include "protocol/Script.h"

namespace firstdew::protocol {

using diary::Diary;

/// What to ask limitFor() of a session where nothing but the body and the armpit pads is known. Pads of unknown size
/// count as kUnknownPad.
[[nodiscard]] LimitQuery limitQueryOf(Site site, Waveform waveform, AgeGroup age, std::optional<SquareMetres> body,
                                      std::optional<SquareCentimetres> pad);

/// What the diary says of a session at `site` today: age by birth date, the machine, the care sheet, and the
/// contact area where height and weight are known. `pad`: the area of one armpit pad, where it is known.
[[nodiscard]] LimitQuery limitQueryFor(const Diary& diary, Site site, Waveform waveform,
                                       std::optional<SquareCentimetres> pad = std::nullopt);

/// What the contact area of a session comes from.
enum class AreaFrom {
    Nothing,    ///< height or weight is not known, and a limit by area does not count
    Body,       ///< height and weight
    MachinePad, ///< as entered with the machine
    SheetPad,   ///< as the care sheet names it
    UnknownPad  ///< kUnknownPad
};
[[nodiscard]] AreaFrom areaFrom(const Diary& diary, Site site);

/// Why nothing may be advised there, as one sentence that says what is safe instead; nothing where it is allowed.
[[nodiscard]] std::optional<Error> refusalOf(const LimitQuery& query);

/// Why no waveform is open at a site, whatever the person chooses.
enum class WaveformBar {
    ArmpitsNeedPulsed, ///< and this machine has none
    PrescribedLacks,   ///< this machine has not the one that the care sheet prescribes
    MachineHasNone     ///< neither direct nor pulsed is entered for this machine
};
/// The bar at `site`, or nothing if a waveform is open there.
[[nodiscard]] std::optional<WaveformBar> waveformBar(const Diary& diary, Site site);

/// Whether a session may begin now: asked when one is prepared, and again at its very beginning, so that an answer
/// changed meanwhile blocks it. Refused: a blister or burn of that skin that no clinician has seen,
/// no birth date, an answer that stops or has to be asked about first, a screening that is due,
/// a waveform not for this site or machine, a completed session of that skin today, and, where `way` is
/// given, a way of working that is not open there. Gives what may be advised.
[[nodiscard]] Result<LimitAnswer> mayBegin(const Diary& diary, Site site, Waveform waveform,
                                           std::optional<WayOfWorking> way = std::nullopt,
                                           std::optional<SquareCentimetres> pad = std::nullopt, Phone phone = {});

} // namespace firstdew::protocol
