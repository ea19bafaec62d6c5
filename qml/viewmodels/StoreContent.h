#pragma once

#include "diary/Diary.h"
#include "journal/Journal.h"
#include "situation/Assess.h"

#include <optional>
#include <string>
#include <vector>

namespace firstdew::viewmodels {

/// A store, what it holds, and where things stand for one person on a day. Needs nothing of the toolkit, so that it can
/// be read while that starts.
struct StoreContent {
    std::optional<journal::Journal> journal; ///< nothing where it could not be opened
    std::vector<facts::Fact> facts;
    std::string person = "p1";
    diary::Diary diary; ///< of that person and day
    situation::Situation situation;
    std::optional<facts::Error> error; ///< why it could not be opened or, the last time, read
    bool known = false;                ///< it was read since it was opened; without that nothing may be taken for empty

    /// Opens the store of that name, and reads it.
    void open(const std::string& file, facts::LocalDate today);
    /// Reads the open store anew; where that fails, what was read before stays. A person who is no longer there gives
    /// way to the first who is.
    void read(facts::LocalDate today);
    /// Brings the diary in step with the facts.
    void gather(facts::LocalDate today);
    /// The same, and judges where things stand.
    void assess(facts::LocalDate today);
};

} // namespace firstdew::viewmodels
