#pragma once

#include "bath/Engine.h"
#include "facts/Fact.h"

#include <QString>
#include <optional>

// What a screen reader is told of what somebody who sees the screen notices by looking.
namespace firstdew::words {

struct Announced {
    QString text;
    bool atOnce = false; ///< before anything else that is being said
    bool operator==(const Announced&) const = default;
};

/// Of something that a session does: its prompts, the phase, the alarm with the reading, and the alarm's end.
/// `alarmKnown`: this alarm was announced already, and only sounds again. `state` is that after the effect.
[[nodiscard]] std::optional<Announced> announced(const bath::Effect& effect, const bath::State& state, bool alarmKnown);
/// Of what was recorded; empty for what the person did not save or what the page itself says.
[[nodiscard]] QString savedName(const facts::Payload& payload);

} // namespace firstdew::words
