#include "Files.h"

#include "exchange/Caseload.h"
#include "journal/AnyRecord.h"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;
namespace fs = std::filesystem;

struct Options {
    std::string folder, passphraseFile;
};

constexpr std::size_t kMostFiles = 10'000;

/// The files of the folder in the order of their names, but for what lies beside a store.
std::vector<fs::path> filesIn(const std::string& folder)
{
    std::vector<fs::path> out;
    std::error_code wrong;
    for (auto at = fs::directory_iterator(folder, wrong); !wrong && at != fs::directory_iterator();
         at.increment(wrong)) {
        const std::string name = at->path().filename().string();
        const bool beside = name.ends_with("-wal") || name.ends_with("-shm") || name.ends_with(".copy");
        if (at->is_regular_file(wrong) && !name.starts_with('.') && !beside)
            out.push_back(at->path());
        if (out.size() > kMostFiles)
            throw Refused{fmt::format("{}: holds more than {} files; choose the folder of the records alone", folder,
                                      kMostFiles)};
    }
    if (wrong)
        throw Refused{folder + ": " + wrong.message() + "; name a folder that can be read"};
    std::ranges::sort(out);
    return out;
}

nlohmann::json jsonOf(const exchange::Case& one)
{
    nlohmann::json sites = nlohmann::json::array();
    for (const auto& s : one.sites)
        sites.push_back({{"site", token(s.site)}, {"stage", token(s.stage)}, {"advice", token(s.advice)}});
    nlohmann::json why = nlohmann::json::array();
    for (const auto& [kind, site, since] : one.why)
        why.push_back({{"kind", token(kind)},
                       {"site", site ? nlohmann::json(token(*site)) : nlohmann::json()},
                       {"since", since.iso()}});
    return {{"name", one.name}, {"person", one.person},
            {"file", one.file}, {"newest", one.newest ? nlohmann::json(one.newest->iso()) : nlohmann::json()},
            {"sites", sites},   {"call", one.call()},
            {"why", why},       {"since", one.why.front().since.iso()}};
}

std::string lineOf(const exchange::Case& one)
{
    std::string why;
    for (const auto& [kind, site, since] : one.why)
        why += fmt::format("{}{}{} since {}", why.empty() ? "" : ", ", token(kind),
                           site ? fmt::format(" ({})", token(*site)) : std::string(), since.iso());
    return fmt::format("{:5} {:24} {}\n", one.call() ? "call" : "", oneLine(one.name.empty() ? one.person : one.name),
                       why);
}

Answer caseload(const Options& o)
{
    const std::string passphrase = o.passphraseFile.empty() ? std::string() : passphraseFrom(o.passphraseFile);
    std::vector<exchange::ReceivedFile> received;
    nlohmann::json unread = nlohmann::json::array();
    std::string unreadLines;
    for (const auto& file : filesIn(o.folder)) {
        auto facts = [&] {
            const QuietLibrary quiet;
            return journal::readAnyRecord(file, passphrase);
        }();
        if (facts) {
            received.push_back({file.filename().string(), std::move(facts.value())});
            continue;
        }
        unread.push_back({{"file", file.filename().string()}, {"why", facts.error().message}});
        unreadLines +=
            fmt::format("not read: {}: {}\n", oneLine(file.filename().string()), oneLine(facts.error().message));
    }
    const auto people = exchange::caseloadOf(received, localNow().date);
    Answer answer{"", {{"people", nlohmann::json::array()}, {"unread", unread}}};
    for (const auto& one : people) {
        answer.json["people"].push_back(jsonOf(one));
        answer.text += lineOf(one);
    }
    if (people.empty())
        answer.text = "no records in " + o.folder + "\n";
    answer.text += unreadLines;
    return answer;
}

const Verb verb("caseload", "the people whose records lie in a folder, who needs a call first", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("FOLDER", o->folder, "stores, records as JSON and back-ups; nothing is written into it")->required();
    sub.add_option("--passphrase-file", o->passphraseFile, "the passphrase of the back-ups among them");
    return [o] { return caseload(*o); };
});

} // namespace

} // namespace firstdew::cli
