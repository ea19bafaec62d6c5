#include "words/Quantity.h"

#include "words/Names.h"

#include <QCoreApplication>
#include <cmath>

namespace firstdew::words {

namespace {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

QString pattern(Unit unit)
{
    switch (unit) {
    case Unit::Milliamps: return Words::tr("%1 mA");
    case Unit::MilliampMinutes: return Words::tr("%1 mA·min");
    case Unit::Minutes: return Words::tr("%1 min");
    case Unit::Seconds: return Words::tr("%1 s");
    case Unit::Milligrams: return Words::tr("%1 mg");
    case Unit::Millilitres: return Words::tr("%1 ml");
    case Unit::SquareCentimetres: return Words::tr("%1 cm²");
    case Unit::Percent: return Words::tr("%1%");
    }
    return {};
}

} // namespace

QString quantity(const QString& number, Unit unit)
{
    return pattern(unit).replace(QLatin1Char(' '), QChar(QChar::Nbsp)).arg(number);
}

QString quantity(double value, Unit unit, int decimals) { return quantity(number(value, decimals), unit); }

QString milliamps(double mA) { return quantity(mA, Unit::Milliamps, std::abs(mA - std::round(mA)) < 0.05 ? 0 : 1); }

QString minutes(int count) { return quantity(count, Unit::Minutes); }

QString percent(double share) { return quantity(std::round(100 * share), Unit::Percent); }

} // namespace firstdew::words
