#pragma once

#include "facts/Payloads.h"

#include <optional>
#include <string>

namespace firstdew::diary {

using namespace facts;

enum class Theme { System, Light, Dark };
/// What a session plays.
enum class Cues { Both, Voice, Tones, None };
/// What speaks the prompts: recorded clips or the phone's own voice.
enum class Speaker { Recorded, Device };

/// The person's settings, parsed once. A setting that is missing or unreadable keeps its default.
struct Preferences {
    std::optional<double> risk; ///< chance of clamminess at which a top-up is due, 0.01 to 0.9
    Cues cues = Cues::Both;
    Speaker speaker = Speaker::Recorded;
    bool vibration = true;
    bool pedal = false; ///< a pedal or a switch stops a session like a key
    Theme theme = Theme::System;
    double textScale = 1; ///< 0.5 to 3
    std::optional<std::string> language;
    int summaryDays = 90; ///< 1 to 36600
    std::optional<LocalDate> cautionsRead;
    bool teaches = false;       ///< the person teaches others: the caseload is shown
    std::string caseloadFolder; ///< where their records lie; empty: not chosen yet
    std::string signature;      ///< how the person signs care sheets
    std::string contact;        ///< whom those taught may call, as it stands on care sheets
    bool operator==(const Preferences&) const = default;
};

/// What a session led in that way plays. With both hands under water the person goes by what is heard: the voice
/// speaks whatever was chosen.
[[nodiscard]] Cues cuesFor(Cues chosen, WayOfWorking way);

/// Applies one stored setting. An unknown key or a value out of range changes nothing. Numbers have a decimal point in
/// every locale.
void apply(Preferences& preferences, const Preference& stored);

/// The setting as it is stored.
[[nodiscard]] Preference riskPreference(double risk);
[[nodiscard]] Preference cuesPreference(Cues cues);
[[nodiscard]] Preference speakerPreference(Speaker speaker);
[[nodiscard]] Preference vibrationPreference(bool on);
[[nodiscard]] Preference pedalPreference(bool there);
[[nodiscard]] Preference themePreference(Theme theme);
[[nodiscard]] Preference textScalePreference(double scale);
[[nodiscard]] Preference languagePreference(const std::string& language);
[[nodiscard]] Preference summaryDaysPreference(int days);
[[nodiscard]] Preference cautionsReadPreference(LocalDate day);
[[nodiscard]] Preference teachesPreference(bool teaches);
[[nodiscard]] Preference caseloadFolderPreference(const std::string& folder);
[[nodiscard]] Preference signaturePreference(const std::string& who);
[[nodiscard]] Preference contactPreference(const std::string& contact);

} // namespace firstdew::diary

namespace firstdew::facts {
FIRSTDEW_TOKENS(diary::Theme, "system", "light", "dark");
FIRSTDEW_TOKENS(diary::Cues, "both", "voice", "tones", "none");
FIRSTDEW_TOKENS(diary::Speaker, "recorded", "device");
} // namespace firstdew::facts
