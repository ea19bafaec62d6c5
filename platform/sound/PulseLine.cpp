// The sound server keeps minutes of what is to come, and plays on while the app's process stands still. PipeWire
// answers to the same interface.
#include "sound/LeadLine.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <deque>
#include <pulse/pulseaudio.h>

namespace firstdew::sound {

namespace {

/// One byte for a sample, so that the server's 4 MB hold more than four minutes.
constexpr pa_sample_spec kFormat{PA_SAMPLE_ULAW, 16'000, 1};
constexpr long long kPerMs = 16;
constexpr std::uint32_t kMost = 4 * 1024 * 1024;
constexpr std::uint32_t kRoom = 128 * 1024; ///< kept free, because the server counts a little differently
constexpr long long kAtATime = 64 * 1024;
/// What the server hands to the output at once; a change is heard that much later.
constexpr std::uint32_t kHandedOver = 50 * kPerMs;
/// For the way of a change to the server.
constexpr long long kOnTheWay = 25 * kPerMs;
constexpr pa_usec_t kTopUpUs = 5'000'000;
constexpr pa_usec_t kPauseUs = 4'000; ///< between two pieces
/// A word about positions that is older says nothing: the process stood still meanwhile.
constexpr pa_usec_t kFreshUs = 50'000;
constexpr std::size_t kOffsets = 15;
constexpr std::size_t kEnoughOffsets = 3;

/// G.711, without a table of its own: the segment is the place of the highest bit.
std::uint8_t muLaw(int sample)
{
    constexpr int kBias = 132;
    constexpr int kClip = 32'635;
    const int sign = sample < 0 ? 0x80 : 0;
    const int value = std::min(sample < 0 ? -sample : sample, kClip) + kBias;
    int segment = 7;
    for (int bit = 0x4000; segment > 0 && (value & bit) == 0; bit >>= 1)
        --segment;
    return static_cast<std::uint8_t>(~(sign | (segment << 4) | ((value >> (segment + 3)) & 0x0f)));
}

const std::array<std::uint8_t, 65'536>& muLaws()
{
    static const auto table = [] {
        std::array<std::uint8_t, 65'536> t{};
        for (int i = 0; i < 65'536; ++i)
            t[static_cast<std::size_t>(i)] = muLaw(i - 32'768);
        return t;
    }();
    return table;
}

class PulseLine final : public LeadLine {
public:
    PulseLine(Timeline timeline, std::function<void(bool)> told) : m_fresh(std::move(timeline)), m_told(std::move(told))
    {
    }
    ~PulseLine() override { close(); }

    void open() override;
    void close() override;
    [[nodiscard]] bool ready() const override { return m_ready; }
    void change(const std::function<void(Timeline&, Moment)>& change) override;
    void read(const std::function<void(const Timeline&, Moment)>& read) const override;

private:
    /// Holds off the thread that talks to the server.
    struct Lock {
        explicit Lock(pa_threaded_mainloop* loop) : loop(loop) { pa_threaded_mainloop_lock(loop); }
        ~Lock() { pa_threaded_mainloop_unlock(loop); }
        Lock(const Lock&) = delete;
        Lock& operator=(const Lock&) = delete;
        pa_threaded_mainloop* loop;
    };
    void contextChanged();
    void streamChanged();
    void fail();
    void lookAtClock();
    /// The sample that is heard now, or -1.
    [[nodiscard]] long long heard() const;
    /// The first sample that can still be changed.
    [[nodiscard]] long long changeable() const;
    [[nodiscard]] long long full() const;
    void writeSome();

    const Timeline m_fresh;
    Timeline m_timeline{m_fresh};
    std::function<void(bool)> m_told;
    pa_threaded_mainloop* m_loop = nullptr;
    pa_context* m_context = nullptr;
    pa_stream* m_stream = nullptr;
    pa_time_event* m_topUp = nullptr;
    long long m_written = 0;
    std::deque<long long> m_offsets; ///< of the stream's clock from the system's, in microseconds, the last ones
    long long m_offset = 0;          ///< their median
    std::atomic<bool> m_ready = false;
    std::atomic<bool> m_failed = false;
};

void PulseLine::open()
{
    if (m_failed)
        close();
    if (m_loop != nullptr)
        return;
    m_timeline = m_fresh;
    m_written = 0;
    m_offsets.clear();
    m_loop = pa_threaded_mainloop_new();
    pa_proplist* list = pa_proplist_new();
    pa_proplist_sets(list, PA_PROP_MEDIA_ROLE, "a11y"); // lets the sound server lower other programs
    pa_proplist_sets(list, PA_PROP_APPLICATION_NAME, "Firstdew");
    m_context = pa_context_new_with_proplist(pa_threaded_mainloop_get_api(m_loop), "Firstdew", list);
    pa_proplist_free(list);
    pa_context_set_state_callback(
        m_context, [](pa_context*, void* self) { static_cast<PulseLine*>(self)->contextChanged(); }, this);
    if (pa_context_connect(m_context, nullptr, PA_CONTEXT_NOAUTOSPAWN, nullptr) < 0 ||
        pa_threaded_mainloop_start(m_loop) < 0)
        fail();
}

void PulseLine::close()
{
    m_ready = false;
    m_failed = false;
    if (m_loop == nullptr)
        return;
    {
        const Lock lock(m_loop);
        pa_mainloop_api* api = pa_threaded_mainloop_get_api(m_loop);
        if (m_topUp != nullptr)
            api->time_free(m_topUp);
        if (m_stream != nullptr) {
            pa_stream_set_state_callback(m_stream, nullptr, nullptr);
            pa_stream_set_latency_update_callback(m_stream, nullptr, nullptr);
            pa_stream_disconnect(m_stream);
            pa_stream_unref(m_stream);
        }
        pa_context_set_state_callback(m_context, nullptr, nullptr);
        pa_context_disconnect(m_context);
        pa_context_unref(m_context);
    }
    pa_threaded_mainloop_stop(m_loop);
    pa_threaded_mainloop_free(m_loop);
    m_loop = nullptr;
    m_context = nullptr;
    m_stream = nullptr;
    m_topUp = nullptr;
}

void PulseLine::contextChanged()
{
    const pa_context_state_t state = pa_context_get_state(m_context);
    if (!PA_CONTEXT_IS_GOOD(state))
        fail();
    if (state != PA_CONTEXT_READY || m_stream != nullptr)
        return;
    m_stream = pa_stream_new(m_context, "session", &kFormat, nullptr);
    if (m_stream == nullptr) {
        fail();
        return;
    }
    pa_stream_set_state_callback(
        m_stream, [](pa_stream*, void* self) { static_cast<PulseLine*>(self)->streamChanged(); }, this);
    pa_buffer_attr room{};
    room.maxlength = kMost;
    room.tlength = kMost - kRoom;
    room.prebuf = 0; // time goes on whatever is written
    room.minreq = kHandedOver;
    room.fragsize = static_cast<std::uint32_t>(-1);
    const auto flags = static_cast<pa_stream_flags_t>(PA_STREAM_AUTO_TIMING_UPDATE | PA_STREAM_EARLY_REQUESTS);
    if (pa_stream_connect_playback(m_stream, nullptr, &room, flags, nullptr, nullptr) < 0)
        fail();
}

void PulseLine::streamChanged()
{
    const pa_stream_state_t state = pa_stream_get_state(m_stream);
    if (!PA_STREAM_IS_GOOD(state))
        fail();
    if (state != PA_STREAM_READY)
        return;
    m_topUp = pa_context_rttime_new(
        m_context, pa_rtclock_now() + kTopUpUs,
        [](pa_mainloop_api*, pa_time_event*, const timeval*, void* self) {
            static_cast<PulseLine*>(self)->writeSome();
        },
        this);
    pa_stream_set_latency_update_callback(
        m_stream, [](pa_stream*, void* self) { static_cast<PulseLine*>(self)->lookAtClock(); }, this);
    if (pa_operation* asked = pa_stream_update_timing_info(m_stream, nullptr, nullptr))
        pa_operation_unref(asked);
}

/// The server says where it is. The library's own interpolation is wrong for seconds after the process stood still.
void PulseLine::lookAtClock()
{
    const pa_timing_info* info = pa_stream_get_timing_info(m_stream);
    if (info == nullptr || info->read_index_corrupt != 0)
        return;
    timeval now{};
    const pa_usec_t age = pa_timeval_age(&info->timestamp);
    (void)pa_gettimeofday(&now);
    if (age > kFreshUs || pa_timeval_cmp(&info->timestamp, &now) > 0)
        return;
    const long long us =
        info->read_index * 1000 / kPerMs + static_cast<long long>(age) - static_cast<long long>(info->sink_usec);
    m_offsets.push_back(us - static_cast<long long>(pa_rtclock_now()));
    if (m_offsets.size() > kOffsets)
        m_offsets.pop_front();
    auto sorted = m_offsets;
    std::sort(sorted.begin(), sorted.end());
    m_offset = sorted[sorted.size() / 2];
    const bool ready = !m_failed && m_offsets.size() >= kEnoughOffsets;
    if (m_ready.exchange(ready) != ready)
        m_told(ready);
}

void PulseLine::fail()
{
    m_ready = false;
    if (!m_failed.exchange(true))
        m_told(false);
}

long long PulseLine::heard() const
{
    if (m_offsets.empty())
        return -1;
    return std::max(0LL, (static_cast<long long>(pa_rtclock_now()) + m_offset) * kPerMs / 1000);
}

long long PulseLine::changeable() const
{
    const pa_timing_info* info = pa_stream_get_timing_info(m_stream);
    const auto output = info != nullptr ? static_cast<long long>(info->configured_sink_usec) * kPerMs / 1000 : 0;
    return heard() + output + kOnTheWay;
}

long long PulseLine::full() const
{
    const pa_buffer_attr* room = pa_stream_get_buffer_attr(m_stream);
    return heard() + (room != nullptr ? static_cast<long long>(room->tlength) : 0) - kRoom;
}

/// A piece of what the server has not got. The next one comes a little later, so that a change need not wait for all.
void PulseLine::writeSome()
{
    const long long count = m_ready ? std::min(kAtATime, full() - m_written) : 0;
    pa_context_rttime_restart(m_context, m_topUp, pa_rtclock_now() + (count >= kAtATime ? kPauseUs : kTopUpUs));
    if (count <= 0 || heard() < 0)
        return;
    Samples samples(static_cast<std::size_t>(count));
    m_timeline.render(m_written, samples);
    std::vector<std::uint8_t> bytes(samples.size());
    std::transform(samples.begin(), samples.end(), bytes.begin(),
                   [&table = muLaws()](std::int16_t s) { return table[static_cast<std::size_t>(s + 32'768)]; });
    if (pa_stream_write(m_stream, bytes.data(), bytes.size(), nullptr, m_written, PA_SEEK_ABSOLUTE) < 0)
        fail();
    m_written += count;
}

void PulseLine::change(const std::function<void(Timeline&, Moment)>& change)
{
    if (!m_ready)
        return;
    const Lock lock(m_loop);
    if (heard() < 0)
        return;
    const Moment now{heard(), changeable()};
    change(m_timeline, now);
    m_written = now.changeable;
    writeSome(); // what is heard first
}

void PulseLine::read(const std::function<void(const Timeline&, Moment)>& read) const
{
    if (!m_ready)
        return;
    const Lock lock(m_loop);
    if (heard() >= 0)
        read(m_timeline, {heard(), changeable()});
}

} // namespace

std::unique_ptr<LeadLine> makeLeadLine(Timeline timeline, std::function<void(bool)> told)
{
    return std::make_unique<PulseLine>(std::move(timeline), std::move(told));
}

} // namespace firstdew::sound
