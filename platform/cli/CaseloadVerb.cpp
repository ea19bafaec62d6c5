#include "Files.h"

#include "exchange/Caseload.h"
#include "journal/AnyRecord.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string folder, passphraseFile;
};

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
    for (const auto& file : orRefuse(journal::recordFilesIn(o.folder))) {
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
