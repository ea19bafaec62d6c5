#include "diary/Reader.h"

#include "core/RandomFacts.h"

#include <catch2/catch.hpp>
#include <random>

using namespace firstdew::diary;

namespace {

const LocalDate kStart(20500);

/// A person's facts as they come in: most in order, some of an earlier or a later day, some corrections (also of
/// corrections, of facts that come later, and of nothing), some of another person.
class Stream {
public:
    explicit Stream(unsigned seed) : m_random(seed), m_facts(firstdew::testing::RandomFacts(seed).many(120)) {}

    std::vector<Fact> facts()
    {
        for (std::size_t i = 0; i < m_facts.size(); ++i) {
            Fact& f = m_facts[i];
            const int day = static_cast<int>(i) / 8;
            f.id = std::to_string(i);
            f.person = below(12) == 0 ? "other" : "me";
            f.recordedMs = static_cast<long long>(i) * 1000;
            f.happened = {kStart + day, {static_cast<int>(i) % 8 * 100}};
            if (below(10) == 0)
                f.happened.date = f.happened.date + (below(7) - 3);
            f.corrects.clear();
            if (below(9) == 0)
                f.corrects = std::to_string(below(static_cast<int>(i) + 6));
            else if (std::holds_alternative<Retraction>(f.payload))
                f.payload = CheckIn{DiarySite::Hands, Level::Clammy, {}};
        }
        return m_facts;
    }

private:
    int below(int n) { return static_cast<int>(m_random() % static_cast<unsigned>(n)); }

    std::mt19937 m_random;
    std::vector<Fact> m_facts;
};

} // namespace

TEST_CASE("a diary that adds facts one by one equals a diary read from all of them")
{
    for (unsigned seed = 1; seed <= 8; ++seed) {
        const auto facts = Stream(seed).facts();
        Reader reader({}, "me", kStart);
        std::vector<Fact> soFar;
        for (std::size_t i = 0; i < facts.size(); ++i) {
            const LocalDate today = kStart + static_cast<int>(i) / 8;
            reader.turnTo(today);
            reader.add(facts[i]);
            soFar.push_back(facts[i]);
            INFO("seed " << seed << ", fact " << i);
            REQUIRE(reader.diary() == readDiary(soFar, "me", today));
        }
        reader.turnTo(kStart + 3); // the clock is set back
        CHECK(reader.diary() == readDiary(soFar, "me", kStart + 3));
        reader.setPerson("other");
        CHECK(reader.diary() == readDiary(soFar, "other", kStart + 3));
    }
}

TEST_CASE("a copy of a diary starts without its cache and still equals the original")
{
    const auto facts = Stream(3).facts();
    const Diary diary = readDiary(facts, "me", kStart + 20);
    const Diary copy = diary; // NOLINT(performance-unnecessary-copy-initialization)
    CHECK(copy == diary);
}
