#include "late/Parts.h"
#include "linux/QtVoice.h"

FIRSTDEW_PART(Sound, {[]() -> firstdew::ports::Voice* { return new firstdew::linuxside::QtVoice; }});
