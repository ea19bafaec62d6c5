#pragma once

#include "ports/Haptics.h"
#include "ports/Opener.h"
#include "ports/Sharer.h"
#include "ports/WakeGuard.h"

namespace firstdew::iosside {

/// Opens the system's share sheet. AppleNotifier.h says what was checked.
class AppleSharer : public ports::Sharer {
public:
    [[nodiscard]] bool share(const std::string& file, const std::string& mimeType) override;
};

/// Shows a file in the system's preview and a folder in the Files app.
class AppleOpener : public ports::Opener {
public:
    [[nodiscard]] bool open(const std::string& path) override;
};

/// Plays the system's haptic feedback for a step and its strongest vibration for an alarm.
class AppleHaptics : public ports::Haptics {
public:
    [[nodiscard]] bool present() const override;
    void pulse() override;
    void alarm() override;
    /// Does nothing: iOS cannot end a vibration, which lasts less than a second.
    void still() override {}
};

/// Covers the app while it is in the background, so that the app switcher shows nothing of the record.
void coverWhenLeft();

/// Whether the system asks for no motion.
[[nodiscard]] bool stillWanted();

/// Keeps the screen on during a session. Makes prompts audible despite the silent switch and other sound.
class AppleWakeGuard : public ports::WakeGuard {
public:
    void keepAwake(bool on) override;
};

} // namespace firstdew::iosside
