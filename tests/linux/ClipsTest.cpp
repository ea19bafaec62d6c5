#include "sound/Clips.h"
#include "sound/SpokenCheck.h"

#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>
#include <sndfile.h>

using namespace firstdew;
using sound::kRate;
using sound::Samples;

namespace {

const QString kVoices = QStringLiteral(SOURCE_DIR "/assets/voice/");

QByteArray bytesOf(const QString& file)
{
    QFile source(file);
    REQUIRE(source.open(QIODevice::ReadOnly));
    return source.readAll();
}

/// A file with a tone on the first channel, and none on the others.
QByteArray toneFile(const QTemporaryDir& folder, int rate, int channels, int format, double hertz, double seconds)
{
    const QString name = folder.filePath("tone");
    SF_INFO info{};
    info.samplerate = rate;
    info.channels = channels;
    info.format = format;
    SNDFILE* out = sf_open(name.toLocal8Bit().constData(), SFM_WRITE, &info);
    REQUIRE(out != nullptr);
    std::vector<float> all;
    for (int i = 0; i < static_cast<int>(seconds * rate); ++i)
        for (int c = 0; c < channels; ++c)
            all.push_back(c == 0 ? static_cast<float>(0.5 * std::sin(2 * std::numbers::pi * hertz * i / rate)) : 0);
    sf_writef_float(out, all.data(), static_cast<sf_count_t>(all.size()) / channels);
    sf_close(out);
    return bytesOf(name);
}

/// The root of the mean square away from the ends, and the same after a tone of that frequency was taken out.
std::pair<double, double> levels(const Samples& samples, double hertz)
{
    double all = 0;
    double cosine = 0;
    double sine = 0;
    const std::size_t from = 800;
    const std::size_t to = samples.size() - 800;
    for (std::size_t i = from; i < to; ++i) {
        const double s = samples[i] / 32768.0;
        const double phase = 2 * std::numbers::pi * hertz * static_cast<double>(i) / kRate;
        all += s * s;
        cosine += s * std::cos(phase);
        sine += s * std::sin(phase);
    }
    const double n = static_cast<double>(to - from);
    const double tone = 2 * (cosine * cosine + sine * sine) / n;
    return {std::sqrt(all / n), std::sqrt(std::max(0.0, all - tone) / n)};
}

Samples spokenFor(double seconds, double level)
{
    Samples out;
    for (int i = 0; i < static_cast<int>(seconds * kRate); ++i)
        out.push_back(static_cast<std::int16_t>(32767 * level * std::sin(2 * std::numbers::pi * 300 * i / kRate)));
    return out;
}

int lettersOf(const QString& text)
{
    return static_cast<int>(std::ranges::count_if(text, [](QChar c) { return c.isLetterOrNumber(); }));
}

} // namespace

TEST_CASE("A sound file of whatever rate, form and number of channels becomes the same tone at our rate")
{
    QTemporaryDir folder;
    for (const int rate : {8'000, 11'025, 16'000, 22'050, 24'000, 44'100, 48'000})
        for (const int channels : {1, 2})
            for (const int format : {SF_FORMAT_WAV | SF_FORMAT_PCM_16, SF_FORMAT_WAV | SF_FORMAT_FLOAT,
                                     SF_FORMAT_CAF | SF_FORMAT_PCM_16}) {
                CAPTURE(rate, channels, format);
                const Samples samples = sound::samplesOf(toneFile(folder, rate, channels, format, 1000, 0.5));
                CHECK(std::abs(static_cast<double>(samples.size()) - 0.5 * kRate) < 4);
                const auto [all, besides] = levels(samples, 1000);
                CHECK(all == Approx(0.5 / std::sqrt(2.0) / channels).epsilon(0.02));
                CHECK(besides < all / 100);
            }
}

TEST_CASE("What our rate cannot carry is left out, and not heard as another tone")
{
    QTemporaryDir folder;
    const Samples samples =
        sound::samplesOf(toneFile(folder, 48'000, 1, SF_FORMAT_WAV | SF_FORMAT_PCM_16, 11'000, 0.5));
    CHECK(levels(samples, 5'000).first < 0.005);
}

TEST_CASE("A file that is no sound gives none, and no harm")
{
    CHECK(sound::samplesOf({}).empty());
    CHECK(sound::samplesOf("RIFF....WAVE").empty());
    const QByteArray clip = bytesOf(kVoices + "en/done.opus");
    REQUIRE(sound::samplesOf(clip).size() > 4000);
    for (int cut = 0; cut < clip.size(); cut += 97)
        CHECK(sound::samplesOf(clip.left(cut)).size() <= sound::samplesOf(clip).size());
    QByteArray broken = clip;
    for (qsizetype i = 40; i < broken.size(); i += 13)
        broken[i] = static_cast<char>(broken[i] ^ 0x55);
    (void)sound::samplesOf(broken);
}

TEST_CASE("Clips are decoded once, beforehand in another thread or when they are wanted, and a missing one is empty")
{
    const QString folder = kVoices + "en/";
    const QString file = folder + "too-high.opus";
    sound::Clips clips;
    const auto first = clips.get(file);
    CHECK(first->size() > 4000);
    CHECK(clips.get(file) == first);
    QStringList all;
    for (const QString& name : QDir(folder).entryList({"*.opus"}))
        all << folder + name;
    REQUIRE(all.size() == 39);
    clips.fetch(all);
    clips.fetch(all); // one is at work
    for (const QString& name : all)
        CHECK(clips.get(name)->size() > 4000);
    CHECK(clips.get(file) == first);
    CHECK(clips.get(folder + "no-such-clip.opus")->empty());
    clips.forget(folder);
    CHECK(clips.get(file) != first);
}

TEST_CASE("Every recorded clip passes for the text that it says")
{
    int seen = 0;
    for (const QString& language : QDir(kVoices).entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
        const QJsonObject said = QJsonDocument::fromJson(bytesOf(kVoices + language + "/said.json")).object();
        for (auto entry = said.begin(); entry != said.end(); ++entry, ++seen) {
            CAPTURE(language.toStdString(), entry.key().toStdString());
            const auto heard =
                sound::loudnessOf(sound::samplesOf(bytesOf(kVoices + language + '/' + entry.key() + ".opus")));
            CHECK_FALSE(sound::faultOf(heard, lettersOf(entry.value().toString())));
            // and neither as one of half a second's text, nor of a minute's
            CHECK(sound::faultOf(heard, lettersOf(entry.value().toString()) * 4) == sound::Unspoken::TooShort);
        }
    }
    CHECK(seen >= 3 * 39);
}

TEST_CASE("Silence, a click, a spelt text and a noise without end are no spoken text")
{
    using sound::faultOf;
    using sound::loudnessOf;
    using sound::Unspoken;
    CHECK(faultOf(loudnessOf({}), 20) == Unspoken::Silent);
    CHECK(faultOf(loudnessOf(Samples(kRate * 2, 0)), 20) == Unspoken::Silent);
    CHECK(faultOf(loudnessOf(spokenFor(2, 0.002)), 20) == Unspoken::Silent);
    CHECK(faultOf(loudnessOf(spokenFor(0.1, 0.3)), 20) == Unspoken::TooShort);
    CHECK_FALSE(faultOf(loudnessOf(spokenFor(2, 0.3)), 20));
    CHECK(faultOf(loudnessOf(spokenFor(20 / 1.4, 0.3)), 20) == Unspoken::TooLong);
    CHECK(faultOf(loudnessOf(spokenFor(60, 0.3)), 60) == Unspoken::TooLong);
    const auto loud = loudnessOf(spokenFor(1, 0.5));
    CHECK(loud.seconds == Approx(1));
    CHECK(loud.db == Approx(20 * std::log10(0.5 / std::sqrt(2))).margin(0.1));
}

TEST_CASE("A made clip begins with silence, ends soon after its last word, and is as loud as the recorded ones")
{
    Samples raw(kRate, 0);
    const Samples words = spokenFor(1, 0.05);
    raw.insert(raw.end(), words.begin(), words.end());
    raw.resize(raw.size() + 2 * kRate, 0);
    const Samples even = sound::evened(raw);
    CHECK(std::abs(static_cast<double>(even.size()) - 1.15 * kRate) < kRate / 25.0);
    CHECK(std::all_of(even.begin(), even.begin() + kRate * 25 / 1000, [](std::int16_t s) { return s == 0; }));
    CHECK(*std::max_element(even.begin(), even.end()) == Approx(0.708 * 32767).epsilon(0.01));
    CHECK(sound::loudnessOf(sound::evened(Samples(kRate, 0))).seconds == 0);
}
