#include "protocol/MayBegin.h"

#include "core/Build.h"

#include <catch2/catch.hpp>

using namespace firstdew::protocol;
using build::day;
using build::Diary;

namespace
{

const LocalDate kToday = day("2026-03-05");

std::string codeOf(const Diary& d, Site site = Site::Hands, Waveform waveform = Waveform::Direct)
{
    const auto may = mayBegin(d.record(), site, waveform, kToday);
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
    const auto may = mayBegin(Diary().adult().screened(kToday).record(), Site::Hands, Waveform::Direct, kToday);
    REQUIRE(may);
    CHECK(may->limit.mA == 20);
}

TEST_CASE("nothing begins unscreened, after 28 days, or before the short question of the day")
{
    CHECK(codeOf(Diary().adult()) == "screening-due");
    CHECK(codeOf(Diary().adult().screened(kToday - 28)) == "screening-due");
    CHECK(codeOf(Diary().adult().screened(kToday - 27)) == "short-question-due");
    Diary asked;
    asked.adult().screened(kToday - 27).add(Screening{false, {}, {}}, kToday);
    CHECK(codeOf(asked).empty());
}

TEST_CASE("an answer that changes after a session was prepared blocks it at its beginning")
{
    Diary d;
    d.adult().screened(kToday);
    CHECK(codeOf(d).empty()); // prepared
    d.add(Screening{false, {ScreeningRow::Pregnancy}, {ScreeningRow::Pregnancy}}, kToday, 9 * 60);
    CHECK(codeOf(d) == "screening-stops");
    d.add(Clearance{ScreeningRow::Pregnancy, "Dr Vance", kToday, {}}, kToday, 10 * 60);
    CHECK(codeOf(d).empty());
}

TEST_CASE("a child needs a clinician's word, and then has the child's limit")
{
    Diary d;
    d.add(Person{"Kim", day("2012-03-03"), {}, {}, {}}, day("2025-01-01")).screened(kToday);
    CHECK(codeOf(d) == "screening-asks");
    d.add(Clearance{ScreeningRow::UnderEighteen, "Dr Vance", kToday, {}}, kToday);
    CHECK(mayBegin(d.record(), Site::Hands, Waveform::Direct, kToday)->limit.mA == 15);
}

TEST_CASE("one completed session of the same skin a day")
{
    Diary d;
    d.adult().screened(kToday).session(Site::HandFoot, kToday);
    CHECK(codeOf(d) == "session-today");
    CHECK(codeOf(d, Site::Feet) == "session-today");
    CHECK(codeOf(d, Site::Armpits, Waveform::Pulsed).empty());
    Diary broken;
    Session s;
    s.site = Site::Hands;
    s.completed = false; // starts again from the beginning: common practice, no source
    broken.adult().screened(kToday).add(s, kToday);
    CHECK(codeOf(broken).empty());
}

TEST_CASE("the machine and the site rule out a waveform")
{
    Diary d;
    d.adult().screened(kToday).add(directOnly(), kToday);
    CHECK(codeOf(d).empty());
    CHECK(codeOf(d, Site::Hands, Waveform::Pulsed) == "machine-lacks-waveform");
    CHECK(codeOf(d, Site::Armpits, Waveform::Pulsed) == "machine-unsuited");
    CHECK(codeOf(d, Site::Armpits, Waveform::Direct) == "armpits-pulsed-only");
}

TEST_CASE("height and weight bring the contact area, the sheet its lower limit")
{
    Diary d;
    d.add(Person{"Ada", day("1990-01-01"), Centimetres{170}, Kilograms{70}, {}}, day("2000-01-01")).screened(kToday);
    auto q = limitQueryFor(d.record(), Site::Hands, Waveform::Direct, kToday);
    REQUIRE(q.contact);
    CHECK(q.contact->cm2 == Approx(157.4).margin(0.1)); // 0.87 % of Du Bois' 1.810 m²
    CHECK_FALSE(limitQueryFor(d.record(), Site::Armpits, Waveform::Pulsed, kToday).contact);
    CareSheet sheet;
    sheet.directLimit = Milliamps{12};
    d.add(sheet, kToday);
    CHECK(mayBegin(d.record(), Site::Hands, Waveform::Direct, kToday)->binding == LimitRow::CareSheet);
    const auto pads = mayBegin(d.record(), Site::Armpits, Waveform::Pulsed, kToday, SquareCentimetres{40});
    CHECK(pads->binding == LimitRow::Density);
    CHECK(pads->limit.mA == 20);
}
