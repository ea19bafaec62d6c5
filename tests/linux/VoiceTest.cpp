#include "sound/QtVoice.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <catch2/catch.hpp>
#include <csignal>

using namespace firstdew;

namespace {

constexpr int kPatienceMs = 20'000;

/// A program where something may be said, and what its invented speaker was told.
struct Told {
    int argc = 1;
    char name[10] = "test";
    char* argv[2] = {name, nullptr};
    QCoreApplication application{argc, argv};
    QTemporaryDir folder;

    Told() { qputenv("SPOKEN", folder.filePath("spoken").toLocal8Bit()); }
    [[nodiscard]] QStringList spoken() const
    {
        QFile file(folder.filePath("spoken"));
        return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()).split('\n', Qt::SkipEmptyParts)
                                              : QStringList();
    }
    /// Whether that comes to be in good time.
    template <typename Condition>
    static bool comes(Condition condition, int patienceMs = kPatienceMs)
    {
        QElapsedTimer waited;
        for (waited.start(); waited.elapsed() < patienceMs && !condition();)
            QCoreApplication::processEvents(QEventLoop::AllEvents, 10);
        return condition();
    }
};

/// A voice by itself that soon loses patience.
struct Alone : Told {
    sound::DeviceVoice voice{INVENTED_SPEAKER, {2000, 300, 400}};
    int answers = 0;
    QList<bool> ends;

    Alone()
    {
        QObject::connect(&voice, &sound::DeviceVoice::answered, [this] { ++answers; });
        QObject::connect(&voice, &sound::DeviceVoice::ended, [this](bool said) { ends << said; });
    }
    bool found(const QString& language)
    {
        voice.findVoice(language);
        return comes([&] { return !voice.looksFor(language); }) && voice.speaks(language);
    }
};

/// A session's voice where there is no sound and one voice of the device.
struct Speaking : Told {
    sound::QtVoice voice{INVENTED_SPEAKER};

    explicit Speaking(const std::string& language, bool spoken = true)
    {
        qputenv("PULSE_SERVER", "unix:/nonexistent");
        voice.choose({spoken, false, language, [](const std::string& prompt) { return "Text: " + prompt; }});
    }
    bool answer(const std::string& language)
    {
        std::optional<bool> known;
        voice.ask(language, [&](bool speaks) { known = speaks; });
        return comes([&] { return known.has_value(); }) && *known;
    }
};

/// A sound server of its own, with or without an output, that can be killed and started again.
struct SoundServer : Told {
    QTemporaryDir runtime;
    QProcess server;

    SoundServer() { qputenv("PULSE_SERVER", ("unix:" + runtime.filePath("socket")).toLocal8Bit()); }
    ~SoundServer()
    {
        server.kill();
        server.waitForFinished();
    }
    void start(bool output)
    {
        QStringList arguments{"-n",
                              "--daemonize=no",
                              "--exit-idle-time=-1",
                              "--disable-shm=yes",
                              "--use-pid-file=no",
                              "--high-priority=no",
                              "--realtime=no",
                              "-L",
                              "module-native-protocol-unix auth-anonymous=1 socket=" + runtime.filePath("socket")};
        if (output)
            arguments << "-L"
                      << "module-null-sink sink_name=ear rate=48000 channels=2";
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert("XDG_RUNTIME_DIR", runtime.path());
        environment.insert("HOME", runtime.path());
        server.setProcessEnvironment(environment);
        server.start("pulseaudio", arguments);
        REQUIRE(comes([&] { return QProcess::execute("pactl", {"info"}) == 0; }));
    }
    void end()
    {
        server.kill();
        REQUIRE(server.waitForFinished());
    }
};

} // namespace

TEST_CASE("Without an output the voice is not ready")
{
    SoundServer sound;
    SECTION("no sound server") {}
    SECTION("a sound server without an output") { sound.start(false); }
    sound::QtVoice voice;
    CHECK_FALSE(voice.prepare());
}

TEST_CASE("A voice that falls silent during an alarm says so, and says when it is heard again")
{
    SoundServer sound;
    sound.start(true);
    sound::QtVoice voice;
    QList<bool> told;
    voice.onSilence([&](bool silent) { told << silent; });
    REQUIRE(voice.prepare());
    voice.alarm("too-high");
    QElapsedTimer heard;
    heard.start();
    CHECK(sound.comes([&] { return heard.elapsed() > 300; }));
    CHECK(told.isEmpty());
    sound.end();
    CHECK(sound.comes([&] { return !told.isEmpty(); }));
    CHECK(told == QList<bool>{true});
    sound.start(true);
    CHECK(sound.comes([&] { return told.size() > 1; }));
    CHECK(told == QList<bool>{true, false});
}

TEST_CASE("A sound server that hangs holds up no caller, is told as silence, and is heard again once it answers")
{
    SoundServer sound;
    sound.start(true);
    sound::VoiceLine line;
    QList<bool> told;
    QObject::connect(&line, &sound::VoiceLine::silent, [&](bool silent) { told << silent; });
    REQUIRE(line.prepare());
    line.add(QByteArray(3'200, 0)); // a tenth of a second
    CHECK(line.leftMs() > 0);
    CHECK(sound.comes([&] { return line.leftMs() == 0; }));
    CHECK(told.isEmpty());
    const auto server = static_cast<pid_t>(sound.server.processId());
    REQUIRE(::kill(server, SIGSTOP) == 0);
    QElapsedTimer waited;
    waited.start();
    for (int alarm = 0; alarm < 3; ++alarm) {
        line.hush();
        line.add(QByteArray(32'000, 1));
    }
    CHECK(waited.elapsed() < 300);
    CHECK(sound.comes([&] { return told == QList<bool>{true}; }));
    CHECK(line.leftMs() == 0);
    REQUIRE(::kill(server, SIGCONT) == 0);
    CHECK(sound.comes([&] { return told.size() > 1; }));
    CHECK(told == QList<bool>{true, false});
}

TEST_CASE("A bed of sound is spoken of only where the sound server really takes the session ahead")
{
    SoundServer sound;
    sound::QtVoice voice;
    int told = 0;
    voice.onChange([&] { ++told; });
    CHECK_FALSE(voice.hasBed()); // nobody has tried
    (void)voice.prepare();
    CHECK_FALSE(SoundServer::comes([&] { return voice.hasBed(); }, 1000)); // there is no server
    CHECK(told == 0);
    sound.start(true);
    const auto asks = [&](bool has) {
        return SoundServer::comes([&] { return (void)voice.prepare(), voice.hasBed() == has; });
    };
    CHECK(asks(true));
    CHECK(told == 1);
    sound.end();
    CHECK(asks(false));
    CHECK(told == 2);
    sound.start(true);
    CHECK(asks(true));
    CHECK(told == 3);
}

TEST_CASE("A voice of the device that is not there, hangs, or whose program is missing, is answered with no")
{
    Alone a;
    CHECK_FALSE(a.found(GENERATE("none", "hangs")));
    CHECK(a.answers == 1);
    sound::DeviceVoice missing("/nonexistent/speaker");
    missing.findVoice("de");
    CHECK(Told::comes([&] { return !missing.looksFor("de"); }));
    CHECK_FALSE(missing.speaks("de"));
    sound::DeviceVoice without("");
    without.findVoice("de");
    CHECK_FALSE(without.looksFor("de"));
}

TEST_CASE("A voice of the device says a text and tells its end")
{
    Alone a;
    REQUIRE(a.found("de"));
    CHECK_FALSE(a.voice.speaks("en"));
    a.voice.say("Halb\ngeschafft.");
    CHECK(a.voice.busy());
    REQUIRE(Told::comes([&] { return !a.voice.busy(); }));
    CHECK(a.ends == QList<bool>{true});
    CHECK(a.spoken() == QStringList{"as de", "1 Halb geschafft."});
    CHECK(a.found("de"));
    CHECK(a.spoken().size() == 2); // it is the same one
}

TEST_CASE("A voice of the device that is not heard, dies or fails is not there any more")
{
    Alone a;
    REQUIRE(a.found(GENERATE("mute", "dies", "fails")));
    a.voice.say("Now");
    REQUIRE(Told::comes([&] { return !a.voice.busy(); }));
    CHECK(a.ends == QList<bool>{false});
    CHECK_FALSE(a.voice.speaks("mute"));
    CHECK(a.found("de")); // another may be
}

TEST_CASE("A voice of the device that never ends is stopped, and may go on with the next")
{
    Alone a;
    REQUIRE(a.found("endless"));
    a.voice.say("Now");
    REQUIRE(Told::comes([&] { return !a.voice.busy(); }));
    CHECK(a.ends == QList<bool>{true});
    CHECK(Told::comes([&] { return a.spoken().contains("stop "); }));
    CHECK(a.voice.speaks("endless"));
}

TEST_CASE("The end of what was stopped is not taken for the end of what came after")
{
    Alone a;
    REQUIRE(a.found("slow"));
    a.voice.say("One");
    a.voice.stop();
    CHECK_FALSE(a.voice.busy());
    a.voice.say("Two");
    CHECK(Told::comes([&] { return !a.ends.isEmpty(); }));
    CHECK(a.ends == QList<bool>{true});
    CHECK(Told::comes([&] {
        return a.spoken() == QStringList{"as slow", "1 One", "stop ", "2 Two", "stop "};
    })); // it took too long
}

TEST_CASE("No voice of the device is set up before it is chosen or asked for")
{
    Speaking s("");
    s.voice.say("hold-still");
    CHECK_FALSE(s.voice.prepare()); // there is no output; the device's voice speaks by itself
    QCoreApplication::processEvents();
    CHECK(s.spoken().isEmpty());
    CHECK(s.answer("de"));
    CHECK(s.answer("de"));
    CHECK_FALSE(s.answer("none"));
    CHECK(s.spoken() == QStringList{"as de", "as none"});
}

TEST_CASE("The device's voice says one prompt after another, in the person's language")
{
    Speaking s("de");
    CHECK_FALSE(s.voice.prepare()); // there is no output; the device's voice speaks by itself
    REQUIRE(s.answer("de"));
    s.voice.say("hold-still");
    s.voice.say("half-way");
    CHECK(Told::comes([&] { return s.spoken().size() == 3; }));
    CHECK(s.spoken() == QStringList{"as de", "1 Text: hold-still", "2 Text: half-way"});
}

TEST_CASE("An alarm cuts in on the device's voice, drops what waited, and is heard whatever was chosen")
{
    const bool spoken = GENERATE(true, false);
    Speaking s("endless", spoken);
    REQUIRE(s.answer("endless"));
    s.voice.say("hold-still");
    s.voice.say("half-way");
    s.voice.alarm("too-high");
    const QStringList before =
        spoken ? QStringList{"as endless", "1 Text: hold-still", "stop "} : QStringList{"as endless"};
    const QString alarm = spoken ? "2 Text: too-high" : "1 Text: too-high";
    CHECK(Told::comes([&] { return s.spoken() == before + QStringList{alarm}; }));
    s.voice.hush();
    CHECK(Told::comes([&] { return s.spoken() == before + QStringList{alarm, "stop "}; }));
}

TEST_CASE("A voice of the device that dies leaves the prompts to the recorded one")
{
    Speaking s("dies");
    REQUIRE(s.answer("dies"));
    s.voice.say("hold-still");
    REQUIRE(Told::comes([&] { return s.spoken().size() == 2; }));
    s.voice.say("half-way");
    QCoreApplication::processEvents();
    s.voice.hush();
    CHECK(s.spoken() == QStringList{"as dies", "1 Text: hold-still"});
}
