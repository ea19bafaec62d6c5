#pragma once

#include "simulator/Phone.h"

namespace firstdew::simulator {

/// One life of a phone and its person, from a seed. Throws Broken where the oracle is contradicted.
class Life {
public:
    Life(const std::filesystem::path& folder, std::uint64_t seed, Counts& counts, Planted planted);
    void live(int days);

private:
    void begin();
    void day();
    void advanceTo(long long trueMs);
    void event();
    void misfortune();
    void trouble();
    void use();
    void answerQuestions();
    void checkIns();
    void answerNotice();
    void treat(Site site);
    void lead(const protocol::Script& script, const std::string& bath, bath::State state);
    bool keep(std::vector<Payload>& waiting);
    [[nodiscard]] bath::Event next(const bath::State& state);
    long long wait(bath::State& state);
    void surviving(bool powerCut);

    Counts& m_counts;
    Planted m_planted;
    Dice m_dice;
    Phone m_phone;
    std::vector<std::string> m_people;
};

} // namespace firstdew::simulator
