#pragma once

#include "diary/Diary.h"
#include "outlook/HoldRatio.h"

#include <optional>
#include <span>
#include <vector>

// Is a shorter session enough? A comparison that a person chose to make at one site: pairs of dry spells, one after the
// usual session and one after a shorter one, in random order. Only the time under current is shorter. It changes no
// current and no limit, and every gate before a session stays as it is.
namespace firstdew::situation {

using namespace facts;
using diary::Diary;
struct SiteSituation;

/// Why a comparison ended. Beginning again is a new comparison.
enum class ComparisonEnd {
    AllPairs,       ///< every pair is complete
    PlainlyLess,    ///< the shorter session plainly held less, see outlook::plainlyLess
    Left,           ///< the person left it
    Skin,           ///< a blister or burn at the site
    Sweating,       ///< wet twice within two days, at rest and with no session between: a new course is due
    Course,         ///< a new course was chosen
    OtherTreatment, ///< something else began to dry the site
    Lapsed          ///< kMostUncounted sessions in a row did not count
};

/// Why it rests today. The sessions are then the usual ones, and the forecast calls for top-ups again.
enum class ComparisonRest {
    Paused,     ///< the person paused the site
    OtherKind,  ///< the site is treated together with another one now
    NoCheckIns, ///< none for kSilentDays: nobody would notice dampness
    Barred,     ///< a health answer, the birth date or the machine bars every session
    Sweating    ///< sweating is likely, and a new course is called for
};

/// Length of the shorter session that is offered, in parts of the usual one: as short as it may be, which tells most
/// (our own choice).
inline constexpr double kShorterOffered = 0.5;
/// So many sessions in a row that do not count end a comparison (our own choice).
inline constexpr int kMostUncounted = 3;
/// Days without a check-in from which a comparison rests (our own choice, cautious).
inline constexpr int kSilentDays = 3;
/// Wet reports so many days apart at most call for a new course, as in assess().
inline constexpr int kWetWithin = 2;
/// Dry spells noted before a comparison may begin; at least outlook::kSpellsThatTell of them seen to their end (our own
/// choice).
inline constexpr int kSpellsBefore = 5;
/// The latest sessions that have to be led, completed and alike before one may begin (our own choice).
inline constexpr int kSessionsBefore = 3;
/// Days after a finding on the skin on which none may begin (our own choice, cautious).
inline constexpr int kSkinDays = 14;

/// Where the comparison of a site stands.
struct Compared {
    LocalDate since;
    double shorter = 0.5;                     ///< length of the shorter session in parts of the usual one
    std::vector<outlook::ComparedSpell> done; ///< the spells that count and are over, oldest first
    bool under = false;                       ///< a spell that counts goes on
    bool underShorter = false;                ///< and it followed the shorter session
    bool nextShorter = false;                 ///< the next session is to be the shorter one
    std::optional<ComparisonEnd> ended;
    LocalDate endedOn;
    std::optional<ComparisonRest> rests;

    [[nodiscard]] bool runs() const { return !ended && !rests; }
    /// The pair that the present spell, or the next session, belongs to: 1 to outlook::kPairs.
    [[nodiscard]] int pair() const;
};

/// The latest comparison of the site, or nullopt if there was none. What is called for today is not looked at: assess()
/// adds ComparisonRest::Sweating.
///
/// A session counts if the app led it in one go, it was completed, no other session treated that skin on the day, its
/// length is the one asked for and its current of the kind of the first one. A session that does not count is asked for
/// again, also one whose spell says nothing, or in which something else dried the site. The spell after a session is an
/// interval: from the last dry report to the first clammy one, or open at the next session of that skin. As in
/// forecasts, a clammy report with a circumstance does not count if a dry one follows. Otherwise reports are taken as
/// they stand, so wrong ones blur both lengths alike.
[[nodiscard]] std::optional<Compared> comparisonAt(const Diary& diary, const diary::SiteInUse& use);

/// Whether session `number` (from 0) of the comparison is the shorter one. Each pair has one, first or second by the
/// seed.
[[nodiscard]] bool shorterAt(int seed, int number);

/// The day from which the forecast would call again if no check-in followed. Needs a comparison that runs.
[[nodiscard]] LocalDate restsFrom(const Diary& diary, DiarySite site, const Compared& compared);

/// Length of each phase of the shorter session: whole half minutes, at least protocol::kLeastHold of the usual one.
[[nodiscard]] Seconds shorterHold(Site site, double shorter);

/// Length of each phase of the next session at `site`, if a comparison asks for the shorter one.
[[nodiscard]] std::optional<Seconds> comparedHold(std::span<const SiteSituation> sites, Site site);

/// What the spells so far say. Nullopt before they say anything.
[[nodiscard]] std::optional<outlook::HoldRatio> heldIn(const Compared& compared);

/// Why no comparison may begin at a site.
enum class ComparisonBar {
    Runs,           ///< one has begun and not ended
    AdultsOnly,     ///< a child's sessions are not shortened (our own choice, cautious)
    TwoSites,       ///< one session treats two sites: a spell of each follows it
    NotKeepingDry,  ///< the first course was not completed and reviewed, or the site is not in a state of top-ups
    NoResponse,     ///< the course brought no response by the score, or none is known
    Barred,         ///< skin, health answer, birth date or machine bars a session
    SkinRecently,   ///< a finding on the skin within kSkinDays
    OtherTreatment, ///< something else dries the site
    Shortening,     ///< the dry spells have become shorter
    FewSpells,      ///< fewer than kSpellsBefore are known, or the usual length is not
    SessionsUnlike, ///< the latest sessions were not led by the app, or not alike
    NoCheckIns      ///< the diary is not kept
};
/// The first bar at the site, or nullopt if a comparison may begin today.
[[nodiscard]] std::optional<ComparisonBar> comparisonBar(const Diary& diary, const SiteSituation& site);

} // namespace firstdew::situation

namespace firstdew::facts {
FIRSTDEW_TOKENS(situation::ComparisonEnd, "all-pairs", "plainly-less", "left", "skin", "sweating", "course",
                "other-treatment", "lapsed");
FIRSTDEW_TOKENS(situation::ComparisonRest, "paused", "other-kind", "no-check-ins", "barred", "sweating");
FIRSTDEW_TOKENS(situation::ComparisonBar, "runs", "adults-only", "two-sites", "not-keeping-dry", "no-response",
                "barred", "skin-recently", "other-treatment", "shortening", "few-spells", "sessions-unlike",
                "no-check-ins");
} // namespace firstdew::facts
