#pragma once

#include "protocol/Limits.h"
#include "situation/Working.h"

#include <optional>
#include <string>
#include <vector>

// What a reader of the prescriber's page wants to know first, found in the diary.
namespace firstdew::summary {

using namespace facts;
using diary::Diary;

/// A session in which the meter was above the limit, as read during it or as logged afterwards.
struct OverLimitEpisode {
    LocalDate date;
    Site site{};
    Waveform waveform{};
    Milliamps peak;
    Milliamps limit;                ///< of that session; where only the log tells of it, of today or the trade's
    std::optional<Seconds> seconds; ///< time above it; nullopt where only the log tells of it
    bool operator==(const OverLimitEpisode&) const = default;
};
/// Such sessions from `from` on, oldest first, each once.
[[nodiscard]] std::vector<OverLimitEpisode> overLimitFrom(const Diary& diary, LocalDate from);

/// A limit in force for one kind of session and waveform.
struct LimitInForce {
    Site site{};
    Waveform waveform{};
    protocol::LimitAnswer answer;
    std::string setBy; ///< who gave the care sheet; empty where the trade's limit or the contact area decides
};
/// The limits of every kind of session in use, with each waveform that is open there.
[[nodiscard]] std::vector<LimitInForce> limitsInForce(const Diary& diary);

/// The highest comfortable level at a site, and what it means.
struct HighestLevel {
    Milliamps level;
    Waveform waveform{};
    LocalDate date;
    std::optional<Milliamps> limit; ///< in force today for that waveform; nullopt if it is not open any more
    bool operator==(const HighestLevel&) const = default;
};
/// For each waveform the highest comfortable level of sessions from `from` on that treated `site`. A session with a
/// blister or burn, noted with it or by the next day, was not comfortable, whatever was said of it.
[[nodiscard]] std::vector<HighestLevel> highestLevels(const Diary& diary, DiarySite site, LocalDate from);

struct ScoreOn {
    LocalDate date;
    int score = 1;
    bool operator==(const ScoreOn&) const = default;
};
/// The severity scores of a site from `from` on, and the last one before it.
[[nodiscard]] std::vector<ScoreOn> scoresFrom(const Diary& diary, DiarySite site, LocalDate from);

/// The page in a word; the gravest of its sites.
enum class Verdict { StopAndLook, Blocked, NotYet, Partly, Working, TooEarly, NotStarted };

/// What the reader is asked to do, the most urgent first.
enum class AskKind {
    LookAtSkin,   ///< site, date: a blister or burn that no clinician has seen
    OverLimit,    ///< count of sessions above the limit
    HealthAnswer, ///< row, date: an answer stands in the way of every session
    NoResponse,   ///< site: the course brought no response
    Review,       ///< date named on the care sheet, today or past
    Questions     ///< count of questions that the person wrote down
};
struct Ask {
    AskKind kind{};
    std::optional<DiarySite> site;
    std::optional<ScreeningRow> row;
    std::optional<LocalDate> date;
    int count = 0;
    std::optional<SkinFinding> finding{}; ///< of LookAtSkin
    bool operator==(const Ask&) const = default;
};
/// What the reader is asked for the days from `from` to the diary's day.
[[nodiscard]] std::vector<Ask> asksOf(const Diary& diary, const situation::Situation& situation, LocalDate from);

/// StopAndLook while a blister or burn bars a site; Blocked while a health answer does; otherwise the least good answer
/// of the sites that have one; NotStarted before the first session.
[[nodiscard]] Verdict verdictOf(const Diary& diary, const situation::Situation& situation);

} // namespace firstdew::summary

namespace firstdew::facts {
FIRSTDEW_TOKENS(summary::Verdict, "stop-and-look", "blocked", "not-yet", "partly", "working", "too-early",
                "not-started");
FIRSTDEW_TOKENS(summary::AskKind, "look-at-skin", "over-limit", "health-answer", "no-response", "review", "questions");
} // namespace firstdew::facts
