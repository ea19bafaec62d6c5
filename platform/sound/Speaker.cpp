// firstdew-speaker LANGUAGE: reads text aloud with the device's voice for that language, through Qt TextToSpeech. It is
// a separate program because an engine may hang while it lists its voices, or die while it speaks.
// Input, one per line: "NUMBER TEXT" or "stop". Output: "ready", then "begun", "ended" or "failed" with the number.
// Exits with 1 if the device has no voice for the language. Exits when the input ends.
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

/// The engine's voice for that language, or nullopt.
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
    engines.removeAll(QStringLiteral("mock"));  // produces no sound
    engines.removeAll(QStringLiteral("flite")); // in Qt 6.4 it ends the program when the output disappears
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

    void obey(const QByteArray& line)
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
        else if (state == QTextToSpeech::Ready && m_begun) // m_begun tells it from the end of a stopped text
            tell("ended");
    }
    void tell(const char* what) const
    {
        std::printf("%s %s\n", what, m_number.constData());
        std::fflush(stdout);
    }

    QTextToSpeech& m_speech;
    QByteArray m_number; // of the present text
    bool m_begun = false;
};

} // namespace

int main(int argc, char** argv)
{
    prctl(PR_SET_PDEATHSIG, SIGKILL); // a hanging engine would not notice that the app has ended
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
            speaker.obey(come.left(end));
            come.remove(0, end + 1);
        }
    });
    std::puts("ready");
    std::fflush(stdout);
    return QCoreApplication::exec();
}
