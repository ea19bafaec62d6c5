#include "Phrases.h"

#include "Edge.h"
#include "Store.h"
#include "Tokens.h"
#include "theme/Theme.h"
#include "words/Drawings.h"
#include "words/Sentences.h"

#include <QFontMetricsF>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <limits>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

/// The name of a value by the function that knows it in core's terms; empty for a number that is no value.
template <class Shown>
QString named(Shown value, QString (*name)(typename ui::StandsFor<Shown>::Type))
{
    const auto known = ui::core(value);
    return known ? name(*known) : QString();
}

QString written(int day, QString (*write)(LocalDate)) { return day == 0 ? QString() : write(LocalDate(day)); }

} // namespace

qreal Phrases::widestLevel(qreal size, int weight) const
{
    const QFontMetricsF metrics(Theme::font(size, weight));
    qreal widest = 0;
    for (const auto l : allOf<Level>())
        widest = std::max(widest, metrics.horizontalAdvance(words::levelName(l)));
    return widest;
}

QList<ui::Level::Value> Phrases::levels() const { return ui::everyOne<ui::Level::Value>(); }
QList<ui::Site::Value> Phrases::sites() const { return ui::everyOne<ui::Site::Value>(); }
QList<ui::Circumstance::Value> Phrases::circumstances() const { return ui::everyOne<ui::Circumstance::Value>(); }
QList<ui::SkinFinding::Value> Phrases::skinFindings() const { return ui::everyOne<ui::SkinFinding::Value>(); }
QList<ui::Comfort::Value> Phrases::comforts() const { return ui::everyOne<ui::Comfort::Value>(); }
QList<ui::Weekday::Value> Phrases::weekdays() const
{
    auto days = ui::everyOne<ui::Weekday::Value>();
    std::rotate(days.begin(), days.begin() + (words::firstWeekday() - Qt::Monday), days.end());
    return days;
}
QList<ui::OtherKind::Value> Phrases::otherKinds() const { return ui::everyOne<ui::OtherKind::Value>(); }
QStringList Phrases::languages() const { return words::languages(); }
QString Phrases::languageName(const QString& language) const { return words::languageName(language); }

QString Phrases::place(ui::Place::Value place) const { return words::placeName(text(tokenOf(kPlaceTokens, place))); }
QString Phrases::site(ui::DiarySite::Value site) const { return named(site, words::siteName); }
QString Phrases::treated(ui::Site::Value site) const { return named(site, words::siteName); }
QString Phrases::bath(ui::Site::Value site) const { return named(site, words::bathName); }
QString Phrases::level(ui::Level::Value level) const { return named(level, words::levelName); }

QString Phrases::drawing(ui::Subject::Value subject) const { return named(subject, words::drawingText); }

QString Phrases::siteIs(ui::DiarySite::Value site, ui::Level::Value level) const
{
    return pair(this->site(site), this->level(level));
}

QString Phrases::pair(const QString& what, const QString& says) { return words::pair(what, says); }
QString Phrases::within(const QString& name) { return words::within(name); }

QString Phrases::circumstance(ui::Circumstance::Value circumstance) const
{
    return named(circumstance, words::circumstanceName);
}

QString Phrases::otherKind(ui::OtherKind::Value what) const { return named(what, words::otherKindName); }

QString Phrases::waveform(ui::Waveform::Value waveform) const { return named(waveform, words::waveformName); }
QString Phrases::stage(ui::Stage::Value stage) const { return named(stage, words::stageName); }
QString Phrases::skin(ui::SkinFinding::Value finding) const { return named(finding, words::skinName); }
QString Phrases::comfort(ui::Comfort::Value comfort) const { return named(comfort, words::comfortName); }
QString Phrases::course(ui::CourseTemplate::Value plan) const { return named(plan, words::templateName); }
QString Phrases::screeningShort(ui::ScreeningRow::Value row) const { return named(row, words::screeningShort); }

QString Phrases::weekday(ui::Weekday::Value day) const
{
    return QLocale().dayName(static_cast<int>(day) + 1, QLocale::ShortFormat);
}

QStringList Phrases::cautions() const { return words::cautions(); }

QString Phrases::dayLong(int day) const
{
    return day == 0 ? QString() : words::nearDay(LocalDate(day), m_store.situation().today);
}

QString Phrases::dayFull(int day) const { return written(day, words::fullDay); }
QString Phrases::dayYear(int day) const { return written(day, words::dayOfYear); }
QString Phrases::dayShort(int day) const { return written(day, words::shortDay); }

QString Phrases::dayNumber(int day) const
{
    return day == 0 ? QString() : QLocale().toString(words::toQDate(LocalDate(day)), QStringLiteral("d"));
}

QString Phrases::asWritten(const QString& text) const { return words::asWritten(text.toStdString()); }

QString Phrases::clock(int minutes) const { return words::clockTime(QTime(minutes / 60 % 24, minutes % 60)); }

QString Phrases::milliamps(double mA) const { return words::milliamps(mA); }
QString Phrases::percent(double share) const { return words::percent(share); }
QString Phrases::milligrams(double value, int decimals) const
{
    return words::quantity(value, words::Unit::Milligrams, decimals);
}
QString Phrases::minutes(double value) const { return words::quantity(shortNumber(value), words::Unit::Minutes); }
QString Phrases::listed(const QStringList& parts) const { return words::listed(parts); }
int Phrases::firstWeekday() const { return words::firstWeekday() % 7; }
QString Phrases::number(double value, int decimals) const { return words::number(value, decimals); }

QString Phrases::shortNumber(double value) const
{
    const double tenths = std::round(value * 10); // a third of something is hardly ever whole
    return words::number(value, std::fmod(tenths, 10) == 0 ? 0 : 1);
}

QString Phrases::decimalPoint() const { return QLocale().decimalPoint(); }

double Phrases::numberIn(const QString& typed)
{
    QString plain;
    for (const QChar c : typed.trimmed())
        plain += c.digitValue() >= 0                           ? QChar(u'0' + c.digitValue())
                 : c == QLatin1Char(',') || c == QChar(0x066B) ? QLatin1Char('.')
                                                               : c;
    bool good = false;
    const double value = plain.toDouble(&good);
    return good ? value : std::numeric_limits<double>::quiet_NaN();
}

} // namespace firstdew::viewmodels
