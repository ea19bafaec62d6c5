#include "Files.h"
#include "OnPaper.h"
#include "Verb.h"

#include "exchange/CareSheetFile.h"
#include "print/Handout.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string file, out, name, start, age = "adult", paper = "a4", language = "en";
    bool force = false;
};

Answer handout(const Options& o)
{
    const auto paper = paperOption(o.paper);
    const auto age = tokenOption<AgeGroup>("--age", o.age);
    print::HandoutContents contents{
        orRefuse(exchange::readCareSheet(o.file, readWhole(o.file, exchange::kMostCareSheetBytes), age)), age, o.name,
        std::nullopt};
    if (!o.start.empty())
        contents.start = dateOption("--start", o.start);
    checkOut(o.out, "", o.force);
    int pages = 0;
    onPaper(o.language, [&] { pages = orRefuse(print::writeHandout(contents, paper, QString::fromStdString(o.out))); });
    return {fmt::format("{}: {} page\n", o.out, pages), {{"pages", pages}, {"out", o.out}}};
}

const Verb verb("handout", "a care sheet as one page to hand over, as PDF", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("FILE", o->file, "the care sheet")->required();
    sub.add_option("--out", o->out, "the PDF to write")->required();
    sub.add_option("--start", o->start, "day of the first session, YYYY-MM-DD; its dates stand beside the boxes");
    sub.add_option("--name", o->name, "whom it is for");
    sub.add_option("--age", o->age, "adult or child (adult)");
    sub.add_option("--paper", o->paper, "a4 or letter (a4)");
    sub.add_option("--language", o->language, "en, de, es, fr, pt_BR or ar (en)");
    sub.add_flag("--force", o->force, "replace what is there");
    return [o] { return handout(*o); };
});

} // namespace

} // namespace firstdew::cli
