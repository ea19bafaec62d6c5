#include "Files.h"
#include "OnPaper.h"
#include "Verb.h"

#include "print/SummaryPdf.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string store, from, to, out, paper = "a4", language = "en", person;
    bool force = false;
};

Answer summary(const Options& o)
{
    const LocalDate from = dateOption("--from", o.from);
    const LocalDate to = dateOption("--to", o.to);
    if (to < from)
        throw Usage{"--to: " + o.to + " is before --from " + o.from + "; turn them round"};
    const auto paper = paperOption(o.paper);
    checkOut(o.out, o.store, o.force);
    const auto journal = orRefuse(journal::Journal::openToRead(o.store));
    const auto facts = orRefuse(journal.readAll());
    const auto diary = diary::readDiary(facts, personOf(facts, o.person), to);

    int pages = 0;
    onPaper(o.language, [&] {
        pages = orRefuse(print::writeSummary(summary::contentsFor(diary, from), paper, QString::fromStdString(o.out)));
    });
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
    sub.add_option("--language", o->language, "en, de, es, fr, pt_BR or ar (en)");
    sub.add_option("--person", o->person, "whose record, where the store holds several");
    sub.add_flag("--force", o->force, "replace what is there");
    return [o] { return summary(*o); };
});

} // namespace

} // namespace firstdew::cli
