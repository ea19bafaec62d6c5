#include "bath/Engine.h"
#include "core/Build.h"
#include "outlook/Forecast.h"
#include "outlook/Predictive.h"
#include "protocol/Area.h"
#include "protocol/Course.h"
#include "protocol/CurrentAdvice.h"
#include "protocol/Kit.h"
#include "protocol/Limits.h"
#include "protocol/Preparation.h"
#include "protocol/Response.h"
#include "protocol/Screening.h"
#include "protocol/Script.h"
#include "protocol/Sweat.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <set>

// What the trade says, one row a value, in the order in which the domain is written down: screening, limits, session,
// course, maintenance. Each row has its standing beside it and what the program says of it. Figures that are only
// background and steer nothing (shares of responders, relapse without maintenance) have no row.

using namespace firstdew;
using namespace firstdew::protocol;
using build::day;
using build::Facts;

namespace {

constexpr Standing P = Standing::Published;         ///< source beside it
constexpr Standing T = Standing::CommonPractice;    ///< common practice, no source
constexpr Standing M = Standing::FromMemory;        ///< from memory, until confirmed
constexpr Standing C = Standing::OwnCautiousChoice; ///< our own choice, cautious

struct Row {
    const char* value;
    Standing standing;
    const char* source; ///< of what is published; empty otherwise
    double says;        ///< the trade
    double program;
};

void hold(const std::vector<Row>& rows)
{
    std::set<std::string> named;
    for (const Row& r : rows) {
        INFO(r.value);
        CHECK(r.program == Approx(r.says));
        CHECK((r.standing == P) == (*r.source != '\0'));
        CHECK(named.insert(r.value).second);
    }
}

const LocalDate kToday = day("2026-03-05");

LimitAnswer limit(Site site, Waveform waveform, AgeGroup age, std::optional<double> cm2 = {})
{
    LimitQuery q;
    q.site = site;
    q.waveform = waveform;
    q.age = age;
    if (cm2)
        q.contact = SquareCentimetres{*cm2};
    return limitFor(q);
}

Script script(Site site, WayOfWorking way = WayOfWorking::FreeHand)
{
    ScriptRequest q;
    q.site = site;
    q.way = way;
    q.waveform = site == Site::Armpits ? Waveform::Pulsed : Waveform::Direct;
    q.limit = {20};
    return scriptFor(q).value();
}

double seconds(const Script& s, StepKind kind)
{
    return std::find_if(s.steps.begin(), s.steps.end(), [&](const Step& one) { return one.kind == kind; })->length.s;
}

bool says(const Script& s, Prompt prompt)
{
    return std::any_of(s.steps.begin(), s.steps.end(), [&](const Step& one) { return one.prompt == prompt; });
}

/// An adult's feet session in its first hold; a reading a minute.
bath::State holding(std::vector<double> readings)
{
    bath::State s = bath::prepared(script(Site::Feet), {20});
    Instant now{};
    const auto send = [&](bath::Event e) {
        now = {now.wallMs + 1000, now.monotonicMs + 1000};
        s = bath::step(s, e, now)->state;
    };
    send({BathEventKind::Begin, {}, {}});
    send({BathEventKind::SwitchedOn, {}, {}});
    send({BathEventKind::Raised, {}, {}});
    for (const double mA : readings) {
        for (int second = 0; second < 59; ++second)
            send({BathEventKind::Tick, {}, {}});
        send({BathEventKind::Reading, Milliamps{mA}, {}});
    }
    return s;
}

int metersAskedIn(int minutes)
{
    bath::State s = holding({});
    int asked = 0;
    for (int i = 1; i <= minutes * 60; ++i) {
        const auto out =
            bath::step(s, {BathEventKind::Tick, {}, {}}, {s.last.wallMs + 1000, s.last.monotonicMs + 1000});
        s = out->state;
        asked += static_cast<int>(std::count_if(out->effects.begin(), out->effects.end(), [](const bath::Effect& e) {
            return e.kind == bath::EffectKind::AskMeter;
        }));
    }
    return asked;
}

CurrentAdvice after(Site site, Waveform waveform, double mA, Comfort comfort, const char* birth = "1990-01-01")
{
    Session s;
    s.site = site;
    s.waveform = waveform;
    s.comfortable = Milliamps{mA};
    s.comfort = comfort;
    Facts d;
    d.add(Person{"Ada", day(birth), {}, {}, {}}, day("2000-01-01")).add(s, kToday - 1);
    const auto age = ageGroupOn(day(birth), kToday);
    return currentAdviceFor(d.on(kToday), site, waveform, limit(site, waveform, age).limit);
}

bool advises(const CurrentAdvice& a, CurrentReason reason)
{
    return std::find(a.reasons.begin(), a.reasons.end(), reason) != a.reasons.end();
}

bool prepares(PrepItem item, Site site, WayOfWorking way = WayOfWorking::FreeHand, bool wounds = false)
{
    Machine m;
    m.power = PowerSource::Cells;
    const auto list = preparationFor(site, m, way, wounds);
    return std::find(list.begin(), list.end(), item) != list.end();
}

double hoursTo(PrepItem item)
{
    const LocalTime now{kToday, {12 * 60}};
    Preparation p;
    p.antiperspirant = p.shaved = now;
    for (const auto& w : waitsFor(p, now))
        if (w.item == item)
            return 24.0 * (w.until.date - now.date) + (w.until.at.minute - now.at.minute) / 60.0;
    return 0;
}

std::vector<int> templateOf(CourseTemplate plan)
{
    return templateDays(plan, {}, day("2026-03-02"))->days; // a Monday
}

double body(double cm, double kg, bool mosteller)
{
    const auto b = bodySurface({cm}, {kg}).value();
    return mosteller ? b.mosteller.m2 : b.duBois.m2;
}

} // namespace

TEST_CASE("the screening's rows, outcomes and standings")
{
    struct Answer {
        ScreeningRow row;
        RowOutcome outcome;
        Standing standing;
    };
    const std::vector<Answer> table{
        // NHS dermatology leaflets (Newcastle; South Tees); Hölzle, Kanerva's Occup. Dermatology 2018
        {ScreeningRow::Pregnancy, RowOutcome::Stop, P},
        {ScreeningRow::PoweredImplant, RowOutcome::Stop, P},
        {ScreeningRow::MetalImplant, RowOutcome::Stop, P},
        {ScreeningRow::MetalIud, RowOutcome::Stop, P}, // listed for all sessions: the cautious reading
        {ScreeningRow::HeartRhythmOrEpilepsy, RowOutcome::Stop, M},
        {ScreeningRow::TumourOrThrombosis, RowOutcome::Stop, P}, // NHS leaflets
        {ScreeningRow::LossOfSensation, RowOutcome::Stop, P},    // NHS leaflets
        {ScreeningRow::UnderFive, RowOutcome::Stop, P},          // NHS leaflets
        {ScreeningRow::UnderEighteen, RowOutcome::AskFirst, T},
        {ScreeningRow::EczemaAtSite, RowOutcome::AskFirst, M},
        {ScreeningRow::LargeWound, RowOutcome::AskFirst, P}, // Hölzle 2018
        {ScreeningRow::FixedBraces, RowOutcome::Mention, T}, // one hospital leaflet lists them
    };
    const auto rows = screeningRows();
    REQUIRE(rows.size() == table.size());
    for (std::size_t i = 0; i < table.size(); ++i) {
        INFO(token(table[i].row));
        CHECK(rows[i].row == table[i].row);
        CHECK(rows[i].outcome == table[i].outcome);
        CHECK(rows[i].standing == table[i].standing);
    }
    hold({{"years of age before which nobody is treated", P, "NHS leaflets", 5, kTreatedFromYears},
          {"years of age before which a clinician is asked", T, "", 18, kAdultFromYears},
          {"days after which the whole screening is asked again", C, "", 28, kFullScreeningDays}});
}

TEST_CASE("the limits of current")
{
    const char* const leaflet = "common practice; also NHS hospital leaflet WPR26540";
    const char* const rhodes = "Rhodes et al., Br J Dermatol 2013;169:76-84";
    using enum Site;
    using enum Waveform;
    using enum AgeGroup;
    hold({
        {"direct, adult, mA", P, leaflet, 20, limit(Hands, Direct, Adult).limit.mA},
        {"direct, child, mA", P, leaflet, 15, limit(Hands, Direct, Child).limit.mA},
        {"pulsed, adult, mA", T, "", 30, limit(Hands, Pulsed, Adult).limit.mA},
        {"pulsed, child, mA", C, "", 20, limit(Hands, Pulsed, Child).limit.mA},
        {"armpits: direct is not allowed", T, "", 0, double(limit(Armpits, Direct, Adult).allowed)},
        {"armpits: pulsed is", T, "", 1, double(limit(Armpits, Pulsed, Adult).allowed)},
        {"direct not tolerated above 10 mA: pulsed next", T, "", 1,
         double(advises(after(Hands, Direct, 10, Comfort::Unpleasant), CurrentReason::TryPulsed))},
        {"direct tolerated up to 11 mA: no change of waveform", T, "", 0,
         double(advises(after(Hands, Direct, 11, Comfort::Unpleasant), CurrentReason::TryPulsed))},
        {"an older child comfortable at 20 mA pulsed: suggest direct", T, "", 1,
         double(advises(after(Feet, Pulsed, 20, Comfort::Comfortable, "2012-01-01"), CurrentReason::TryDirect))},
        {"not at 19 mA", T, "", 0,
         double(advises(after(Feet, Pulsed, 19, Comfort::Comfortable, "2012-01-01"), CurrentReason::TryDirect))},
        {"not a young child", C, "", 0,
         double(advises(after(Feet, Pulsed, 20, Comfort::Comfortable, "2018-01-01"), CurrentReason::TryDirect))},
        {"armpits: raised by 2-3 mA a session at most", T, "", 2,
         after(Armpits, Pulsed, 10, Comfort::Comfortable).target.mA - 10},
        {"pulsed elsewhere: steps of 2 mA", C, "", 2, after(Hands, Pulsed, 10, Comfort::Comfortable).target.mA - 10},
        {"direct: steps of 1 mA", C, "", 1, after(Hands, Direct, 10, Comfort::Comfortable).target.mA - 10},
        {"discomfort: lower", T, "", 1, double(after(Hands, Direct, 10, Comfort::Painful).target.mA < 10)},
        {"the meter is asked for every minute: in five minutes", T, "", 5, double(metersAskedIn(5))},
        {"mA under the limit while the reading may rise", C, "", 3, 20 - holding({12, 14}).target().mA},
        {"none once two readings in a row are steady", C, "", 0, 20 - holding({14, 14}).target().mA},
        {"warn above, mA/cm²", P, "Shrivastava & Singh, Br J Dermatol 1977;96:189 (the page from memory)", 0.2,
         limit(Armpits, Pulsed, Adult, 50).warnAbove->mA / 50},
        {"no target above, mA/cm²", P, "Costello & Jeske, Phys Ther 1995;75:554-563 (the page from memory)", 0.5,
         limit(Armpits, Pulsed, Adult, 50).limit.mA / 50},
        {"an adult's hand with fingers, share of body surface", P, rhodes, 0.0087, handArea({1}, Adult).cm2 / 1e4},
        {"13 % below the usual 1 %", P, rhodes, 0.01 * (1 - 0.13), kAdultHandShare},
        {"the palm without fingers", P, rhodes, 0.005, kPalmShare},
        {"a child's hand", P, "Nagel & Schunk 1997", 0.0094, handArea({1}, Child).cm2 / 1e4},
        {"a sole", C, "", 0.015, soleArea({1}).cm2 / 1e4},
        {"armpits: the pad's own area, cm²", T, "", 55,
         contactArea(Armpits, Adult, SquareMetres{1.8}, SquareCentimetres{55})->cm2},
    });
}

TEST_CASE("body surface, hand and density of a person of 170 cm and 70 kg")
{
    // Worked by hand from the formulae as published: √(170·70/3600) and 0.007184·70^0.425·170^0.725.
    CHECK(body(170, 70, true) == Approx(1.818).margin(0.0005));  // Mosteller, N Engl J Med 1987;317:1098
    CHECK(body(170, 70, false) == Approx(1.810).margin(0.0005)); // Du Bois & Du Bois, Arch Intern Med 1916;17:863
    const double hand = contactArea(Site::Hands, AgeGroup::Adult, SquareMetres{body(170, 70, true)}, {})->cm2;
    CHECK(hand == Approx(158.2).margin(0.05)); // 0.87 %: Rhodes et al. 2013
    CHECK(20 / hand == Approx(0.126).margin(0.0005));
    CHECK_FALSE(limit(Site::Hands, Waveform::Direct, AgeGroup::Adult, hand).warnAbove); // an adult's hands bear 20 mA
}

TEST_CASE("the session")
{
    using enum Site;
    const auto under = script(Hands, WayOfWorking::HandsUnder);
    const auto phases = [](Site s) { return double(phasesFor(s).phases); };
    const auto minutes = [](Site s) { return phasesFor(s).hold.s / 60.0; };
    const auto total = [](Site s) { return script(s).holdTotal().s / 60.0; };
    const auto first = [](Site s) {
        return double(waysFor(s, {}, AgeGroup::Adult).front().way == WayOfWorking::FreeHand);
    };
    const auto open = [](bool remote, AgeGroup age) {
        Machine m;
        m.remote = remote;
        return double(!barOf(Site::Hands, WayOfWorking::HandsUnder, m, age));
    };
    hold({
        {"hands: phases", T, "", 2, phases(Hands)},
        {"hands: minutes a phase", T, "", 10, minutes(Hands)},
        {"hands: minutes in all", T, "", 20, total(Hands)},
        {"feet: phases", T, "", 2, phases(Feet)},
        {"feet: minutes a phase", T, "", 15, minutes(Feet)},
        {"feet: minutes in all", T, "", 30, total(Feet)},
        {"hand + foot: phases, two each side", T, "", 4, phases(HandFoot)},
        {"hand + foot: minutes a phase", T, "", 10, minutes(HandFoot)},
        {"hand + foot: minutes in all", T, "", 40, total(HandFoot)},
        {"armpits: phases", T, "", 2, phases(Armpits)},
        {"armpits: minutes a phase", T, "", 10, minutes(Armpits)},
        {"armpits: minutes in all", T, "", 20, total(Armpits)},
        {"hands under: raising, s", C, "", 60, seconds(under, StepKind::Raise)},
        {"hands under: lowering, s", C, "", 60, seconds(under, StepKind::Lower)},
        {"hands under: swapping, s", C, "", 45, seconds(under, StepKind::Swap)},
        {"hands under: from the tap to the hands in, s", C, "", 15, seconds(under, StepKind::Announce)},
        {"hands under: open with a remote control", T, "", 1, open(true, AgeGroup::Adult)},
        {"hands under: open without", T, "", 0, open(false, AgeGroup::Adult)},
        {"hands under: open to a child", C, "", 0, open(true, AgeGroup::Child)},
        {"restarts of one skin in a day", C, "", 2, bath::kMostRestarts},
        {"of the planned charge in a day", C, "", 1.5, bath::kMostOfPlanned},
        {"switched off: minutes to go on in", C, "", 10, bath::kResumableMs / 60000.0},
        {"steady: s between two readings", C, "", 45, bath::kSteadyApartMs / 1000.0},
        {"a tick is late after, s", C, "", 10, bath::kLateMs / 1000.0},
        {"hands under: least allowance, s", C, "", 20, kLeastAllowance.s},
        {"hands under: most, s", C, "", 180, kMostAllowance.s},
        {"hands leave no hand free", T, "", 0, first(Hands)},
        {"feet leave both", T, "", 1, first(Feet)},
        {"hand + foot leaves one", T, "", 1, first(HandFoot)},
        {"water in each bath, ml", T, "", 350, kWaterPerBathMl},
        {"hours without antiperspirant", T, "", 24, hoursTo(PrepItem::NoAntiperspirant)},
        {"days since shaving", T, "", 3, hoursTo(PrepItem::NotShaved) / 24},
        {"sessions a set of cells lasts", T, "", 3, kSessionsPerCellSet},
        {"jewellery off", T, "", 1, double(prepares(PrepItem::JewelleryOff, Hands))},
        {"small cuts covered", T, "", 1, double(prepares(PrepItem::WoundsCovered, Hands, WayOfWorking::Helper, true))},
        {"baths for feet on the floor", T, "", 1, double(prepares(PrepItem::BathsOnFloor, Feet))},
        {"baths for hands on a table", T, "", 1, double(prepares(PrepItem::BathsOnTable, Hands))},
        {"plate under its grid", T, "", 1, double(prepares(PrepItem::PlateUnderGrid, Feet))},
        {"leads in while the machine is off", T, "", 1, double(prepares(PrepItem::LeadsIn, Armpits))},
        {"pads soaked", T, "", 1, double(prepares(PrepItem::PadsSoaked, Armpits))},
        {"cells in", T, "", 1, double(prepares(PrepItem::CellsIn, Feet))},
        {"a remote control in reach while both hands are in", T, "", 1,
         double(prepares(PrepItem::RemoteInReach, Hands, WayOfWorking::HandsUnder))},
        {"a helper stays", T, "", 1, double(prepares(PrepItem::HelperStays, Hands, WayOfWorking::Helper))},
        {"armpits: pads soaked again between phases", T, "", 1, double(says(script(Armpits), Prompt::SoakPadsLeads))},
    });
}

TEST_CASE("the course")
{
    const char* const leaflet = "NHS hospital leaflet WPR26540";
    const char* const gulmez = "Gülmez & Solak, J Clin Med 2026;15:640";
    const char* const stefaniak = "Stefaniak & Proczko, Clin Auton Res 2013;23(4)";
    const auto seven = templateOf(CourseTemplate::Seven);
    const auto mwf = templateOf(CourseTemplate::MonWedFri);
    const auto daily = templateOf(CourseTemplate::Daily);
    REQUIRE(seven.size() == 7);
    const auto response = [](int from, int to) { return double(responseBy(from, to).value()); };
    const auto hands = normalSweat(DiarySite::Hands);
    const auto feet = normalSweat(DiarySite::Feet);
    const auto armpits = normalSweat(DiarySite::Armpits);
    hold({
        {"seven: sessions", T, "", 7, double(seven.size())},
        {"seven: window in days", T, "", 28, templateDays(CourseTemplate::Seven, {}, kToday)->windowDays * 1.0},
        {"seven: first day", P, leaflet, 1, double(seven[0])},
        {"seven: second day", P, leaflet, 2, double(seven[1])},
        {"seven: third day", P, leaflet, 4, double(seven[2])},
        {"seven: fourth day", P, leaflet, 7, double(seven[3])},
        {"seven: fifth day", P, leaflet, 10, double(seven[4])},
        {"seven: sixth day", M, "", 15, double(seven[5])},
        {"seven: seventh day", P, leaflet, 22, double(seven[6])},
        {"three a week: sessions", P, "Siah & Hampton, Dermatol Online J 2013;19(3):14", 12, double(mwf.size())},
        {"three a week: Wednesday is day", P, "Siah & Hampton 2013", 3, double(mwf[1])},
        {"three a week: Friday is day", P, "Siah & Hampton 2013", 5, double(mwf[2])},
        {"three a week: last day, in the fourth week", P, "Siah & Hampton 2013", 26, double(mwf.back())},
        {"five a week: sessions", P, "Kim et al., Ann Dermatol 2017;29:728-734", 10, double(daily.size())},
        {"five a week: last day, in the second week", P, "Kim et al. 2017", 12, double(daily.back())},
        {"HDSS better by 2 is strong", P, gulmez, double(Response::Strong), response(4, 2)},
        {"HDSS better by 3 is strong", P, gulmez, double(Response::Strong), response(4, 1)},
        {"HDSS better by 1 is good", P, gulmez, double(Response::Good), response(3, 2)},
        {"HDSS unchanged is none", P, gulmez, double(Response::None), response(3, 3)},
        {"HDSS: least score", P, "Solish et al., Dermatol Surg 2007;33:908-923", 1, double(responseBy(1, 1).ok())},
        {"HDSS: most score", P, "Solish et al. 2007", 4, responseBy(4, 4).ok() && !responseBy(5, 4).ok() ? 4.0 : 0},
        {"sweat of healthy palms, mean mg/min/m²", P, stefaniak, 18.49, hands.mean},
        {"its deviation", P, stefaniak, 14.06, hands.sd},
        {"upper limit of palms", P, stefaniak, 46, hands.upperNormal},
        {"sweat of healthy soles, mean", P, stefaniak, 15.77, feet.mean},
        {"deviation, soles", P, stefaniak, 16.87, feet.sd},
        {"upper limit of soles", P, stefaniak, 50, feet.upperNormal},
        {"sweat of healthy armpits, mean", P, stefaniak, 42.39, armpits.mean},
        {"deviation, armpits", P, stefaniak, 47.08, armpits.sd},
        {"upper limit of armpits", P, stefaniak, 136, armpits.upperNormal},
        {"other cut-off, mg in 5 min", P, "Thorlacius et al., Int J Dermatol 2015;54:e409-15", 100,
         kFiveMinuteCutOff.mg},
    });
    for (const auto& n : {hands, feet, armpits}) // mean + 2 SD, printed without decimals
        CHECK(std::abs(n.mean + 2 * n.sd - n.upperNormal) < 1);
}

TEST_CASE("maintenance, before anything is known of a person")
{
    const outlook::Predictive prior({});
    const auto within = [&](double days) { return 1 - prior.survivor(days); };
    // our own choice, from the range of common practice: half by day 10, 90 % between 3 and 35 days
    CHECK(within(10) == Approx(0.5).margin(0.03));
    CHECK(within(3) == Approx(0.05).margin(0.03));
    CHECK(within(35) == Approx(0.95).margin(0.03));
    hold({{"chance of clamminess at which a top-up is due", C, "", 0.2, outlook::Settings{}.risk}});
}
