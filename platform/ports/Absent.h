#pragma once

#include "ports/Announcer.h"
#include "ports/ClockFormat.h"
#include "ports/CodeCamera.h"
#include "ports/FileChooser.h"
#include "ports/Haptics.h"
#include "ports/Notifier.h"
#include "ports/Opener.h"
#include "ports/OwnerCheck.h"
#include "ports/SafeArea.h"
#include "ports/SessionNotice.h"
#include "ports/Sharer.h"
#include "ports/Voice.h"
#include "ports/WakeGuard.h"

#include <iostream>

namespace firstdew::ports {

/// Stand-ins for what a system lacks. They do nothing and log each call.
class AbsentVoice final : public Voice {
public:
    void say(const std::string& prompt) override
    {
        std::clog << "firstdew: this system has no voice for " << prompt << '\n';
    }
    void tone(const std::string& name) override
    {
        std::clog << "firstdew: this system has no tones for " << name << '\n';
    }
    void alarm(const std::string& prompt) override
    {
        std::clog << "firstdew: this system has no alarm sound for " << prompt << '\n';
    }
    void hush() override {}
};

/// Nobody listens, so nobody is to be told of that.
class AbsentAnnouncer final : public Announcer {
public:
    [[nodiscard]] bool listens() const override { return false; }
    void announce(const std::string&, Urgency) override {}
    void page(const std::string&) override {}
};

class AbsentWakeGuard final : public WakeGuard {
public:
    void keepAwake(bool on) override
    {
        if (on)
            std::clog << "firstdew: this system cannot keep the screen on\n";
    }
};

class AbsentSharer final : public Sharer {
public:
    bool share(const std::string&, const std::string& mimeType) override
    {
        std::clog << "firstdew: this system cannot share " << mimeType << '\n';
        return false;
    }
};

/// Logs once, because a session calls it at every step.
class AbsentHaptics final : public Haptics {
public:
    [[nodiscard]] bool present() const override { return false; }
    void pulse() override { say(); }
    void tick() override {} // nobody misses it
    void alarm() override { say(); }
    void still() override {}

private:
    void say()
    {
        if (!m_said)
            std::clog << "firstdew: this system cannot vibrate\n";
        m_said = true;
    }
    bool m_said = false;
};

/// Nothing offers a camera where there is none.
class AbsentCodeCamera final : public CodeCamera {
public:
    [[nodiscard]] bool present() const override { return false; }
    void start(std::function<void(const Picture&)>, std::function<void()> failed) override { failed(); }
    void stop() override {}
};

/// A device without a lock. Nothing offers an app lock there.
class AbsentOwnerCheck final : public OwnerCheck {
public:
    [[nodiscard]] bool available() const override { return false; }
    void ask(const std::string&, Asking asking) override { asking.done(Verdict::Unable); }
};

class AbsentOpener final : public Opener {
public:
    bool open(const std::string& path) override
    {
        std::clog << "firstdew: this system cannot show " << path << '\n';
        return false;
    }
};

class AbsentFileChooser final : public FileChooser {
public:
    bool choose(const std::string&, const std::string& ending, Chosen) override
    {
        std::clog << "firstdew: this system has no chooser for files that end in " << ending << '\n';
        return false;
    }
    bool save(const std::string&, std::vector<OutFile>, Saved) override
    {
        std::clog << "firstdew: this system has no chooser for a place to save at\n";
        return false;
    }
};

/// Logs once for each session.
class AbsentSessionNotice final : public SessionNotice {
public:
    void show(const SessionStep&) override
    {
        if (!m_said)
            std::clog << "firstdew: this system shows the running session only in the app\n";
        m_said = true;
    }
    void over() override { m_said = false; }
    void onStop(std::function<void()>) override {}

private:
    bool m_said = false;
};

/// A window that has all of its room to itself.
class AbsentSafeArea final : public SafeArea {
public:
    [[nodiscard]] Insets insets() const override { return {}; }
    void onChange(std::function<void()>) override {}
};

class AbsentNotifier final : public Notifier {
public:
    void show(const std::vector<Notice>& due, const Standing&) override
    {
        std::clog << "firstdew: " << due.size() << " reminders due, but this system has no notices\n";
    }
};

} // namespace firstdew::ports
