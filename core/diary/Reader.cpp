#include "diary/Reader.h"

#include "diary/Notes.h"

#include <algorithm>

namespace firstdew::diary {

Reader::Reader(std::vector<Fact> facts, std::string person, LocalDate today)
    : m_facts(std::move(facts)), m_person(std::move(person))
{
    m_diary.today = today;
    readAnew();
}

void Reader::add(Fact fact)
{
    const bool inOrder = follows(fact);
    const bool mine = fact.person == m_person;
    m_facts.push_back(std::move(fact));
    if (!mine)
        return;
    if (!inOrder) {
        readAnew();
        return;
    }
    const Fact& f = m_facts.back();
    m_latest[f.payload.index()] = {f.happened, f.recordedMs};
    std::visit(
        [&](const auto& payload) {
            Notes(m_diary).note(Entry<std::decay_t<decltype(payload)>>{f.id, f.happened, f.recordedMs,
                                                                       m_facts.size() - 1, false, payload});
        },
        f.payload);
}

bool Reader::follows(const Fact& fact) const
{
    return fact.corrects.empty() && !m_corrected.contains(fact.id) && fact.happened.date <= m_diary.today &&
           m_latest[fact.payload.index()] <= Moment(fact.happened, fact.recordedMs);
}

void Reader::turnTo(LocalDate today)
{
    const bool onward = today >= m_diary.today && !m_ahead;
    m_diary.today = today;
    if (!onward)
        readAnew();
}

void Reader::setPerson(std::string person)
{
    m_person = std::move(person);
    readAnew();
}

void Reader::readAnew()
{
    m_diary = readDiary(m_facts, m_person, m_diary.today);
    m_latest.fill({{LocalDate(-10'000'000), {}}, 0});
    m_corrected.clear();
    m_ahead = false;
    for (const Fact& f : m_facts) {
        if (f.person != m_person)
            continue;
        Moment& latest = m_latest[f.payload.index()];
        latest = std::max(latest, Moment(f.happened, f.recordedMs));
        if (!f.corrects.empty())
            m_corrected.insert(f.corrects);
        m_ahead = m_ahead || f.happened.date > m_diary.today;
    }
}

} // namespace firstdew::diary
