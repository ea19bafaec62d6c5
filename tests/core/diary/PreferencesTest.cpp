#include "diary/Preferences.h"

#include <catch2/catch.hpp>

using namespace firstdew::diary;

TEST_CASE("a chosen number is read with a decimal point, whatever the locale")
{
    Preferences p;
    apply(p, {"risk", "0.5"});
    CHECK(p.risk == 0.5);
    apply(p, {"text-scale", "1.25"});
    CHECK(p.textScale == 1.25);
    apply(p, {"risk", "0,25"});
    CHECK(p.risk == 0.5);
}

TEST_CASE("a chosen number is stored as it is read")
{
    for (const double chosen : {0.01, 0.05, 0.2, 0.333, 0.9}) {
        CHECK(riskPreference(chosen).value.find(',') == std::string::npos);
        Preferences p;
        apply(p, riskPreference(chosen));
        CHECK(p.risk == chosen);
    }
}

TEST_CASE("nobody teaches others before saying so")
{
    Preferences p;
    CHECK_FALSE(p.teaches);
    apply(p, {"teaches", "yes"});
    CHECK_FALSE(p.teaches);
    apply(p, teachesPreference(true));
    CHECK(p.teaches);
    apply(p, teachesPreference(false));
    CHECK_FALSE(p.teaches);
    apply(p, caseloadFolderPreference("/records of people"));
    apply(p, signaturePreference("Nurse Åse"));
    apply(p, contactPreference("Nurse Åse, 555 0100"));
    CHECK(p.caseloadFolder == "/records of people");
    CHECK(p.signature == "Nurse Åse");
    CHECK(p.contact == "Nurse Åse, 555 0100");
}

TEST_CASE("with both hands under water the voice speaks, whatever was chosen")
{
    for (const Cues chosen : allOf<Cues>()) {
        const Cues under = cuesFor(chosen, WayOfWorking::HandsUnder);
        CHECK((under == Cues::Both || under == Cues::Voice));
        CHECK(cuesFor(chosen, WayOfWorking::FreeHand) == chosen);
        CHECK(cuesFor(chosen, WayOfWorking::Helper) == chosen);
    }
    CHECK(cuesFor(Cues::Voice, WayOfWorking::HandsUnder) == Cues::Voice);
}

TEST_CASE("a setting that is unreadable, unknown or out of range changes nothing")
{
    Preferences chosen;
    for (const Preference& s : {riskPreference(0.3), cuesPreference(Cues::Tones), speakerPreference(Speaker::Device),
                                vibrationPreference(false), pedalPreference(true), themePreference(Theme::Dark),
                                textScalePreference(1.5), languagePreference("fr"), summaryDaysPreference(30),
                                cautionsReadPreference(LocalDate(20500)), teachesPreference(true)})
        apply(chosen, s);
    const Preferences before = chosen;
    for (const Preference& s : std::vector<Preference>{
             {"risk", ""},        {"risk", "nan"},      {"risk", "0.009"},      {"risk", "0.91"},
             {"risk", "0.5x"},    {"risk", "1e999"},    {"sound", "loud"},      {"voice", "mine"},
             {"vibration", "no"}, {"pedal", "left"},    {"theme", "blue"},      {"text-scale", "0.4"},
             {"language", ""},    {"text-scale", "4"},  {"summary-days", "0"},  {"summary-days", "36601"},
             {"teaches", "both"}, {"unheard-of", "on"}, {"summary-days", "7 "}, {"cautions-read", "2026-02-30"}}) {
        INFO(s.key << " " << s.value);
        apply(chosen, s);
        CHECK(chosen == before);
    }
}

TEST_CASE("each setting is read back as it was stored, at both ends of its range")
{
    Preferences p;
    for (const bool on : {false, true}) {
        apply(p, vibrationPreference(on));
        CHECK(p.vibration == on);
        apply(p, pedalPreference(on));
        CHECK(p.pedal == on);
    }
    for (const int days : {1, 36600}) {
        apply(p, summaryDaysPreference(days));
        CHECK(p.summaryDays == days);
    }
    for (const double scale : {0.5, 3.0}) {
        apply(p, textScalePreference(scale));
        CHECK(p.textScale == scale);
    }
    for (const Cues cues : allOf<Cues>()) {
        apply(p, cuesPreference(cues));
        CHECK(p.cues == cues);
    }
    for (const Theme theme : allOf<Theme>()) {
        apply(p, themePreference(theme));
        CHECK(p.theme == theme);
    }
    apply(p, speakerPreference(Speaker::Device));
    CHECK(p.speaker == Speaker::Device);
    apply(p, languagePreference("de"));
    CHECK(p.language == "de");
    apply(p, cautionsReadPreference(LocalDate(20500)));
    CHECK(p.cautionsRead == LocalDate(20500));
}
