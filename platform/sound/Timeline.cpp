#include "sound/Timeline.h"

#include <algorithm>
#include <cstdlib>

namespace firstdew::sound {

namespace {

/// The clock of the line and that of the session are this far apart at most, in samples.
constexpr long long kSameMoment = 16'000;
/// The bed comes and goes within this many samples, without a click.
constexpr long long kFade = 4'000;

std::int16_t sum(int a, int b) { return static_cast<std::int16_t>(std::clamp(a + b, -32768, 32767)); }

} // namespace

/// What has begun, or should have and waits for its turn, is not planned any more but being said.
void Timeline::settle(long long now)
{
    std::erase_if(m_placed, [&](const Placed& p) { return p.stop <= now - kSameMoment; });
    for (Placed& p : m_placed)
        if (p.planned && (p.start <= now || p.sound.due <= now)) {
            p.planned = false;
            std::erase_if(m_planned, [&](const Sound& s) { return s.due == p.sound.due && s.id == p.sound.id; });
        }
    std::erase_if(m_placed, [](const Placed& p) { return p.planned; });
}

void Timeline::place(Sound sound, long long earliest, bool planned)
{
    if (!sound.samples || sound.samples->empty())
        return;
    if (sound.cuts) {
        for (Placed& p : m_placed)
            p.stop = std::min(p.stop, std::max(sound.due, earliest));
        std::erase_if(m_placed, [](const Placed& p) { return p.start >= p.stop; });
    }
    const long long before = m_placed.empty() ? 0 : m_placed.back().stop;
    const long long start = std::max({sound.due, earliest, before});
    if (!sound.cuts && start - sound.due > m_late)
        return;
    const bool follows = sound.spoken && start == before && before > 0;
    const auto skip = follows ? std::min<std::size_t>(static_cast<std::size_t>(m_lead), sound.samples->size()) : 0;
    const long long stop = start + static_cast<long long>(sound.samples->size() - skip);
    m_placed.push_back({start, stop, skip, std::move(sound), planned});
}

void Timeline::layOut(long long now)
{
    for (const Sound& s : m_planned)
        place(s, now, true);
}

void Timeline::add(long long now, Sound sound)
{
    settle(now);
    sound.due = now;
    place(std::move(sound), now, false);
    layOut(now);
}

void Timeline::plan(long long now, std::vector<Sound> planned, long long end)
{
    settle(now);
    // The same sound at the same moment has begun already, a little before the session knew.
    std::erase_if(planned, [&](const Sound& s) {
        return std::any_of(m_placed.begin(), m_placed.end(), [&](const Placed& p) {
            return p.sound.id == s.id && std::llabs(p.sound.due - s.due) < kSameMoment;
        });
    });
    m_planned = std::move(planned);
    m_end = end;
    layOut(now);
}

void Timeline::hush()
{
    m_placed.clear();
    m_planned.clear();
}

void Timeline::end(long long now)
{
    settle(now);
    m_planned.clear();
    m_end = std::min(m_end, now + kFade);
}

long long Timeline::left(long long now) const
{
    long long until = now;
    for (const Placed& p : m_placed)
        if (!p.planned || p.start <= now || p.sound.due <= now)
            until = std::max(until, p.stop);
    return until - now;
}

void Timeline::render(long long from, std::span<std::int16_t> out) const
{
    std::fill(out.begin(), out.end(), std::int16_t{0});
    const auto upTo = [&](long long stop) { return std::clamp(stop - from, 0LL, static_cast<long long>(out.size())); };
    const long long bed = m_bed && !m_bed->empty() ? upTo(m_end) : 0;
    for (long long i = 0; i < bed; ++i) {
        const long long at = from + i;
        const long long level = std::clamp(std::min(at, m_end - at), 0LL, kFade);
        const int sample = (*m_bed)[static_cast<std::size_t>(at) % m_bed->size()];
        out[static_cast<std::size_t>(i)] = static_cast<std::int16_t>(sample * level / kFade);
    }
    for (const Placed& p : m_placed)
        for (long long i = upTo(p.start); i < upTo(p.stop); ++i) {
            const auto at = static_cast<std::size_t>(from + i - p.start) + p.skip;
            auto& sample = out[static_cast<std::size_t>(i)];
            sample = sum(sample, (*p.sound.samples)[at]);
        }
}

bool Timeline::silentFrom(long long at) const
{
    return m_end <= at && std::all_of(m_placed.begin(), m_placed.end(), [&](const Placed& p) { return p.stop <= at; });
}

} // namespace firstdew::sound
