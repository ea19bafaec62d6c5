#include "outlook/UsualDays.h"

#include <algorithm>
#include <cmath>

namespace firstdew::outlook {

UsualDays usualDays(const Forecast& forecast)
{
    const auto whole = [](double days, int least) { return std::max(least, static_cast<int>(std::lround(days))); };
    UsualDays out;
    out.from = whole(forecast.usualFrom, 1);
    out.median = whole(forecast.usualMedian, out.from);
    out.to = whole(forecast.usualTo, out.median);
    return out;
}

} // namespace firstdew::outlook
