#include "StoreContent.h"

#include "journal/People.h"

#include <algorithm>

namespace firstdew::viewmodels {

void StoreContent::open(const std::string& file, facts::LocalDate today)
{
    journal.reset();
    error.reset();
    reader = diary::Reader({}, reader.person(), today);
    known = false;
    auto opened = journal::Journal::open(file);
    if (opened)
        journal.emplace(std::move(opened.value()));
    else
        error = opened.error();
    read(today);
}

void StoreContent::read(facts::LocalDate today)
{
    std::vector<facts::Fact> facts = reader.facts();
    if (journal) {
        auto all = journal->readAll();
        if (all) {
            facts = std::move(all.value());
            error.reset();
            known = true;
        } else {
            error = all.error();
        }
    }
    const auto persons = facts::personsIn(facts);
    std::string person = reader.person().empty() ? journal::drawId() : reader.person();
    if (!persons.empty() && std::find(persons.begin(), persons.end(), person) == persons.end())
        person = persons.front();
    reader = diary::Reader(std::move(facts), std::move(person), today);
    assess(today);
}

void StoreContent::assess(facts::LocalDate today)
{
    reader.turnTo(today);
    situation = situation::assess(reader.diary());
}

} // namespace firstdew::viewmodels
