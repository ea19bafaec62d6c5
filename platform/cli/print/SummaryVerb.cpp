#include "Files.h"
#include "Verb.h"

#include "print/SummaryPdf.h"
#include "words/Names.h"

#include <QGuiApplication>
#include <QTranslator>
#include <cstdlib>
#include <fmt/format.h>
#include <iostream>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string store, from, to, out, paper = "a4", language = "en", person;
    bool force = false;
};

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

Answer summary(const Options& o)
{
    const LocalDate from = dateOption("--from", o.from);
    const LocalDate to = dateOption("--to", o.to);
    if (to < from)
        throw Usage{"--to: " + o.to + " is before --from " + o.from + "; turn them round"};
    if (o.paper != "a4" && o.paper != "letter")
        throw Usage{"--paper: '" + o.paper + "' is none of a4, letter"};
    const QString language = QString::fromStdString(o.language);
    if (!words::languages().contains(language))
        throw Usage{"--language: '" + o.language + "' is none of en, de, es, ar"};
    checkOut(o.out, o.store, o.force);
    const auto journal = orRefuse(journal::Journal::openToRead(o.store));
    const auto facts = orRefuse(journal.readAll());
    const auto diary = diary::readDiary(facts, personOf(facts, o.person), to);

    // A page is drawn without a screen.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(hear);
    int argc = 1;
    char name[] = "firstdew-cli";
    char* argv[] = {name, nullptr};
    QGuiApplication app(argc, argv);
    QTranslator translator;
    if (translator.load(QStringLiteral(":/i18n/firstdew_") + language))
        QCoreApplication::installTranslator(&translator);
    QLocale::setDefault(words::localeFor(language));
    print::loadTypefaces();
    const int pages = orRefuse(print::writeSummary(summary::contentsFor(diary, from),
                                                   o.paper == "a4" ? print::Paper::A4 : print::Paper::Letter,
                                                   QString::fromStdString(o.out)));
    Answer answer;
    answer.json = {{"pages", pages}, {"out", o.out}};
    answer.text = fmt::format("{}: {} page{}\n", o.out, pages, pages == 1 ? "" : "s");
    return answer;
}

const Verb verb("summary", "the prescriber's page as PDF", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the person's store")->required();
    sub.add_option("--from", o->from, "first day, YYYY-MM-DD")->required();
    sub.add_option("--to", o->to, "last day, YYYY-MM-DD; the page is judged on it")->required();
    sub.add_option("--out", o->out, "the PDF to write")->required();
    sub.add_option("--paper", o->paper, "a4 or letter (a4)");
    sub.add_option("--language", o->language, "en, de, es or ar (en)");
    sub.add_option("--person", o->person, "whose record, where the store holds several");
    sub.add_flag("--force", o->force, "replace what is there");
    return [o] { return summary(*o); };
});

} // namespace

} // namespace firstdew::cli
