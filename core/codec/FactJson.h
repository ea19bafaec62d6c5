#pragma once

#include "facts/Fact.h"
#include "facts/Result.h"

#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string_view>

namespace firstdew::codec {

/// A payload as a JSON object with the field names of facts/Payloads.h; absent optionals are left out.
[[nodiscard]] nlohmann::json payloadToJson(const facts::Payload& payload);
/// The payload of that kind; unknown kinds, missing or unknown fields, wrong types and numbers out of range are refused
/// with the field's name.
[[nodiscard]] facts::Result<facts::Payload> payloadFromJson(std::string_view kind, const nlohmann::json& object);
/// A whole fact: id, person, happened, recorded_ms, corrects, kind, and the payload under "is".
[[nodiscard]] nlohmann::json factToJson(const facts::Fact& fact);
[[nodiscard]] facts::Result<facts::Fact> factFromJson(const nlohmann::json& object);
/// Whether the fact, written down, reads back as itself. Refused: values out of range or not a number, text that is
/// not UTF-8, a minute or a person that cannot be.
[[nodiscard]] facts::Result<facts::Done> canBeKept(const facts::Fact& fact);

/// What cannot be, although each field by itself can: days away or another treatment that end before they begin, days
/// of a course that do not rise.
[[nodiscard]] std::optional<facts::Error> contradictionIn(const facts::Payload& payload);

} // namespace firstdew::codec
