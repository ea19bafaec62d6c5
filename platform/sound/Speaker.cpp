// firstdew-speaker LANGUAGE: reads out what comes in with the voice the device has for that language, through Qt
// TextToSpeech. It is a program of its own because an engine may hang while its voices are listed, or die while it
// speaks. In, a line each: "NUMBER TEXT", or "stop". Out: "ready", then by number "begun", "ended" or "failed". Ends
// with 1 where the device has no voice for the language, and when nothing more can come in.
#include <QCoreApplication>
#include <QLocale>
#include <QSocketNotifier>
#include <QTextToSpeech>
#include <algorithm>
#include <csignal>
#include <cstdio>
#include <memory>
#include <sys/prctl.h>
#include <unistd.h>

namespace {

/// The engine's voice for that language, or nothing.
std::unique_ptr<QTextToSpeech> voiceOf(const QString& engine, QLocale::Language language)
{
    auto speech = std::make_unique<QTextToSpeech>(engine);
    if (speech->state() == QTextToSpeech::Error)
        return nullptr;
    const QList<QLocale> locales = speech->availableLocales();
    const auto found =
        std::find_if(locales.begin(), locales.end(), [&](const QLocale& l) { return l.language() == language; });
    if (found == locales.end())
        return nullptr;
    speech->setLocale(*found);
    return speech;
}

std::unique_ptr<QTextToSpeech> voiceFor(QLocale::Language language)
{
    QStringList engines = QTextToSpeech::availableEngines();
    engines.removeAll(QStringLiteral("mock"));  // says nothing
    engines.removeAll(QStringLiteral("flite")); // that of Qt 6.4 ends the program when its output is taken away
    for (const QString& engine : engines)
        if (auto speech = voiceOf(engine, language))
            return speech;
    return nullptr;
}

class Speaker {
public:
    explicit Speaker(QTextToSpeech& speech) : m_speech(speech)
    {
        QObject::connect(&speech, &QTextToSpeech::stateChanged, &speech,
                         [this](QTextToSpeech::State state) { follow(state); });
    }

    void take(const QByteArray& line)
    {
        if (line == "stop") {
            m_number.clear();
            m_speech.stop(QTextToSpeech::BoundaryHint::Immediate);
            return;
        }
        const auto space = line.indexOf(' ');
        if (space <= 0)
            return;
        m_number = line.left(space);
        m_begun = false;
        m_speech.say(QString::fromUtf8(line.mid(space + 1)));
    }

private:
    void follow(QTextToSpeech::State state)
    {
        if (m_number.isEmpty())
            return;
        if (state == QTextToSpeech::Speaking && !std::exchange(m_begun, true))
            tell("begun");
        else if (state == QTextToSpeech::Error)
            tell("failed");
        else if (state == QTextToSpeech::Ready && m_begun) // and not the end of what was stopped before
            tell("ended");
    }
    void tell(const char* what) const
    {
        std::printf("%s %s\n", what, m_number.constData());
        std::fflush(stdout);
    }

    QTextToSpeech& m_speech;
    QByteArray m_number; // of what is being said
    bool m_begun = false;
};

} // namespace

int main(int argc, char** argv)
{
    prctl(PR_SET_PDEATHSIG, SIGKILL); // one that hangs would not see that nobody listens any more
    QCoreApplication application(argc, argv);
    if (argc != 2)
        return 2;
    const auto speech = voiceFor(QLocale(QString::fromLocal8Bit(argv[1])).language());
    if (!speech)
        return 1;
    Speaker speaker(*speech);
    QByteArray come;
    QSocketNotifier in(STDIN_FILENO, QSocketNotifier::Read);
    QObject::connect(&in, &QSocketNotifier::activated, &application, [&] {
        char some[4096];
        const auto count = read(STDIN_FILENO, some, sizeof some);
        if (count <= 0) {
            QCoreApplication::quit();
            return;
        }
        come.append(some, count);
        for (auto end = come.indexOf('\n'); end >= 0; end = come.indexOf('\n')) {
            speaker.take(come.left(end));
            come.remove(0, end + 1);
        }
    });
    std::puts("ready");
    std::fflush(stdout);
    return QCoreApplication::exec();
}
