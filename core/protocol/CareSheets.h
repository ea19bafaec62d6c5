#pragma once

#include "diary/Diary.h"

#include <vector>

namespace firstdew::protocol {

using namespace facts;
using diary::Diary;

/// The care sheet that counts for a session at `site`: of those for that site the one given last, and of sheets given
/// on one day the one recorded last. A sheet that names no site is for every site; one dated after today does not
/// count. Nullptr where there is none.
[[nodiscard]] const CareSheet* sheetFor(const Diary& diary, Site site);

/// The sheets whose limits bind a session at `site`: its own, and for hand + foot also that of hands and that of feet.
/// Sheets dated after today come last: they were accepted before the clock was set back, and their limits still hold.
[[nodiscard]] std::vector<CareSheet> sheetsBinding(const Diary& diary, Site site);

/// A care sheet in force, and the sites where it is.
struct SheetInForce {
    CareSheet sheet;
    std::vector<Site> sites;
};
/// Every care sheet in force, each once, in the order of its first site.
[[nodiscard]] std::vector<SheetInForce> sheetsInForce(const Diary& diary);

/// Times that a session leaves for what is done by hand: the prescriber's where the sheet gives them.
struct Allowances {
    Seconds raise{60};
    Seconds lower{60};
    Seconds swapping{45};
};
[[nodiscard]] Allowances allowancesFor(const Diary& diary, Site site);

/// The last session at `site` with direct current was unpleasant at 10 mA or less.
[[nodiscard]] bool directNotTolerated(const Diary& diary, Site site);

/// The waveform to offer first at `site`: pulsed for armpits, always; the prescriber's; pulsed for a child or where
/// direct was not tolerated, if the machine has it; otherwise direct, which suits adult hands and feet best (common
/// practice, no source).
[[nodiscard]] Waveform waveformFor(const Diary& diary, Site site);

} // namespace firstdew::protocol
