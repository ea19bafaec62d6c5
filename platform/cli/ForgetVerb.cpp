#include "Recording.h"

#include <fmt/format.h>
#include <memory>

namespace firstdew::cli {

namespace {

using namespace facts;

struct Options {
    std::string store, person;
    bool everything = false;
    bool yes = false;
};

Answer forget(const Options& o)
{
    if (o.everything == !o.person.empty())
        throw Usage{"--person or --everything: say which of the two is to be deleted"};
    auto store = orRefuse(journal::Journal::openExisting(o.store));
    const auto facts = orRefuse(store.readAll());
    const std::string person = o.everything ? "" : personOf(facts, o.person);
    const auto doomed =
        o.everything ? static_cast<std::ptrdiff_t>(facts.size()) : std::ranges::count(facts, person, &Fact::person);
    if (!o.yes)
        throw Refused{fmt::format("--yes: {} facts and all copies kept beside the store would be gone for good; export "
                                  "or back up first, then say --yes",
                                  doomed)};
    if (o.everything) {
        {
            const auto closed = std::move(store);
        }
        (void)orRefuse(journal::Journal::destroy(o.store));
    } else {
        (void)orRefuse(store.forget(person));
    }
    return {fmt::format("{} facts deleted\n", doomed), {{"deleted", doomed}}};
}

const Verb verb("forget", "delete a person's record, or the whole store with its copies, for good", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the store")->required();
    sub.add_option("--person", o->person, "whose record");
    sub.add_flag("--everything", o->everything, "the whole store");
    sub.add_flag("--yes", o->yes, "really");
    return [o] { return forget(*o); };
});

} // namespace

} // namespace firstdew::cli
