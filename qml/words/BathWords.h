#pragma once

#include "bath/Engine.h"
#include "protocol/CurrentAdvice.h"
#include "protocol/MayBegin.h"
#include "protocol/Preparation.h"
#include "protocol/WayIn.h"
#include "words/Sentences.h"

// The words of a session: its limits, its preparation, and what the running page says.
namespace firstdew::words {

/// "12:05".
[[nodiscard]] QString countdown(int seconds);
/// The limit and where it comes from, or that it cannot be.
[[nodiscard]] QString limitSentence(const protocol::LimitAnswer& answer, const std::string& giver);
/// Above which current the skin is to be watched; empty where there is no such level.
[[nodiscard]] QString watchSentence(std::optional<Milliamps> above);
/// The skin that counts for a limit, and what its size comes from.
[[nodiscard]] QString areaSentence(const protocol::LimitQuery& query, protocol::AreaFrom from);
/// What to aim for and why; `first` is what the session asks for before readings are steady, where that is less.
[[nodiscard]] QString adviceSentence(const protocol::CurrentAdvice& advice, Milliamps first);
[[nodiscard]] QString lengthSentence(const protocol::Script& script);
[[nodiscard]] QString prepText(protocol::PrepItem item, Site site);
/// Why every line is gone through before the session.
[[nodiscard]] QString longWaySentence(protocol::LongWayReason reason);
/// "Aim 17 mA".
[[nodiscard]] QString aimName(Milliamps aim);
/// What somebody says of health and skin before a session, where the short way is enough; `health`: whether the health
/// questions are part of it.
[[nodiscard]] QStringList statementLines(bool health, Site site);
/// The button that begins the short way: the machine is on, at zero and in that waveform.
[[nodiscard]] QString beginName(Waveform waveform);
[[nodiscard]] QString waitSentence(const protocol::PrepWait& wait, Site site, LocalDate today);

/// What the large button of the running page is for, where there is something to tell it; the step's own work, or
/// that the current is at zero where that has to come first.
[[nodiscard]] QString primaryName(const bath::State& state);
/// What says that a limb left the water, or a pad the skin, while current flowed.
[[nodiscard]] QString pausedName(const bath::State& state);
/// The answer that the machine ran on, with the waveform that it has to have.
[[nodiscard]] QString stillDirect();
[[nodiscard]] QString stillPulsed();
/// What is asked again at the swap; empty elsewhere.
[[nodiscard]] QString noteAtSwap(const bath::State& state);
/// Why the session ended early, where it was not the person who ended it.
[[nodiscard]] QString endSentence(const bath::State& state);
/// What to do now, in one sentence.
[[nodiscard]] QString nowSentence(const bath::State& state);
/// A step in a word or two, to be read from two metres.
[[nodiscard]] QString verbName(const protocol::Step& step);
/// In practice, how long the present step takes in a real session, where that is longer; empty elsewhere.
[[nodiscard]] QString practiceLength(const bath::State& state);
/// In practice, why no real session can begin today.
[[nodiscard]] QString practiceBar(const Error& why);
/// What is going on, for a notice that anybody may see: it names no site and no current.
[[nodiscard]] QString noticeTitle(const bath::State& state);
/// "Ends at 19:14", of a time in ms since 1970 UTC.
[[nodiscard]] QString endsName(long long wallMs);
/// The button that stops the session.
[[nodiscard]] QString stopName();
/// Whether the phase waits at zero, to be raised again.
[[nodiscard]] bool waitsAtZero(const bath::State& state);
/// What a prompt that came at that time of the session says on the screen, as long as it holds; empty for one that only
/// names the step.
[[nodiscard]] QString twinSentence(const bath::State& state, protocol::Prompt prompt, long long atMs);
/// The step after this one, with its length where that is of use.
[[nodiscard]] QString nextName(const bath::State& state);
[[nodiscard]] QString phaseName(const bath::State& state);
[[nodiscard]] QString leftInAll(const bath::State& state);
[[nodiscard]] QString leftInStep(const bath::State& state);
[[nodiscard]] QString readingName(const std::optional<bath::MeterReading>& reading);

} // namespace firstdew::words
