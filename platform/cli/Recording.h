#pragma once

#include "Verb.h"

// What the verbs that add to a store have in common: every input is judged before the store is touched.
namespace firstdew::cli {

/// The day and minute meant by `--date` and `--at` (may be empty: `otherwise`). Refused: a day that has not
/// come yet (one day's grace, for the zones east of here) and one more than 50 years back.
facts::LocalTime happenedOption(const std::string& date, const std::string& at, facts::MinuteOfDay otherwise);

/// A current as read off a meter. Refused: below zero, not a number, above 100 mA. A reading above a limit is
/// taken: what was seen has to be kept.
facts::Milliamps currentOption(const std::string& option, double value);

/// What is in the store, or nothing where there is none yet. Who is going to write reads what the store is once it was
/// brought up to date: persons may be called otherwise in an older one. Refused: a file that cannot be read as a store.
std::vector<facts::Fact> factsIn(const std::string& store, bool toWrite = true);

/// Somebody whose facts are recorded. A name is given where the person is new and was named.
struct Who {
    std::string id;
    std::string newName;
};

/// Whose record is meant: the person named, or the only one. Somebody the store does not know has to be announced by
/// `isNew`, so that a slip of the finger does not begin another person's record. Who is new gets an id drawn at random.
Who personToRecord(const std::vector<facts::Fact>& facts, const std::string& named, bool isNew);

/// Adds one fact, making the store where there is none, after the name of a person who is new; nothing is made for a
/// fact that cannot be kept. Returns the fact's id.
std::string record(const std::string& store, facts::Fact fact, const std::string& newName = {});

/// Adds facts to the store in one transaction, or none of them. Returns their ids.
std::vector<std::string> recordAll(const std::string& store, std::vector<facts::Fact> facts);

} // namespace firstdew::cli
