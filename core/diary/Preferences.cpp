#include "diary/Preferences.h"

#include <charconv>
#include <fmt/format.h>

namespace firstdew::diary {

namespace {

constexpr std::string_view kRisk = "risk";
constexpr std::string_view kCues = "sound";
constexpr std::string_view kSpeaker = "voice";
constexpr std::string_view kVibration = "vibration";
constexpr std::string_view kPedal = "pedal";
constexpr std::string_view kTheme = "theme";
constexpr std::string_view kTextScale = "text-scale";
constexpr std::string_view kLanguage = "language";
constexpr std::string_view kSummaryDays = "summary-days";
constexpr std::string_view kCautionsRead = "cautions-read";
constexpr std::string_view kTeaches = "teaches";
constexpr std::string_view kCaseloadFolder = "caseload-folder";
constexpr std::string_view kSignature = "signature";
constexpr std::string_view kContact = "contact";

/// The text as a number, or nullopt if some of it is not part of the number or the number is outside [least, most].
template <class N>
std::optional<N> numberIn(std::string_view text, N least, N most)
{
    N out{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), out);
    const bool inside = out >= least && out <= most; // what is no number is not
    if (error != std::errc() || end != text.data() + text.size() || !inside)
        return std::nullopt;
    return out;
}

template <class T, class U>
void setIf(T& target, const std::optional<U>& value)
{
    if (value)
        target = *value;
}

Preference stored(std::string_view key, std::string value) { return {std::string(key), std::move(value)}; }

/// What somebody sets who teaches others.
void applyTeaching(Preferences& p, const Preference& s)
{
    if (s.key == kTeaches && (s.value == "on" || s.value == "off"))
        p.teaches = s.value == "on";
    else if (s.key == kCaseloadFolder)
        p.caseloadFolder = s.value;
    else if (s.key == kSignature)
        p.signature = s.value;
    else if (s.key == kContact)
        p.contact = s.value;
}

} // namespace

Cues cuesFor(Cues chosen, WayOfWorking way)
{
    const bool speaks = chosen == Cues::Both || chosen == Cues::Voice;
    return way == WayOfWorking::HandsUnder && !speaks ? Cues::Both : chosen;
}

void apply(Preferences& p, const Preference& s)
{
    if (s.key == kRisk)
        setIf(p.risk, numberIn(s.value, 0.01, 0.9));
    else if (s.key == kCues)
        setIf(p.cues, fromToken<Cues>(s.value));
    else if (s.key == kSpeaker)
        setIf(p.speaker, fromToken<Speaker>(s.value));
    else if (s.key == kVibration && (s.value == "on" || s.value == "off"))
        p.vibration = s.value == "on";
    else if (s.key == kPedal && (s.value == "on" || s.value == "off"))
        p.pedal = s.value == "on";
    else if (s.key == kTheme)
        setIf(p.theme, fromToken<Theme>(s.value));
    else if (s.key == kTextScale)
        setIf(p.textScale, numberIn(s.value, 0.5, 3.0));
    else if (s.key == kLanguage && !s.value.empty())
        p.language = s.value;
    else if (s.key == kSummaryDays)
        setIf(p.summaryDays, numberIn(s.value, 1, 36600));
    else if (s.key == kCautionsRead)
        setIf(p.cautionsRead, LocalDate::parse(s.value));
    else
        applyTeaching(p, s);
}

Preference riskPreference(double risk) { return stored(kRisk, fmt::format("{}", risk)); }
Preference cuesPreference(Cues cues) { return stored(kCues, std::string(token(cues))); }
Preference speakerPreference(Speaker speaker) { return stored(kSpeaker, std::string(token(speaker))); }
Preference vibrationPreference(bool on) { return stored(kVibration, on ? "on" : "off"); }
Preference pedalPreference(bool there) { return stored(kPedal, there ? "on" : "off"); }
Preference themePreference(Theme theme) { return stored(kTheme, std::string(token(theme))); }
Preference textScalePreference(double scale) { return stored(kTextScale, fmt::format("{}", scale)); }
Preference languagePreference(const std::string& language) { return stored(kLanguage, language); }
Preference summaryDaysPreference(int days) { return stored(kSummaryDays, fmt::format("{}", days)); }
Preference cautionsReadPreference(LocalDate day) { return stored(kCautionsRead, day.iso()); }
Preference teachesPreference(bool teaches) { return stored(kTeaches, teaches ? "on" : "off"); }
Preference caseloadFolderPreference(const std::string& folder) { return stored(kCaseloadFolder, folder); }
Preference signaturePreference(const std::string& who) { return stored(kSignature, who); }
Preference contactPreference(const std::string& contact) { return stored(kContact, contact); }

} // namespace firstdew::diary
