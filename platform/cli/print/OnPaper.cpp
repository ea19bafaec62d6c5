#include "OnPaper.h"

#include "Verb.h"

#include "print/SummaryPdf.h"
#include "words/Names.h"

#include <QGuiApplication>
#include <QTranslator>
#include <cstdlib>
#include <iostream>

namespace firstdew::cli {

namespace {

/// What Qt misses of a desktop is nobody's concern here. What it cannot do without would end the program by abort().
void hear(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    if (type != QtFatalMsg)
        return;
    std::cerr << "firstdew-cli: the page could not be drawn (" << oneLine(message.toStdString())
              << "); nothing was written, check that Firstdew is installed whole\n";
    std::cerr.flush();
    std::_Exit(1);
}

} // namespace

print::Paper paperOption(const std::string& paper)
{
    if (paper != "a4" && paper != "letter")
        throw Usage{"--paper: '" + paper + "' is none of a4, letter"};
    return paper == "a4" ? print::Paper::A4 : print::Paper::Letter;
}

void onPaper(const std::string& language, const std::function<void()>& work)
{
    const QString chosen = QString::fromStdString(language);
    if (!words::languages().contains(chosen))
        throw Usage{"--language: '" + language + "' is none of " + words::languages().join(", ").toStdString()};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(hear);
    int argc = 1;
    char name[] = "firstdew-cli";
    char* argv[] = {name, nullptr};
    QGuiApplication app(argc, argv);
    QTranslator translator;
    if (translator.load(QStringLiteral(":/i18n/firstdew_") + chosen))
        QCoreApplication::installTranslator(&translator);
    QLocale::setDefault(words::localeFor(chosen));
    print::loadTypefaces();
    work();
}

} // namespace firstdew::cli
