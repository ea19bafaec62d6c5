#pragma once

#include "protocol/Script.h"
#include "situation/Assess.h"
#include "situation/Reminders.h"

#include <QDate>
#include <QString>

#include <map>
#include <string>

// The person's words for what core says in enumerations and numbers; screens, notices and papers share them.
namespace firstdew::words
{

using namespace facts;

[[nodiscard]] QDate toQDate(LocalDate date);
[[nodiscard]] LocalDate fromQDate(QDate date);
/// "5 March", with the year where it is not that of `today`.
[[nodiscard]] QString dayAndMonth(LocalDate date, LocalDate today);
/// "today", "tomorrow", "yesterday", or weekday with day and month.
[[nodiscard]] QString nearDay(LocalDate date, LocalDate today);

[[nodiscard]] QString siteName(DiarySite site);
[[nodiscard]] QString siteName(Site site);
/// As it stands within a sentence: "hands".
[[nodiscard]] QString siteWord(DiarySite site);
[[nodiscard]] QString levelName(Level level);
[[nodiscard]] QString circumstanceName(Circumstance circumstance);
[[nodiscard]] QString waveformName(Waveform waveform);
[[nodiscard]] QString sideName(Side side);
[[nodiscard]] QString wayName(WayOfWorking way);
[[nodiscard]] QString wayHint(WayOfWorking way);
[[nodiscard]] QString comfortName(Comfort comfort);
[[nodiscard]] QString skinName(SkinFinding finding);
[[nodiscard]] QString stageName(situation::Stage stage);
[[nodiscard]] QString templateName(CourseTemplate plan);
[[nodiscard]] QString screeningQuestion(ScreeningRow row);
[[nodiscard]] QString responseName(protocol::Response response);
[[nodiscard]] QString limitSource(protocol::LimitRow row, const QString& prescriber);

/// What to do now, in a few words: "Top up your hands today".
[[nodiscard]] QString headline(const situation::SiteSituation& site, LocalDate today);
/// One sentence for one reason; empty for a reason that has none of its own.
[[nodiscard]] QString reasonSentence(const situation::Reason& reason, const situation::SiteSituation& site, LocalDate today);

[[nodiscard]] QString reminderTitle(const situation::Reminder& reminder);
[[nodiscard]] QString reminderText(const situation::Reminder& reminder);

/// The words of a system's own parts of a notice, by the ids that platform/android knows.
[[nodiscard]] std::map<std::string, std::string> noticeWords();

/// What to do in a step of the running session, in one sentence.
[[nodiscard]] QString stepSentence(const protocol::Step& step, Site site, PolaritySwap swap, WayOfWorking way);
[[nodiscard]] QString stepName(const protocol::Step& step);

/// The cautions everybody is shown.
[[nodiscard]] QStringList cautions();

} // namespace firstdew::words
