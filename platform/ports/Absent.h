#pragma once

#include "ports/Notifier.h"
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
    void alarm(const std::string& prompt) override { std::clog << "firstdew: no alarm sound here for " << prompt << '\n'; }
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

class AbsentNotifier final : public Notifier {
public:
    void show(const std::vector<Notice>& due) override { std::clog << "firstdew: " << due.size() << " reminders due, no notices here\n"; }
};

} // namespace firstdew::ports
