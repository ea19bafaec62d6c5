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
