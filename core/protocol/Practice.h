#pragma once

#include "protocol/Script.h"

// Practice: the whole led session with the machine off, to learn it. Nothing of it is recorded.
namespace firstdew::protocol {

/// What a timed step of a session lasts in practice at most (our own choice: long enough to read the page and to hear
/// what is said).
inline constexpr Seconds kPracticeStep{15};

/// The prompt that is spoken in practice where a session has `prompt`. Nothing that is said in practice asks to switch
/// the machine on or to turn the current up.
[[nodiscard]] Prompt inPractice(Prompt prompt);
/// The same steps in the same order, none of the timed ones longer than kPracticeStep, with the prompts of practice.
[[nodiscard]] Script practiceOf(const Script& session);
/// Whether it is a script of practice.
[[nodiscard]] bool isPractice(const Script& script);
/// What a step of a practice script lasts in a real session, where that is longer; nothing where it is not, or where
/// the person ends it.
[[nodiscard]] std::optional<Seconds> realLength(const Script& practice, std::size_t step);

} // namespace firstdew::protocol
