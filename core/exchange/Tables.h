#pragma once

#include "codec/Incoming.h"

#include <map>
#include <span>
#include <string_view>

namespace firstdew::exchange {

using namespace facts;
using codec::Incoming;

/// One tidy table for each kind of fact that is there, by file name ("check-in.csv"), and "columns.csv", which says of
/// every column of every kind what it holds. CSV after RFC 4180, UTF-8. Columns: kind, id, person, happened,
/// recorded_ms, corrects, then the kind's own fields; sets and lists joined by ';', what is absent left empty. Texts
/// are guarded against being taken for formulas (Csv.h).
[[nodiscard]] std::map<std::string, std::string> tablesOf(std::span<const Fact> facts);

/// Every file name that tablesOf may give.
[[nodiscard]] std::vector<std::string> tableNames();

/// Reads one such table. Columns may come in any order; id, person, recorded_ms and corrects may be left out or empty,
/// as may optional fields: an absent person is `person`, an absent moment of recording `recordedMs`.
/// Refused, naming line and column: an unknown column or kind, a missing column, a value that cannot be, more than
/// codec::kMostFacts rows.
[[nodiscard]] Result<std::vector<codec::Incoming>> readTable(const std::string& file, std::string_view text,
                                                             const std::string& person, long long recordedMs);

} // namespace firstdew::exchange
