#include "exchange/CareSheetFile.h"

#include "exchange/QrCode.h"
#include "exchange/QrRead.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace firstdew;
using namespace firstdew::exchange;
using nlohmann::json;

namespace {

CareSheet full()
{
    CareSheet s;
    s.who = "Dr. Åse Invented";
    s.given = *LocalDate::parse("2026-03-02");
    s.sites = {Site::Hands, Site::HandFoot};
    s.plan = CourseTemplate::Prescribed;
    s.days = {1, 3, 8};
    s.waveform = Waveform::Direct;
    s.directLimit = Milliamps{12.5};
    s.pulsedLimit = Milliamps{18};
    s.raise = Seconds{90};
    s.lower = Seconds{30};
    s.swapping = Seconds{60};
    s.review = *LocalDate::parse("2026-04-13");
    s.contact = "Nurse Invented, 555 0100";
    s.notes = "Begin at 5 mA.\nRing if the skin blisters – \"at once\".";
    return s;
}

/// What ZXing, an independent reader, makes of the code drawn at three dots a module with its quiet zone.
std::string scanned(const QrCode& code)
{
    constexpr int dots = 3;
    constexpr int quiet = 4;
    const int side = (code.size + 2 * quiet) * dots;
    std::vector<std::uint8_t> grey(static_cast<std::size_t>(side * side), 255);
    for (int y = 0; y < code.size * dots; ++y)
        for (int x = 0; x < code.size * dots; ++x)
            if (code.at(x / dots, y / dots))
                grey[static_cast<std::size_t>((y + quiet * dots) * side + x + quiet * dots)] = 0;
    return readQrCode(grey, side, side).value();
}

} // namespace

TEST_CASE("a care sheet comes back from its file as it was given")
{
    CHECK(*readCareSheet("s.json", careSheetJson(full()), AgeGroup::Adult) == full());
    CareSheet least;
    least.who = "Nurse";
    least.given = *LocalDate::parse("2026-03-02");
    least.sites = {Site::Armpits};
    CHECK(*readCareSheet("s.json", careSheetJson(least), AgeGroup::Child) == least);
    CHECK(*readCareSheet(
              "s.json",
              R"({"format":"firstdew-care-sheet","version":1,"who":"Nurse","given":"2026-03-02","sites":["armpits"]})",
              AgeGroup::Child) == least);
}

TEST_CASE("a care sheet passes through a QR code that an independent reader scans")
{
    const auto code = qrCodeOf(careSheetLine(full()));
    REQUIRE(code.ok());
    CHECK(*readCareSheet("code", scanned(*code), AgeGroup::Adult) == full());
    CareSheet longest = full();
    longest.who = std::string(120, 'w');
    longest.notes = std::string(800, 'n');
    const auto large = qrCodeOf(careSheetLine(longest));
    REQUIRE(large.ok());
    CHECK(*readCareSheet("code", scanned(*large), AgeGroup::Adult) == longest);
    CHECK(qrCodeOf(std::string(2332, 'x')).error().code ==
          "qr-too-long"); // capacity of version 40-M, ISO/IEC 18004: 2331 bytes
    CHECK(qrCodeOf(std::string(2331, 'x')).ok());
    CHECK_FALSE(qrCodeOf("").ok());
}

TEST_CASE("a sheet that raises a limit, or cannot be, is refused with field and reason")
{
    struct Case {
        const char* change; // a JSON merge patch (RFC 7396) on the full sheet
        const char* field;
        AgeGroup age = AgeGroup::Adult;
    };
    const auto c = GENERATE(values<Case>({
        {R"({"direct_limit_ma":20.5})", "direct_limit_ma"},
        {R"({"direct_limit_ma":15.5})", "direct_limit_ma", AgeGroup::Child},
        {R"({"pulsed_limit_ma":31})", "pulsed_limit_ma"},
        {R"({"pulsed_limit_ma":21})", "pulsed_limit_ma", AgeGroup::Child},
        {R"({"direct_limit_ma":0})", "direct_limit_ma"},
        {R"({"direct_limit_ma":-3})", "direct_limit_ma"},
        {R"({"direct_limit_ma":"12"})", "direct_limit_ma"},
        {R"({"sites":[]})", "sites"},
        {R"({"sites":["hand"]})", "sites"},
        {R"({"sites":["hands","armpits"]})", "waveform"},
        {R"({"days":[1,3,3]})", "days"},
        {R"({"days":[2,3]})", "days"},
        {R"({"days":[1,400]})", "days"},
        {R"({"days":[]})", "days"},
        {R"({"plan":"seven"})", "days"},
        {R"({"plan":null})", "days"},
        {R"({"raise_s":19})", "raise_s"},
        {R"({"swapping_s":181})", "swapping_s"},
        {R"({"lower_s":30.5})", "lower_s"},
        {R"({"review":"2026-03-01"})", "review"},
        {R"({"review":"soon"})", "review"},
        {R"({"who":" "})", "who"},
        {R"({"who":null})", "who"},
        {R"({"contact":" "})", "contact"},
        {R"({"contact":"Nurse\n555 0100"})", "contact"},
        {R"({"contact":5550100})", "contact"},
        {R"({"colour":"red"})", "colour"},
        {R"({"waveform":null,"level_ma":8})", "waveform"},
        {R"({"waveform":"direct","direct_limit_ma":null,"level_ma":20.5})", "level_ma"},
        {R"({"waveform":"direct","direct_limit_ma":10,"level_ma":10.5})", "level_ma"},
        {R"({"waveform":"direct","level_ma":0})", "level_ma"},
        {R"({"sites":["armpits"],"waveform":"pulsed","pad_cm2":16,"level_ma":8.5})", "level_ma"},
        {R"({"format":"other"})", "format"},
        {R"({"version":2})", "version"},
    }));
    INFO(c.change);
    json document = json::parse(careSheetJson(full()));
    document.merge_patch(json::parse(c.change));
    const auto read = readCareSheet("s.json", document.dump(), c.age);
    REQUIRE_FALSE(read.ok());
    CHECK(read.error().input == std::string("s.json, ") + c.field);
    CHECK_FALSE(read.error().message.empty());
}

TEST_CASE("everything that is wrong with a sheet is told at once, each with its field")
{
    CHECK(careSheetProblems(full(), AgeGroup::Adult).empty());
    CareSheet s = full();
    s.who = "";
    s.sites = {Site::Armpits};
    s.directLimit = Milliamps{20.5};
    s.days = {1, 3, 3};
    s.raise = Seconds{19};
    s.review = *LocalDate::parse("2026-03-01");
    s.contact = std::string(121, 'x');
    std::vector<std::string> fields;
    for (const auto& problem : careSheetProblems(s, AgeGroup::Adult))
        fields.push_back(problem.input);
    // The name hides the contact: both are texts, of which the first is told.
    CHECK(fields == std::vector<std::string>{"who", "waveform", "days", "direct_limit_ma", "raise_s", "review"});
    s.who = "Nurse";
    CHECK(careSheetProblems(s, AgeGroup::Adult).front().input == "contact");
    CHECK(checkCareSheet(s, AgeGroup::Adult).error().input == "contact");
}

TEST_CASE("what is no sheet at all is refused")
{
    for (const char* text :
         {"", "hello", "[]", "{}", "null", "{\"format\":\"firstdew-care-sheet\"}", "{\"who\":1,\"who\":2}"})
        CHECK_FALSE(readCareSheet("s.json", text, AgeGroup::Adult).ok());
}

TEST_CASE("a care sheet among imported facts keeps the same rules")
{
    CareSheet high = full();
    const auto check = [](const CareSheet& sheet) {
        return checkCareSheets({{{"a", "p1", *LocalTime::parse("2026-03-05T07:30"), 1, "", sheet}, "x.json", 3}});
    };
    CHECK(check(high));
    high.directLimit = Milliamps{50};
    const auto refused = check(high);
    REQUIRE_FALSE(refused);
    CHECK(refused.error().input == "x.json, line 3, direct_limit_ma");
}

TEST_CASE("a level agreed at a taught session comes in up to the limit of adults")
{
    const auto check = [](Taught taught) {
        return checkCareSheets({{{"a", "p1", *LocalTime::parse("2026-03-05T07:30"), 1, "", taught}, "x.json", 3}});
    };
    CHECK(check({Site::Hands, "nurse", {}, Waveform::Direct, Milliamps{20}})); // common practice, no source
    CHECK(check({Site::Hands, "nurse", {}, Waveform::Direct, {}}));
    for (const auto& bad : {Taught{Site::Hands, "nurse", {}, Waveform::Direct, Milliamps{20.5}},
                            Taught{Site::Hands, "nurse", {}, Waveform::Pulsed, Milliamps{30.5}},
                            Taught{Site::Hands, "nurse", {}, Waveform::Pulsed, Milliamps{0}},
                            Taught{Site::Armpits, "nurse", {}, Waveform::Direct, Milliamps{1}}}) {
        const auto refused = check(bad);
        REQUIRE_FALSE(refused);
        CHECK(refused.error().input == "x.json, line 3, level_ma");
    }
}
