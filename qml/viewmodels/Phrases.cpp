#include "Phrases.h"

#include "Store.h"
#include "theme/Theme.h"
#include "words/Sentences.h"

#include <QFontMetricsF>
#include <QLocale>
#include <algorithm>
#include <limits>

namespace firstdew::viewmodels {

using namespace facts;

namespace {

/// The word of a token by the function that knows the value; empty for an unknown token.
template <class E>
QString named(const QString& token, QString (*name)(E))
{
    const auto value = valueOf<E>(token);
    return value ? name(*value) : QString();
}

template <class E>
QStringList allTokens()
{
    QStringList all;
    for (const auto w : facts::Words<E>::list)
        all.append(QString::fromUtf8(w.data(), static_cast<qsizetype>(w.size())));
    return all;
}

std::optional<LocalDate> dateOf(const QString& iso) { return LocalDate::parse(iso.toStdString()); }

QString written(const QString& iso, const QString& format)
{
    const auto day = dateOf(iso);
    return day ? QLocale().toString(words::toQDate(*day), format) : QString();
}

} // namespace

qreal Phrases::widestLevel(qreal size, int weight) const
{
    const QFontMetricsF metrics(Theme::font(size, weight));
    qreal widest = 0;
    for (const auto l : facts::allOf<facts::Level>())
        widest = std::max(widest, metrics.horizontalAdvance(words::levelName(l)));
    return widest;
}

QStringList Phrases::levels() const { return allTokens<Level>(); }
QStringList Phrases::sites() const { return allTokens<Site>(); }
QStringList Phrases::circumstances() const { return allTokens<Circumstance>(); }
QStringList Phrases::skinFindings() const { return allTokens<SkinFinding>(); }
QStringList Phrases::weekdays() const { return allTokens<Weekday>(); }
QStringList Phrases::languages() const { return words::languages(); }
QString Phrases::languageName(const QString& language) const { return words::languageName(language); }

QString Phrases::place(const QString& place) const { return words::placeName(place); }

QString Phrases::site(const QString& token) const
{
    const QString name = named<DiarySite>(token, words::siteName);
    return name.isEmpty() ? treated(token) : name;
}

QString Phrases::treated(const QString& token) const { return named<Site>(token, words::siteName); }
QString Phrases::bath(const QString& token) const { return named<Site>(token, words::bathName); }
QString Phrases::level(const QString& token) const { return named<Level>(token, words::levelName); }

QString Phrases::siteIs(const QString& site, const QString& level) const
{
    return site.isEmpty() ? this->level(level) : QStringLiteral("%1: %2").arg(this->site(site), this->level(level));
}

QString Phrases::circumstance(const QString& token) const { return named<Circumstance>(token, words::circumstanceName); }
QString Phrases::waveform(const QString& token) const { return named<Waveform>(token, words::waveformName); }
QString Phrases::stage(const QString& token) const { return named<situation::Stage>(token, words::stageName); }
QString Phrases::skin(const QString& token) const { return named<SkinFinding>(token, words::skinName); }
QString Phrases::comfort(const QString& token) const { return named<Comfort>(token, words::comfortName); }
QString Phrases::course(const QString& token) const { return named<CourseTemplate>(token, words::templateName); }
QString Phrases::screening(const QString& token) const { return named<ScreeningRow>(token, words::screeningQuestion); }
QString Phrases::screeningShort(const QString& token) const { return named<ScreeningRow>(token, words::screeningShort); }

QString Phrases::weekday(const QString& token) const
{
    const auto day = valueOf<Weekday>(token);
    return day ? QLocale().dayName(static_cast<int>(*day) + 1, QLocale::ShortFormat) : QString();
}

QStringList Phrases::cautions() const { return words::cautions(); }

QString Phrases::dayLong(const QString& iso) const
{
    const auto day = dateOf(iso);
    return day ? words::nearDay(*day, Store::instance()->situation().today) : QString();
}

QString Phrases::dayFull(const QString& iso) const
{
    const auto day = dateOf(iso);
    return day ? words::fullDay(*day) : QString();
}

QString Phrases::dayYear(const QString& iso) const
{
    const auto day = dateOf(iso);
    return day ? words::dayOfYear(*day) : QString();
}

QString Phrases::dayNumber(const QString& iso) const { return written(iso, QStringLiteral("d")); }

QString Phrases::dayShort(const QString& iso) const
{
    const auto day = dateOf(iso);
    return day ? words::shortDay(*day) : QString();
}

QString Phrases::asWritten(const QString& text) const { return words::asWritten(text.toStdString()); }

QString Phrases::clock(int minutes) const
{
    return QLocale().toString(QTime(minutes / 60 % 24, minutes % 60), QStringLiteral("HH:mm"));
}

QString Phrases::milliamps(double mA) const { return words::milliamps(mA); }
QString Phrases::percent(double share) const { return words::percent(share); }
QString Phrases::number(double value, int decimals) const { return words::number(value, decimals); }

double Phrases::numberIn(const QString& typed) const
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
