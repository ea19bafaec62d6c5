#include "sound/SpokenCheck.h"

#include "sound/Clips.h"

#include <algorithm>
#include <cmath>
#include <span>

namespace firstdew::sound {

namespace {

constexpr std::size_t kPart = kRate / 50; ///< 20 ms
constexpr double kHeardDb = -50;          ///< of a part that counts as heard
// Our own choice, wide: recorded voices and eSpeak NG say 5.7 to 19 letters a second, in five languages, at -23 to -10
// dB. A voice that does not know the script spells it, with 1.2 to 1.5 letters a second (all 39 Arabic prompts in
// English). them.
constexpr double kSoftestDb = -40;
constexpr double kMostLettersASecond = 30;
constexpr double kFewestLettersASecond = 4;
constexpr double kAnyway = 1.5; ///< seconds that a short text may take besides
constexpr std::size_t kLead = kRate * 30 / 1000;
constexpr std::size_t kTail = kRate * 120 / 1000;
constexpr double kPeak = 0.708; ///< 3 dB below full scale

double powerOf(std::span<const std::int16_t> part)
{
    double sum = 0;
    for (const std::int16_t s : part)
        sum += static_cast<double>(s) * s;
    return part.empty() ? 0 : sum / static_cast<double>(part.size()) / (32'768.0 * 32'768.0);
}

} // namespace

Loudness loudnessOf(const Samples& samples)
{
    const double least = std::pow(10, kHeardDb / 10);
    double sum = 0;
    long long parts = 0;
    for (std::size_t at = 0; at + kPart <= samples.size(); at += kPart)
        if (const double power = powerOf({samples.data() + at, kPart}); power >= least) {
            sum += power;
            ++parts;
        }
    if (parts == 0)
        return {};
    return {static_cast<double>(parts) * kPart / kRate, 10 * std::log10(sum / static_cast<double>(parts))};
}

std::optional<Unspoken> faultOf(const Loudness& heard, int letters)
{
    if (heard.db < kSoftestDb)
        return Unspoken::Silent;
    if (heard.seconds < letters / kMostLettersASecond)
        return Unspoken::TooShort;
    if (heard.seconds > letters / kFewestLettersASecond + kAnyway)
        return Unspoken::TooLong;
    return std::nullopt;
}

Samples evened(const Samples& samples)
{
    const double least = std::pow(10, kHeardDb / 10);
    const auto heard = [&](std::size_t at) { return powerOf({samples.data() + at, kPart}) >= least; };
    std::size_t first = 0;
    std::size_t last = samples.size() / kPart * kPart;
    while (first + kPart <= last && !heard(first))
        first += kPart;
    while (last >= first + kPart && !heard(last - kPart))
        last -= kPart;
    int peak = 1;
    for (std::size_t i = first; i < last; ++i)
        peak = std::max(peak, std::abs(static_cast<int>(samples[i])));
    const double scale = kPeak * 32'767 / peak;
    Samples out(kLead, 0);
    for (std::size_t i = first; i < last; ++i)
        out.push_back(static_cast<std::int16_t>(std::lround(samples[i] * scale)));
    out.resize(out.size() + kTail, 0);
    return out;
}

} // namespace firstdew::sound
