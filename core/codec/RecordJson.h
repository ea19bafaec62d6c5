#pragma once

#include "codec/Incoming.h"

#include <nlohmann/json_fwd.hpp>
#include <span>
#include <string_view>

namespace firstdew::codec {

inline constexpr int kRecordJsonVersion = 1;

/// The whole record as one JSON document: {"format":"firstdew-record","version":1,"facts":[…]}, a fact a line, in the
/// order recorded. Complete: read back, it gives the same facts; the same facts give the same bytes.
[[nodiscard]] std::string recordJson(std::span<const Fact> facts);

/// Reads such a document. Refused, naming line and field: no JSON, another format, a newer version, a key given twice,
/// facts that cannot be.
[[nodiscard]] Result<std::vector<Incoming>> readRecordJson(const std::string& file, std::string_view text);

/// Any JSON document. Refused, naming the line: no JSON, a key given twice in one object.
[[nodiscard]] Result<nlohmann::json> parseJson(const std::string& file, std::string_view text);

} // namespace firstdew::codec
