#include "Files.h"
#include "Recording.h"

#include "codec/RecordJson.h"
#include "exchange/Calendar.h"
#include "exchange/Fhir.h"
#include "exchange/Tables.h"
#include "journal/Destination.h"
#include "journal/OwnFile.h"

#include <filesystem>
#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string store, format, out, person, today;
    bool names = false;
    bool force = false;
};

/// What one format makes of the facts: file names below `--out` (empty: `--out` itself) with their content.
struct Made {
    std::map<std::string, std::string> files;
    nlohmann::json counts;
};

Made makeJson(const Options&, const std::vector<Fact>& facts)
{
    return {{{"", codec::recordJson(facts)}}, {{"facts", facts.size()}}};
}

Made makeCsv(const Options&, const std::vector<Fact>& facts)
{
    Made made{exchange::tablesOf(facts), {{"facts", facts.size()}}};
    for (const auto& file : made.files)
        made.counts["tables"].push_back(file.first);
    return made;
}

constexpr std::string_view kEntry = "\n{\"fullUrl\":";

Made makeFhir(const Options& o, const std::vector<Fact>& facts)
{
    std::string bundle = exchange::fhirBundle(facts, {o.names, nowMs()});
    // Each entry has a line of its own. Reading the bundle again would take a hundred times its record.
    std::size_t resources = 0;
    for (std::size_t at = bundle.find(kEntry); at != std::string::npos; at = bundle.find(kEntry, at + 1))
        ++resources;
    Made made{{}, {{"facts", facts.size()}, {"resources", resources}}};
    made.files[""] = std::move(bundle);
    return made;
}

Made makeCalendar(const Options& o, const std::vector<Fact>& facts)
{
    const exchange::CalendarText text{"Firstdew",
                                      {"Session: hands", "Session: feet", "Session: hand and foot", "Session: armpits"},
                                      "Your session is in half an hour"};
    const LocalDate today = o.today.empty() ? localNow().date : dateOption("--today", o.today);
    const std::string person = personOf(facts, "");
    const auto events = exchange::calendarEvents(diary::readDiary(facts, person, today), person);
    const auto sequence = exchange::calendarSequence(facts.size(), today);
    return {{{"", exchange::calendarFile(events, text, sequence, nowMs())}},
            {{"facts", facts.size()}, {"events", events.size()}}};
}

using Maker = Made (*)(const Options&, const std::vector<Fact>&);
const std::map<std::string, Maker> kMakers{
    {"csv", makeCsv}, {"fhir", makeFhir}, {"ics", makeCalendar}, {"json", makeJson}};

std::vector<Fact> chosen(const std::vector<Fact>& all, const std::string& person)
{
    if (person.empty())
        return all;
    std::vector<Fact> out;
    const std::string who = personOf(all, person);
    std::copy_if(all.begin(), all.end(), std::back_inserter(out), [&](const Fact& f) { return f.person == who; });
    return out;
}

/// Tables go into a folder of their own. An existing one must be empty, or told to be filled with --force; then tables
/// of an earlier export go first, so that no two records are mixed. What is not ours stays.
void makeFolder(const Options& o)
{
    if (const auto may = journal::mayFillFolder(o.out, o.store); !may)
        throw Refused{"--out: " + may.error().input + " " + may.error().message};
    std::error_code failed;
    if (!std::filesystem::exists(o.out, failed)) {
        (void)orRefuse(journal::makeOwnFolder(o.out));
        return;
    }
    const bool empty = std::filesystem::is_empty(o.out, failed);
    if (failed)
        throw Refused{"--out: the folder " + o.out + " cannot be read (" + failed.message() + "); check who owns it"};
    if (!empty && !o.force)
        throw Refused{"--out: the folder " + o.out + " is not empty; choose another name, or say --force"};
    std::vector<std::filesystem::path> ours;
    for (const std::string& name : exchange::tableNames()) {
        const auto table = std::filesystem::path(o.out) / name;
        checkOut(table.string(), o.store, true);
        ours.push_back(table);
    }
    for (const auto& table : ours)
        (void)orRefuse(journal::wipe(table));
}

Answer exportRecord(const Options& o)
{
    const auto maker = kMakers.find(o.format);
    if (maker == kMakers.end()) {
        std::string known;
        for (const auto& [name, make] : kMakers)
            known += (known.empty() ? "" : ", ") + name;
        throw Usage{"--format: '" + o.format + "' is none of " + known};
    }
    const auto store = orRefuse(journal::Journal::openToRead(o.store));
    const Made made = maker->second(o, chosen(orRefuse(store.readAll()), o.person));
    const bool oneFile = made.files.size() == 1 && made.files.begin()->first.empty();
    if (oneFile)
        checkOut(o.out, o.store, o.force);
    else
        makeFolder(o);
    for (const auto& [name, content] : made.files)
        writeWhole(oneFile ? o.out : (std::filesystem::path(o.out) / name).string(), content, oneFile && o.force);
    Answer answer;
    answer.json = made.counts;
    answer.json["format"] = o.format;
    answer.json["out"] = o.out;
    answer.text = fmt::format("{} written to {}; it is not encrypted, share it with care\n", o.format, o.out);
    return answer;
}

const Verb verb("export", "write the record for other programs", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the person's store")->required();
    sub.add_option(
           "--format", o->format,
           "csv (a folder of tables), json (everything, to be read back), fhir (R4 bundle), ics (planned sessions)")
        ->required();
    sub.add_option("--out", o->out, "the file or folder to make")->required();
    sub.add_option("--person", o->person, "one person only");
    sub.add_option("--today", o->today, "ics: the day from which is planned (today)");
    sub.add_flag("--names", o->names, "fhir: with name and birth date");
    sub.add_flag("--force", o->force, "replace what is there");
    return [o] { return exportRecord(*o); };
});

} // namespace

} // namespace firstdew::cli
