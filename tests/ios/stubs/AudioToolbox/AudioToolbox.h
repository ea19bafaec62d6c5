// Declarations repeated from Apple's documentation, as few as platform/ios uses: for a check of syntax and types alone.
#pragma once

typedef unsigned int SystemSoundID;
enum : SystemSoundID { kSystemSoundID_Vibrate = 0x00000FFF };
extern "C" void AudioServicesPlaySystemSound(SystemSoundID sound);
