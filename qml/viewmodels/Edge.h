#pragma once

// Not for the meta-object compiler: core's headers bring in <concepts>.
#include "Enums.h"
#include "diary/Preferences.h"
#include "facts/Payloads.h"
#include "protocol/Course.h"
#include "protocol/Drawings.h"
#include "protocol/Preparation.h"
#include "protocol/Response.h"
#include "protocol/Screening.h"
#include "protocol/Script.h"
#include "situation/Assess.h"

#include <QList>
#include <QString>

#include <optional>
#include <string_view>
#include <vector>

// The one place where values of core become values of the pages, and the other way round. Both count alike;
// tests/core/lint.py compares their names.
namespace firstdew::ui {

/// Which enumeration of the pages stands for one of core, and of which it stands.
template <class Core>
struct ShownAs;
template <class Shown>
struct StandsFor;

#define FIRSTDEW_PAIR_AS(Namespace, Name, ShownName)                                                                   \
    template <>                                                                                                        \
    struct ShownAs<Namespace::Name> {                                                                                  \
        using Type = ui::ShownName::Value;                                                                             \
    };                                                                                                                 \
    template <>                                                                                                        \
    struct StandsFor<ui::ShownName::Value> {                                                                           \
        using Type = Namespace::Name;                                                                                  \
    }
#define FIRSTDEW_PAIR(Namespace, Name) FIRSTDEW_PAIR_AS(Namespace, Name, Name)

FIRSTDEW_PAIR(facts, Site);
FIRSTDEW_PAIR(facts, DiarySite);
FIRSTDEW_PAIR(facts, Level);
FIRSTDEW_PAIR(facts, Circumstance);
FIRSTDEW_PAIR(facts, Waveform);
FIRSTDEW_PAIR(facts, AgeGroup);
FIRSTDEW_PAIR(facts, Side);
FIRSTDEW_PAIR(facts, PolaritySwap);
FIRSTDEW_PAIR(facts, WayOfWorking);
FIRSTDEW_PAIR(facts, PowerSource);
FIRSTDEW_PAIR(facts, Comfort);
FIRSTDEW_PAIR(facts, SkinFinding);
FIRSTDEW_PAIR(facts, CallAnswer);
FIRSTDEW_PAIR(facts, CourseTemplate);
FIRSTDEW_PAIR(facts, Pace);
FIRSTDEW_PAIR(facts, OtherKind);
FIRSTDEW_PAIR(facts, TaughtTick);
FIRSTDEW_PAIR(facts, Weekday);
FIRSTDEW_PAIR(facts, ScreeningRow);
FIRSTDEW_PAIR(facts, Meanwhile);
FIRSTDEW_PAIR(situation, Stage);
FIRSTDEW_PAIR(situation, Advice);
FIRSTDEW_PAIR(situation, ReasonKind);
FIRSTDEW_PAIR(protocol, ScreeningDue);
FIRSTDEW_PAIR(protocol, RowOutcome);
FIRSTDEW_PAIR(protocol, StepKind);
FIRSTDEW_PAIR(protocol, PrepItem);
FIRSTDEW_PAIR(protocol, Response);
FIRSTDEW_PAIR(protocol, Tongue);
FIRSTDEW_PAIR(protocol, CourseState);
FIRSTDEW_PAIR_AS(protocol, Drawing, Subject);
FIRSTDEW_PAIR_AS(diary, Theme, ThemeChoice);
FIRSTDEW_PAIR_AS(diary, Cues, SoundChoice);
FIRSTDEW_PAIR_AS(diary, Speaker, VoiceChoice);

#undef FIRSTDEW_PAIR
#undef FIRSTDEW_PAIR_AS

/// How many values an enumeration of core has.
template <class Core>
inline constexpr int kCount = static_cast<int>(facts::Tokens<Core>::list.size());

template <class Core>
[[nodiscard]] constexpr typename ShownAs<Core>::Type shown(Core value)
{
    return static_cast<typename ShownAs<Core>::Type>(static_cast<int>(value));
}

/// Nothing for a number that is no value: a page may hand over any.
template <class Shown>
[[nodiscard]] constexpr std::optional<typename StandsFor<Shown>::Type> core(Shown value)
{
    using Core = typename StandsFor<Shown>::Type;
    const int number = static_cast<int>(value);
    return number < 0 || number >= kCount<Core> ? std::nullopt : std::optional(static_cast<Core>(number));
}

template <class Core>
[[nodiscard]] QList<typename ShownAs<Core>::Type> shown(facts::SetOf<Core> set)
{
    QList<typename ShownAs<Core>::Type> out;
    for (const Core value : facts::allOf<Core>())
        if (set.contains(value))
            out.append(shown(value));
    return out;
}

template <class Core>
[[nodiscard]] QList<typename ShownAs<Core>::Type> shown(const std::vector<Core>& values)
{
    QList<typename ShownAs<Core>::Type> out;
    for (const Core value : values)
        out.append(shown(value));
    return out;
}

template <class Shown>
[[nodiscard]] facts::SetOf<typename StandsFor<Shown>::Type> coreSet(const QList<Shown>& values)
{
    facts::SetOf<typename StandsFor<Shown>::Type> out;
    for (const Shown value : values)
        if (const auto known = core(value))
            out.insert(*known);
    return out;
}

/// Every value of a set, in its order.
template <class Shown>
[[nodiscard]] QList<Shown> everyOne()
{
    QList<Shown> out;
    for (int i = 0; i < kCount<typename StandsFor<Shown>::Type>; ++i)
        out.append(static_cast<Shown>(i));
    return out;
}

} // namespace firstdew::ui
