#pragma once

#include "facts/LocalDate.h"

#include <array>

namespace firstdew::simulator {

using facts::Instant;
using facts::LocalDate;
using facts::LocalTime;

constexpr long long kMinuteMs = 60'000;
constexpr long long kDayMs = 24 * 60 * kMinuteMs;

/// A time zone: minutes ahead of UTC, and when its clocks go forward (rules as of 2026, from memory).
struct Zone {
    int minutes = 0;
    enum class Summer { None, Europe, America, Australia } summer{};
};
inline constexpr std::array kZones{Zone{60, Zone::Summer::Europe},     Zone{0, Zone::Summer::Europe},
                                   Zone{-300, Zone::Summer::America},  Zone{-480, Zone::Summer::America},
                                   Zone{600, Zone::Summer::Australia}, Zone{330, Zone::Summer::None},
                                   Zone{-600, Zone::Summer::None},     Zone{840, Zone::Summer::None}};

/// The n-th Sunday of a month, from 1; 5 is the last.
inline LocalDate sunday(int year, int month, int n)
{
    LocalDate day = *LocalDate::of(year, month, 1);
    day = day + (6 - static_cast<int>(day.weekday()));
    for (int i = 1; i < n && (day + 7).month() == month; ++i)
        day = day + 7;
    return day;
}

inline bool isSummer(Zone::Summer rule, LocalDate day)
{
    const int y = day.year();
    switch (rule) {
    case Zone::Summer::Europe: return day >= sunday(y, 3, 5) && day < sunday(y, 10, 5);
    case Zone::Summer::America: return day >= sunday(y, 3, 2) && day < sunday(y, 11, 1);
    case Zone::Summer::Australia: return day >= sunday(y, 10, 1) || day < sunday(y, 4, 1);
    case Zone::Summer::None: return false;
    }
    return false;
}

/// The clocks of a phone. `trueMs` is the world's; the phone shows it wrongly and in a zone.
struct Hours {
    long long trueMs = 0;
    long long wrongMs = 0; ///< by how much the wall clock is off
    long long bootMs = 0;  ///< when the phone started last: zero of its steady clock
    long long sleptMs = 0; ///< the steady clock stood still that long since
    std::size_t zone = 0;

    [[nodiscard]] long long wallMs() const { return trueMs + wrongMs; }
    [[nodiscard]] Instant instant() const { return {wallMs(), trueMs - bootMs - sleptMs}; }
    [[nodiscard]] LocalTime local() const
    {
        const Zone& z = kZones[zone];
        const LocalDate utc(static_cast<int>(wallMs() / kDayMs));
        const long long local = wallMs() + (z.minutes + (isSummer(z.summer, utc) ? 60 : 0)) * kMinuteMs;
        return {LocalDate(static_cast<int>(local / kDayMs)), {static_cast<int>(local % kDayMs / kMinuteMs)}};
    }
};

} // namespace firstdew::simulator
