#pragma once

#include <functional>
#include <string>
#include <vector>

namespace firstdew::ports {

/// How the app speaks: the person's settings in Plan.
struct VoiceChoice {
    bool voice = true;
    bool tones = true;
    /// If not empty, the device's own voice for this language replaces the recorded voice, if there is one.
    std::string language{};
    /// Returns the text of a prompt id in that language.
    std::function<std::string(const std::string&)> text{};
    /// The person's language. The recorded voice speaks it, or English where it has no clips and none can be made.
    std::string recorded{};
};

/// A sound of the time ahead.
struct Planned {
    enum class Kind { Tone, Prompt, Alarm };
    long long inMs = 0; ///< on the session's clock
    Kind kind{};
    std::string id; ///< of the tone or prompt; an alarm has its own tone before it
    bool operator==(const Planned&) const = default;
};

/// Who says the prompts in VoiceChoice::recorded.
enum class Says {
    Recorded, ///< the clips that come with the app
    Made,     ///< clips that the device's own voice spoke beforehand and that were found to be heard
    English   ///< the English clips: there are none in that language
};

/// Who says what is planned when its time has come.
enum class Lead {
    App,     ///< the app, by say(), tone() and alarm(): nothing can be planned
    Reserve, ///< the app; what is planned is heard only where the app does not plan anew in time
    Line     ///< the line itself, with or without the app
};

/// Plays prompts and tones by their id (assets/voice/prompts.json, assets/sounds), one at a time and in order.
class Voice {
public:
    virtual ~Voice() = default;
    virtual void choose(const VoiceChoice&) {}
    /// Asks whether the device has its own voice for that language. Calls `answer` within some seconds.
    virtual void ask(const std::string&, std::function<void(bool)> answer) { answer(false); }
    /// Loads everything, so that the first prompt starts without delay. A session calls this before it begins, because
    /// it takes a moment. Returns false if there is no sound output. Then no alarm can be heard and no session may
    /// begin.
    [[nodiscard]] virtual bool prepare() { return true; }
    /// Registers the function to call with true when sound can no longer be heard, and with false when it can be heard
    /// again. In between, the voice tries again every second, unless it is hushed.
    virtual void onSilence(std::function<void(bool silent)>) {}
    [[nodiscard]] virtual Says says() const { return Says::Recorded; }
    /// Whether a session is led with a bed of sound, so that silence tells the person something. Known once prepare()
    /// or ask() has tried.
    [[nodiscard]] virtual bool hasBed() const { return false; }
    /// Registers the function to call when says() or hasBed() has changed.
    virtual void onChange(std::function<void()>) {}
    /// Who would lead now.
    [[nodiscard]] virtual Lead leads() { return Lead::App; }
    /// Plans the time ahead in place of what was planned before, over a soft bed of sound that ends after `endsMs`.
    /// What is being said goes on. Ignored while the app leads.
    virtual void plan(const std::vector<Planned>&, long long /*endsMs*/) {}
    /// No bed and no plan any more; what is being said is said to its end.
    virtual void endPlan() {}
    /// Adds a prompt to the queue. A prompt that would begin more than a few seconds late is dropped.
    virtual void say(const std::string& prompt) = 0;
    /// Adds a tone to the same queue.
    virtual void tone(const std::string& name) = 0;
    /// Plays at once and empties the queue. Without a prompt the tone alone, where a screen reader says the words.
    virtual void alarm(const std::string& prompt) = 0;
    /// Stops and empties the queue.
    virtual void hush() = 0;
};

} // namespace firstdew::ports
