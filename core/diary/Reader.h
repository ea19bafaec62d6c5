#pragma once

#include "diary/Diary.h"

#include <array>
#include <string>
#include <unordered_set>
#include <utility>
#include <vector>

namespace firstdew::diary {

/// All facts of a store and the diary of one person in it, kept true from one fact to the next. A fact that follows all
/// others of its kind is taken in at once; a correction, a fact out of order and one dated ahead read everything anew.
class Reader {
public:
    Reader() { m_diary.today = LocalDate(); }
    Reader(std::vector<Fact> facts, std::string person, LocalDate today);

    [[nodiscard]] const Diary& diary() const { return m_diary; }
    [[nodiscard]] const std::vector<Fact>& facts() const { return m_facts; }
    [[nodiscard]] const std::string& person() const { return m_person; }

    /// Takes in a fact that was recorded after all others.
    void add(Fact fact);
    /// Reads as of another day.
    void turnTo(LocalDate today);
    /// Reads another person's diary.
    void setPerson(std::string person);

private:
    using Moment = std::pair<LocalTime, long long>;

    void readAnew();
    [[nodiscard]] bool follows(const Fact& fact) const;

    std::vector<Fact> m_facts;
    std::string m_person;
    Diary m_diary;
    std::array<Moment, std::variant_size_v<Payload>> m_latest; ///< of each kind
    std::unordered_set<std::string> m_corrected;               ///< ids that some fact corrects
    bool m_ahead = false;                                      ///< something is dated after today
};

} // namespace firstdew::diary
