#include "Verb.h"

#include "situation/Reminders.h"

#include <fmt/format.h>

namespace firstdew::cli {

namespace {

using namespace facts;
using nlohmann::json;

const Verb dueVerb{"due", "reminders due at a moment", [](CLI::App& sub) {
                       struct Args {
                           std::string store, at, person;
                           bool upcoming = false;
                       };
                       const auto args = std::make_shared<Args>();
                       sub.add_option("--store", args->store, "the record")->required();
                       sub.add_option("--at", args->at, "local time, YYYY-MM-DDTHH:MM")->required();
                       sub.add_option("--person", args->person, "whose record");
                       sub.add_flag("--upcoming", args->upcoming, "those of the next 28 days instead");
                       return [args]() -> Answer {
                           const auto at = LocalTime::parse(args->at);
                           if (!at)
                               throw Usage{"--at: '" + args->at + "' is no local time; write YYYY-MM-DDTHH:MM"};
                           const auto journal = orRefuse(journal::Journal::openToRead(args->store));
                           const auto facts = orRefuse(journal.readAll());
                           const auto diary = diary::readDiary(facts, personOf(facts, args->person), at->date);
                           const auto list = args->upcoming ? situation::upcomingReminders(diary, at->at)
                                                            : situation::dueReminders(diary, at->at);
                           Answer answer;
                           answer.json = {{"at", at->iso()}, {"reminders", json::array()}};
                           for (const auto& r : list) {
                               answer.json["reminders"].push_back({{"kind", token(r.kind)},
                                                                   {"site", r.site ? json(token(*r.site)) : json()},
                                                                   {"at", r.at.iso()},
                                                                   {"since", r.since.iso()},
                                                                   {"key", r.key}});
                               answer.text += fmt::format("{}  {}{}\n", r.at.iso(), token(r.kind),
                                                          r.site ? " " + std::string(token(*r.site)) : "");
                           }
                           if (list.empty())
                               answer.text = "nothing is due\n";
                           return answer;
                       };
                   }};

} // namespace

} // namespace firstdew::cli
