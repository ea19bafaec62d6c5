#include "rehearsal/World.h"

#include <algorithm>
#include <array>

namespace firstdew::rehearsal {

namespace {

constexpr double kLongestGap = 7; // days between two sessions of the default course at most
constexpr double kDrift = 0.2;    // sd of the logarithm of a drifting median
constexpr double kDoseSd = 0.3;   // of the logarithm of a session's charge
constexpr double kHotDays = 5;    // a run of hot days on average
constexpr int kHotDaysMost = 20;
constexpr double kFalseInHeat = 0.3; // share of dry days in such a run reported clammy
constexpr double kDripping = 0.3;    // share of sweating days reported dripping
constexpr int kWeek = 7;
constexpr int kWeekend = 2;

/// Shape of the gamma times whose spread is about that of Weibull ones.
double gammaShape(double weibullShape) { return std::pow(weibullShape, 1.85); }

/// Log-logistic times whose logarithms have the spread of Weibull ones.
double logLogisticShape(double weibullShape) { return std::numbers::sqrt2 * weibullShape; }

/// Gamma times are taken as the cube of a normal number (Wilson & Hilferty, PNAS 1931;17:684-688).
double gammaTime(double median, double shape, double z)
{
    const double middle = 1 - 1 / (9 * shape);
    return median * std::pow(std::max(0.0, middle + z / (3 * std::sqrt(shape))) / middle, 3);
}

double gammaSurvivor(double median, double shape, double days)
{
    const double middle = 1 - 1 / (9 * shape);
    const double z = middle * (std::cbrt(days / median) - 1) * 3 * std::sqrt(shape);
    return 0.5 * std::erfc(z / std::numbers::sqrt2);
}

bool hotUnnoticed(const World& world, const Chance& chance, int day)
{
    const double begins = world.hotRuns / kHotDays;
    for (int ago = 0; begins > 0 && ago < kHotDaysMost && ago <= day; ++ago) {
        const auto start = static_cast<std::uint64_t>(day - ago);
        const double length = 1 - (kHotDays - 1) * std::log(chance.uniform(Draw::HotLength, start));
        if (ago < length && chance.happens(begins, Draw::HotRun, start))
            return true;
    }
    return false;
}

} // namespace

Body::Body(const World& world, Chance chance)
    : m_world(world), m_chance(chance),
      m_median(world.medianDays * std::exp(world.medianSdlog * chance.normal(Draw::Median))),
      m_shape(world.shape * std::exp(world.shapeSdlog * chance.normal(Draw::Shape))),
      m_phase(2 * std::numbers::pi * chance.uniform(Draw::Phase))
{
    begin();
}

/// Draws a new dry spell from the person's distribution on this day.
void Body::begin()
{
    const double season =
        1 + m_world.seasonAmplitude * std::sin(2 * std::numbers::pi * m_day / m_world.seasonPeriod + m_phase);
    const double change = m_world.changeDay > 0 && m_day >= m_world.changeDay ? m_world.changeFactor : 1;
    if (m_world.ar1 > 0)
        m_drift = m_world.ar1 * m_drift +
                  std::sqrt(1 - m_world.ar1 * m_world.ar1) * kDrift * m_chance.normal(Draw::Drift, m_spells);
    const double dose = m_sessions == 0 ? 1 : std::pow(doseOf(m_sessions - 1), m_world.dose);
    m_spellMedian =
        m_median * season * change * dose * std::exp(m_drift) * std::pow(1 - m_world.wearOff, m_day / 365.25);
    const double u = m_chance.uniform(Draw::Spell, m_spells);
    switch (m_world.times) {
    case Times::Weibull: m_spell = m_spellMedian * std::pow(-std::log(u) / std::numbers::ln2, 1 / m_shape); break;
    case Times::Gamma:
        m_spell = gammaTime(m_spellMedian, gammaShape(m_shape), m_chance.normal(Draw::Spell, m_spells));
        break;
    case Times::LogLogistic: m_spell = m_spellMedian * std::pow(1 / u - 1, 1 / logLogisticShape(m_shape)); break;
    }
    // Rayleigh: the chance of sweating rises with time. The outlook assumes a constant chance per day, so it can be
    // wrong.
    const double mean = m_world.daysClammyBeforeSweating;
    m_clammy = mean * std::sqrt(-std::log(m_chance.uniform(Draw::Clammy, m_spells)) * 4 / std::numbers::pi);
    ++m_spells;
    m_since = m_day;
    m_skin = Skin::Dry;
}

double Body::survivorBy(double median, double days) const
{
    switch (m_world.times) {
    case Times::Weibull: return std::exp(-std::numbers::ln2 * std::pow(days / median, m_shape));
    case Times::Gamma: return gammaSurvivor(median, gammaShape(m_shape), days);
    case Times::LogLogistic: return 1 / (1 + std::pow(days / median, logLogisticShape(m_shape)));
    }
    return 1;
}

double Body::survivor(double days) const { return survivorBy(m_spellMedian, days); }

double Body::foreseen(double days) const
{
    if (!(m_world.ar1 > 0))
        return survivor(days);
    // Mean over a normal drift: Abramowitz & Stegun, Handbook of Mathematical Functions 1964, 25.4.46 with n = 5
    constexpr std::array<std::pair<double, double>, 3> kNodes{
        {{0, 0.945308720}, {0.958572465, 0.393619323}, {2.020182870, 0.019953242}}};
    const double usual = m_spellMedian * std::exp(-m_drift);
    double sum = 0;
    for (const auto& [node, weight] : kNodes) {
        const double by = std::exp(std::numbers::sqrt2 * kDrift * node);
        sum +=
            weight * (node > 0 ? survivorBy(usual * by, days) + survivorBy(usual / by, days) : survivorBy(usual, days));
    }
    return std::min(1.0, sum / std::sqrt(std::numbers::pi));
}

double Body::doseOf(std::uint64_t session) const { return std::exp(kDoseSd * m_chance.normal(Draw::Dose, session)); }

double Body::nextDose() const { return m_world.dose > 0 ? doseOf(m_sessions) : 1; }

void Body::pass(int day)
{
    m_day = day;
    const double age = day - m_since;
    if (m_skin == Skin::Dry && age >= m_spell && !(m_held && age <= kLongestGap))
        m_skin = Skin::Clammy;
    if (m_skin == Skin::Clammy && age >= m_spell + m_clammy) {
        m_skin = Skin::Sweating;
        m_toGo = sessionsToDry(m_world, m_chance.uniform(Draw::Course, m_relapses++));
    }
}

void Body::treat(bool ofCourse)
{
    const bool takes = m_skin == Skin::Sweating ? --m_toGo <= 0
                       : m_skin == Skin::Clammy ? m_chance.happens(m_world.takesClammy, Draw::Takes, m_sessions)
                                                : true;
    ++m_sessions;
    m_held = ofCourse;
    if (takes)
        begin();
}

int sessionsToDry(const World& world, double uniform)
{
    const double span = world.courseMost - world.courseLeast + 1;
    return static_cast<int>(world.courseLeast + uniform * span);
}

double staysClammy(const World& world, double days)
{
    const double mean = world.daysClammyBeforeSweating;
    return mean > 0 ? std::exp(-std::numbers::pi / 4 * (days / mean) * (days / mean)) : 0;
}

HotRuns hotRunsOf(const World& world)
{
    // A run lasts for 1 day and the whole days, rounded up, of an exponential time.
    const double days = 1 + 1 / (1 - std::exp(-1 / (kHotDays - 1)));
    const double begins = std::min(1.0, world.hotRuns / kHotDays);
    return {begins, (1 - begins) / days};
}

std::optional<Said> checkInOf(const World& world, const Chance& chance, Skin skin, int day)
{
    using facts::Level;
    const auto i = static_cast<std::uint64_t>(day);
    const bool weekend = day % kWeek >= kWeek - kWeekend;
    if (chance.happens(world.checkinMissed, Draw::Missed, i) ||
        (weekend && chance.happens(world.weekendGaps, Draw::Weekend, i)))
        return std::nullopt;
    const bool stirred = chance.happens(world.stirredDays, Draw::Stirred, i);
    const double u = chance.uniform(Draw::Report, i);
    switch (skin) {
    case Skin::Dry: {
        if (!stirred && chance.happens(world.falseWet, Draw::FalseWet, i))
            return Said{Level::Wet, false};
        const double calm = hotUnnoticed(world, chance, day) ? kFalseInHeat : world.falseClammyCalm;
        return Said{u < (stirred ? world.falseClammyStirred : calm) ? Level::Clammy : Level::Dry, stirred};
    }
    case Skin::Clammy: return Said{u < world.missedClammy ? Level::Dry : Level::Clammy, stirred};
    case Skin::Sweating: return Said{chance.happens(kDripping, Draw::Level, i) ? Level::Dripping : Level::Wet, stirred};
    }
    return std::nullopt;
}

double chanceOf(const Said& said, const World& world, Skin skin, bool hot)
{
    using facts::Level;
    const double asStirred = said.stirred ? world.stirredDays : 1 - world.stirredDays;
    const double falseWet = said.stirred ? 0 : world.falseWet;
    const double falseClammy = said.stirred ? world.falseClammyStirred : hot ? kFalseInHeat : world.falseClammyCalm;
    const auto of = [&](double dry, double clammy, double wet, double dripping) {
        return asStirred * std::array{dry, clammy, wet, dripping}[static_cast<std::size_t>(said.level)];
    };
    switch (skin) {
    case Skin::Dry: return of((1 - falseWet) * (1 - falseClammy), (1 - falseWet) * falseClammy, falseWet, 0);
    case Skin::Clammy: return of(world.missedClammy, 1 - world.missedClammy, 0, 0);
    case Skin::Sweating: return of(0, 0, 1 - kDripping, kDripping);
    }
    return 0;
}

} // namespace firstdew::rehearsal
