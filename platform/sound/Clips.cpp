#include "sound/Clips.h"

#include <QDebug>
#include <QFile>
#include <algorithm>
#include <cmath>
#include <cstring>
#include <numbers>
#include <sndfile.h>
#include <vector>

namespace firstdew::sound {

namespace {

constexpr int kTaps = 24; ///< of the resampler, to each side
constexpr int kMostSeconds = 120;
constexpr int kMostChannels = 8;

/// A file in memory, as libsndfile wants to read it.
struct Bytes {
    const QByteArray& all;
    sf_count_t at = 0;
};

SF_VIRTUAL_IO reading()
{
    SF_VIRTUAL_IO io{};
    io.get_filelen = [](void* of) -> sf_count_t { return static_cast<Bytes*>(of)->all.size(); };
    io.seek = [](sf_count_t offset, int whence, void* of) -> sf_count_t {
        auto* bytes = static_cast<Bytes*>(of);
        const sf_count_t from = whence == SEEK_SET ? 0 : whence == SEEK_CUR ? bytes->at : bytes->all.size();
        bytes->at = std::clamp<sf_count_t>(from + offset, 0, bytes->all.size());
        return bytes->at;
    };
    io.read = [](void* into, sf_count_t count, void* of) -> sf_count_t {
        auto* bytes = static_cast<Bytes*>(of);
        const sf_count_t some = std::clamp<sf_count_t>(count, 0, bytes->all.size() - bytes->at);
        std::memcpy(into, bytes->all.constData() + bytes->at, static_cast<std::size_t>(some));
        bytes->at += some;
        return some;
    };
    io.write = [](const void*, sf_count_t, void*) -> sf_count_t { return 0; };
    io.tell = [](void* of) -> sf_count_t { return static_cast<Bytes*>(of)->at; };
    return io;
}

/// Shannon's formula under a Hann window. What the lower of the two rates cannot carry is left out.
std::vector<float> resampled(const std::vector<float>& from, int rate)
{
    if (rate == kRate)
        return from;
    const double step = static_cast<double>(rate) / kRate;
    const double band = 0.95 * std::min(1.0, 1 / step);
    const auto reach = static_cast<long long>(std::ceil(kTaps / band));
    const auto length = static_cast<long long>(from.size());
    std::vector<float> out(static_cast<std::size_t>(static_cast<double>(length) / step));
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double at = static_cast<double>(i) * step;
        const auto middle = static_cast<long long>(at);
        double sum = 0;
        for (long long n = std::max(0LL, middle - reach); n <= std::min(length - 1, middle + reach); ++n) {
            const double x = at - static_cast<double>(n);
            const double phase = std::numbers::pi * band * x;
            const double window = 0.5 + 0.5 * std::cos(std::numbers::pi * x / static_cast<double>(reach + 1));
            sum += from[static_cast<std::size_t>(n)] * window * band * (x == 0 ? 1 : std::sin(phase) / phase);
        }
        out[i] = static_cast<float>(sum);
    }
    return out;
}

} // namespace

Samples samplesOf(const QByteArray& file)
{
    Bytes bytes{file};
    SF_VIRTUAL_IO io = reading();
    SF_INFO info{};
    const std::unique_ptr<SNDFILE, int (*)(SNDFILE*)> open(sf_open_virtual(&io, SFM_READ, &info, &bytes), &sf_close);
    if (!open || info.samplerate <= 0 || info.channels < 1 || info.channels > kMostChannels || info.frames < 0 ||
        info.frames > static_cast<sf_count_t>(info.samplerate) * kMostSeconds)
        return {};
    const auto channels = static_cast<std::size_t>(info.channels);
    std::vector<float> all(static_cast<std::size_t>(info.frames) * channels);
    const sf_count_t read = sf_readf_float(open.get(), all.data(), info.frames);
    std::vector<float> one(static_cast<std::size_t>(std::max<sf_count_t>(read, 0)));
    for (std::size_t i = 0; i < one.size(); ++i) {
        for (std::size_t c = 0; c < channels; ++c)
            one[i] += all[i * channels + c];
        one[i] /= static_cast<float>(channels);
    }
    one = resampled(one, info.samplerate);
    Samples out(one.size());
    std::ranges::transform(one, out.begin(), [](float s) {
        return static_cast<std::int16_t>(std::lround(std::clamp(s * 32'768.0F, -32'768.0F, 32'767.0F)));
    });
    return out;
}

Clips::~Clips()
{
    m_ends = true;
    if (m_fetching.joinable())
        m_fetching.join();
}

void Clips::fetch(const QStringList& files)
{
    if (m_fetches.exchange(true))
        return;
    if (m_fetching.joinable())
        m_fetching.join();
    m_fetching = std::thread([this, files] {
        for (const QString& file : files)
            if (!m_ends)
                (void)get(file);
        m_fetches = false;
    });
}

std::shared_ptr<const Samples> Clips::get(const QString& file)
{
    {
        const std::scoped_lock lock(m_mutex);
        if (const auto known = m_samples.find(file); known != m_samples.end())
            return known->second;
    }
    QFile source(file);
    auto decoded =
        std::make_shared<const Samples>(source.open(QIODevice::ReadOnly) ? samplesOf(source.readAll()) : Samples());
    if (decoded->empty())
        qWarning("not heard, for it cannot be decoded: %s", qPrintable(file));
    const std::scoped_lock lock(m_mutex);
    return m_samples.try_emplace(file, std::move(decoded)).first->second;
}

void Clips::forget(const QString& folder)
{
    const std::scoped_lock lock(m_mutex);
    std::erase_if(m_samples, [&](const auto& clip) { return clip.first.startsWith(folder); });
}

} // namespace firstdew::sound
