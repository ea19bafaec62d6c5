#pragma once

#include "facts/Enumerations.h"
#include "facts/LocalDate.h"
#include "facts/Units.h"

#include <optional>
#include <string>
#include <vector>

// Every kind of fact that can be recorded. Each kind is a plain struct that lists its fields once, in `fields`.
// The store, the exports, the import and their tests all work from that list.
namespace firstdew::facts {

/// The smallest and largest allowed number, if the type itself allows more. A payload passes it as the third
/// argument in `fields`: f("score", self.score, Range{1, 4}).
struct Range {
    double least = 0;
    double most = 0;
};

/// Questions of the screening. protocol/Screening decides what each answer means.
enum class ScreeningRow {
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
/// Known from the birthday, and asked of nobody.
[[nodiscard]] constexpr bool knownByAge(ScreeningRow row)
{
    return row == ScreeningRow::UnderFive || row == ScreeningRow::UnderEighteen;
}
FIRSTDEW_TOKENS(ScreeningRow, "pregnancy", "powered-implant", "metal-implant", "metal-iud", "heart-rhythm-or-epilepsy",
                "tumour-or-thrombosis", "loss-of-sensation", "under-five", "under-eighteen", "eczema-at-site",
                "large-wound", "fixed-braces");

enum class BathEventKind {
    Begin,        ///< the check list is confirmed; the current may be raised for the first phase
    Raised,       ///< the person says the current has reached the comfortable level
    Reading,      ///< the meter shows `reading`
    Discomfort,   ///< it is unpleasant; the current must be lowered
    Lowered,      ///< the person says the current is at zero
    Swapped,      ///< the polarity was reversed at zero current
    MovedSide,    ///< hand + foot: the person moved to the other side at zero current
    OutOfWater,   ///< a limb left the water while current may have flowed
    Stop,         ///< the person ended the session
    Resumed,      ///< the app runs again; `meanwhile` says what the machine did
    Tick,         ///< time alone advanced the session
    SwitchedOn,   ///< the machine is on, the meter shows zero and the waveform is the planned one
    Away,         ///< the app stopped leading at this moment
    StopPressed,  ///< Stop was pressed; final a few seconds later unless it is taken back
    StopTakenBack ///< that was a slip of the hand or a drip
};
FIRSTDEW_TOKENS(BathEventKind, "begin", "raised", "reading", "discomfort", "lowered", "swapped", "moved-side",
                "out-of-water", "stop", "resumed", "tick", "switched-on", "away", "stop-pressed", "stop-taken-back");

/// What the machine did while the app was away, as the person answers.
enum class Meanwhile { KeptRunning, SwitchedOff, LimbsOut, DoNotKnow };
FIRSTDEW_TOKENS(Meanwhile, "kept-running", "switched-off", "limbs-out", "do-not-know");

enum class ReminderAction { Dismissed, Snoozed };
FIRSTDEW_TOKENS(ReminderAction, "dismissed", "snoozed");

struct Person {
    std::string name;
    std::optional<LocalDate> birth;
    std::optional<Centimetres> height;
    std::optional<Kilograms> weight;
    std::string adult; ///< name of the adult who is present, if the person is a child
    static constexpr std::string_view kind = "person";
    static void fields(auto& self, auto&& f)
    {
        f("name", self.name), f("birth", self.birth), f("height_cm", self.height), f("weight_kg", self.weight),
            f("adult", self.adult);
    }
    bool operator==(const Person&) const = default;
};

struct SiteUse {
    Site site{};
    bool inUse = true;
    static constexpr std::string_view kind = "site-use";
    static void fields(auto& self, auto&& f) { f("site", self.site), f("in_use", self.inUse); }
    bool operator==(const SiteUse&) const = default;
};

struct Machine {
    std::string name;
    bool direct = true;
    bool pulsed = false;
    PolaritySwap swap{};
    bool remote = false;
    PowerSource power{};
    std::optional<SquareCentimetres> pad; ///< area of one armpit pad
    static constexpr std::string_view kind = "machine";
    static void fields(auto& self, auto&& f)
    {
        f("name", self.name), f("direct", self.direct), f("pulsed", self.pulsed), f("swap", self.swap),
            f("remote", self.remote), f("power", self.power), f("pad_cm2", self.pad);
    }
    bool operator==(const Machine&) const = default;
};

/// The machine of that name got new cells.
struct CellsChanged {
    std::string machine;
    static constexpr std::string_view kind = "cells-changed";
    static void fields(auto& self, auto&& f) { f("machine", self.machine); }
    bool operator==(const CellsChanged&) const = default;
};

struct CheckIn {
    DiarySite site{};
    Level level{};
    SetOf<Circumstance> with;
    static constexpr std::string_view kind = "check-in";
    static void fields(auto& self, auto&& f) { f("site", self.site), f("level", self.level), f("with", self.with); }
    bool operator==(const CheckIn&) const = default;
};

/// A session as logged afterwards. `bath` is the id of the led session it came from, if any.
struct Session {
    Site site{};
    Waveform waveform{};
    std::optional<Milliamps> peak;
    std::optional<Milliamps> comfortable;
    bool completed = true;
    std::optional<Comfort> comfort;
    SetOf<SkinFinding> skin;
    std::optional<MilliampMinutes> charge;
    std::string machine;
    std::string bath;
    std::string note;
    static constexpr std::string_view kind = "session";
    static void fields(auto& self, auto&& f)
    {
        f("site", self.site), f("waveform", self.waveform), f("peak_ma", self.peak),
            f("comfortable_ma", self.comfortable), f("completed", self.completed), f("comfort", self.comfort),
            f("skin", self.skin), f("charge_ma_min", self.charge), f("machine", self.machine), f("bath", self.bath),
            f("note", self.note);
    }
    bool operator==(const Session&) const = default;
};

/// The settings of a led session. Its events follow as BathEvent facts with the same `bath`.
struct BathPrepared {
    std::string bath;
    Site site{};
    Waveform waveform{};
    AgeGroup age{};
    PolaritySwap swap{};
    WayOfWorking way{};
    Side firstSide{};
    Milliamps limit;
    std::optional<Milliamps> target; ///< the level to aim for at the start; at most the limit
    Seconds raise{60};
    Seconds lower{60};
    Seconds swapping{45};
    std::optional<int> steps;                    ///< version of the order of steps; absent in facts older than versions
    std::optional<int> runsBefore;               ///< number of runs with current earlier on that day on that skin
    std::optional<MilliampMinutes> chargeBefore; ///< charge of these runs
    std::optional<Seconds> hold;                 ///< of each phase, where a comparison asked for a shorter one
    static constexpr std::string_view kind = "bath-prepared";
    static void fields(auto& self, auto&& f)
    {
        f("bath", self.bath), f("site", self.site), f("waveform", self.waveform), f("age", self.age),
            f("swap", self.swap), f("way", self.way), f("first_side", self.firstSide), f("limit_ma", self.limit),
            f("target_ma", self.target), f("raise_s", self.raise), f("lower_s", self.lower),
            f("swapping_s", self.swapping), f("steps", self.steps, Range{1, 1000}),
            f("runs_before", self.runsBefore, Range{0, 1000}), f("charge_before_ma_min", self.chargeBefore),
            f("hold_s", self.hold);
    }
    bool operator==(const BathPrepared&) const = default;
};

struct BathEvent {
    std::string bath;
    int sequence = 0; ///< from 0, without gaps, per bath
    BathEventKind event{};
    std::optional<Milliamps> reading;
    std::optional<Meanwhile> meanwhile;
    long long wallMs = 0;
    long long monotonicMs = 0;
    static constexpr std::string_view kind = "bath-event";
    static void fields(auto& self, auto&& f)
    {
        f("bath", self.bath), f("sequence", self.sequence, Range{0, 1e6}), f("event", self.event),
            f("reading_ma", self.reading), f("meanwhile", self.meanwhile), f("wall_ms", self.wallMs),
            f("monotonic_ms", self.monotonicMs);
    }
    bool operator==(const BathEvent&) const = default;
};

struct Screening {
    bool full = true; ///< false: the short question before a session
    SetOf<ScreeningRow> asked;
    SetOf<ScreeningRow> yes;
    static constexpr std::string_view kind = "screening";
    static void fields(auto& self, auto&& f) { f("full", self.full), f("asked", self.asked), f("yes", self.yes); }
    bool operator==(const Screening&) const = default;
};

/// A clinician has said that one screening answer does not prevent treatment.
struct Clearance {
    ScreeningRow row{};
    std::string who;
    LocalDate given;
    std::optional<LocalDate> expires;
    static constexpr std::string_view kind = "clearance";
    static void fields(auto& self, auto&& f)
    {
        f("row", self.row), f("who", self.who), f("given", self.given), f("expires", self.expires);
    }
    bool operator==(const Clearance&) const = default;
};

/// A clinician has seen the blister or burn at a site and allows treatment again.
struct SkinClearance {
    DiarySite site{};
    std::string who;
    LocalDate given;
    static constexpr std::string_view kind = "skin-clearance";
    static void fields(auto& self, auto&& f) { f("site", self.site), f("who", self.who), f("given", self.given); }
    bool operator==(const SkinClearance&) const = default;
};

/// What the person says about skin and products before a session.
struct Preparation {
    Site site{};
    std::optional<LocalTime> antiperspirant; ///< last use of an aluminium-salt antiperspirant on the site
    std::optional<LocalTime> shaved;
    bool smallWounds = false;
    static constexpr std::string_view kind = "preparation";
    static void fields(auto& self, auto&& f)
    {
        f("site", self.site), f("antiperspirant", self.antiperspirant), f("shaved", self.shaved),
            f("small_wounds", self.smallWounds);
    }
    bool operator==(const Preparation&) const = default;
};

struct Course {
    Site site{};
    CourseTemplate plan{};
    std::vector<int> days; ///< prescribed days, day 1 = start; empty: the template's own
    LocalDate start;
    SetOf<Weekday> free; ///< weekdays that suit the person; empty: all
    static constexpr std::string_view kind = "course";
    static void fields(auto& self, auto&& f)
    {
        f("site", self.site), f("plan", self.plan), f("days", self.days, Range{1, 3660}), f("start", self.start),
            f("free", self.free);
    }
    bool operator==(const Course&) const = default;
};

/// The person moved session `number` (from 1) of the running course to `date`.
struct CourseMove {
    Site site{};
    int number = 1;
    LocalDate date;
    static constexpr std::string_view kind = "course-move";
    static void fields(auto& self, auto&& f)
    {
        f("site", self.site), f("number", self.number, Range{1, 1000}), f("date", self.date);
    }
    bool operator==(const CourseMove&) const = default;
};

/// How the person wants the running course of `site` to go on.
struct CoursePace {
    Site site{};
    Pace pace{};
    static constexpr std::string_view kind = "course-pace";
    static void fields(auto& self, auto&& f) { f("site", self.site), f("pace", self.pace); }
    bool operator==(const CoursePace&) const = default;
};

/// The response at the end of a course was reviewed, and the person continues with top-ups or not.
struct ReviewDone {
    Site site{};
    bool keepGoing = true;
    static constexpr std::string_view kind = "review-done";
    static void fields(auto& self, auto&& f) { f("site", self.site), f("keep_going", self.keepGoing); }
    bool operator==(const ReviewDone&) const = default;
};

struct Away {
    LocalDate from;
    LocalDate to; ///< inclusive
    static constexpr std::string_view kind = "away";
    static void fields(auto& self, auto&& f) { f("from", self.from), f("to", self.to); }
    bool operator==(const Away&) const = default;
};

struct Pause {
    Site site{};
    bool paused = true;
    static constexpr std::string_view kind = "pause";
    static void fields(auto& self, auto&& f) { f("site", self.site), f("paused", self.paused); }
    bool operator==(const Pause&) const = default;
};

struct Hdss {
    DiarySite site{};
    int score = 1; ///< 1 (never noticed) to 4 (intolerable)
    static constexpr std::string_view kind = "hdss";
    static void fields(auto& self, auto&& f) { f("site", self.site), f("score", self.score, Range{1, 4}); }
    bool operator==(const Hdss&) const = default;
};

struct Weighing {
    DiarySite site{};
    Milligrams before;
    Milligrams after;
    double minutes = 5;
    static constexpr std::string_view kind = "weighing";
    static void fields(auto& self, auto&& f)
    {
        f("site", self.site), f("before_mg", self.before), f("after_mg", self.after),
            f("minutes", self.minutes, Range{0.1, 1440});
    }
    bool operator==(const Weighing&) const = default;
};

/// A finding after a session, for example on the next day.
struct SideEffect {
    DiarySite site{};
    SetOf<SkinFinding> skin;
    std::string note;
    static constexpr std::string_view kind = "side-effect";
    static void fields(auto& self, auto&& f) { f("site", self.site), f("skin", self.skin), f("note", self.note); }
    bool operator==(const SideEffect&) const = default;
};

/// Something else that dries the skin, with the days on which it works. It is noted, never advised.
struct OtherTreatment {
    OtherKind what{};
    std::string name;
    SetOf<DiarySite> sites; ///< empty: everywhere
    LocalDate from;
    std::optional<LocalDate> until; ///< inclusive; absent: it goes on
    static constexpr std::string_view kind = "other-treatment";
    static void fields(auto& self, auto&& f)
    {
        f("what", self.what), f("name", self.name), f("sites", self.sites), f("from", self.from),
            f("until", self.until);
    }
    bool operator==(const OtherTreatment&) const = default;
};

/// The person begins to compare a shorter session at the site with the usual one, or leaves that comparison.
struct Comparison {
    DiarySite site{};
    bool on = true;       ///< false: left
    double shorter = 0.5; ///< length of the shorter session in parts of the usual one
    int seed = 0;         ///< of the random order
    static constexpr std::string_view kind = "comparison";
    static void fields(auto& self, auto&& f)
    {
        f("site", self.site), f("on", self.on), f("shorter", self.shorter, Range{0.5, 0.9}),
            f("seed", self.seed, Range{0, 2147483647});
    }
    bool operator==(const Comparison&) const = default;
};

/// A session at the site that somebody who knows the treatment watched. It happened on the day of that session.
struct Taught {
    Site site{};
    std::string who; ///< who watched, by name or role
    SetOf<TaughtTick> ticks;
    Waveform waveform{};            ///< of that session
    std::optional<Milliamps> level; ///< agreed to begin with at home, in that waveform; at most the limit
    static constexpr std::string_view kind = "taught";
    static void fields(auto& self, auto&& f)
    {
        f("site", self.site), f("who", self.who), f("ticks", self.ticks), f("waveform", self.waveform),
            f("level_ma", self.level);
    }
    bool operator==(const Taught&) const = default;
};

struct CallAnswered {
    DiarySite site{};
    CallAnswer answer{};
    std::string reason;
    static constexpr std::string_view kind = "call-answered";
    static void fields(auto& self, auto&& f)
    {
        f("site", self.site), f("answer", self.answer), f("reason", self.reason);
    }
    bool operator==(const CallAnswered&) const = default;
};

struct ReminderSettings {
    MinuteOfDay checkIn{20 * 60};
    MinuteOfDay sessions{18 * 60};
    MinuteOfDay quietFrom{22 * 60};
    MinuteOfDay quietUntil{7 * 60};
    bool on = true;
    bool backupMonthly = false;
    static constexpr std::string_view kind = "reminder-settings";
    static void fields(auto& self, auto&& f)
    {
        f("check_in", self.checkIn), f("sessions", self.sessions), f("quiet_from", self.quietFrom),
            f("quiet_until", self.quietUntil), f("on", self.on), f("backup_monthly", self.backupMonthly);
    }
    bool operator==(const ReminderSettings&) const = default;
};

struct ReminderHandled {
    std::string key;
    ReminderAction action{};
    std::optional<LocalTime> until;
    static constexpr std::string_view kind = "reminder-handled";
    static void fields(auto& self, auto&& f) { f("key", self.key), f("action", self.action), f("until", self.until); }
    bool operator==(const ReminderHandled&) const = default;
};

/// What the prescriber set. A limit can only lower the limit of core/protocol. An absent field changes nothing.
struct CareSheet {
    std::string who;
    LocalDate given;
    SetOf<Site> sites;
    std::optional<CourseTemplate> plan;
    std::vector<int> days;
    std::optional<Waveform> waveform;
    std::optional<Milliamps> directLimit;
    std::optional<Milliamps> pulsedLimit;
    std::optional<Seconds> raise;
    std::optional<Seconds> lower;
    std::optional<Seconds> swapping;
    std::optional<LocalDate> review;
    std::string notes;
    std::optional<SquareCentimetres> pad; ///< area of one armpit pad
    std::string atNoResponse;             ///< what to do if the course brings nothing, in the prescriber's words
    std::optional<std::string> contact;   ///< whom to call, with a number
    std::optional<Milliamps> level;       ///< agreed to begin with at home, in `waveform`
    static constexpr std::string_view kind = "care-sheet";
    static void fields(auto& self, auto&& f)
    {
        f("who", self.who), f("given", self.given), f("sites", self.sites), f("plan", self.plan),
            f("days", self.days, Range{1, 3660}), f("waveform", self.waveform), f("direct_limit_ma", self.directLimit),
            f("pulsed_limit_ma", self.pulsedLimit), f("raise_s", self.raise), f("lower_s", self.lower),
            f("swapping_s", self.swapping), f("review", self.review), f("notes", self.notes), f("pad_cm2", self.pad),
            f("at_no_response", self.atNoResponse), f("contact", self.contact), f("level_ma", self.level);
    }
    bool operator==(const CareSheet&) const = default;
};

/// A question that the person wants to ask the prescriber.
struct Question {
    std::string text;
    static constexpr std::string_view kind = "question";
    static void fields(auto& self, auto&& f) { f("text", self.text); }
    bool operator==(const Question&) const = default;
};

/// One setting that the person chose. diary/Preferences.h reads the keys and holds the defaults.
struct Preference {
    std::string key;
    std::string value;
    static constexpr std::string_view kind = "preference";
    static void fields(auto& self, auto&& f) { f("key", self.key), f("value", self.value); }
    bool operator==(const Preference&) const = default;
};

/// Deletes the fact that it corrects. Nothing replaces that fact.
struct Retraction {
    std::string reason;
    static constexpr std::string_view kind = "retraction";
    static void fields(auto& self, auto&& f) { f("reason", self.reason); }
    bool operator==(const Retraction&) const = default;
};

} // namespace firstdew::facts
