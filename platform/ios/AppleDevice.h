#pragma once

#include "ports/Announcer.h"
#include "ports/ClockFormat.h"
#include "ports/Haptics.h"
#include "ports/Opener.h"
#include "ports/SafeArea.h"
#include "ports/Sharer.h"
#include "ports/WakeGuard.h"

#include <memory>
#include <string>

namespace firstdew::iosside {

/// Opens the system's share sheet. AppleNotifier.h says what was checked.
class AppleSharer : public ports::Sharer {
public:
    [[nodiscard]] bool share(const std::string& file, const std::string& mimeType) override;
};

/// VoiceOver.
class AppleAnnouncer : public ports::Announcer {
public:
    [[nodiscard]] bool listens() const override;
    void announce(const std::string& text, Urgency urgency) override;
    void page(const std::string& title) override;
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
    /// The system leaves it out where the person switched haptics off.
    void tick() override;
    void alarm() override;
    /// Does nothing: iOS cannot end a vibration, which lasts less than a second.
    void still() override {}
};

/// Notch, rounded corners and the home bar. A view without a picture hears when they change.
class AppleSafeArea : public ports::SafeArea {
public:
    [[nodiscard]] ports::Insets insets() const override;
    void onChange(std::function<void()> changed) override;
};

/// The system's setting of the clock, as its own date formats follow it.
class AppleClockFormat : public ports::ClockFormat {
public:
    [[nodiscard]] ports::Hours hours() const override;
    /// Called when the system's locale settings change.
    void onChange(std::function<void()> changed) override;
};

/// Covers the app while it is in the background, so that the app switcher shows nothing of the record.
void coverWhenLeft();

/// Whether the system asks for no motion.
[[nodiscard]] bool stillWanted();

/// Keeps the screen on during a session. Makes prompts audible despite the silent switch and other sound. A soft bed of
/// sound plays on meanwhile: iOS lets an app that plays go on behind a locked screen, and puts one to sleep that is
/// silent between two prompts.
class AppleWakeGuard : public ports::WakeGuard {
public:
    /// `bed`: a sound file whose end goes over into its beginning.
    explicit AppleWakeGuard(const std::string& bed);
    void keepAwake(bool on) override;

private:
    struct Bed;
    std::shared_ptr<Bed> m_bed;
};

} // namespace firstdew::iosside
