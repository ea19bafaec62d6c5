#include "facts/LocalDate.h"

#include <charconv>
#include <chrono>
#include <fmt/format.h>

namespace firstdew::facts {

namespace {

using std::chrono::days;
using std::chrono::sys_days;
using std::chrono::year_month_day;

year_month_day civil(LocalDate d) { return year_month_day{sys_days{days{d.daysSince1970()}}}; }

/// Reads a text that consists of decimal digits only.
std::optional<int> digits(std::string_view text)
{
    int value = 0;
    for (const char c : text) {
        if (c < '0' || c > '9')
            return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

} // namespace

std::optional<LocalDate> LocalDate::of(int year, int month, int day)
{
    if (year < 1 || year > 9999 || month < 1 || month > 12 || day < 1 || day > 31)
        return std::nullopt;
    const year_month_day ymd{std::chrono::year{year}, std::chrono::month{static_cast<unsigned>(month)},
                             std::chrono::day{static_cast<unsigned>(day)}};
    if (!ymd.ok())
        return std::nullopt;
    return LocalDate(static_cast<int>(sys_days{ymd}.time_since_epoch().count()));
}

std::optional<LocalDate> LocalDate::parse(std::string_view iso)
{
    if (iso.size() != 10 || iso[4] != '-' || iso[7] != '-')
        return std::nullopt;
    const auto y = digits(iso.substr(0, 4));
    const auto m = digits(iso.substr(5, 2));
    const auto d = digits(iso.substr(8, 2));
    if (!y || !m || !d)
        return std::nullopt;
    return of(*y, *m, *d);
}

std::string LocalDate::iso() const { return fmt::format("{:04}-{:02}-{:02}", year(), month(), day()); }

int LocalDate::year() const { return static_cast<int>(civil(*this).year()); }
int LocalDate::month() const { return static_cast<int>(static_cast<unsigned>(civil(*this).month())); }
int LocalDate::day() const { return static_cast<int>(static_cast<unsigned>(civil(*this).day())); }

Weekday LocalDate::weekday() const
{
    const std::chrono::weekday wd{sys_days{days{m_days}}};
    return static_cast<Weekday>(wd.iso_encoding() - 1);
}

int ageInYears(LocalDate birth, LocalDate on)
{
    const bool before = on.month() < birth.month() || (on.month() == birth.month() && on.day() < birth.day());
    return on.year() - birth.year() - (before ? 1 : 0);
}

std::optional<MinuteOfDay> MinuteOfDay::parse(std::string_view text)
{
    if (text.size() != 5 || text[2] != ':')
        return std::nullopt;
    const auto h = digits(text.substr(0, 2));
    const auto m = digits(text.substr(3, 2));
    if (!h || !m || *h > 23 || *m > 59)
        return std::nullopt;
    return MinuteOfDay{*h * 60 + *m};
}

std::string MinuteOfDay::text() const { return fmt::format("{:02}:{:02}", minute / 60, minute % 60); }

std::optional<LocalTime> LocalTime::parse(std::string_view iso)
{
    if (iso.size() != 16 || iso[10] != 'T')
        return std::nullopt;
    const auto d = LocalDate::parse(iso.substr(0, 10));
    const auto m = MinuteOfDay::parse(iso.substr(11));
    if (!d || !m)
        return std::nullopt;
    return LocalTime{*d, *m};
}

std::string LocalTime::iso() const { return date.iso() + "T" + at.text(); }

LocalTime LocalTime::plusMinutes(int minutes) const
{
    constexpr int day = 24 * 60;
    const int total = at.minute + minutes;
    const int shift = total >= 0 ? total / day : -((-total + day - 1) / day);
    return {date + shift, {total - shift * day}};
}

} // namespace firstdew::facts
