#pragma once

#include "diary/Reader.h"
#include "journal/Journal.h"
#include "situation/Assess.h"

#include <optional>
#include <string>

namespace firstdew::viewmodels {

/// A store, what it holds, and where things stand for one person on a day.
struct StoreContent {
    std::optional<journal::Journal> journal; ///< nothing where it could not be opened
    diary::Reader reader;                    ///< all facts, and the diary of the person shown
    situation::Situation situation;
    std::optional<facts::Error> error; ///< why it could not be opened or, the last time, read
    bool known = false;                ///< it was read since it was opened; without that nothing may be taken for empty

    /// Opens the store of that name, and reads it.
    void open(const std::string& file, facts::LocalDate today);
    /// Reads the open store anew; where that fails, what was read before stays. A person who is no longer there gives
    /// way to the first who is.
    void read(facts::LocalDate today);
    /// Judges where things stand on that day.
    void assess(facts::LocalDate today);
};

} // namespace firstdew::viewmodels
