#pragma once

#include "codec/Incoming.h"

#include <nlohmann/json_fwd.hpp>
#include <span>
#include <string_view>

namespace firstdew::codec {

inline constexpr int kRecordJsonVersion = 1;

/// Bytes of the largest document that is read: ten years of three people with every session led come to half of it.
inline constexpr std::size_t kMostRecordBytes = 128U << 20U;
/// Facts of the largest file that is read, in whatever format.
inline constexpr std::size_t kMostFacts = 1'000'000;

/// The whole record as one JSON document: {"format":"firstdew-record","version":1,"facts":[…]}, a fact a line, in the
/// order recorded. Complete: read back, it gives the same facts; the same facts give the same bytes.
[[nodiscard]] std::string recordJson(std::span<const Fact> facts);

/// Reads such a document. Refused, naming line and field: no JSON, another format, a newer version, a key given twice,
/// facts that cannot be, and more than any record holds: size, depth, fields in an object, facts. Memory stays within
/// what exchange/FORMATS.md states.
[[nodiscard]] Result<std::vector<Incoming>> readRecordJson(const std::string& file, std::string_view text);

/// Any JSON document. Refused, naming the line: no JSON, a key given twice in one object, nesting more than 8 deep,
/// more than 64 fields in an object.
[[nodiscard]] Result<nlohmann::json> parseJson(const std::string& file, std::string_view text);

} // namespace firstdew::codec
