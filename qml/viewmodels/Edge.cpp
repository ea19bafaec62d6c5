#include "Edge.h"

namespace firstdew::ui {

namespace {

/// The name of a value as the compiler writes it, without that of its enumeration; empty where there is none.
template <auto V>
consteval std::string_view nameOf()
{
    constexpr std::string_view written = __PRETTY_FUNCTION__;
    constexpr auto from = written.rfind("V = ") + 4;
    constexpr auto to = written.find_first_of(";]", from);
    constexpr std::string_view whole = written.substr(from, to - from);
    return whole[0] == '(' ? std::string_view() : whole.substr(whole.rfind(':') + 1);
}

/// Whether both have the same names in the same order, and no further one.
template <class Shown, int N = 0>
consteval bool standsForCore()
{
    using Core = typename StandsFor<Shown>::Type;
    constexpr std::string_view here = nameOf<static_cast<Shown>(N)>();
    constexpr std::string_view there = nameOf<static_cast<Core>(N)>();
    if constexpr (here != there)
        return false;
    else if constexpr (here.empty())
        return N > 0;
    else
        return standsForCore<Shown, N + 1>();
}

static_assert(standsForCore<Site::Value>());
static_assert(standsForCore<DiarySite::Value>());
static_assert(standsForCore<Level::Value>());
static_assert(standsForCore<Circumstance::Value>());
static_assert(standsForCore<Waveform::Value>());
static_assert(standsForCore<AgeGroup::Value>());
static_assert(standsForCore<Side::Value>());
static_assert(standsForCore<PolaritySwap::Value>());
static_assert(standsForCore<WayOfWorking::Value>());
static_assert(standsForCore<PowerSource::Value>());
static_assert(standsForCore<Comfort::Value>());
static_assert(standsForCore<SkinFinding::Value>());
static_assert(standsForCore<CallAnswer::Value>());
static_assert(standsForCore<CourseTemplate::Value>());
static_assert(standsForCore<Weekday::Value>());
static_assert(standsForCore<ScreeningRow::Value>());
static_assert(standsForCore<Meanwhile::Value>());
static_assert(standsForCore<Stage::Value>());
static_assert(standsForCore<Advice::Value>());
static_assert(standsForCore<ReasonKind::Value>());
static_assert(standsForCore<ScreeningDue::Value>());
static_assert(standsForCore<RowOutcome::Value>());
static_assert(standsForCore<StepKind::Value>());
static_assert(standsForCore<PrepItem::Value>());
static_assert(standsForCore<Subject::Value>());
static_assert(standsForCore<Response::Value>());
static_assert(standsForCore<CourseState::Value>());
static_assert(standsForCore<ThemeChoice::Value>());
static_assert(standsForCore<SoundChoice::Value>());
static_assert(standsForCore<VoiceChoice::Value>());

} // namespace

} // namespace firstdew::ui
