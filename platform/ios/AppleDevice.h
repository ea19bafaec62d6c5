#pragma once

#include "ports/Haptics.h"
#include "ports/Opener.h"
#include "ports/Sharer.h"
#include "ports/WakeGuard.h"

namespace firstdew::iosside {

/// The system's share sheet. (What has been checked of it: see AppleNotifier.h.)
class AppleSharer : public ports::Sharer {
public:
    [[nodiscard]] bool share(const std::string& file, const std::string& mimeType) override;
};

/// The system's preview of a file; a folder in its app for files.
class AppleOpener : public ports::Opener {
public:
    [[nodiscard]] bool open(const std::string& path) override;
};

/// The phone's own feedback for a step; its strongest vibration for an alarm.
class AppleHaptics : public ports::Haptics {
public:
    [[nodiscard]] bool present() const override;
    void pulse() override;
    void alarm() override;
    /// One vibration cannot be ended; it lasts less than a second.
    void still() override {}
};

/// Covers the app while it is not in front, so that the switcher's picture shows nothing of the record.
void coverWhenLeft();

/// Keeps the screen on while a session runs, and lets prompts be heard over the silent switch and over other sound.
class AppleWakeGuard : public ports::WakeGuard {
public:
    void keepAwake(bool on) override;
};

} // namespace firstdew::iosside
