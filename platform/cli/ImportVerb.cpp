#include "Files.h"
#include "Recording.h"

#include "codec/RecordJson.h"
#include "exchange/CareSheetFile.h"
#include "exchange/Tables.h"
#include "journal/Import.h"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;
using codec::Incoming;
namespace fs = std::filesystem;

struct Options {
    std::string file, store, person;
    bool dryRun = false;
    bool asNewPerson = false;
};

bool isJson(const std::string& text)
{
    const auto first = text.find_first_not_of(" \t\r\n");
    return first != std::string::npos && (text[first] == '{' || text[first] == '[');
}

std::vector<Incoming> readOne(const std::string& file, const std::string& person)
{
    const std::string text = readWhole(file);
    return orRefuse(isJson(text) ? codec::readRecordJson(file, text)
                                 : exchange::readTable(file, text, person, nowMs()));
}

/// All tables of a folder as `export` makes it, in the order in which the facts were recorded.
std::vector<Incoming> readFolder(const std::string& folder, const std::string& person)
{
    std::vector<std::string> tables;
    std::uintmax_t bytes = 0;
    for (const auto& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ".csv" && entry.path().filename() != "columns.csv") {
            tables.push_back(entry.path().string());
            bytes += entry.file_size();
        }
    if (bytes > kMostBytes)
        throw Refused{fmt::format("{}: the tables are larger than {} MB together; this cannot be the right folder",
                                  folder, kMostBytes >> 20U)};
    if (tables.empty())
        throw Refused{folder + ": there is no table *.csv in this folder; choose another"};
    std::sort(tables.begin(), tables.end());
    std::vector<Incoming> out;
    for (const auto& table : tables)
        std::ranges::move(readOne(table, person), std::back_inserter(out));
    if (out.size() > codec::kMostFacts)
        throw Refused{fmt::format("{}: the tables hold more than {} facts; this cannot be the right folder", folder,
                                  codec::kMostFacts)};
    std::ranges::stable_sort(out, {}, [](const Incoming& i) { return i.fact.recordedMs; });
    return out;
}

/// For rows that name nobody: the person named, or the only one here; with several, each row has to say.
Who personFor(const std::vector<Fact>& recorded, const std::string& named)
{
    if (named.empty() && personsIn(recorded).size() > 1)
        return {};
    return personToRecord(recorded, named, false);
}

/// Adds the option that helps.
template <class T>
T orOffer(Result<T> result)
{
    if (!result && (result.error().code == "person-differs" || result.error().code == "person-unsure"))
        throw Refused{result.error().input + ": " + result.error().message + " with --as-new-person"};
    return orRefuse(std::move(result));
}

/// Adds them, or says what would be added. A store is made once it is sure that they can be.
journal::Imported added(const Options& o, std::vector<Incoming> incoming, std::vector<Fact> recorded)
{
    const auto doubtful = o.asNewPerson ? journal::Doubtful::AsNewPerson : journal::Doubtful::Refuse;
    if (!o.dryRun && !recorded.empty()) {
        recorded = {};
        auto store = orRefuse(journal::Journal::open(o.store));
        return orOffer(journal::importInto(store, std::move(incoming), doubtful));
    }
    auto plan = orOffer(journal::planImport(recorded, std::move(incoming), doubtful));
    if (o.dryRun)
        return {plan.fresh.size(), plan.known, {}};
    auto store = orRefuse(journal::Journal::open(o.store));
    return orRefuse(journal::importPlanned(store, std::move(plan)));
}

Answer importFile(const Options& o)
{
    auto recorded = factsIn(o.store, !o.dryRun);
    const Who who = personFor(recorded, o.person);
    auto incoming = fs::is_directory(o.file) ? readFolder(o.file, who.id) : readOne(o.file, who.id);
    (void)orRefuse(exchange::checkCareSheets(incoming));
    const auto read = incoming.size();
    const auto named = std::ranges::find(incoming, who.id, [](const Incoming& i) { return i.fact.person; });
    const auto firstOfNew =
        !who.newName.empty() && named != incoming.end() ? std::optional(named->fact.happened) : std::nullopt;
    const auto imported = added(o, std::move(incoming), std::move(recorded));
    Answer answer{fmt::format("{} read, {} new, {} known already\n", read, imported.added, imported.known),
                  {{"read", read}, {"added", imported.added}, {"known", imported.known}, {"dry_run", o.dryRun}}};
    if (o.dryRun) {
        answer.text += "nothing was changed: this was a dry run\n";
        return answer;
    }
    if (firstOfNew)
        (void)recordAll(o.store, {{"", who.id, *firstOfNew, nowMs(), "", Person{who.newName, {}, {}, {}, {}}}});
    if (!imported.kept.empty()) {
        answer.json["kept"] = imported.kept.string();
        answer.text += fmt::format("what was there before is kept in {}\n", imported.kept.string());
    }
    return answer;
}

const Verb verb("import", "add facts from a file or folder that export made, or from a table of your own",
                [](CLI::App& sub) {
                    auto o = std::make_shared<Options>();
                    sub.add_option("FILE", o->file, "JSON, a CSV table, or a folder of tables")->required();
                    sub.add_option("--store", o->store, "the person's store")->required();
                    sub.add_option("--person", o->person, "whose rows, where they name nobody");
                    sub.add_flag("--as-new-person", o->asNewPerson,
                                 "somebody who is not surely the person recorded becomes a person of their own");
                    sub.add_flag("--dry-run", o->dryRun, "say what would be added, and change nothing");
                    return [o] { return importFile(*o); };
                });

} // namespace

} // namespace firstdew::cli
