#include "words/Names.h"

#include <QCoreApplication>
#include <QHash>
#include <QRegularExpression>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

/// One for the program, as its locale is.
Hours& hoursCounted()
{
    static Hours hours = Hours::AsLocale;
    return hours;
}

/// Whether a date has the month before the day there, as in the United States.
bool monthFirst(const QLocale& locale)
{
    const QString order = locale.dateFormat(QLocale::LongFormat).remove(QStringLiteral("dddd"));
    return order.indexOf(QLatin1Char('M')) < order.indexOf(QLatin1Char('d'));
}

/// The translators write a date with the day first; a locale of the same language may have it otherwise.
QString written(LocalDate date, QString format)
{
    static const QRegularExpression dayFirst(QStringLiteral("(?<!d)d (M{3,4})( yyyy)?"));
    if (monthFirst(QLocale()))
        format.replace(dayFirst, QStringLiteral("\\1 d\\2"))
            .replace(QStringLiteral("d yyyy"), QStringLiteral("d, yyyy"));
    // French counts the days of a month, but for the first, which it ranks.
    static const QRegularExpression dayAlone(QStringLiteral("(?<!d)d(?!d)"));
    if (date.day() == 1 && QLocale().language() == QLocale::French)
        format.replace(dayAlone, QStringLiteral("d'er'"));
    return QLocale().toString(toQDate(date), format);
}

/// Languages that go on small after a colon.
bool smallWithin(QLocale::Language language)
{
    return language == QLocale::French || language == QLocale::Spanish || language == QLocale::Portuguese;
}

} // namespace

QStringList languages() { return {"en", "de", "es", "fr", "pt_BR", "ar"}; }

QString languageName(const QString& language)
{
    static const QHash<QString, QString> own{
        {"en", "English"}, {"de", "Deutsch"}, {"es", "Español"}, {"fr", "Français"}, {"pt_BR", "Português (Brasil)"},
        {"ar", "العربية"}};
    return own.value(language, language);
}

QString languageLike(const QLocale& locale)
{
    for (const QString& language : languages())
        if (QLocale(language).language() == locale.language())
            return language;
    return QStringLiteral("en");
}

QLocale localeFor(const QString& language)
{
    const QLocale system = QLocale::system();
    const QLocale asked(language);
    if (system.language() == asked.language() && system.zeroDigit() == QLatin1String("0"))
        return system;
    if (asked.language() == QLocale::Arabic)
        return QLocale(QLocale::Arabic, QLocale::UnitedArabEmirates);
    return asked.language() == QLocale::English ? QLocale(QLocale::English, QLocale::UnitedKingdom) : asked;
}

void countHours(Hours hours) { hoursCounted() = hours; }

bool countsToTwelve(const QLocale& locale)
{
    return locale.timeFormat(QLocale::ShortFormat).contains(QLatin1Char('a'), Qt::CaseInsensitive);
}

QString clockTime(QTime time)
{
    const Hours hours = hoursCounted();
    const bool twelve = hours == Hours::AsLocale ? countsToTwelve(QLocale::system()) : hours == Hours::Twelve;
    return QLocale().toString(time, twelve ? QStringLiteral("h:mm Ap") : QStringLiteral("HH:mm"));
}

Qt::DayOfWeek firstWeekday(const QLocale& shown, const QLocale& phone)
{
    return (phone.language() == shown.language() ? phone : shown).firstDayOfWeek();
}

Qt::DayOfWeek firstWeekday() { return firstWeekday(QLocale(), QLocale::system()); }

QDate toQDate(LocalDate date) { return QDate(date.year(), date.month(), date.day()); }

QString dayAndMonth(LocalDate date, LocalDate today)
{
    return date.year() == today.year() ? written(date, Words::tr("d MMMM", "date format")) : dayOfYear(date);
}

QString nearDay(LocalDate date, LocalDate today)
{
    switch (date - today) {
    case 0: return Words::tr("today");
    case 1: return Words::tr("tomorrow");
    case -1: return Words::tr("yesterday");
    default: return dayAndMonth(date, today);
    }
}

QString fullDay(LocalDate date)
{
    QString day = written(date, Words::tr("dddd, d MMMM", "date format"));
    if (!day.isEmpty())
        day[0] = day[0].toUpper(); // it stands as a heading, in languages too that write weekdays small
    return day;
}

QString shortDay(LocalDate date) { return written(date, Words::tr("d MMM", "date format")); }

QString shortDayOfYear(LocalDate date)
{
    return written(date, Words::tr("d MMM", "date format") + QStringLiteral(" yyyy"));
}

QString dayOfYear(LocalDate date) { return written(date, Words::tr("d MMMM yyyy", "date format")); }

QString number(double value, int decimals) { return QLocale().toString(value, 'f', decimals); }

QString listed(const QStringList& parts) { return parts.join(Words::tr(", ", "between the parts of a list")); }

QString within(QString name)
{
    // A second capital is that of an abbreviation.
    if (smallWithin(QLocale().language()) && !(name.size() > 1 && name[1].isUpper()) && !name.isEmpty())
        name[0] = name[0].toLower();
    return name;
}

QString pair(const QString& what, const QString& says)
{
    return Words::tr("%1: %2", "a name and what belongs to it").arg(what, within(says));
}

QString asWritten(const std::string& text)
{
    constexpr char16_t kFirstStrongIsolate = 0x2068;
    constexpr char16_t kPopIsolate = 0x2069;
    return QChar(kFirstStrongIsolate) + QString::fromStdString(text) + QChar(kPopIsolate);
}

QString siteName(DiarySite site)
{
    switch (site) {
    case DiarySite::Hands: return Words::tr("Hands");
    case DiarySite::Feet: return Words::tr("Feet");
    case DiarySite::Armpits: return Words::tr("Armpits");
    }
    return {};
}

QString siteName(Site site)
{
    switch (site) {
    case Site::Hands: return Words::tr("Both hands");
    case Site::Feet: return Words::tr("Both feet");
    case Site::HandFoot: return Words::tr("One hand with one foot");
    case Site::Armpits: return Words::tr("Armpits");
    }
    return {};
}

QString siteNames(const std::vector<Site>& sites)
{
    QStringList out;
    for (const Site site : sites)
        out << (out.isEmpty() ? siteName(site) : within(siteName(site)));
    return listed(out);
}

QString bathName(Site site)
{
    switch (site) {
    case Site::Hands: return Words::tr("Hand session");
    case Site::Feet: return Words::tr("Foot session");
    case Site::HandFoot: return Words::tr("Hand and foot session");
    case Site::Armpits: return Words::tr("Armpit session");
    }
    return {};
}

QString levelName(Level level)
{
    switch (level) {
    case Level::Dry: return Words::tr("Dry");
    case Level::Clammy: return Words::tr("Clammy");
    case Level::Wet: return Words::tr("Wet");
    case Level::Dripping: return Words::tr("Dripping");
    }
    return {};
}

QString circumstanceName(Circumstance circumstance)
{
    switch (circumstance) {
    case Circumstance::Heat: return Words::tr("Heat");
    case Circumstance::Exertion: return Words::tr("Exertion");
    case Circumstance::Stress: return Words::tr("Stress");
    case Circumstance::Illness: return Words::tr("Illness");
    }
    return {};
}

QString waveformName(Waveform waveform)
{
    return waveform == Waveform::Direct ? Words::tr("Direct current") : Words::tr("Pulsed current");
}

QString sideName(Side side) { return side == Side::Right ? Words::tr("Right side") : Words::tr("Left side"); }

QString wayName(WayOfWorking way)
{
    switch (way) {
    case WayOfWorking::FreeHand: return Words::tr("I have a hand free");
    case WayOfWorking::Helper: return Words::tr("Somebody helps me");
    case WayOfWorking::HandsUnder: return Words::tr("Both hands under water");
    }
    return {};
}

QString wayHint(WayOfWorking way)
{
    switch (way) {
    case WayOfWorking::FreeHand: return Words::tr("You tap each step yourself.");
    case WayOfWorking::Helper: return Words::tr("They stay beside you the whole session, tap and enter the readings.");
    case WayOfWorking::HandsUnder:
        return Words::tr("You raise and lower with the remote. For the swap you take your hands out and tap.");
    }
    return {};
}

QString comfortName(Comfort comfort)
{
    switch (comfort) {
    case Comfort::NothingFelt: return Words::tr("Nothing felt");
    case Comfort::Comfortable: return Words::tr("Comfortable");
    case Comfort::Strong: return Words::tr("Strong");
    case Comfort::Unpleasant: return Words::tr("Unpleasant");
    case Comfort::Painful: return Words::tr("Painful");
    }
    return {};
}

QString skinName(SkinFinding finding)
{
    switch (finding) {
    case SkinFinding::Fine: return Words::tr("Fine");
    case SkinFinding::Redness: return Words::tr("Redness");
    case SkinFinding::Dryness: return Words::tr("Dry skin");
    case SkinFinding::Itch: return Words::tr("Itching");
    case SkinFinding::Blister: return Words::tr("Blister");
    case SkinFinding::Burn: return Words::tr("Burn");
    case SkinFinding::Pain: return Words::tr("Pain");
    }
    return {};
}

QString stageName(situation::Stage stage)
{
    using situation::Stage;
    switch (stage) {
    case Stage::NotStarted: return Words::tr("Not started");
    case Stage::FirstCourse: return Words::tr("First course");
    case Stage::Review: return Words::tr("Review");
    case Stage::KeepingDry: return Words::tr("Keeping dry");
    case Stage::FirstDew: return Words::tr("First dew");
    case Stage::SweatingAgain: return Words::tr("Sweating again");
    case Stage::Paused: return Words::tr("Paused");
    }
    return {};
}

QString templateName(CourseTemplate plan)
{
    switch (plan) {
    case CourseTemplate::Seven: return Words::tr("Seven sessions in four weeks");
    case CourseTemplate::MonWedFri: return Words::tr("Three a week for four weeks");
    case CourseTemplate::Daily: return Words::tr("Five a week for two weeks");
    case CourseTemplate::Prescribed: return Words::tr("By prescription");
    }
    return {};
}

QString otherKindName(OtherKind what)
{
    switch (what) {
    case OtherKind::Botulinum: return Words::tr("Botulinum injections");
    case OtherKind::Tablets: return Words::tr("Tablets");
    case OtherKind::Cream: return Words::tr("Cream or deodorant");
    case OtherKind::Other: return Words::tr("Something else");
    }
    return {};
}

QString otherTreatmentLine(const OtherTreatment& other)
{
    const QString kind = otherKindName(other.what);
    QStringList parts{other.name.empty() ? kind : QStringLiteral("%1 (%2)").arg(kind, asWritten(other.name))};
    for (const DiarySite site : allOf<DiarySite>())
        if (other.sites.contains(site))
            parts << within(siteName(site));
    const QString what = listed(parts);
    return other.until ? Words::tr("%1: %2 to %3", "treatment: first and last day")
                             .arg(what, dayOfYear(other.from), dayOfYear(*other.until))
                       : Words::tr("%1: since %2", "treatment: first day").arg(what, dayOfYear(other.from));
}

QString responseName(protocol::Response response)
{
    switch (response) {
    case protocol::Response::None: return Words::tr("no response");
    case protocol::Response::Good: return Words::tr("good response");
    case protocol::Response::Strong: return Words::tr("strong response");
    }
    return {};
}

QString screeningQuestion(ScreeningRow row)
{
    switch (row) {
    case ScreeningRow::Pregnancy: return Words::tr("Are you pregnant, or might you be?");
    case ScreeningRow::PoweredImplant:
        return Words::tr("Do you have a pacemaker, a defibrillator or any other powered implant?");
    case ScreeningRow::MetalImplant: return Words::tr("Do you have metal in a bone or joint?");
    case ScreeningRow::MetalIud: return Words::tr("Do you have a coil (intrauterine device or system) of any kind?");
    case ScreeningRow::HeartRhythmOrEpilepsy: return Words::tr("Do you have a heart rhythm disorder or epilepsy?");
    case ScreeningRow::TumourOrThrombosis: return Words::tr("Do you have a tumour or a blood clot at present?");
    case ScreeningRow::LossOfSensation:
        return Words::tr("Have you lost feeling in the skin, or do you have a nerve disease where the treatment goes?");
    case ScreeningRow::UnderFive: return Words::tr("Is the person treated under five years old?");
    case ScreeningRow::UnderEighteen: return Words::tr("Is the person treated under eighteen years old?");
    case ScreeningRow::EczemaAtSite: return Words::tr("Is there eczema or inflamed skin where the treatment goes?");
    case ScreeningRow::LargeWound: return Words::tr("Is there a wound too large to cover?");
    case ScreeningRow::FixedBraces: return Words::tr("Do you wear fixed dental braces?");
    }
    return {};
}

QString screeningQuestionAbout(ScreeningRow row, const std::string& child)
{
    const QString name = child.empty() ? Words::tr("the child") : asWritten(child);
    switch (row) {
    case ScreeningRow::Pregnancy: return Words::tr("Could %1 be pregnant?").arg(name);
    case ScreeningRow::PoweredImplant:
        return Words::tr("Does %1 have a pacemaker, a defibrillator or any other powered implant?").arg(name);
    case ScreeningRow::MetalImplant: return Words::tr("Does %1 have metal in a bone or joint?").arg(name);
    case ScreeningRow::MetalIud:
        return Words::tr("Does %1 have a coil (intrauterine device or system) of any kind?").arg(name);
    case ScreeningRow::HeartRhythmOrEpilepsy:
        return Words::tr("Does %1 have a heart rhythm disorder or epilepsy?").arg(name);
    case ScreeningRow::TumourOrThrombosis:
        return Words::tr("Does %1 have a tumour or a blood clot at present?").arg(name);
    case ScreeningRow::LossOfSensation:
        return Words::tr("Has %1 lost feeling in the skin, or is there a nerve disease where the treatment goes?")
            .arg(name);
    case ScreeningRow::UnderFive: return Words::tr("Is %1 under five years old?").arg(name);
    case ScreeningRow::UnderEighteen: return Words::tr("Is %1 under eighteen years old?").arg(name);
    case ScreeningRow::EczemaAtSite:
        return Words::tr("Does %1 have eczema or inflamed skin where the treatment goes?").arg(name);
    case ScreeningRow::LargeWound: return Words::tr("Does %1 have a wound too large to cover?").arg(name);
    case ScreeningRow::FixedBraces: return Words::tr("Does %1 wear fixed dental braces?").arg(name);
    }
    return {};
}

QString screeningShort(ScreeningRow row)
{
    switch (row) {
    case ScreeningRow::Pregnancy: return Words::tr("pregnancy");
    case ScreeningRow::PoweredImplant: return Words::tr("a powered implant");
    case ScreeningRow::MetalImplant: return Words::tr("a metal implant");
    case ScreeningRow::MetalIud: return Words::tr("a coil");
    case ScreeningRow::HeartRhythmOrEpilepsy: return Words::tr("a heart rhythm disorder or epilepsy");
    case ScreeningRow::TumourOrThrombosis: return Words::tr("a tumour or blood clot");
    case ScreeningRow::LossOfSensation: return Words::tr("loss of feeling");
    case ScreeningRow::UnderFive: return Words::tr("an age under five");
    case ScreeningRow::UnderEighteen: return Words::tr("an age under eighteen");
    case ScreeningRow::EczemaAtSite: return Words::tr("eczema or inflamed skin");
    case ScreeningRow::LargeWound: return Words::tr("a large wound");
    case ScreeningRow::FixedBraces: return Words::tr("fixed braces");
    }
    return {};
}

QString giverName(const std::string& who)
{
    if (who.empty() || who == "prescriber")
        return Words::tr("the prescriber");
    return who == "nurse" ? Words::tr("the nurse") : asWritten(who);
}

QString limitSource(protocol::LimitRow row, const std::string& giver)
{
    using protocol::LimitRow;
    switch (row) {
    case LimitRow::AdultDirect:
    case LimitRow::AdultPulsed: return Words::tr("Common practice, adults");
    case LimitRow::ChildDirect: return Words::tr("Common practice, children");
    case LimitRow::ChildPulsed: return Words::tr("Our own cautious choice, children");
    case LimitRow::CareSheet: return Words::tr("Set by %1").arg(giverName(giver));
    case LimitRow::Density: return Words::tr("Lowered for the size of the treated skin");
    case LimitRow::PadUnknown: return Words::tr("Kept low until the size of the pads is entered under Machine and kit");
    case LimitRow::PrescribedWaveform: return Words::tr("%1 prescribed the other current").arg(giverName(giver));
    case LimitRow::ArmpitsPulsedOnly: return Words::tr("Armpits are treated with pulsed current only");
    case LimitRow::MachineLacksWaveform: return Words::tr("Your machine does not have it");
    }
    return {};
}

} // namespace firstdew::words
