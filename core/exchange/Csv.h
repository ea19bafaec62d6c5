#pragma once

#include "facts/Result.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

// Comma-separated values after RFC 4180: CRLF between records, fields with commas, quotes or line breaks in quotes.
namespace firstdew::exchange {

struct CsvRow {
    int line = 0; ///< of the file, from 1, where the record begins
    std::vector<std::string> cells;
};

/// A text as a cell that a spreadsheet does not take for a formula: one that begins with = + - @, a tab or a line
/// break, or with an apostrophe before one of these, gets an apostrophe in front. `unguarded` takes it off again.
[[nodiscard]] std::string guarded(std::string_view text);
[[nodiscard]] std::string unguarded(std::string_view cell);

void appendCsvRow(std::string& out, const std::vector<std::string>& cells);

/// More fields than any table of ours has.
inline constexpr std::size_t kMostCells = 64;

/// Looks at a record; an error ends the reading.
using SeeCsvRow = std::function<std::optional<facts::Error>(CsvRow&)>;

/// Reads CSV in UTF-8 with or without a byte order mark, records ended by CRLF or LF, and hands over one record after
/// the other, so that no more than one is held. Empty lines are passed over. Refused, naming the line: a quote left
/// open, a quote in the middle of a bare field, text after a closing quote, more than kMostCells fields in a record,
/// and what `see` refuses.
[[nodiscard]] facts::Result<facts::Done> eachCsvRow(const std::string& file, std::string_view text,
                                                    const SeeCsvRow& see);

/// All records at once, of a small table.
[[nodiscard]] facts::Result<std::vector<CsvRow>> readCsv(const std::string& file, std::string_view text);

} // namespace firstdew::exchange
