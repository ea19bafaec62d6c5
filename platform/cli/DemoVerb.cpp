#include "Verb.h"

#include "codec/RecordJson.h"
#include "journal/Destination.h"
#include "journal/People.h"

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

Answer demo(const std::string& out, const std::string& today)
{
    const LocalDate day = today.empty() ? localNow().date : dateOption("--today", today);
    if (const auto may = journal::mayWriteTo(out, "", false); !may)
        throw Refused{"--out: " + out + " " + may.error().message};
    const auto incoming = orRefuse(codec::readRecordJson("demo record", demoRecord));
    std::vector<Fact> facts;
    LocalDate last(-1000000);
    for (const auto& i : incoming) {
        facts.push_back(i.fact);
        last = std::max(last, i.fact.happened.date);
    }
    for (Fact& f : facts)
        shift(f, day - 1 - last);
    journal::renameEarlierPersons(facts);
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
