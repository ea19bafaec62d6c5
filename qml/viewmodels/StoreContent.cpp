#include "StoreContent.h"

#include <algorithm>

namespace firstdew::viewmodels {

void StoreContent::open(const std::string& file, facts::LocalDate today)
{
    journal.reset();
    error.reset();
    facts.clear();
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
    if (!persons.empty() && std::find(persons.begin(), persons.end(), person) == persons.end())
        person = persons.front();
    assess(today);
}

void StoreContent::gather(facts::LocalDate today) { diary = diary::readDiary(facts, person, today); }

void StoreContent::assess(facts::LocalDate today)
{
    gather(today);
    situation = situation::assess(diary);
}

} // namespace firstdew::viewmodels
