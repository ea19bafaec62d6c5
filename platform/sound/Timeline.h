#pragma once

#include <cstddef>
#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

namespace firstdew::sound {

using Samples = std::vector<std::int16_t>;

/// What a session sounds like from now on, sample by sample: a soft bed, what is being said, and what is planned. All
/// positions are samples since the line was opened.
class Timeline {
public:
    /// A sound that is to begin at `due`.
    struct Sound {
        long long due = 0;
        std::shared_ptr<const Samples> samples;
        std::string id{};
        bool spoken = false; ///< its leading silence is left out behind another sound
        bool cuts = false;   ///< an alarm: begins at its time, over nothing else, and is never too late
    };

    /// `lead` is the silence that every prompt begins with. What would begin more than `late` after its time is left
    /// out.
    Timeline(long long lead, long long late) : m_lead(lead), m_late(late) {}
    void setBed(std::shared_ptr<const Samples> bed) { m_bed = std::move(bed); }

    /// Adds a sound behind those that are being said or wait.
    void add(long long now, Sound sound);
    /// Replaces what is planned. What is being said goes on, and what waits for it stays. The bed ends at `end`.
    void plan(long long now, std::vector<Sound> planned, long long end);
    /// Nothing is said or planned any more. The bed goes on for as long as it would.
    void hush();
    /// No bed any more either.
    void end(long long now);

    /// How long something is being said, or waits to be, apart from what is planned.
    [[nodiscard]] long long left(long long now) const;
    /// The samples from `from` on.
    void render(long long from, std::span<std::int16_t> out) const;
    /// Whether there is silence from that position on.
    [[nodiscard]] bool silentFrom(long long at) const;

private:
    struct Placed {
        long long start = 0;
        long long stop = 0;
        std::size_t skip = 0; ///< of its samples
        Sound sound;
        bool planned = false;
    };
    void settle(long long now);
    void place(Sound sound, long long earliest, bool planned);
    void layOut(long long now);

    long long m_lead;
    long long m_late;
    long long m_end = 0;
    std::shared_ptr<const Samples> m_bed;
    std::vector<Placed> m_placed; ///< in the order of time, without overlap
    std::vector<Sound> m_planned;
};

} // namespace firstdew::sound
