#pragma once

#include <cstdint>
#include <random>
#include <string>

namespace firstdew::simulator {

/// All chance of one life: the same seed gives the same life.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_engine(seed) {}
    /// From 0 to n - 1.
    long long below(long long n) { return static_cast<long long>(m_engine() % static_cast<std::uint64_t>(n)); }
    bool oneIn(long long n) { return below(n) == 0; }
    bool percent(int chance) { return below(100) < chance; }
    /// 32 hex digits, as the store draws them.
    std::string id()
    {
        std::string out;
        while (out.size() < 32)
            out += "0123456789abcdef"[below(16)];
        return out;
    }

private:
    std::mt19937_64 m_engine; // the standard fixes its numbers; its distributions it does not
};

} // namespace firstdew::simulator
