#pragma once

#include "facts/Payloads.h"
#include "protocol/Limits.h"
#include "protocol/Response.h"
#include "situation/Assess.h"
#include "words/Quantity.h"

#include <QDate>
#include <QLocale>
#include <QString>

// The person's words for tokens, numbers and dates; screens, notices and papers share them.
namespace firstdew::words {

using namespace facts;

/// The languages the program speaks, as codes of their locales, with a region where it matters: de, pt_BR.
[[nodiscard]] QStringList languages();
/// What a language calls itself.
[[nodiscard]] QString languageName(const QString& language);
/// The one of them that is nearest to that locale: its own, be it of another region, or else English.
[[nodiscard]] QString languageLike(const QLocale& locale);
/// How that language writes numbers and dates; the system's own habits where it speaks the same language. Digits are
/// always those printed on machines and meters, in Arabic too.
[[nodiscard]] QLocale localeFor(const QString& language);

/// How the hours of the day are counted.
enum class Hours { AsLocale, Twelve, TwentyFour };
/// Counts the hours so from now on, in every text. AsLocale, the start, is what the system's locale does.
void countHours(Hours hours);
/// Whether that locale counts them to twelve.
[[nodiscard]] bool countsToTwelve(const QLocale& locale);
/// A time of the day, "19:30" or "7:30 PM". Every time that is shown or said in a notice comes from here.
[[nodiscard]] QString clockTime(QTime time);

/// The day on which a week begins: where the phone speaks the language that is shown, the phone's; else that
/// language's.
[[nodiscard]] Qt::DayOfWeek firstWeekday(const QLocale& shown, const QLocale& phone);
[[nodiscard]] Qt::DayOfWeek firstWeekday();

[[nodiscard]] QDate toQDate(LocalDate date);
/// "today", "tomorrow", "yesterday", or day and month, with the year where it is not that of `today`.
[[nodiscard]] QString nearDay(LocalDate date, LocalDate today);
/// "5 March", with the year where it is not that of `today`.
[[nodiscard]] QString dayAndMonth(LocalDate date, LocalDate today);
/// "Thursday, 5 March".
[[nodiscard]] QString fullDay(LocalDate date);
/// "5 Mar".
[[nodiscard]] QString shortDay(LocalDate date);
/// "5 Mar 2026".
[[nodiscard]] QString shortDayOfYear(LocalDate date);
/// "5 March 2026".
[[nodiscard]] QString dayOfYear(LocalDate date);
[[nodiscard]] QString number(double value, int decimals = 0);
/// "hands, feet", with the comma of the language.
[[nodiscard]] QString listed(const QStringList& parts);
/// A name of ours as it goes on a sentence, after a colon or a comma: with a small letter where the language has one.
[[nodiscard]] QString within(QString name);
/// "Hands: clammy".
[[nodiscard]] QString pair(const QString& what, const QString& says);
/// What a person wrote, kept in its own direction within a sentence of another.
[[nodiscard]] QString asWritten(const std::string& text);

[[nodiscard]] QString siteName(DiarySite site);
[[nodiscard]] QString siteName(Site site);
/// "Hands, feet".
[[nodiscard]] QString siteNames(const std::vector<Site>& sites);
/// What one session at the site is called.
[[nodiscard]] QString bathName(Site site);
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
/// What else dries the skin: "Botulinum".
[[nodiscard]] QString otherKindName(OtherKind what);
/// The same with its name and its days: "Tablets (invented), 5 March 2026 to 1 April 2026".
[[nodiscard]] QString otherTreatmentLine(const OtherTreatment& other);
[[nodiscard]] QString responseName(protocol::Response response);
/// The safety question, to be answered with yes or no.
[[nodiscard]] QString screeningQuestion(ScreeningRow row);
/// The same, asked of the adult about a child of that name; an empty name reads "the child".
[[nodiscard]] QString screeningQuestionAbout(ScreeningRow row, const std::string& child);
/// The same in few words, as a part of a sentence: "a powered implant".
[[nodiscard]] QString screeningShort(ScreeningRow row);
/// Who gave a care sheet: the trade's two words for it, or a name as it was written.
[[nodiscard]] QString giverName(const std::string& who);
/// Where a limit comes from.
[[nodiscard]] QString limitSource(protocol::LimitRow row, const std::string& giver);

} // namespace firstdew::words
