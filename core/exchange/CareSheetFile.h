#pragma once

#include "codec/Incoming.h"
#include "facts/Payloads.h"
#include "facts/Result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

// The care sheet as a file: what a prescriber or nurse sets, in JSON after care-sheet.schema.json in this folder.
namespace firstdew::exchange {

using namespace facts;

inline constexpr int kCareSheetVersion = 1;

/// Bytes of the largest file that is read as a care sheet. One that fits a QR code takes a tenth.
inline constexpr std::size_t kMostCareSheetBytes = 65'536;

/// The sheet as an indented JSON document for a file.
[[nodiscard]] std::string careSheetJson(const CareSheet& sheet);
/// The same on one line, for a QR code.
[[nodiscard]] std::string careSheetLine(const CareSheet& sheet);

/// Reads either form. Refused with field and reason: what the schema refuses, and beyond it a limit above the trade's
/// for that age group, direct current at the armpits, prescribed days that do not rise or stand beside a named
/// template, a review before the sheet was given, control characters and marks that turn the direction of text, a line
/// break in `who`, and notes that do not fit a QR code with the rest.
[[nodiscard]] Result<CareSheet> readCareSheet(const std::string& file, std::string_view text, AgeGroup age);

/// The lowest limit that leaves something to treat with.
inline constexpr Milliamps kLeastLimit{1};
/// What an armpit pad may measure: our own choice, wide.
inline constexpr SquareCentimetres kLeastPad{4};
inline constexpr SquareCentimetres kMostPad{200};

/// Everything that is wrong with a sheet, one for each rule that it breaks; `input` is the field as the file names it.
[[nodiscard]] std::vector<Error> careSheetProblems(const CareSheet& sheet, AgeGroup age);

/// The rules that a sheet has to keep, whoever filled it in: the first of its problems.
[[nodiscard]] Result<Done> checkCareSheet(const CareSheet& sheet, AgeGroup age);

/// The same for every care sheet among facts from a file, and for every level that a taught session agreed on. Refused
/// with its file and line.
[[nodiscard]] Result<Done> checkCareSheets(const std::vector<codec::Incoming>& incoming);

/// Whether a sheet may be accepted on `today`: one given on a later day is refused.
[[nodiscard]] Result<Done> checkAcceptance(const CareSheet& sheet, LocalDate today);

} // namespace firstdew::exchange
