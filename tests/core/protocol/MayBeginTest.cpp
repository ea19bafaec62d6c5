#include "protocol/MayBegin.h"

#include "protocol/Area.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

const LocalDate kToday = day("2026-03-05");

std::string codeOf(const Facts& d, Site site = Site::Hands, Waveform waveform = Waveform::Direct)
{
    const auto may = mayBegin(d.on(kToday), site, waveform);
    return may ? "" : may.error().code;
}

Machine directOnly()
{
    Machine m;
    m.direct = true;
    m.pulsed = false;
    return m;
}

} // namespace

TEST_CASE("a screened adult may begin, and is told the limit")
{
    const auto may = mayBegin(Facts().adult().screened(kToday).on(kToday), Site::Hands, Waveform::Direct);
    REQUIRE(may);
    CHECK(may->limit.mA == 20);
}

TEST_CASE("no session begins without a screening, with one older than 28 days, or before the short question of the day")
{
    CHECK(codeOf(Facts().adult()) == "screening-due");
    CHECK(codeOf(Facts().adult().screened(kToday - 28)) == "screening-due");
    CHECK(codeOf(Facts().adult().screened(kToday - 27)) == "short-question-due");
    Facts asked;
    asked.adult().screened(kToday - 27).add(Screening{false, {}, {}}, kToday);
    CHECK(codeOf(asked).empty());
}

TEST_CASE("an answer that changes after the preparation blocks the session at its beginning")
{
    Facts d;
    d.adult().screened(kToday);
    CHECK(codeOf(d).empty()); // prepared
    d.add(Screening{false, {ScreeningRow::Pregnancy}, {ScreeningRow::Pregnancy}}, kToday, 9 * 60);
    CHECK(codeOf(d) == "screening-stops");
    d.add(Clearance{ScreeningRow::Pregnancy, "Dr Vance", kToday, {}}, kToday, 10 * 60);
    CHECK(codeOf(d).empty());
}

TEST_CASE("a child needs a clinician's clearance and then has the child's limit")
{
    Facts d;
    d.add(Person{"Kim", day("2012-03-03"), {}, {}, {}}, day("2025-01-01")).screened(kToday);
    CHECK(codeOf(d) == "screening-asks");
    d.add(Clearance{ScreeningRow::UnderEighteen, "Dr Vance", kToday, {}}, kToday);
    CHECK(mayBegin(d.on(kToday), Site::Hands, Waveform::Direct)->limit.mA == 15);
}

TEST_CASE("the same skin has at most one completed session a day")
{
    Facts d;
    d.adult().screened(kToday).session(Site::HandFoot, kToday);
    CHECK(codeOf(d) == "session-today");
    CHECK(codeOf(d, Site::Feet) == "session-today");
    CHECK(codeOf(d, Site::Armpits, Waveform::Pulsed).empty());
    Facts broken;
    Session s;
    s.site = Site::Hands;
    s.completed = false; // starts again from the beginning: common practice, no source
    broken.adult().screened(kToday).add(s, kToday);
    CHECK(codeOf(broken).empty());
}

TEST_CASE("the machine and the site can each rule out a waveform")
{
    Facts d;
    d.adult().screened(kToday).add(directOnly(), kToday);
    CHECK(codeOf(d).empty());
    CHECK(codeOf(d, Site::Hands, Waveform::Pulsed) == "machine-lacks-waveform");
    CHECK(codeOf(d, Site::Armpits, Waveform::Pulsed) == "machine-unsuited");
    CHECK(codeOf(d, Site::Armpits, Waveform::Direct) == "armpits-pulsed-only");
}

TEST_CASE("height and weight give the contact area, and the care sheet gives a lower limit")
{
    Facts d;
    d.add(Person{"Ada", day("1990-01-01"), Centimetres{170}, Kilograms{70}, {}}, day("2000-01-01")).screened(kToday);
    auto q = limitQueryFor(d.on(kToday), Site::Hands, Waveform::Direct);
    REQUIRE(q.contact);
    CHECK(q.contact->cm2 == Approx(157.4).margin(0.1)); // 0.87 % of Du Bois' 1.810 m²
    q = limitQueryFor(d.on(kToday), Site::Armpits, Waveform::Pulsed);
    CHECK(q.contact == kUnknownPad);
    CHECK_FALSE(q.padKnown);
    CareSheet sheet;
    sheet.directLimit = Milliamps{12};
    d.add(sheet, kToday);
    CHECK(mayBegin(d.on(kToday), Site::Hands, Waveform::Direct)->binding == LimitRow::CareSheet);
    const auto pads = mayBegin(d.on(kToday), Site::Armpits, Waveform::Pulsed, {}, SquareCentimetres{40});
    CHECK(pads->binding == LimitRow::Density);
    CHECK(pads->limit.mA == 20);
}

TEST_CASE("each blocking answer is named in plain words with the remedy")
{
    struct Case {
        ScreeningRow row;
        const char* code;
        const char* words;
    };
    const auto c = GENERATE(values<Case>({
        {ScreeningRow::Pregnancy, "screening-stops", "pregnancy"},
        {ScreeningRow::PoweredImplant, "screening-stops", "pacemaker"},
        {ScreeningRow::MetalImplant, "screening-stops", "metal implant"},
        {ScreeningRow::MetalIud, "screening-stops", "intrauterine device"},
        {ScreeningRow::HeartRhythmOrEpilepsy, "screening-stops", "heart rhythm"},
        {ScreeningRow::TumourOrThrombosis, "screening-stops", "tumour"},
        {ScreeningRow::LossOfSensation, "screening-stops", "sensation"},
        {ScreeningRow::UnderFive, "screening-stops", "under five"},
        {ScreeningRow::UnderEighteen, "screening-asks", "under eighteen"},
        {ScreeningRow::EczemaAtSite, "screening-asks", "eczema"},
        {ScreeningRow::LargeWound, "screening-asks", "wound"},
    }));
    const auto may = mayBegin(Facts().adult().screened(kToday, {c.row}).on(kToday), Site::Hands, Waveform::Direct);
    INFO(c.words);
    REQUIRE_FALSE(may);
    CHECK(may.error().code == c.code);
    CHECK(may.error().input == token(c.row));
    CHECK(may.error().message.find(c.words) != std::string::npos);
    CHECK(may.error().message.find("leave the machine off") != std::string::npos);
}

TEST_CASE("a fixed brace does not block a session")
{
    CHECK(codeOf(Facts().adult().screened(kToday, {ScreeningRow::FixedBraces})).empty());
}

TEST_CASE("the refusal of direct current at the armpits says what this machine allows")
{
    Facts d;
    d.adult().screened(kToday);
    const auto sentence = [&](bool pulsed) {
        Machine m = directOnly();
        m.pulsed = pulsed;
        return mayBegin(Facts(d).add(m, kToday).on(kToday), Site::Armpits, Waveform::Direct).error().message;
    };
    CHECK(sentence(true).find("choose pulsed") != std::string::npos);
    CHECK(sentence(false).find("this machine has none") != std::string::npos);
    // Where no machine is known, nothing is said of it.
    const auto unknown = mayBegin(d.on(kToday), Site::Armpits, Waveform::Direct);
    CHECK(unknown.error().message.find("choose pulsed") != std::string::npos);
}

TEST_CASE("a waveform the machine lacks is named")
{
    Facts d;
    Machine m = directOnly();
    m.direct = false;
    m.pulsed = true;
    d.adult().screened(kToday).add(m, kToday);
    const auto may = mayBegin(d.on(kToday), Site::Hands, Waveform::Direct);
    CHECK(may.error().code == "machine-lacks-waveform");
    CHECK(may.error().message.find("no direct current") != std::string::npos);
}

TEST_CASE("a session dated tomorrow counts as today's, one of yesterday or the day after tomorrow does not")
{
    const auto with = [](LocalDate date) {
        return codeOf(Facts().adult().screened(kToday).session(Site::Hands, date));
    };
    CHECK(with(kToday + 1) == "session-today");
    CHECK(with(kToday - 1).empty());
    CHECK(with(kToday + 2).empty());
}

TEST_CASE("without a person the limits are those of a child, and height or weight alone gives no body surface")
{
    const auto nobody = limitQueryFor(Facts().on(kToday), Site::Hands, Waveform::Direct);
    CHECK(nobody.age == AgeGroup::Child);
    CHECK_FALSE(nobody.machine);
    CHECK(nobody.sheets.empty());
    const auto contact = [](std::optional<Centimetres> height, std::optional<Kilograms> weight) {
        const Person p{"Ada", day("1990-01-01"), height, weight, {}};
        const auto q = limitQueryFor(Facts().add(p, kToday).on(kToday), Site::Hands, Waveform::Direct);
        CHECK(q.age == AgeGroup::Adult);
        return q.contact;
    };
    const auto unmeasured = contact({}, {});
    CHECK(contact(Centimetres{170}, {}) == unmeasured);
    CHECK(contact({}, Kilograms{70}) == unmeasured);
    CHECK(contact(Centimetres{1e9}, Kilograms{70}) == unmeasured); // no body is like that
    CHECK(contact(Centimetres{170}, Kilograms{70}) != unmeasured);
}

TEST_CASE("without a birth date no session begins")
{
    Facts d;
    d.screened(kToday).add(Person{"Ada", {}, {}, {}, {}}, kToday - 1);
    CHECK(codeOf(d) == "birth-date-missing");
    CHECK(codeOf(Facts().screened(kToday)) == "birth-date-missing");
    CHECK(codeOf(d.add(Person{"Ada", day("1990-01-01"), {}, {}, {}}, kToday - 1)).empty());
}

TEST_CASE("pads of unknown size allow 12 mA at most, and known ones half a milliamp a square centimetre")
{
    Facts d;
    d.adult().screened(kToday).add(Machine{"", true, true, {}, false, {}, {}}, kToday);
    auto may = mayBegin(d.on(kToday), Site::Armpits, Waveform::Pulsed);
    REQUIRE(may.ok());
    CHECK(may->limit.mA == 12);
    CHECK(may->binding == LimitRow::PadUnknown);
    CHECK(may->warnAbove->mA == Approx(4.8));
    d.add(Machine{"", true, true, {}, false, {}, SquareCentimetres{40}}, kToday);
    may = mayBegin(d.on(kToday), Site::Armpits, Waveform::Pulsed);
    CHECK(may->limit.mA == 20);
    CHECK(may->binding == LimitRow::Density);
}

TEST_CASE(
    "both hands under water without a remote control or a voice that is understood, or a child alone, does not begin")
{
    Facts d;
    d.adult().screened(kToday).add(Machine{}, kToday);
    const auto under = [&] { return mayBegin(d.on(kToday), Site::Hands, Waveform::Direct, WayOfWorking::HandsUnder); };
    CHECK(under().error().code == "way-needs-remote");
    CHECK(mayBegin(d.on(kToday), Site::Hands, Waveform::Direct, WayOfWorking::Helper).ok());
    Machine remote;
    remote.remote = true;
    d.add(remote, kToday);
    CHECK(under().ok());
    const Phone foreign{Touch::Plain, Tongue::Foreign};
    const auto with = [&](WayOfWorking way) {
        return mayBegin(d.on(kToday), Site::Hands, Waveform::Direct, way, {}, foreign);
    };
    CHECK(with(WayOfWorking::HandsUnder).error().code == "way-not-spoken");
    CHECK(with(WayOfWorking::Helper).ok());
    d.add(Person{"Ben", day("2015-01-01"), {}, {}, "Ada"}, kToday)
        .add(Clearance{ScreeningRow::UnderEighteen, "Dr Vance", kToday, {}}, kToday);
    CHECK(under().error().code == "way-adults-only");
}

TEST_CASE("the size of the armpit pads changes nothing at hands and feet")
{
    Facts d;
    Machine machine;
    machine.pulsed = true;
    machine.pad = SquareCentimetres{24};
    d.adult().screened(kToday).add(machine, kToday);
    for (const Site site : {Site::Hands, Site::Feet, Site::HandFoot}) {
        const auto may = mayBegin(d.on(kToday), site, Waveform::Direct);
        REQUIRE(may);
        CHECK(may->limit.mA == 20);
        CHECK_FALSE(may->warnAbove);
    }
    CHECK(mayBegin(d.on(kToday), Site::Armpits, Waveform::Pulsed)->limit.mA == 12);
}

TEST_CASE("the contact area says what it comes from")
{
    Facts d;
    d.add(Person{"Ada", day("1990-01-01"), {}, {}, {}}, kToday).add(Machine{}, kToday);
    CHECK(areaFrom(d.on(kToday), Site::Hands) == AreaFrom::Nothing);
    CHECK(areaFrom(d.on(kToday), Site::Armpits) == AreaFrom::UnknownPad);
    d.add(Person{"Ada", day("1990-01-01"), Centimetres{170}, Kilograms{65}, {}}, kToday);
    CHECK(areaFrom(d.on(kToday), Site::Hands) == AreaFrom::Body);
    CHECK(areaFrom(d.on(kToday), Site::HandFoot) == AreaFrom::Body);
    Machine machine;
    machine.pad = SquareCentimetres{30};
    d.add(machine, kToday);
    CHECK(areaFrom(d.on(kToday), Site::Armpits) == AreaFrom::MachinePad);
    CHECK(areaFrom(d.on(kToday), Site::Feet) == AreaFrom::Body);
    // The smaller of two sizes counts, and is the one named.
    for (const auto& [cm2, from] : {std::pair{20.0, AreaFrom::SheetPad}, std::pair{40.0, AreaFrom::MachinePad}}) {
        CareSheet sheet;
        sheet.who = "Dr Vance";
        sheet.sites = {Site::Armpits};
        sheet.given = kToday;
        sheet.pad = SquareCentimetres{cm2};
        Facts with = d;
        with.add(sheet, kToday);
        CHECK(areaFrom(with.on(kToday), Site::Armpits) == from);
        CHECK(limitQueryFor(with.on(kToday), Site::Armpits, Waveform::Pulsed).contact->cm2 == std::min(30.0, cm2));
    }
}

TEST_CASE("what the contact area of the armpits was taken from is the smaller of what machine and sheet name")
{
    const auto from = [](std::optional<double> own, std::optional<double> written, bool machine = true) {
        Facts d;
        d.adult();
        Machine m;
        m.pulsed = true;
        if (own)
            m.pad = SquareCentimetres{*own};
        if (machine)
            d.add(m, kToday);
        CareSheet sheet;
        sheet.given = kToday;
        if (written)
            sheet.pad = SquareCentimetres{*written};
        d.add(sheet, kToday);
        return areaFrom(d.on(kToday), Site::Armpits);
    };
    CHECK(from(40, {}) == AreaFrom::MachinePad);
    CHECK(from(40, 50) == AreaFrom::MachinePad);
    CHECK(from(40, 30) == AreaFrom::SheetPad);
    CHECK(from({}, 30) == AreaFrom::SheetPad);
    CHECK(from({}, {}) == AreaFrom::UnknownPad);
    CHECK(from({}, {}, false) == AreaFrom::UnknownPad);
    CHECK(areaFrom(Facts().adult().on(kToday), Site::Armpits) == AreaFrom::UnknownPad);
    CHECK(areaFrom(Facts().adult().on(kToday), Site::Hands) == AreaFrom::Nothing);
}

TEST_CASE("the armpit pads that a sheet names are no contact area of the hands")
{
    CareSheet sheet;
    sheet.given = kToday;
    sheet.pad = SquareCentimetres{10};
    const auto d = Facts().adult().add(sheet, kToday);
    CHECK_FALSE(limitQueryFor(d.on(kToday), Site::Hands, Waveform::Direct).contact);
    CHECK(limitQueryFor(d.on(kToday), Site::Armpits, Waveform::Pulsed).contact == SquareCentimetres{10});
}

TEST_CASE("where no waveform is open, it is said whether machine, site or care sheet stands in the way")
{
    const auto bar = [](bool direct, bool pulsed, Site site, std::optional<Waveform> written = {}) {
        Machine m;
        m.direct = direct;
        m.pulsed = pulsed;
        CareSheet sheet;
        sheet.given = kToday;
        sheet.waveform = written;
        return waveformBar(Facts().adult().add(m, kToday).add(sheet, kToday).on(kToday), site);
    };
    CHECK_FALSE(bar(true, false, Site::Hands));
    CHECK(bar(false, false, Site::Hands) == WaveformBar::MachineHasNone);
    CHECK(bar(true, false, Site::Armpits) == WaveformBar::ArmpitsNeedPulsed);
    CHECK(bar(true, false, Site::Hands, Waveform::Pulsed) == WaveformBar::PrescribedLacks);
    CHECK(bar(false, true, Site::Hands, Waveform::Direct) == WaveformBar::PrescribedLacks);
}
