#include "exchange/CareSheetFile.h"

#include "codec/CleanText.h"
#include "codec/FactJson.h"
#include "codec/RecordJson.h"
#include "exchange/QrCode.h"
#include "protocol/Limits.h"
#include "protocol/Script.h"
#include "protocol/SheetLimits.h"

#include <algorithm>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace firstdew::exchange {

using nlohmann::ordered_json;

namespace {

constexpr const char* kFormat = "firstdew-care-sheet";
constexpr std::size_t kMostWho = 120;
constexpr std::size_t kMostNotes = 800;

struct Names {
    std::vector<std::string>& out;
    void operator()(std::string_view name, const auto&, Range = {}) const { out.emplace_back(name); }
};

std::vector<std::string> fieldNames()
{
    std::vector<std::string> out;
    const CareSheet sheet;
    CareSheet::fields(sheet, Names{out});
    return out;
}

/// The document, its fields in the order in which a reader looks for them.
ordered_json documentOf(const CareSheet& sheet)
{
    const auto body = codec::payloadToJson(sheet);
    ordered_json out{{"format", kFormat}, {"version", kCareSheetVersion}};
    for (const auto& name : fieldNames())
        if (body.contains(name) && !(name == "at_no_response" && sheet.atNoResponse.empty()))
            out[name] = body[name];
    return out;
}

Error wrong(const char* field, std::string why) { return {"care-sheet-invalid", field, std::move(why)}; }

std::optional<Error> badLimit(const char* field, const std::optional<Milliamps>& limit, Waveform waveform, AgeGroup age)
{
    if (!limit)
        return std::nullopt;
    const auto trade = protocol::limitFor({Site::Hands, waveform, age, {}, {}, {}}).limit;
    if (*limit > trade)
        return wrong(field,
                     fmt::format("{} mA raises the limit of {} mA for {} current ({}); a sheet may only lower it",
                                 limit->mA, trade.mA, token(waveform), token(age)));
    if (*limit < kLeastLimit)
        return wrong(field,
                     fmt::format("{} mA leaves nothing to treat with; give at least {} mA, or leave the limit out",
                                 limit->mA, kLeastLimit.mA));
    return std::nullopt;
}

std::optional<Error> badAllowance(const char* field, const std::optional<Seconds>& length)
{
    if (length && (*length < protocol::kLeastAllowance || protocol::kMostAllowance < *length))
        return wrong(field,
                     fmt::format("must be {} to {} seconds", protocol::kLeastAllowance.s, protocol::kMostAllowance.s));
    return std::nullopt;
}

std::optional<Error> badPlan(const CareSheet& sheet)
{
    const bool prescribed = sheet.plan == CourseTemplate::Prescribed;
    if (prescribed && sheet.days.empty())
        return wrong("days", "is missing; a prescribed plan lists its days, counted from day 1");
    if (!prescribed && !sheet.days.empty())
        return wrong("days", "goes with the plan \"prescribed\" alone; leave it out, or change the plan");
    if (!sheet.days.empty() && sheet.days.front() != 1)
        return wrong("days", "must begin with day 1");
    if (std::adjacent_find(sheet.days.begin(), sheet.days.end(), std::greater_equal<>()) != sheet.days.end())
        return wrong("days", "must rise, with no day twice");
    if (!sheet.days.empty() && (sheet.days.size() > 60 || sheet.days.back() > 366))
        return wrong("days", "may hold up to 60 days within 366");
    return std::nullopt;
}

/// Characters (code points) of a text in UTF-8.
std::size_t charactersIn(const std::string& text)
{
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xc0U) != 0x80U; }));
}

std::optional<Error> badTexts(const CareSheet& sheet)
{
    if (isBlank(sheet.who))
        return wrong("who", "is empty; give the name of the prescriber or nurse");
    if (charactersIn(sheet.who) > kMostWho)
        return wrong("who", fmt::format("is longer than {} characters", kMostWho));
    if (charactersIn(sheet.notes) > kMostNotes)
        return wrong("notes", fmt::format("is longer than {} characters; shorten it", kMostNotes));
    if (!codec::isOneLine(sheet.who))
        return wrong("who", "has a line break; write the name on one line");
    if (sheet.contact && (isBlank(*sheet.contact) || charactersIn(*sheet.contact) > kMostWho))
        return wrong("contact", fmt::format("must be a name or a number of up to {} characters", kMostWho));
    if (sheet.contact && !codec::isOneLine(*sheet.contact))
        return wrong("contact", "has a line break; write it on one line");
    if (charactersIn(sheet.atNoResponse) > kMostNotes)
        return wrong("at_no_response", fmt::format("is longer than {} characters; shorten it", kMostNotes));
    const std::string contact = sheet.contact.value_or("");
    for (const auto& [field, text] : {std::pair("who", &sheet.who), std::pair("notes", &sheet.notes),
                                      std::pair("at_no_response", &sheet.atNoResponse), std::pair("contact", &contact)})
        if (!codec::isClean(*text))
            return wrong(field, "holds characters that cannot be seen and change how the rest is shown; type it again");
    return std::nullopt;
}

/// A sheet travels as one QR code too.
std::optional<Error> tooLongForCode(const CareSheet& sheet)
{
    const std::size_t bytes = careSheetLine(sheet).size();
    if (bytes <= kMostQrBytes)
        return std::nullopt;
    return wrong("notes",
                 fmt::format("make the sheet {} bytes too long for one QR code; shorten them (a letter outside "
                             "English takes two bytes or more)",
                             bytes - kMostQrBytes));
}

std::optional<Error> badSites(const CareSheet& sheet)
{
    if (sheet.sites.empty())
        return wrong("sites", "is empty; name at least one");
    if (sheet.sites.contains(Site::Armpits) && sheet.waveform == Waveform::Direct)
        return wrong("waveform", "must not be direct where armpits are treated: pulsed current only there");
    return std::nullopt;
}

std::optional<Error> badPad(const CareSheet& sheet)
{
    if (sheet.pad && !(sheet.pad->cm2 >= kLeastPad.cm2 && sheet.pad->cm2 <= kMostPad.cm2))
        return wrong("pad_cm2", fmt::format("must be {:g} to {:g} square centimetres", kLeastPad.cm2, kMostPad.cm2));
    return std::nullopt;
}

/// The agreed level is one of the sheet's waveform, and a sheet never asks for more than it allows itself.
std::optional<Error> badLevel(const CareSheet& sheet, AgeGroup age)
{
    if (!sheet.level)
        return std::nullopt;
    if (!sheet.waveform)
        return wrong("waveform", "is missing; a level is one of direct or of pulsed current, so say which");
    if (auto bad = badLimit("level_ma", sheet.level, *sheet.waveform, age))
        return bad;
    const auto most = protocol::mostLevel(sheet, *sheet.waveform, age);
    if (most && *sheet.level > *most)
        return wrong("level_ma", fmt::format("{} mA is above the {} mA that the sheet allows; lower it",
                                             sheet.level->mA, most->mA));
    return std::nullopt;
}

/// A level above the trade's limit for adults is nothing that anybody may have agreed on.
std::optional<Error> badAgreement(const Taught& taught)
{
    if (!taught.level)
        return std::nullopt;
    const auto trade = protocol::limitFor({taught.site, taught.waveform, AgeGroup::Adult, {}, {}, {}});
    if (taught.level->mA > 0 && *taught.level <= trade.limit)
        return std::nullopt;
    return Error{"field-invalid", "level_ma",
                 fmt::format("{} mA is not above zero and up to the limit of {} mA", taught.level->mA, trade.limit.mA)};
}

/// The payload's object out of the document's: what may be left out is filled in, the head taken off.
Result<nlohmann::json> bodyOf(nlohmann::json document)
{
    if (!document.is_object() || document.value("format", nlohmann::json()) != kFormat)
        return Error{"care-sheet-invalid", "format", fmt::format("is not \"{}\"; this is no care sheet", kFormat)};
    const auto version = document.value("version", nlohmann::json());
    if (!version.is_number_integer() || version < 1)
        return Error{"care-sheet-invalid", "version", "must be a whole number from 1"};
    if (version > kCareSheetVersion)
        return Error{
            "care-sheet-newer", "version",
            fmt::format("is {}, this Firstdew reads up to {}; update Firstdew", version.dump(), kCareSheetVersion)};
    document.erase("format");
    document.erase("version");
    document.emplace("days", nlohmann::json::array());
    document.emplace("notes", "");
    document.emplace("at_no_response", "");
    return document;
}

} // namespace

std::string careSheetJson(const CareSheet& sheet) { return documentOf(sheet).dump(2) + "\n"; }

std::string careSheetLine(const CareSheet& sheet) { return documentOf(sheet).dump(); }

std::vector<Error> careSheetProblems(const CareSheet& sheet, AgeGroup age)
{
    std::vector<Error> out;
    for (const auto& bad :
         {badTexts(sheet), badSites(sheet), badPlan(sheet), badPad(sheet),
          badLimit("direct_limit_ma", sheet.directLimit, Waveform::Direct, age),
          badLimit("pulsed_limit_ma", sheet.pulsedLimit, Waveform::Pulsed, age), badAllowance("raise_s", sheet.raise),
          badAllowance("lower_s", sheet.lower), badAllowance("swapping_s", sheet.swapping), badLevel(sheet, age)})
        if (bad)
            out.push_back(*bad);
    if (sheet.review && *sheet.review < sheet.given)
        out.push_back(wrong(
            "review", fmt::format("{} lies before the sheet was given ({})", sheet.review->iso(), sheet.given.iso())));
    if (auto tooLong = tooLongForCode(sheet))
        out.push_back(*tooLong);
    return out;
}

Result<Done> checkCareSheet(const CareSheet& sheet, AgeGroup age)
{
    const auto problems = careSheetProblems(sheet, age);
    if (!problems.empty())
        return problems.front();
    return Done{};
}

Result<Done> checkCareSheets(const std::vector<codec::Incoming>& incoming)
{
    // Whose it is may not be known yet. A child's limits hold whatever a sheet says.
    for (const auto& [fact, file, line] : incoming) {
        if (const auto* sheet = std::get_if<CareSheet>(&fact.payload))
            if (const auto kept = checkCareSheet(*sheet, AgeGroup::Adult); !kept)
                return codec::errorAt(file, line, kept.error());
        if (const auto* taught = std::get_if<Taught>(&fact.payload))
            if (const auto bad = badAgreement(*taught))
                return codec::errorAt(file, line, *bad);
    }
    return Done{};
}

Result<Done> checkAcceptance(const CareSheet& sheet, LocalDate today)
{
    if (sheet.given > today)
        return Error{"care-sheet-future", "given",
                     fmt::format("{} has not come yet (today is {}); ask for a sheet with the right day",
                                 sheet.given.iso(), today.iso())};
    return Done{};
}

Result<CareSheet> readCareSheet(const std::string& file, std::string_view text, AgeGroup age)
{
    const auto at = [&file](Error e) {
        e.input = e.input.empty() ? file : file + ", " + e.input;
        return e;
    };
    if (text.size() > kMostCareSheetBytes)
        return Error{"care-sheet-invalid", file,
                     fmt::format("is larger than {} kB; this is no care sheet", kMostCareSheetBytes >> 10U)};
    auto document = codec::parseJson(file, text);
    if (!document)
        return document.error();
    auto body = bodyOf(std::move(document.value()));
    if (!body)
        return at(body.error());
    auto payload = codec::payloadFromJson(CareSheet::kind, *body);
    if (!payload)
        return at(payload.error());
    CareSheet sheet = std::get<CareSheet>(std::move(payload.value()));
    if (auto kept = checkCareSheet(sheet, age); !kept)
        return at(kept.error());
    return sheet;
}

} // namespace firstdew::exchange
