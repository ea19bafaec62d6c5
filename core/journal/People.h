#pragma once

#include "codec/Incoming.h"

#include <string>
#include <string_view>
#include <vector>

// Whose record a fact belongs to. Persons carry ids drawn at random, so that two records never meet by chance. Earlier
// versions called the first person of every store "p1", which tells nobody apart.
namespace firstdew::journal {

using namespace facts;

/// 32 random hex digits.
[[nodiscard]] std::string drawId();

/// Whether an id was given by an earlier version: "p1", "p2" …
[[nodiscard]] bool isEarlierId(std::string_view person);

/// Gives persons with ids of earlier versions one of their own, the same for the same record wherever it is done: the
/// id of their first fact, which was drawn at random. Only where that is none of 32 hex digits an id is drawn anew.
void renameEarlierPersons(std::vector<Fact>& facts);

/// What is done with a person of an import who is not surely the one recorded.
enum class Doubtful { Refuse, AsNewPerson };

/// Puts the facts of an import under the persons they belong to. An id of an earlier version is that of the recorded
/// person who shares a fact with it, or name and birth date. Refused, naming file and line: a person whose name or
/// birth date is another than that of the person recorded under the id (person-differs), and an earlier version's id
/// that may be anybody's (person-unsure); with AsNewPerson each of these becomes a person with an id of its own.
[[nodiscard]] Result<std::vector<codec::Incoming>> assignPersons(const std::vector<Fact>& recorded,
                                                                 std::vector<codec::Incoming> incoming,
                                                                 Doubtful doubtful = Doubtful::Refuse);

} // namespace firstdew::journal
