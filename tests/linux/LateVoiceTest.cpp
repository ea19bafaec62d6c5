#include "late/LateVoice.h"

#include <catch2/catch.hpp>

using namespace firstdew;

// Beside this program no part stands.
TEST_CASE("A voice whose part is missing is silent and cannot be made ready")
{
    late::LateVoice voice;
    voice.choose({true, true});
    voice.hush(); // asks for nothing yet
    CHECK_FALSE(voice.prepare());
    voice.say("hold-still");
    voice.alarm("too-high");
    CHECK_FALSE(voice.prepare());
}
