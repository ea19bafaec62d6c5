#pragma once

#include "outlook/DrySpells.h"
#include "protocol/Script.h"
#include "situation/Assess.h"
#include "situation/Reminders.h"
#include "words/Names.h"

#include <QStringList>

#include <map>
#include <string>

// Sentences for what core says in enumerations and numbers; screens, notices and papers share them.
namespace firstdew::words {

/// A place in the bottom bar: today, bath, diary or plan.
[[nodiscard]] QString placeName(const QString& place);
/// What to do now, in a few words.
[[nodiscard]] QString headline(const situation::SiteSituation& site);
/// One sentence or two for one reason.
[[nodiscard]] QString reasonSentence(const situation::Reason& reason, LocalDate today);

/// How long this person's dry spells last.
[[nodiscard]] QString drySpellSentence(const outlook::DrySpells& spells);
/// The chance that dampness has begun, and what today's report changed of it.
[[nodiscard]] QString reportSentence(const outlook::DrySpells& spells);

[[nodiscard]] QString reminderTitle(const situation::Reminder& reminder);
[[nodiscard]] QString reminderText(const situation::Reminder& reminder);

/// The words of a system's own parts of a notice, by the ids that platform/android knows.
[[nodiscard]] std::map<std::string, std::string> noticeWords();

/// What to do in a step of the running session, in one sentence.
[[nodiscard]] QString stepSentence(const protocol::Step& step, const protocol::ScriptRequest& request);
[[nodiscard]] QString stepName(const protocol::Step& step);

/// The cautions everybody is shown.
[[nodiscard]] QStringList cautions();

} // namespace firstdew::words
