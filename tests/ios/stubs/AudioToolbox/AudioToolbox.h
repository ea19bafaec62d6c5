// Declarations of Apple's, as few as platform/ios uses. ../../declarations.py holds them against the objc2 crates.
#pragma once
#import <Foundation/Foundation.h>

typedef uint32_t SystemSoundID;
enum : SystemSoundID { kSystemSoundID_Vibrate = 0x00000FFF };
FOUNDATION_EXPORT void AudioServicesPlaySystemSound(SystemSoundID sound);
