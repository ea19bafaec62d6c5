#pragma once

#include "diary/Diary.h"

#include <array>
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

namespace firstdew::diary {

/// Holds all facts of a store and keeps one person's diary up to date. A fact that is newer than all others of its kind
/// is added to the diary directly. A correction, a fact out of order or a fact dated ahead makes the reader read
/// everything again.
class Reader {
public:
    Reader() { m_diary.today = LocalDate(); }
    Reader(std::vector<Fact> facts, std::string person, LocalDate today);

    [[nodiscard]] const Diary& diary() const { return m_diary; }
    [[nodiscard]] const std::vector<Fact>& facts() const { return m_facts; }
    [[nodiscard]] const std::string& person() const { return m_person; }

    /// Adds a fact that was recorded after all others.
    void add(Fact fact);
    /// Moves the diary to another day.
    void turnTo(LocalDate today);
    /// Switches to the diary of another person.
    void setPerson(std::string person);

private:
    using Moment = std::pair<LocalTime, long long>;

    void readAnew();
    [[nodiscard]] bool follows(const Fact& fact) const;

    std::vector<Fact> m_facts;
    std::string m_person;
    Diary m_diary;
    std::array<Moment, std::variant_size_v<Payload>> m_latest; ///< of each kind of fact
    std::unordered_set<std::string> m_corrected;               ///< ids that some fact corrects
    bool m_ahead = false;                                      ///< some fact is dated after today
};

} // namespace firstdew::diary
