#include "words/Announced.h"

#include "words/BathWords.h"
#include "words/Prompts.h"
#include "words/Sentences.h"

#include <QCoreApplication>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

QString saved() { return Words::tr("Saved."); }

/// By the kind of what was recorded. What a session records of itself is told as it happens.
struct SavedName {
    QString operator()(const facts::CheckIn& c) const
    {
        return pair(siteName(c.site), levelName(c.level)) + ". " + saved();
    }
    QString operator()(const facts::Retraction&) const { return Words::tr("Taken back."); }
    QString operator()(const facts::BathPrepared&) const { return {}; }
    QString operator()(const facts::BathEvent&) const { return {}; }
    QString operator()(const facts::Screening&) const { return {}; }
    QString operator()(const facts::Preparation&) const { return {}; }
    QString operator()(const facts::Clearance&) const { return {}; }
    QString operator()(const facts::SkinClearance&) const { return {}; }
    QString operator()(const facts::Preference&) const { return {}; }
    QString operator()(const facts::ReminderHandled&) const { return {}; }
    QString operator()(const facts::SiteUse&) const { return {}; }
    template <class P>
    QString operator()(const P&) const
    {
        return saved();
    }
};

} // namespace

std::optional<Announced> announced(const bath::Effect& effect, const bath::State& state, bool alarmKnown)
{
    using bath::EffectKind;
    const auto some = [](const QString& text, bool atOnce) {
        return text.isEmpty() ? std::nullopt : std::optional(Announced{text, atOnce});
    };
    const QString prompt = effect.prompt ? promptText(*effect.prompt) : QString();
    switch (effect.kind) {
    case EffectKind::Say:
    case EffectKind::AskMeter: return some(prompt, false);
    case EffectKind::Alarm:
        if (alarmKnown)
            return std::nullopt;
        return some(state.lastReading ? prompt + " " + readingName(state.lastReading) + "." : prompt, true);
    case EffectKind::AlarmOff: return some(Words::tr("The alarm is over."), true);
    case EffectKind::StepChanged: return some(phaseName(state), false); // each step has a prompt, which names no phase
    case EffectKind::AskMeanwhile: return some(prompt, true);
    case EffectKind::Interrupted: return some(endSentence(state), false);
    case EffectKind::Completed: return std::nullopt; // the next step says what to do
    }
    return std::nullopt;
}

QString savedName(const facts::Payload& payload) { return std::visit(SavedName{}, payload); }

} // namespace firstdew::words
