#pragma once

#include "facts/Fact.h"
#include "situation/Assess.h"

#include <string>
#include <vector>

// The people whom somebody teaches, sorted by who needs a call. Every record stays its own: nothing is merged, and
// nothing is written into it.
namespace firstdew::exchange {

using namespace facts;

/// Without a new entry for this long, somebody is silent (our own choice).
inline constexpr int kSilentDays = 21;
/// A first course without a session for this long has stopped (our own choice).
inline constexpr int kStoppedDays = 7;
/// A call for a top-up that stands for this long is overdue (our own choice).
inline constexpr int kOverdueDays = 7;

/// Why somebody needs a call, the weightiest first; or that nothing does.
enum class CallReason {
    SkinEvent,       ///< a blister or burn that no clinician has seen
    HealthAnswer,    ///< an answer stands in the way of every session
    StoppedInCourse, ///< a first course without a session for kStoppedDays
    NoResponse,      ///< the course was judged, and brought no response
    Overdue,         ///< a call for a top-up stands for kOverdueDays
    Shorter,         ///< the dry spells are getting shorter
    Silent,          ///< no entry for kSilentDays
    DoingWell
};

struct CallWhy {
    CallReason kind{};
    std::optional<DiarySite> site;
    LocalDate since;
    bool operator==(const CallWhy&) const = default;
};

/// One person of the caseload.
struct Case {
    std::string person; ///< id
    std::string name;
    std::string file;
    std::optional<LocalDate> newest; ///< day of the latest entry up to today
    std::vector<situation::SiteSituation> sites;
    std::vector<CallWhy> why; ///< never empty
    [[nodiscard]] bool call() const { return why.front().kind != CallReason::DoingWell; }
};

/// The facts that one file holds.
struct ReceivedFile {
    std::string file;
    std::vector<Fact> facts;
};

/// Everybody in those files on `today`, who needs a call first. Of several files with one person the one with the
/// latest entry counts.
[[nodiscard]] std::vector<Case> caseloadOf(const std::vector<ReceivedFile>& files, LocalDate today);

/// What a new care sheet for somebody begins with: the sheet in force there; else the sites in use, the pads of the
/// machine, the level agreed at a taught session of the one site, and the usual first course where none has begun.
/// Somebody who has begun gets no course anew by default.
[[nodiscard]] CareSheet sheetToBeginWith(const diary::Diary& diary);

} // namespace firstdew::exchange

namespace firstdew::facts {
FIRSTDEW_TOKENS(exchange::CallReason, "skin-event", "health-answer", "stopped-in-course", "no-response", "overdue",
                "shorter", "silent", "doing-well");
} // namespace firstdew::facts
