#include "ComparisonAnswer.h"
#include "Recording.h"

#include "diary/Diary.h"
#include "situation/Assess.h"

#include <fmt/format.h>
#include <memory>
#include <random>

namespace firstdew::cli {

nlohmann::json holdRatioJson(const outlook::HoldRatio& held)
{
    return {{"ratio", held.ratio},
            {"limits", {held.low, held.high}},
            {"usual_median", held.usualMedian},
            {"shorter_median", held.shorterMedian()},
            {"answer", facts::token(outlook::answerOf(held))}};
}

std::string holdRatioText(const outlook::HoldRatio& held)
{
    return fmt::format("  the shorter session holds {:.2f} times as long (95 % limits {:.2f} to {:.2f}), {:.1f} days "
                       "and not {:.1f}: {}\n",
                       held.ratio, held.low, held.high, held.shorterMedian(), held.usualMedian,
                       facts::token(outlook::answerOf(held)));
}

namespace {

using namespace facts;

struct Options {
    std::string store, site, date, person;
    double shorter = situation::kShorterOffered;
    std::optional<int> seed;
    bool begin = false;
    bool leave = false;
};

const situation::SiteSituation& siteIn(const situation::Situation& situation, DiarySite site)
{
    for (const auto& s : situation.sites)
        if (s.site == site)
            return s;
    throw Refused{fmt::format("--site: nothing is recorded about {}", token(site))};
}

std::string sentenceOf(situation::ComparisonBar bar)
{
    using situation::ComparisonBar;
    switch (bar) {
    case ComparisonBar::Runs: return "a comparison runs there already; leave it first with --leave";
    case ComparisonBar::AdultsOnly: return "it is for adults with a birth date; sessions of children are not shortened";
    case ComparisonBar::TwoSites: return "one session treats two sites here; it is for a site treated by itself";
    case ComparisonBar::NotKeepingDry: return "it is for a site that is kept dry after a first course and its review";
    case ComparisonBar::NoResponse: return "the course brought no response by the score, or no score is recorded";
    case ComparisonBar::Barred: return "a session is barred there; see outlook";
    case ComparisonBar::SkinRecently: return "the skin was not fine lately; wait two weeks";
    case ComparisonBar::OtherTreatment: return "something else dries the site at present";
    case ComparisonBar::Shortening: return "the dry spells have become shorter; ask the prescriber first";
    case ComparisonBar::FewSpells: return "too few dry spells are known; go on with the diary";
    case ComparisonBar::SessionsUnlike: return "the last three sessions have to be led by the app, completed and alike";
    case ComparisonBar::NoCheckIns: return "the diary has no check-in of the last days";
    }
    return {};
}

Answer add(const Options& o, DiarySite site)
{
    const LocalTime happened = o.date.empty() ? localNow() : happenedOption(o.date, "", {12 * 60});
    const auto facts = factsIn(o.store);
    const Who who = personToRecord(facts, o.person, false);
    const auto diary = diary::readDiary(facts, who.id, happened.date);
    const auto situation = situation::assess(diary);
    const auto& s = siteIn(situation, site);
    if (o.begin) {
        if (const auto bar = situation::comparisonBar(diary, s))
            throw Refused{"--begin: " + sentenceOf(*bar)};
    } else if (!s.comparison || s.comparison->ended) {
        throw Refused{"--leave: no comparison runs there"};
    }
    const int seed = o.seed ? *o.seed : static_cast<int>(std::random_device{}() & 0x7fffffffU);
    const Comparison fact{site, o.begin, o.shorter, o.begin ? seed : 0};
    const std::string id = record(o.store, {"", who.id, happened, nowMs(), "", fact});
    return {fmt::format("comparison at {} {}: recorded as {}\n", token(site), o.begin ? "begun" : "left", id),
            {{"id", id}}};
}

Answer comparison(const Options& o)
{
    const auto site = tokenOption<DiarySite>("--site", o.site);
    if (o.begin || o.leave)
        return add(o, site);
    const LocalDate today = o.date.empty() ? localNow().date : dateOption("--date", o.date);
    const auto facts = factsIn(o.store, false);
    const auto diary = diary::readDiary(facts, personOf(facts, o.person), today);
    const auto situation = situation::assess(diary);
    const auto& s = siteIn(situation, site);
    const auto bar = situation::comparisonBar(diary, s);
    Answer answer;
    answer.json = {{"site", token(site)},
                   {"bar", bar ? nlohmann::json(token(*bar)) : nlohmann::json()},
                   {"comparison", comparisonJson(s)}};
    answer.text = s.comparison ? comparisonText(s) : std::string("  no comparison was made there\n");
    answer.text += bar ? fmt::format("  none may begin now: {}\n", sentenceOf(*bar)) : "  one may begin now\n";
    return answer;
}

const Verb verb("comparison", "compare a shorter session with the usual one: begin, leave, or see", [](CLI::App& sub) {
    auto o = std::make_shared<Options>();
    sub.add_option("--store", o->store, "the person's store")->required();
    sub.add_option("--site", o->site, anyOf<DiarySite>())->required();
    auto* begin = sub.add_flag("--begin", o->begin, "begin one; agree on it with the prescriber or nurse first");
    sub.add_flag("--leave", o->leave, "leave the one that runs")->excludes(begin);
    sub.add_option("--shorter", o->shorter, "length of the shorter session in parts of the usual one (0.5)")
        ->check(CLI::Range(0.5, 0.9));
    sub.add_option("--seed", o->seed, "of the random order (drawn)")->check(CLI::Range(0, 2147483647));
    sub.add_option("--date", o->date, "day, YYYY-MM-DD (today)");
    sub.add_option("--person", o->person, "whose record, where the store holds several");
    return [o] { return comparison(*o); };
});

} // namespace

nlohmann::json comparisonJson(const situation::SiteSituation& s)
{
    if (!s.comparison)
        return {};
    const situation::Compared& c = *s.comparison;
    nlohmann::json j{{"since", c.since.iso()},
                     {"shorter", c.shorter},
                     {"spells", c.done.size()},
                     {"pair", c.pair()},
                     {"pairs", outlook::kPairs},
                     {"runs", c.runs()},
                     {"next", c.ended ? nlohmann::json() : nlohmann::json(c.nextShorter ? "shorter" : "usual")},
                     {"rests", c.rests ? nlohmann::json(token(*c.rests)) : nlohmann::json()},
                     {"ended", c.ended ? nlohmann::json(token(*c.ended)) : nlohmann::json()},
                     {"ended_on", c.ended ? nlohmann::json(c.endedOn.iso()) : nlohmann::json()},
                     {"held", nullptr}};
    if (c.ended)
        if (const auto held = situation::heldIn(c))
            j["held"] = holdRatioJson(*held);
    return j;
}

std::string comparisonText(const situation::SiteSituation& s)
{
    if (!s.comparison)
        return {};
    const situation::Compared& c = *s.comparison;
    if (!c.ended)
        return fmt::format("  comparison since {}: pair {} of {}, next session {}{}\n", c.since.iso(), c.pair(),
                           outlook::kPairs, c.nextShorter ? "shorter" : "usual",
                           c.rests ? fmt::format("; rests ({})", token(*c.rests))
                                   : std::string("; the forecast calls for nothing meanwhile"));
    const auto held = situation::heldIn(c);
    return fmt::format("  comparison from {} to {}: {}, {} spells\n", c.since.iso(), c.endedOn.iso(), token(*c.ended),
                       c.done.size()) +
           (held ? holdRatioText(*held) : std::string("  they say nothing yet\n"));
}

} // namespace firstdew::cli
