#include "Opened.h"

#include <algorithm>

namespace firstdew::viewmodels {

void Opened::open(const std::string& file, facts::LocalDate today)
{
    journal.reset();
    error.reset();
    auto opened = journal::Journal::open(file);
    if (opened)
        journal.emplace(std::move(opened.value()));
    else
        error = opened.error();
    read(today);
}

void Opened::read(facts::LocalDate today)
{
    facts.clear();
    if (journal) {
        auto all = journal->readAll();
        if (all) {
            facts = std::move(all.value());
            error.reset();
        } else {
            error = all.error();
        }
    }
    const auto known = facts::personsIn(facts);
    if (!known.empty() && std::find(known.begin(), known.end(), person) == known.end())
        person = known.front();
    look(today);
}

void Opened::look(facts::LocalDate today)
{
    record = facts::recordOf(facts, person);
    situation = situation::assess(record, today);
}

} // namespace firstdew::viewmodels
