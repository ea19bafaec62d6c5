#pragma once

#include "protocol/Script.h"

#include <QString>
#include <string>

namespace firstdew::words {

/// What a prompt of a session says, as a voice is to read it.
[[nodiscard]] QString promptText(protocol::Prompt prompt);
/// The same by its token; the one that no session speaks, for trying the volume, is "volume-check".
[[nodiscard]] QString promptText(const std::string& token);

} // namespace firstdew::words
