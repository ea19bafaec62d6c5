#include "Verb.h"

#include "codec/CleanText.h"

#include <charconv>
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <iostream>
#include <list>
#include <map>

namespace firstdew::cli {

namespace {

struct Known {
    std::string name;
    std::string does;
    Setup setup;
};

/// Every person's id with the name recorded last, in order of first record.
std::vector<std::pair<std::string, std::string>> namesIn(const std::vector<facts::Fact>& facts)
{
    std::map<std::string_view, std::pair<long long, std::string_view>> last;
    for (const auto& fact : facts)
        if (const auto* who = std::get_if<facts::Person>(&fact.payload)) {
            auto& [recorded, name] = last[fact.person];
            if (name.empty() || fact.recordedMs >= recorded)
                recorded = fact.recordedMs, name = who->name;
        }
    std::vector<std::pair<std::string, std::string>> out;
    for (const std::string& id : facts::personsIn(facts))
        out.emplace_back(id, last[id].second);
    return out;
}

std::list<Known>& known()
{
    static std::list<Known> verbs;
    return verbs;
}

int run(int argc, char** argv)
{
    CLI::App app{"Firstdew: home tap-water iontophoresis, without a screen", "firstdew-cli"};
    app.require_subcommand(1);
    app.fallthrough();
    app.set_version_flag("--version", FIRSTDEW_VERSION);
    bool json = false;
    app.add_flag("--json", json, "one JSON document on standard output");
    known().sort([](const Known& a, const Known& b) { return a.name < b.name; });

    std::function<Answer()> chosen;
    for (const Known& verb : known()) {
        CLI::App* sub = app.add_subcommand(verb.name, verb.does);
        auto body = verb.setup(*sub);
        sub->final_callback([&chosen, body] { chosen = body; });
    }
    try {
        app.parse(argc, argv);
    } catch (const CLI::Success& e) {
        return app.exit(e);
    } catch (const CLI::ParseError& e) {
        std::cerr << "firstdew-cli: " << oneLine(e.what()) << " (see --help)\n";
        return 2;
    }
    const Answer answer = chosen();
    if (json)
        std::cout << answer.json.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) << '\n';
    else
        std::cout << codec::forTerminal(answer.text, true);
    std::cout.flush();
    if (!std::cout)
        throw Refused{"standard output could not be written"};
    return answer.refused ? 1 : 0;
}

} // namespace

Verb::Verb(std::string name, std::string does, Setup setup)
{
    known().push_back({std::move(name), std::move(does), std::move(setup)});
}

facts::LocalDate dateOption(const std::string& option, const std::string& text)
{
    if (const auto d = facts::LocalDate::parse(text))
        return *d;
    throw Usage{option + ": '" + text + "' is no date; write YYYY-MM-DD"};
}

long long nowMs()
{
    if (const char* fixed = std::getenv("FIRSTDEW_NOW_MS")) {
        long long ms = 0;
        std::from_chars(fixed, fixed + std::string_view(fixed).size(), ms);
        return ms;
    }
    using namespace std::chrono;
    return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
}

facts::LocalTime localNow()
{
    const std::time_t seconds = nowMs() / 1000;
    std::tm local{};
    localtime_r(&seconds, &local);
    return {facts::LocalDate::of(local.tm_year + 1900, local.tm_mon + 1, local.tm_mday).value(),
            {local.tm_hour * 60 + local.tm_min}};
}

std::string oneLine(std::string_view text) { return codec::forTerminal(text); }

std::string peopleIn(const std::vector<facts::Fact>& facts)
{
    std::string out;
    for (const auto& [id, name] : namesIn(facts))
        out += (out.empty() ? "" : ", ") + (name.empty() ? id : name + " (" + id + ")");
    return out;
}

std::vector<std::string> personsCalled(const std::vector<facts::Fact>& facts, const std::string& named)
{
    std::vector<std::string> out;
    for (const auto& [id, name] : namesIn(facts)) {
        if (id == named)
            return {id};
        if (name == named)
            out.push_back(id);
    }
    return out;
}

std::string personOf(const std::vector<facts::Fact>& facts, const std::string& named)
{
    const auto persons = facts::personsIn(facts);
    if (named.empty() && persons.size() > 1)
        throw Refused{"--person: this store holds several people; name one of " + peopleIn(facts)};
    if (persons.empty() || named.empty())
        return persons.empty() ? "" : persons.front();
    const auto called = personsCalled(facts, named);
    if (called.empty())
        throw Refused{"--person: nobody called '" + named + "' in this store; it knows " + peopleIn(facts)};
    if (called.size() > 1)
        throw Refused{"--person: several people are called '" + named + "'; give the id of one: " + peopleIn(facts)};
    return called.front();
}

} // namespace firstdew::cli

int main(int argc, char** argv)
{
    using namespace firstdew::cli;
    try {
        return run(argc, argv);
    } catch (const Refused& r) {
        std::cerr << "firstdew-cli: " << oneLine(r.line) << '\n';
        return 1;
    } catch (const Usage& u) {
        std::cerr << "firstdew-cli: " << oneLine(u.line) << '\n';
        return 2;
    } catch (const std::exception& e) {
        std::cerr << "firstdew-cli: " << oneLine(e.what()) << '\n';
        return 1;
    }
}
