#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace firstdew::facts {

enum class Weekday { Mon, Tue, Wed, Thu, Fri, Sat, Sun };

/// A day of the person's calendar (proleptic Gregorian), without time or zone.
/// Stored as days since 1970-01-01, so differences are whole days.
class LocalDate {
public:
    constexpr LocalDate() = default;
    constexpr explicit LocalDate(int daysSince1970) : m_days(daysSince1970) {}

    /// The date of that year, month (1-12) and day (1-31), or nullopt if the calendar has no such day.
    [[nodiscard]] static std::optional<LocalDate> of(int year, int month, int day);
    /// Reads `YYYY-MM-DD` (ISO 8601, years 0001-9999). Returns nullopt for anything else.
    [[nodiscard]] static std::optional<LocalDate> parse(std::string_view iso);

    [[nodiscard]] std::string iso() const;
    [[nodiscard]] int year() const;
    [[nodiscard]] int month() const;
    [[nodiscard]] int day() const;
    [[nodiscard]] Weekday weekday() const;
    [[nodiscard]] constexpr int daysSince1970() const { return m_days; }

    constexpr auto operator<=>(const LocalDate&) const = default;
    friend constexpr LocalDate operator+(LocalDate d, int days) { return LocalDate(d.m_days + days); }
    friend constexpr LocalDate operator-(LocalDate d, int days) { return LocalDate(d.m_days - days); }
    friend constexpr int operator-(LocalDate a, LocalDate b) { return a.m_days - b.m_days; }

private:
    int m_days = 0;
};

/// Whole years completed between birth and `on`; a 29 February birthday counts from 1 March in common years.
[[nodiscard]] int ageInYears(LocalDate birth, LocalDate on);

/// A minute of a local day: 0 (00:00) to 1439 (23:59).
struct MinuteOfDay {
    int minute = 0;
    constexpr auto operator<=>(const MinuteOfDay&) const = default;
    /// Reads `HH:MM`, 00:00 to 23:59.
    [[nodiscard]] static std::optional<MinuteOfDay> parse(std::string_view text);
    [[nodiscard]] std::string text() const;
};

/// A local day and minute, as the person's clock showed it. It has no zone; the platform converts it to an instant.
struct LocalTime {
    LocalDate date;
    MinuteOfDay at;
    constexpr auto operator<=>(const LocalTime&) const = default;
    /// Reads `YYYY-MM-DDTHH:MM`.
    [[nodiscard]] static std::optional<LocalTime> parse(std::string_view iso);
    [[nodiscard]] std::string iso() const;
    [[nodiscard]] LocalTime plusMinutes(int minutes) const;
};

/// An instant on two clocks: the wall clock (ms since 1970 UTC) and a monotonic clock
/// (ms since an arbitrary start, valid for this boot only). Only events of a running session use it.
struct Instant {
    long long wallMs = 0;
    long long monotonicMs = 0;
    constexpr auto operator<=>(const Instant&) const = default;
};

} // namespace firstdew::facts
