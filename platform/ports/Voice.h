#pragma once

#include <functional>
#include <string>

namespace firstdew::ports {

/// How the app speaks: the person's choice in Plan.
struct VoiceChoice {
    bool voice = true;
    bool tones = true;
    /// If not empty: use the device's own voice for that language, if there is one, instead of the recorded voice.
    std::string language{};
    /// The text of the prompt of that id in that language.
    std::function<std::string(const std::string&)> text{};
};

/// Speaks prompts and sounds tones by their id (assets/voice/prompts.json, assets/sounds). One at a time, in order.
class Voice {
public:
    virtual ~Voice() = default;
    virtual void choose(const VoiceChoice&) {}
    /// Asks the device for a voice of its own for that language. Calls `answer` within some seconds.
    virtual void ask(const std::string&, std::function<void(bool)> answer) { answer(false); }
    /// Loads everything, so that the first prompt is as prompt as the last. Takes a moment; a session calls it before
    /// it begins. Returns false if there is no output to be heard by: no alarm would be heard, and no session may
    /// begin.
    [[nodiscard]] virtual bool prepare() { return true; }
    /// Calls `tell` with true when sound can no longer be heard, and with false when it can be heard again. Until then
    /// the voice tries again every second, unless it is hushed.
    virtual void onSilence(std::function<void(bool silent)>) {}
    /// Adds a prompt to what is still to be said. One that would begin more than a few seconds late is dropped.
    virtual void say(const std::string& prompt) = 0;
    /// A tone, in the same queue.
    virtual void tone(const std::string& name) = 0;
    /// Cuts in at once and drops what was waiting.
    virtual void alarm(const std::string& prompt) = 0;
    /// Drops everything and is silent.
    virtual void hush() = 0;
};

} // namespace firstdew::ports
