#pragma once

#include <QObject>
#include <QtQml/qqmlregistration.h>

// The closed sets of words that cross to the pages. Each set of core stands here once more, because the meta-object
// compiler of Qt 6.4 reads no header of core; tests/core/lint.py holds every one to the names, count and order that
// core has.
namespace firstdew::ui {

namespace Site {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Hands, Feet, HandFoot, Armpits };
Q_ENUM_NS(Value)
} // namespace Site

namespace DiarySite {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Hands, Feet, Armpits };
Q_ENUM_NS(Value)
} // namespace DiarySite

namespace Level {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Dry, Clammy, Wet, Dripping };
Q_ENUM_NS(Value)
} // namespace Level

namespace Circumstance {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Heat, Exertion, Stress, Illness };
Q_ENUM_NS(Value)
} // namespace Circumstance

namespace Waveform {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Direct, Pulsed };
Q_ENUM_NS(Value)
} // namespace Waveform

namespace AgeGroup {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Adult, Child };
Q_ENUM_NS(Value)
} // namespace AgeGroup

namespace Side {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Right, Left };
Q_ENUM_NS(Value)
} // namespace Side

namespace PolaritySwap {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Leads, Switch, Pads };
Q_ENUM_NS(Value)
} // namespace PolaritySwap

namespace WayOfWorking {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { FreeHand, Helper, HandsUnder };
Q_ENUM_NS(Value)
} // namespace WayOfWorking

namespace PowerSource {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Cells, Mains };
Q_ENUM_NS(Value)
} // namespace PowerSource

namespace Comfort {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { NothingFelt, Comfortable, Strong, Unpleasant, Painful };
Q_ENUM_NS(Value)
} // namespace Comfort

namespace SkinFinding {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Fine, Redness, Dryness, Itch, Blister, Burn, Pain };
Q_ENUM_NS(Value)
} // namespace SkinFinding

namespace CallAnswer {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { StartNow, ThisEvening, Tomorrow, NotThisTime };
Q_ENUM_NS(Value)
} // namespace CallAnswer

namespace CourseTemplate {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Seven, MonWedFri, Daily, Prescribed };
Q_ENUM_NS(Value)
} // namespace CourseTemplate

namespace Pace {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { KeepWindow, DayBetween };
Q_ENUM_NS(Value)
} // namespace Pace

namespace OtherKind {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Botulinum, Tablets, Cream, Other };
Q_ENUM_NS(Value)
} // namespace OtherKind

namespace TaughtTick {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { SkinAndJewellery, TraysAndWater, TurnedUpSlowly, SwappedAtZero, OutOfWater, WhenToStop };
Q_ENUM_NS(Value)
} // namespace TaughtTick

namespace Weekday {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Mon, Tue, Wed, Thu, Fri, Sat, Sun };
Q_ENUM_NS(Value)
} // namespace Weekday

namespace ScreeningRow {
Q_NAMESPACE
QML_ELEMENT
enum Value : int {
    Pregnancy,
    PoweredImplant,
    MetalImplant,
    MetalIud,
    HeartRhythmOrEpilepsy,
    TumourOrThrombosis,
    LossOfSensation,
    UnderFive,
    UnderEighteen,
    EczemaAtSite,
    LargeWound,
    FixedBraces
};
Q_ENUM_NS(Value)
} // namespace ScreeningRow

namespace Meanwhile {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { KeptRunning, SwitchedOff, LimbsOut, DoNotKnow };
Q_ENUM_NS(Value)
} // namespace Meanwhile

namespace Stage {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { NotStarted, FirstCourse, Review, KeepingDry, FirstDew, SweatingAgain, Paused };
Q_ENUM_NS(Value)
} // namespace Stage

namespace Advice {
Q_NAMESPACE
QML_ELEMENT
enum Value : int {
    None,
    DoCourseSession,
    FirstDewTopUp,
    TopUpDue,
    Watch,
    RestartCourse,
    Review,
    AskPrescriber,
    Blocked,
    TryFurther
};
Q_ENUM_NS(Value)
} // namespace Advice

namespace ReasonKind {
Q_NAMESPACE
QML_ELEMENT
enum Value : int {
    NoCourseYet,
    CourseSessionToday,
    CourseSessionLater,
    CourseOverrun,
    CourseFinished,
    SessionDoneToday,
    ClammyAtRest,
    ClammyStirred,
    ClammyTwice,
    WetAtRest,
    ReturnLikely,
    DrySpellUsual,
    DueByForecast,
    NoCheckInFor,
    ScreeningStops,
    ScreeningAsks,
    ScreeningStale,
    SkinBars,
    BirthDateMissing,
    MachineUnsuited,
    NoResponse,
    ResponseGood,
    ResponseStrong,
    PausedByPerson,
    PutOff,
    WetOnce,
    PrescribedLacks,
    MachineHasNone,
    NotBetterYet,
    ScoreNeeded,
    EnoughToday,
    CourseSessionMissed,
    CourseCrowded,
    BeforeLeaving,
    AwayNow,
    StoppedCounts,
    Comparing
};
Q_ENUM_NS(Value)
} // namespace ReasonKind

namespace ScreeningDue {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { None, ShortQuestion, Full };
Q_ENUM_NS(Value)
} // namespace ScreeningDue

namespace RowOutcome {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Mention, AskFirst, Stop };
Q_ENUM_NS(Value)
} // namespace RowOutcome

namespace StepKind {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { CheckList, SwitchOn, Announce, Raise, Hold, Lower, HandsOut, Swap, MoveSide, Finish };
Q_ENUM_NS(Value)
} // namespace StepKind

namespace PrepItem {
Q_NAMESPACE
QML_ELEMENT
enum Value : int {
    JewelleryOff,
    SkinChecked,
    WoundsCovered,
    NoAntiperspirant,
    NotShaved,
    WarmWater,
    BathsOnTable,
    BathsOnFloor,
    PlateUnderGrid,
    PadsSoaked,
    LeadsIn,
    HelperStays,
    RemoteInReach,
    CellsIn
};
Q_ENUM_NS(Value)
} // namespace PrepItem

/// What a drawing shows.
namespace Subject {
Q_NAMESPACE
QML_ELEMENT
enum Value : int {
    JewelleryOff,
    LookAtHands,
    LookAtFeet,
    LookAtArmpits,
    JellyOnCut,
    NoAntiperspirant,
    NotShaved,
    WaterLevel,
    TraysOnTable,
    TraysOnFloor,
    PlateUnderGrid,
    SoakPads,
    CellsIn,
    LeadsIn,
    HelperBeside,
    RemoteInReach,
    MachineOff,
    SwitchOn,
    AtZero,
    TurnUp,
    TurnDown,
    RemoteUp,
    RemoteDown,
    HandsInTrays,
    FeetInTrays,
    HandFootRight,
    HandFootLeft,
    PadsFitted,
    HandsOut,
    SwapLeads,
    FlipSwitch,
    ExchangePads,
    PadsOff,
    DryHands,
    DryFeet,
    KitDrying
};
Q_ENUM_NS(Value)
} // namespace Subject

namespace Response {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { None, Good, Strong };
Q_ENUM_NS(Value)
} // namespace Response

namespace CourseState {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Done, Planned };
Q_ENUM_NS(Value)
} // namespace CourseState

// What only the interface knows.

/// The places of the bottom bar.
namespace Place {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Today, Session, Diary, Plan };
Q_ENUM_NS(Value)
} // namespace Place

/// The pages of one session, in their order.
namespace BathPage {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Choose, Screening, Blocked, Prepare, Run, Meanwhile, After, PracticeStart, PracticeOver };
Q_ENUM_NS(Value)
} // namespace BathPage

/// What the large button of the running page says; None where there is no such button.
namespace MainButton {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { None, Begin, SwitchedOn, Raised, Lowered, Swapped, MovedSide };
Q_ENUM_NS(Value)
} // namespace MainButton

/// The ways out of the running session: the stop button alone, a tap anywhere, or everything that current asks for.
namespace Exits {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { StopOnly, TapAnywhere, All };
Q_ENUM_NS(Value)
} // namespace Exits

/// When an antiperspirant was last on the skin; No is longer ago than it matters.
namespace LastAntiperspirant {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { NotSaid, No, HalfADay, LastHours };
Q_ENUM_NS(Value)
} // namespace LastAntiperspirant

/// When the skin was last shaved; No is longer ago than it matters.
namespace LastShave {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { NotSaid, No, TwoDays, Yesterday, Today };
Q_ENUM_NS(Value)
} // namespace LastShave

/// Whether there are small cuts on the skin.
namespace SmallCuts {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { NotSaid, No, Yes };
Q_ENUM_NS(Value)
} // namespace SmallCuts

/// How light the interface is to be.
namespace ThemeChoice {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { System, Light, Dark };
Q_ENUM_NS(Value)
} // namespace ThemeChoice

/// What is heard during a session.
namespace SoundChoice {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Both, Voice, Tones, None };
Q_ENUM_NS(Value)
} // namespace SoundChoice

/// Whose voice speaks during a session.
namespace VoiceChoice {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Recorded, Device };
Q_ENUM_NS(Value)
} // namespace VoiceChoice

/// Who says the prompts in the person's language.
namespace Tongue {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Recorded, Device, Reader, Foreign };
Q_ENUM_NS(Value)
} // namespace Tongue

/// Why a call for a top-up is not followed.
namespace NotNow {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Explained, Skin, NoTime, Away, Other };
Q_ENUM_NS(Value)
} // namespace NotNow

/// What the record is written as.
namespace ExportFormat {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Json, Tables, Fhir };
Q_ENUM_NS(Value)
} // namespace ExportFormat

/// What an entry of the diary beside the check-ins is.
namespace EntryKind {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Session, Bother, SkinAfter, Weighing };
Q_ENUM_NS(Value)
} // namespace EntryKind

/// A weighing against healthy adults.
namespace SweatJudged {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { NotJudged, Usual, Above };
Q_ENUM_NS(Value)
} // namespace SweatJudged

/// The steps of the first start, in their order.
namespace SetUpStep {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { Cautions, Person, Sites, Machine, Health, Hour };
Q_ENUM_NS(Value)
} // namespace SetUpStep

/// Why the record could not be opened.
namespace Trouble {
Q_NAMESPACE
QML_ELEMENT
enum Value : int { None, Damaged, Newer, Busy, ReadOnly, Foreign, Unreadable, Other };
Q_ENUM_NS(Value)
} // namespace Trouble

} // namespace firstdew::ui
