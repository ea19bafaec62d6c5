#pragma once

#include "facts/Record.h"
#include "journal/Journal.h"
#include "situation/Assess.h"

#include <optional>
#include <string>
#include <vector>

namespace firstdew::viewmodels {

/// A store, what it holds, and where things stand for one person on a day. Needs nothing of the toolkit, so that it can
/// be read while that starts.
struct Opened {
    std::optional<journal::Journal> journal; ///< nothing where it could not be opened
    std::vector<facts::Fact> facts;
    std::string person = "p1";
    facts::Record record;
    situation::Situation situation;
    std::optional<facts::Error> error; ///< why it could not be opened or read

    /// Opens the store of that name, and reads it.
    void open(const std::string& file, facts::LocalDate today);
    /// Reads the open store anew. A person who is no longer there gives way to the first who is.
    void read(facts::LocalDate today);
    /// Judges what was read.
    void look(facts::LocalDate today);
};

} // namespace firstdew::viewmodels
