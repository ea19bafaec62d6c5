#pragma once

#include "ports/Haptics.h"
#include "ports/Notifier.h"
#include "ports/Opener.h"
#include "ports/SessionNotice.h"
#include "ports/Sharer.h"
#include "ports/Voice.h"
#include "ports/WakeGuard.h"

#include <iostream>

namespace firstdew::ports {

/// Where a system has no such thing: does nothing and says so in the log, once for each call.
class AbsentVoice final : public Voice {
public:
    void say(const std::string& prompt) override { std::clog << "firstdew: no voice here for " << prompt << '\n'; }
    void tone(const std::string& name) override { std::clog << "firstdew: no tones here for " << name << '\n'; }
    void alarm(const std::string& prompt) override
    {
        std::clog << "firstdew: no alarm sound here for " << prompt << '\n';
    }
    void hush() override {}
};

class AbsentWakeGuard final : public WakeGuard {
public:
    void keepAwake(bool on) override
    {
        if (on)
            std::clog << "firstdew: the screen cannot be kept on here\n";
    }
};

class AbsentSharer final : public Sharer {
public:
    bool share(const std::string&, const std::string& mimeType) override
    {
        std::clog << "firstdew: nothing here takes " << mimeType << '\n';
        return false;
    }
};

/// Says so once: a session would call it at every step.
class AbsentHaptics final : public Haptics {
public:
    [[nodiscard]] bool present() const override { return false; }
    void pulse() override { say(); }
    void alarm() override { say(); }
    void still() override {}

private:
    void say()
    {
        if (!m_said)
            std::clog << "firstdew: nothing vibrates here\n";
        m_said = true;
    }
    bool m_said = false;
};

class AbsentOpener final : public Opener {
public:
    bool open(const std::string& path) override
    {
        std::clog << "firstdew: nothing here shows " << path << '\n';
        return false;
    }
};

/// Says so once for each session.
class AbsentSessionNotice final : public SessionNotice {
public:
    void show(const SessionStep&) override
    {
        if (!m_said)
            std::clog << "firstdew: the running session is shown by the app alone here\n";
        m_said = true;
    }
    void over() override { m_said = false; }

private:
    bool m_said = false;
};

class AbsentNotifier final : public Notifier {
public:
    void show(const std::vector<Notice>& due, const Standing&) override
    {
        std::clog << "firstdew: " << due.size() << " reminders due, no notices here\n";
    }
};

} // namespace firstdew::ports
