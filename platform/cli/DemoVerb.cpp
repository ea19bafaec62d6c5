#include "Verb.h"

#include "codec/RecordJson.h"

#include <chrono>
#include <ctime>
#include <filesystem>
#include <fmt/format.h>
#include <memory>

extern const char* const demoRecord; // demo-data/record.json

namespace firstdew::cli {

namespace {

using namespace facts;

constexpr long long kDayMs = 86'400'000;

template <class T>
void shift(T&, int)
{
}
void shift(LocalDate& value, int days) { value = value + days; }
void shift(LocalTime& value, int days) { value.date = value.date + days; }
template <class T>
void shift(std::optional<T>& value, int days)
{
    if (value)
        shift(*value, days);
}
void shift(Fact& fact, int days)
{
    shift(fact.happened, days);
    fact.recordedMs += days * kDayMs;
    std::visit(
        [&]<class P>(P& payload) {
            // A birthday is no event of the diary.
            if constexpr (!std::is_same_v<P, Person>)
                P::fields(payload, [&](std::string_view, auto& field, auto...) { shift(field, days); });
        },
        fact.payload);
}

LocalDate localToday()
{
    const std::time_t seconds = nowMs() / 1000;
    std::tm local{};
    localtime_r(&seconds, &local);
    return LocalDate::of(local.tm_year + 1900, local.tm_mon + 1, local.tm_mday).value();
}

Answer demo(const std::string& out, const std::string& today)
{
    const LocalDate day = today.empty() ? localToday() : dateOption("--today", today);
    if (std::filesystem::exists(out))
        throw Refused{"--out: " + out + " is there already; name a file that is not, so that nothing is lost"};
    const auto incoming = orRefuse(codec::readRecordJson("demo record", demoRecord));
    std::vector<Fact> facts;
    LocalDate last(-1000000);
    for (const auto& i : incoming) {
        facts.push_back(i.fact);
        last = std::max(last, i.fact.happened.date);
    }
    for (Fact& f : facts)
        shift(f, day - 1 - last);
    auto journal = orRefuse(journal::Journal::open(out));
    orRefuse(journal.appendAll(facts));
    Answer answer;
    answer.json = {{"facts", facts.size()}};
    answer.text =
        fmt::format("{}: {} facts of a person who does not exist, up to {}\n", out, facts.size(), (day - 1).iso());
    return answer;
}

const Verb verb("demo", "a store with an invented person's two years", [](CLI::App& sub) {
    auto out = std::make_shared<std::string>();
    auto today = std::make_shared<std::string>();
    sub.add_option("--out", *out, "the store to make")->required();
    sub.add_option("--today", *today, "the day after the diary's last (today)");
    return [out, today] { return demo(*out, *today); };
});

} // namespace

} // namespace firstdew::cli
