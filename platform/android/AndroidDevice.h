#pragma once

#include "android/JavaSide.h"
#include "ports/Announcer.h"
#include "ports/ClipMaker.h"
#include "ports/ClockFormat.h"
#include "ports/Haptics.h"
#include "ports/Opener.h"
#include "ports/SafeArea.h"
#include "ports/SessionNotice.h"
#include "ports/Sharer.h"
#include "ports/WakeGuard.h"

#include <chrono>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace firstdew::androidside {

/// Opens the system's share sheet. A provider gives access to that one file only.
class AndroidSharer : public ports::Sharer {
public:
    explicit AndroidSharer(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool share(const std::string& file, const std::string& mimeType) override;

private:
    const JavaSide& m_java;
};

/// Opens a file in the app for its type, through the same provider. Android has no app that shows folders.
class AndroidOpener : public ports::Opener {
public:
    explicit AndroidOpener(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool open(const std::string& path) override;

private:
    const JavaSide& m_java;
};

/// The phone's vibration motor. A failed call is only logged, because a session can continue without vibration.
class AndroidHaptics : public ports::Haptics {
public:
    explicit AndroidHaptics(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool present() const override;
    void pulse() override;
    void tick() override;
    void alarm() override;
    void still() override;

private:
    /// Alternating pauses and vibrations in milliseconds. An empty list ends the vibration.
    void shake(const std::vector<int>& timings);

    const JavaSide& m_java;
};

/// The screen reader of the phone.
class AndroidAnnouncer : public ports::Announcer {
public:
    explicit AndroidAnnouncer(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] bool listens() const override;
    /// Android has no way to let an announcement wait or pass others: the screen reader decides.
    void announce(const std::string& text, Urgency urgency) override;
    void page(const std::string& title) override { announce(title, Urgency::InTurn); }

private:
    const JavaSide& m_java;
};

/// Keeps the screen on. Asks other programs to play softly meanwhile, so that the prompts are heard.
class AndroidWakeGuard : public ports::WakeGuard {
public:
    explicit AndroidWakeGuard(const JavaSide& java) : m_java(java) {}
    void keepAwake(bool on) override;

private:
    const JavaSide& m_java;
};

/// The foreground notification of a running session, with its countdown and the button that stops it.
class BathNotice : public ports::SessionNotice {
public:
    explicit BathNotice(const JavaSide& java) : m_java(java) {}
    void show(const ports::SessionStep& step) override;
    void over() override;
    void alive() override;
    void onStop(std::function<void()> stop) override { m_stop = std::move(stop); }
    /// Call on the app's thread when Java says "stop".
    void stopPressed() const;

private:
    const JavaSide& m_java;
    std::function<void()> m_stop;
    std::optional<std::chrono::steady_clock::time_point> m_told; ///< that the app leads
};

/// The phone's own voice, into files.
class AndroidClipMaker : public ports::ClipMaker {
public:
    explicit AndroidClipMaker(const JavaSide& java) : m_java(java) {}
    void speak(const std::string& language, const std::string& text, const std::string& file,
               std::function<void(bool)> answer) override;
    void drop() override;
    /// Call on the app's thread when Java says "spoken" or "unspoken".
    void answered(bool written);

private:
    const JavaSide& m_java;
    std::function<void(bool)> m_answer;
};

/// What notch and bars take of the app's view.
class AndroidSafeArea : public ports::SafeArea {
public:
    explicit AndroidSafeArea(const JavaSide& java) : m_java(java) {}
    [[nodiscard]] ports::Insets insets() const override;
    void onChange(std::function<void()> changed) override { m_changed = std::move(changed); }
    /// Call on the app's thread when Java says "insets".
    void look() const;

private:
    const JavaSide& m_java;
    std::function<void()> m_changed;
};

/// The phone's setting "24-hour format".
class AndroidClockFormat : public ports::ClockFormat {
public:
    explicit AndroidClockFormat(const JavaSide& java) : m_java(java) { m_hours = asked(); }
    [[nodiscard]] ports::Hours hours() const override { return m_hours; }
    void onChange(std::function<void()> changed) override { m_changed = std::move(changed); }
    /// Call when the app is in front again.
    void look();

private:
    [[nodiscard]] ports::Hours asked() const;

    const JavaSide& m_java;
    ports::Hours m_hours = ports::Hours::AsLocale;
    std::function<void()> m_changed;
};

} // namespace firstdew::androidside
