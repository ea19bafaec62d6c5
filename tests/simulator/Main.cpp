#include "simulator/Life.h"

#include <chrono>
#include <cstring>
#include <fmt/format.h>
#include <fstream>
#include <iostream>
#include <sys/wait.h>
#include <unistd.h>

// Lives of phones, each from one seed: see README.md beside this file.
namespace firstdew::simulator {

namespace {

struct Asked {
    double years = 1;
    std::uint64_t seed = 1;
    int days = 90; ///< of one life
    int processes = 1;
    bool one = false; ///< a single life, to replay
    bool planted = false;
    std::string table;
    Planted fault = Planted::None;
};

int usage()
{
    std::cerr << "simulator [--years N] [--seed FIRST] [--days OF-A-LIFE] [--processes N] [--table FILE]\n"
                 "simulator --replay SEED [--days N] [--plant FAULT]     one life\n"
                 "simulator --planted                                    whether the oracle finds each planted fault\n";
    return 2;
}

std::optional<Asked> read(int count, char** words)
{
    Asked asked;
    for (int i = 1; i < count; ++i) {
        const std::string_view word = words[i];
        if (word == "--planted") {
            asked.planted = true;
            continue;
        }
        if (++i == count)
            return std::nullopt;
        const std::string value = words[i];
        if (word == "--years")
            asked.years = std::stod(value);
        else if (word == "--seed")
            asked.seed = std::stoull(value);
        else if (word == "--days")
            asked.days = std::stoi(value);
        else if (word == "--processes")
            asked.processes = std::stoi(value);
        else if (word == "--table")
            asked.table = value;
        else if (word == "--replay")
            asked.seed = std::stoull(value), asked.one = true;
        else if (const auto fault = fromToken<Planted>(value); word == "--plant" && fault)
            asked.fault = *fault;
        else
            return std::nullopt;
    }
    return asked;
}

/// Nothing where the oracle was not contradicted, else what it said.
std::optional<std::string> live(std::uint64_t seed, int days, Counts& counts, Planted fault)
{
    const std::filesystem::path memory =
        ::access("/dev/shm", W_OK | X_OK) == 0 ? "/dev/shm" : std::filesystem::temp_directory_path();
    std::string folder = (memory / "firstdew-simulator-XXXXXX").string();
    if (::mkdtemp(folder.data()) == nullptr)
        return "no folder to live in";
    std::optional<std::string> said;
    try {
        Life(folder, seed, counts, fault).live(days);
        ++counts["lives (seeds)"];
    } catch (const Broken& broken) {
        said = broken.what();
    }
    std::filesystem::remove_all(folder);
    return said;
}

/// Every `processes`-th seed; the counts go to a file, a contradiction to the errors.
int liveMany(const Asked& asked, int process, long long lives, const std::filesystem::path& to)
{
    Counts counts;
    for (long long i = process; i < lives; i += asked.processes) {
        const std::uint64_t seed = asked.seed + static_cast<std::uint64_t>(i);
        if (const auto said = live(seed, asked.days, counts, asked.fault)) {
            std::cerr << "seed " << seed << ": " << *said << "\nreplay it: simulator --replay " << seed << " --days "
                      << asked.days << "\n";
            return 1;
        }
    }
    std::ofstream out(to);
    for (const auto& [what, count] : counts)
        out << count << ' ' << what << '\n';
    return 0;
}

std::string tableOf(const Asked& asked, const Counts& counts)
{
    const double years = static_cast<double>(counts.at("phone-days")) / 365.25;
    std::string out =
        fmt::format("| what | count |\n| --- | --- |\n| seeds | {} to {} |\n| phone-years | {:.0f} |\n", asked.seed,
                    asked.seed + static_cast<std::uint64_t>(counts.at("lives (seeds)")) - 1, years);
    for (const auto& [what, count] : counts)
        if (what != "phone-days" && what != "lives (seeds)")
            out += fmt::format("| {} | {} |\n", what, count);
    return out + "| facts lost or doubled, reminders missed or doubled, swaps under current, faces that differ | 0 |\n";
}

int liveAll(const Asked& asked)
{
    const auto lives = static_cast<long long>(asked.years * 365.25 / asked.days + 1);
    std::vector<std::filesystem::path> files;
    for (int i = 0; i < asked.processes; ++i) {
        files.push_back(std::filesystem::temp_directory_path() /
                        fmt::format("firstdew-simulator-{}-{}", ::getpid(), i));
        if (::fork() == 0)
            ::_exit(liveMany(asked, i, lives, files.back()));
    }
    bool good = true;
    Counts counts;
    for (int i = 0; i < asked.processes; ++i) {
        int status = 0;
        ::wait(&status);
        good = good && WIFEXITED(status) && WEXITSTATUS(status) == 0;
    }
    for (const auto& file : files) {
        std::ifstream in(file);
        long long count = 0;
        for (std::string what; in >> count && std::getline(in >> std::ws, what);)
            counts[what] += count;
        std::filesystem::remove(file);
    }
    if (!good)
        return 1;
    const std::string table = tableOf(asked, counts);
    std::cout << table;
    if (!asked.table.empty())
        std::ofstream(asked.table) << table;
    return 0;
}

/// Whether the oracle finds each planted fault within a few lives, and nothing where none is planted.
int findPlanted(const Asked& asked)
{
    constexpr int kLives = 60;
    constexpr int kDays = 120;
    int missed = 0;
    for (const Planted fault : allOf<Planted>()) {
        std::optional<std::string> said;
        int lives = 0;
        for (; lives < (fault == Planted::None ? 3 : kLives) && !said; ++lives) {
            Counts counts;
            said = live(asked.seed + static_cast<std::uint64_t>(lives), kDays, counts, fault);
        }
        const bool good = said.has_value() == (fault != Planted::None);
        missed += !good;
        std::cout << (good ? "ok   " : "FAIL ") << token(fault) << ": " << (said ? *said : "nothing found") << " ("
                  << lives << " lives)\n";
    }
    return missed == 0 ? 0 : 1;
}

} // namespace

} // namespace firstdew::simulator

int main(int count, char** words)
{
    using namespace firstdew::simulator;
    if (::geteuid() == 0 && (::setegid(65534) != 0 || ::seteuid(65534) != 0)) {
        std::cerr << "simulator: not as root\n"; // it breaks files on purpose
        return 2;
    }
    const auto asked = read(count, words);
    if (!asked)
        return usage();
    if (asked->planted)
        return findPlanted(*asked);
    if (!asked->one)
        return liveAll(*asked);
    Counts counts;
    const auto said = live(asked->seed, asked->days, counts, asked->fault);
    for (const auto& [what, number] : counts)
        std::cout << number << ' ' << what << '\n';
    std::cout << (said ? *said : "nothing to say") << '\n';
    return said ? 1 : 0;
}
