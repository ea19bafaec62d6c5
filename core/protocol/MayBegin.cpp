#include "protocol/MayBegin.h"

#include "protocol/Area.h"
#include "protocol/CareSheets.h"
#include "protocol/Screening.h"
#include "protocol/Skin.h"

#include <algorithm>
#include <fmt/format.h>

namespace firstdew::protocol {

namespace {

std::string_view inPlainWords(ScreeningRow row)
{
    switch (row) {
    case ScreeningRow::Pregnancy: return "a pregnancy, or that there may be one,";
    case ScreeningRow::PoweredImplant: return "a pacemaker or another powered implant";
    case ScreeningRow::MetalImplant: return "a metal implant";
    case ScreeningRow::MetalIud: return "an intrauterine device or system (coil)";
    case ScreeningRow::HeartRhythmOrEpilepsy: return "a heart rhythm disorder or epilepsy";
    case ScreeningRow::TumourOrThrombosis: return "a tumour or a thrombosis";
    case ScreeningRow::LossOfSensation: return "a loss of sensation";
    case ScreeningRow::UnderFive: return "an age under five";
    case ScreeningRow::UnderEighteen: return "an age under eighteen";
    case ScreeningRow::EczemaAtSite: return "eczema or inflamed skin at the site";
    case ScreeningRow::LargeWound: return "a wound too large to cover";
    case ScreeningRow::FixedBraces: return "a fixed brace";
    }
    return "an answer";
}

std::optional<Error> refusalByScreening(const Diary& diary, Site site)
{
    const auto verdict = screen(diary, site);
    if (verdict.outcome != ScreeningOutcome::Go) {
        const auto row = verdict.deciding.front();
        const bool stop = verdict.outcome == ScreeningOutcome::Stop;
        return Error{stop ? "screening-stops" : "screening-asks", std::string(token(row)),
                     fmt::format("{} {}; leave the machine off, and record who approved it and when", inPlainWords(row),
                                 stop ? "stands against any session until a clinician has approved treatment"
                                      : "needs a clinician's word first")};
    }
    switch (screeningDue(diary)) {
    case ScreeningDue::None: return std::nullopt;
    case ScreeningDue::ShortQuestion:
        return Error{
            "short-question-due", "screening",
            "nobody has said today whether anything of the health questions has changed; leave the machine off "
            "until that is answered"};
    case ScreeningDue::Full:
        return Error{"screening-due", "screening",
                     fmt::format("the health questions were not answered within {} days; leave the machine off until "
                                 "they are",
                                 kFullScreeningDays)};
    }
    return std::nullopt;
}

/// Every limit depends on the age, so that a session needs a birth date (our own choice, cautious).
std::optional<Error> refusalByBirthDate(const Diary& diary)
{
    if (diary.person && diary.person->birth)
        return std::nullopt;
    return Error{"birth-date-missing", "birth",
                 "the limits depend on the age, and no birth date is recorded; leave the machine off and enter it"};
}

std::optional<Error> refusalBySkin(const Diary& diary, Site site)
{
    const auto bar = skinBar(diary, site);
    if (!bar)
        return std::nullopt;
    return Error{"skin-bars", std::string(token(bar->site)),
                 fmt::format("a {} was noted there on {}; leave the machine off until a clinician has seen it, and "
                             "record who and when",
                             token(bar->finding), bar->since.iso())};
}

/// A session dated tomorrow was done today or before: by a clock set back since, or beyond the date line.
std::optional<Error> refusalByToday(const Diary& diary, Site site)
{
    for (const auto* sessions : {&diary.sessions, &diary.sessionsAhead})
        for (const auto& e : *sessions)
            if (e.payload.completed && e.happened.date >= diary.today && e.happened.date <= diary.today + 1 &&
                shareSkin(e.payload.site, site))
                return Error{"session-today", "site",
                             fmt::format("the {} had their session today already; leave the skin in peace, the next "
                                         "one is for tomorrow at the earliest",
                                         token(e.payload.site))};
    return std::nullopt;
}

} // namespace

LimitQuery limitQueryOf(Site site, Waveform waveform, AgeGroup age, std::optional<SquareMetres> body,
                        std::optional<SquareCentimetres> pad)
{
    LimitQuery q;
    q.site = site;
    q.waveform = waveform;
    q.age = age;
    q.padKnown = site != Site::Armpits || pad.has_value();
    q.contact = contactArea(site, age, body, q.padKnown ? pad : kUnknownPad);
    return q;
}

AreaFrom areaFrom(const Diary& diary, Site site)
{
    if (site != Site::Armpits)
        return limitQueryFor(diary, site, Waveform::Direct).contact ? AreaFrom::Body : AreaFrom::Nothing;
    const CareSheet* sheet = sheetFor(diary, site);
    const auto own = diary.machine ? diary.machine->pad : std::nullopt;
    if (sheet != nullptr && sheet->pad && (!own || *sheet->pad < *own))
        return AreaFrom::SheetPad;
    return own ? AreaFrom::MachinePad : AreaFrom::UnknownPad;
}

LimitQuery limitQueryFor(const Diary& diary, Site site, Waveform waveform, std::optional<SquareCentimetres> pad)
{
    std::optional<SquareMetres> surface;
    AgeGroup age = AgeGroup::Child;
    if (diary.person) {
        const Person& p = *diary.person;
        age = ageGroupOn(p.birth, diary.today);
        if (p.height && p.weight)
            if (const auto body = bodySurface(*p.height, *p.weight))
                surface = body->cautious();
    }
    // The machine's pads are those for the armpits: trays have plates.
    if (!pad && diary.machine && site == Site::Armpits)
        pad = diary.machine->pad;
    // Where machine and care sheet name two sizes, the smaller one is the cautious reading.
    if (const CareSheet* sheet = sheetFor(diary, site); sheet != nullptr && sheet->pad && site == Site::Armpits)
        pad = pad ? std::min(*pad, *sheet->pad) : sheet->pad;
    LimitQuery q = limitQueryOf(site, waveform, age, surface, pad);
    q.machine = diary.machine;
    q.sheets = sheetsBinding(diary, site);
    return q;
}

std::optional<Error> refusalOf(const LimitQuery& query)
{
    const LimitAnswer answer = limitFor(query);
    if (answer.allowed)
        return std::nullopt;
    if (answer.binding == LimitRow::MachineLacksWaveform && query.site == Site::Armpits)
        return Error{"machine-unsuited", "machine",
                     "this machine has no pulsed current, and armpits may have nothing else; do not use it there, ask "
                     "the prescriber"};
    if (answer.binding == LimitRow::MachineLacksWaveform)
        return Error{"machine-lacks-waveform", "waveform",
                     fmt::format("this machine has no {} current; choose the one it has", token(query.waveform))};
    if (answer.binding == LimitRow::PrescribedWaveform)
        return Error{"waveform-prescribed", "waveform",
                     fmt::format("the care sheet prescribes {} current here; choose that, or ask who wrote it",
                                 token(*query.sheets.front().waveform))};
    const bool directOnly = query.machine && !query.machine->pulsed;
    return Error{"armpits-pulsed-only", "waveform",
                 directOnly
                     ? "armpits may have pulsed current only, and this machine has none; do not use it there, ask "
                       "the prescriber"
                     : "armpits are treated with pulsed current only; choose pulsed, or leave the armpits out"};
}

std::optional<WaveformBar> waveformBar(const Diary& diary, Site site)
{
    for (const Waveform waveform : allOf<Waveform>())
        if (limitFor(limitQueryFor(diary, site, waveform)).allowed)
            return std::nullopt;
    if (!diary.machine->direct && !diary.machine->pulsed)
        return WaveformBar::MachineHasNone;
    return site == Site::Armpits ? WaveformBar::ArmpitsNeedPulsed : WaveformBar::PrescribedLacks;
}

Result<LimitAnswer> mayBegin(const Diary& diary, Site site, Waveform waveform, std::optional<WayOfWorking> way,
                             std::optional<SquareCentimetres> pad, Phone phone)
{
    if (auto error = refusalBySkin(diary, site))
        return *error;
    if (auto error = refusalByBirthDate(diary))
        return *error;
    if (auto error = refusalByScreening(diary, site))
        return *error;
    const LimitQuery query = limitQueryFor(diary, site, waveform, pad);
    if (auto error = refusalOf(query))
        return *error;
    if (way)
        if (auto error = refusalOfWay(site, *way, diary.machine.value_or(Machine{}), query.age, phone))
            return *error;
    if (auto error = refusalByToday(diary, site))
        return *error;
    return limitFor(query);
}

} // namespace firstdew::protocol
