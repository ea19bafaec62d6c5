#include "sound/MadeClips.h"
#include "sound/Clips.h"
#include "sound/QtVoice.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QTemporaryDir>
#include <QTimer>
#include <catch2/catch.hpp>
#include <cmath>
#include <sndfile.h>

using namespace firstdew;

namespace {

/// What an invented voice was asked, and how it speaks.
struct Heard {
    std::vector<std::pair<std::string, std::string>> asked; ///< language and text
    double secondsALetter = 0.08;
    double level = 0.3;
    bool has = true;
    bool answers = true;
    int dropped = 0;
};

struct InventedMaker final : ports::ClipMaker {
    explicit InventedMaker(Heard& heard) : heard(heard) {}
    void speak(const std::string& language, const std::string& text, const std::string& file,
               std::function<void(bool)> answer) override
    {
        heard.asked.emplace_back(language, text);
        if (!heard.answers)
            return;
        if (heard.has)
            write(file, static_cast<int>(heard.secondsALetter * static_cast<double>(text.size()) * 22'050));
        QTimer::singleShot(0, [answer, has = heard.has] { answer(has); });
    }
    void drop() override { ++heard.dropped; }
    void write(const std::string& file, int length) const
    {
        SF_INFO info{};
        info.samplerate = 22'050;
        info.channels = 1;
        info.format = SF_FORMAT_WAV | SF_FORMAT_PCM_16;
        SNDFILE* out = sf_open(file.c_str(), SFM_WRITE, &info);
        REQUIRE(out != nullptr);
        std::vector<float> all;
        for (int i = 0; i < length; ++i)
            all.push_back(static_cast<float>(heard.level * std::sin(i * 0.1)));
        sf_writef_float(out, all.data(), static_cast<sf_count_t>(all.size()));
        sf_close(out);
    }
    Heard& heard;
};

struct Made {
    int argc = 1;
    char name[10] = "test";
    char* argv[2] = {name, nullptr};
    QCoreApplication application{argc, argv};
    QTemporaryDir folder;
    Heard heard;
    sound::MadeClips::Texts texts{{"done", "Fertig gemacht."}, {"hold-still", "Bitte stillhalten."}};

    std::unique_ptr<sound::MadeClips> clips(int patienceMs = 5000)
    {
        return std::make_unique<sound::MadeClips>(std::make_unique<InventedMaker>(heard), folder.path(), patienceMs);
    }
    template <typename Condition>
    static bool comes(Condition condition, int ms = 10'000)
    {
        QElapsedTimer waited;
        for (waited.start(); waited.elapsed() < ms && !condition();)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
        return condition();
    }
};

} // namespace

TEST_CASE("Clips are made one after the other, kept, and count once all are there")
{
    Made m;
    auto clips = m.clips();
    int changes = 0;
    QObject::connect(clips.get(), &sound::MadeClips::changed, [&] { ++changes; });
    clips->want("xx", m.texts);
    CHECK_FALSE(clips->ready());
    clips->want("xx", m.texts); // asked again and again while they are made
    REQUIRE(m.comes([&] { return clips->ready(); }));
    CHECK(changes == 1);
    CHECK(clips->speaks("xx"));
    CHECK_FALSE(clips->speaks("yy"));
    CHECK(m.heard.asked ==
          std::vector<std::pair<std::string, std::string>>{{"xx", "Fertig gemacht."}, {"xx", "Bitte stillhalten."}});
    for (const char* id : {"done", "hold-still"}) {
        QFile file(clips->folder() + id + ".wav");
        REQUIRE(file.open(QIODevice::ReadOnly));
        CHECK(sound::samplesOf(file.readAll()).size() > 10'000);
    }
    CHECK_FALSE(QFile::exists(clips->folder() + "fresh.wav"));

    auto later = m.clips(); // the app is started again
    later->want("xx", m.texts);
    CHECK(later->ready());
    CHECK(m.heard.asked.size() == 2);

    m.texts["done"] = "Ganz fertig gemacht."; // another text, after an update
    later->want("xx", m.texts);
    CHECK_FALSE(later->ready());
    REQUIRE(m.comes([&] { return later->ready(); }));
    CHECK(m.heard.asked.size() == 3);
    CHECK(m.heard.asked.back().second == "Ganz fertig gemacht.");

    QFile::remove(later->folder() + "hold-still.wav"); // the system made room
    auto again = m.clips();
    again->want("xx", m.texts);
    CHECK_FALSE(again->ready());
    REQUIRE(m.comes([&] { return again->ready(); }));
    CHECK(m.heard.asked.size() == 4);
}

TEST_CASE("A voice that is not there, silent, spelling, rattling or stuck makes no clips, and is not asked without end")
{
    Made m;
    SECTION("not there") { m.heard.has = false; }
    SECTION("silent") { m.heard.level = 0; }
    SECTION("too soft") { m.heard.level = 0.001; }
    SECTION("spelling") { m.heard.secondsALetter = 0.8; }
    SECTION("rattling") { m.heard.secondsALetter = 0.01; }
    SECTION("stuck") { m.heard.answers = false; }
    auto clips = m.clips(300);
    clips->want("xx", m.texts);
    CHECK_FALSE(m.comes([&] { return clips->ready(); }, 800));
    const auto asked = m.heard.asked.size();
    CHECK(asked == 1);
    clips->want("xx", m.texts);
    CHECK_FALSE(m.comes([&] { return clips->ready(); }, 400));
    CHECK(m.heard.asked.size() == asked);
    m.heard.has = m.heard.answers = true; // the person installed a voice
    m.heard.level = 0.3;
    m.heard.secondsALetter = 0.08;
    clips->again();
    clips->want("xx", m.texts);
    CHECK(m.comes([&] { return clips->ready(); }));
}

TEST_CASE("The voice says in which language it speaks, and tells when that changes")
{
    Made m;
    qputenv("PULSE_SERVER", "unix:/nonexistent");
    sound::QtVoice voice;
    voice.makeClips(std::make_unique<InventedMaker>(m.heard), m.folder.path());
    int told = 0;
    voice.onChange([&] { ++told; });
    const auto choose = [&](const char* language) {
        voice.choose({true, true, {}, [](const std::string& id) { return "Satz zum " + id + "."; }, language});
    };
    CHECK(voice.says() == ports::Says::English); // nobody has said which language the person speaks
    choose("de");
    CHECK(voice.says() == ports::Says::Recorded);
    CHECK(told == 1);
    choose("xx");
    CHECK(voice.says() == ports::Says::English);
    CHECK(told == 2);
    REQUIRE(m.comes([&] { return voice.says() == ports::Says::Made; }));
    CHECK(told == 3);
    CHECK(m.heard.asked.size() == 2);
    choose("xx");
    CHECK(told == 3);
    CHECK(m.heard.asked.size() == 2);

    // The system emptied half of the folder: no session begins in two languages.
    QFile::remove(m.folder.filePath("xx/done.wav"));
    (void)voice.prepare();
    CHECK(voice.says() == ports::Says::English);
    CHECK(told == 4);
    CHECK(m.comes([&] { return voice.says() == ports::Says::Made; }));

    m.heard.has = false;
    choose("yy");
    CHECK(voice.says() == ports::Says::English);
    CHECK_FALSE(m.comes([&] { return voice.says() != ports::Says::English; }, 300));
    choose("en");
    CHECK(voice.says() == ports::Says::Recorded);
}

TEST_CASE("Without a maker a language without clips is spoken in English")
{
    Made m;
    sound::QtVoice voice;
    voice.choose({true, true, {}, [](const std::string& id) { return id; }, "ar"});
    CHECK(voice.says() == ports::Says::English);
}
