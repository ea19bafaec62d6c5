#include "outlook/UsualDays.h"

#include <algorithm>
#include <cmath>

namespace firstdew::outlook {

namespace {

UsualDays wholeDays(double from, double median, double to)
{
    const auto whole = [](double days, int least) { return std::max(least, static_cast<int>(std::lround(days))); };
    UsualDays out;
    out.from = whole(from, 1);
    out.median = whole(median, out.from);
    out.to = whole(to, out.median);
    return out;
}

} // namespace

bool usualIsKnown(const Forecast& forecast) { return forecast.learned - forecast.censored >= kSpellsThatTell; }

std::optional<Shorter> shorterToTell(const Forecast& forecast)
{
    const auto& change = forecast.change;
    if (!change || !change->medianBefore)
        return std::nullopt;
    const auto days = [](double median) { return std::max(1, static_cast<int>(std::lround(median))); };
    const int before = days(*change->medianBefore);
    const int now = days(change->medianSince);
    return now < before ? std::optional(Shorter{change->since, before, now}) : std::nullopt;
}

UsualDays usualDays(const Forecast& forecast)
{
    return wholeDays(forecast.usualFrom, forecast.usualMedian, forecast.usualTo);
}

UsualDays usualDays(const DrySpells& spells) { return wholeDays(spells.usual[0], spells.usual[2], spells.usual[4]); }

} // namespace firstdew::outlook
