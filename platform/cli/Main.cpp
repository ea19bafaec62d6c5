#include "Verb.h"

#include <chrono>
#include <cstdlib>
#include <iostream>
#include <list>

namespace firstdew::cli {

namespace {

struct Known {
    std::string name;
    std::string does;
    Setup setup;
};

std::list<Known>& known()
{
    static std::list<Known> verbs;
    return verbs;
}

std::string oneLine(std::string text)
{
    for (char& c : text)
        if (c == '\n' || c == '\r')
            c = ' ';
    return text;
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
        std::cout << answer.json.dump(2) << '\n';
    else
        std::cout << answer.text;
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
    if (const char* fixed = std::getenv("FIRSTDEW_NOW_MS"))
        return std::strtoll(fixed, nullptr, 10);
    using namespace std::chrono;
    return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
}

std::string personOf(const std::vector<facts::Fact>& facts, const std::string& named)
{
    std::vector<std::string> persons;
    for (const auto& f : facts)
        if (std::find(persons.begin(), persons.end(), f.person) == persons.end())
            persons.push_back(f.person);
    std::string names;
    for (const auto& p : persons)
        names += (names.empty() ? "" : ", ") + p;
    if (!named.empty()) {
        if (std::find(persons.begin(), persons.end(), named) == persons.end() && !persons.empty())
            throw Refused{"--person: nobody called '" + named + "' in this store; it knows " + names};
        return named;
    }
    if (persons.empty())
        return "p1";
    if (persons.size() > 1)
        throw Refused{"--person: this store holds several people; name one of " + names};
    return persons.front();
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
