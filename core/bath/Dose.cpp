#include "bath/Dose.h"

namespace firstdew::bath
{

MilliampMinutes chargeOf(std::span<const MeterReading> readings)
{
    double sum = 0;
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const MeterReading& a = readings[i - 1];
        const MeterReading& b = readings[i];
        if (a.phase == b.phase && b.atMs > a.atMs)
            sum += (a.current.mA + b.current.mA) / 2 * static_cast<double>(b.atMs - a.atMs) / 60000.0;
    }
    return {sum};
}

} // namespace firstdew::bath
