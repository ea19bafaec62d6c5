#include "ComparisonAnswer.h"
#include "Verb.h"

#include "outlook/Score.h"
#include "outlook/UsualDays.h"
#include "situation/Working.h"

#include <fmt/format.h>

namespace firstdew::cli {

namespace {

using namespace facts;
using nlohmann::json;
using situation::Reason;
using situation::SiteSituation;

json reasonJson(const Reason& r)
{
    json j{{"kind", token(r.kind)}};
    if (r.number != 0)
        j["number"] = r.number;
    if (r.count != 0)
        j["count"] = r.count;
    if (r.days != 0)
        j["days"] = r.days;
    if (r.to != 0) {
        j["from"] = r.from;
        j["to"] = r.to;
    }
    if (r.probability != 0)
        j["probability"] = r.probability;
    if (r.date)
        j["date"] = r.date->iso();
    if (r.row)
        j["row"] = token(*r.row);
    return j;
}

json workingJson(const situation::SiteWorking& w)
{
    json j{{"answer", token(w.answer)}};
    if (w.wait)
        j["wait"] = token(*w.wait);
    if (w.missing > 0)
        j["missing"] = w.missing;
    if (w.dampNow)
        j["damp_days_a_week"] = *w.dampNow;
    if (w.dampBefore)
        j["damp_days_a_week_before"] = *w.dampBefore;
    if (w.scoreNow && w.scoreBefore)
        j["hdss"] = {{"before", *w.scoreBefore}, {"now", *w.scoreNow}};
    return j;
}

std::string workingText(const situation::SiteWorking& w)
{
    std::string out = fmt::format("  working: {}", token(w.answer));
    if (w.wait)
        out += fmt::format(" ({}{})", token(*w.wait), w.missing > 0 ? fmt::format(", {} to go", w.missing) : "");
    if (w.dampNow)
        out += fmt::format("; damp {:.1f} days a week", *w.dampNow);
    if (w.dampNow && w.dampBefore)
        out += fmt::format(", {:.1f} before the first session", *w.dampBefore);
    return out + '\n';
}

json frequencyJson(outlook::Odds odds)
{
    const outlook::Frequency f = outlook::frequencyOf(odds);
    return {{"of", f.of}, {"in", f.in}};
}

json scoreJson(const outlook::Score& score)
{
    json j{{"verdict", token(score.verdict)}, {"days", score.days}, {"e_value", score.eValue}};
    j["lines"] = json::array();
    for (const outlook::ScoreLine& line : score.lines)
        j["lines"].push_back({{"said", frequencyJson(line.said)}, {"days", line.days}, {"damp", line.damp}});
    return j;
}

json nextDaysJson(const outlook::Forecast& forecast)
{
    json j = json::array();
    for (const auto& day : outlook::daysToTell(forecast))
        j.push_back(
            {{"date", day.date.iso()}, {"begun", day.begun}, {"told", frequencyJson(outlook::oddsOf(day.begun))}});
    return j;
}

std::string oddsText(outlook::Odds odds)
{
    const outlook::Frequency f = outlook::frequencyOf(odds);
    return odds == outlook::Odds::Hardly   ? fmt::format("less than 1 in {}", f.in)
           : odds == outlook::Odds::Nearly ? fmt::format("more than {} in {}", f.of - 1, f.in)
                                           : fmt::format("about {} in {}", f.of, f.in);
}

std::string scoreText(const outlook::Forecast& forecast, const outlook::Score& score)
{
    std::string out;
    for (const auto& day : outlook::daysToTell(forecast))
        out += fmt::format("  damp by {}: {}\n", day.date.iso(), oddsText(outlook::oddsOf(day.begun)));
    for (const outlook::ScoreLine& line : score.lines)
        out += fmt::format("  when {} was forecast for the next day, it came on {} of {} days\n", oddsText(line.said),
                           line.damp, line.days);
    out += fmt::format("  forecasts: {}", token(score.verdict));
    return out + (score.missing > 0 ? fmt::format(" ({} days to go)\n", score.missing) : "\n");
}

json siteJson(const SiteSituation& s)
{
    json j{{"site", token(s.site)},
           {"treated_as", token(s.treatedAs)},
           {"stage", token(s.stage)},
           {"advice", token(s.advice)}};
    const auto& p = s.forecast.today;
    j["probability"] = {{"dry", p.dry}, {"clammy", p.clammy}, {"sweating", p.sweating}};
    j["last_session"] = s.lastSession ? json(s.lastSession->iso()) : json();
    const auto due = s.callDay();
    j["due_date"] = due ? json(due->iso()) : json();
    j["due_if_silent"] = s.forecast.dueIfSilent ? json(s.forecast.dueIfSilent->iso()) : json();
    j["next_session"] = s.nextSession ? json(s.nextSession->iso()) : json();
    j["forecast"] = json::object();
    if (s.forecast.quantiles)
        for (std::size_t i = 0; i < outlook::kForecastLevels.size(); ++i)
            j["forecast"][fmt::format("{:.1f}", outlook::kForecastLevels[i])] = (*s.forecast.quantiles)[i].iso();
    j["spells"] = s.forecast.learned;
    j["censored"] = s.forecast.censored;
    j["errors"] = {{"false_calm", s.forecast.errors.falseCalm},
                   {"false_stirred", s.forecast.errors.falseStirred},
                   {"missed", s.forecast.errors.missed}};
    j["shortening"] = {{"e_value", s.forecast.shortening}, {"since", nullptr}};
    if (const auto shorter = outlook::shorterToTell(s.forecast))
        j["shortening"].update({{"since", shorter->since.iso()}, {"before", shorter->before}, {"now", shorter->now}});
    j["comparison"] = comparisonJson(s);
    j["reasons"] = json::array();
    for (const Reason& r : s.reasons)
        j["reasons"].push_back(reasonJson(r));
    return j;
}

std::string siteText(const SiteSituation& s)
{
    std::string out = fmt::format("{}: {}; advice: {}\n", token(s.site), token(s.stage), token(s.advice));
    if (s.lastSession)
        out += fmt::format("  last session {}\n", s.lastSession->iso());
    if (s.nextSession)
        out += fmt::format("  next session {}\n", s.nextSession->iso());
    if (s.forecast.quantiles)
        out += fmt::format("  clamminess begins between {} and {} with chance 80 %, half of the time by {}\n",
                           s.forecast.quantiles->front().iso(), s.forecast.quantiles->back().iso(),
                           (*s.forecast.quantiles)[2].iso());
    if (const auto shorter = outlook::shorterToTell(s.forecast))
        out += fmt::format("  the usual dry spell: {} days since about {}, {} before\n", shorter->now,
                           shorter->since.iso(), shorter->before);
    out += comparisonText(s);
    const auto& p = s.forecast.today;
    out += fmt::format("  today dry {:.0f} %, clammy {:.0f} %, sweating {:.0f} %\n", 100 * p.dry, 100 * p.clammy,
                       100 * p.sweating);
    for (const Reason& r : s.reasons) {
        out += fmt::format("  because: {}", token(r.kind));
        if (r.kind == situation::ReasonKind::DrySpellUsual)
            out += fmt::format(" ({:.0f} to {:.0f} days, today is day {})", r.from, r.to, r.number);
        if (r.count != 0)
            out += r.number != 0 ? fmt::format(" ({} of {})", r.number, r.count) : fmt::format(" ({})", r.count);
        if (r.days != 0)
            out += fmt::format(" ({} days)", r.days);
        if (r.row)
            out += fmt::format(" ({})", token(*r.row));
        if (r.date)
            out += fmt::format(" ({})", r.date->iso());
        out += '\n';
    }
    return out;
}

const Verb outlookVerb{"outlook", "where each site stands, and what to do", [](CLI::App& sub) {
                           struct Args {
                               std::string store, today, site, person;
                           };
                           const auto args = std::make_shared<Args>();
                           sub.add_option("--store", args->store, "the record")->required();
                           sub.add_option("--today", args->today, "the day looked at, YYYY-MM-DD")->required();
                           sub.add_option("--site", args->site, "hands, feet or armpits alone");
                           sub.add_option("--person", args->person, "whose record");
                           return [args]() -> Answer {
                               const LocalDate today = dateOption("--today", args->today);
                               std::optional<DiarySite> only;
                               if (!args->site.empty())
                                   only = tokenOption<DiarySite>("--site", args->site);
                               const auto journal = orRefuse(journal::Journal::openToRead(args->store));
                               const auto facts = orRefuse(journal.readAll());
                               const auto person = personOf(facts, args->person);
                               const auto diary = diary::readDiary(facts, person, today);
                               const auto situation = situation::assess(diary);
                               Answer answer;
                               answer.json = {{"person", person},
                                              {"today", today.iso()},
                                              {"age", token(situation.age)},
                                              {"sites", json::array()}};
                               for (const SiteSituation& s : situation.sites) {
                                   if (only && s.site != *only)
                                       continue;
                                   const auto working = situation::workingAt(diary, s);
                                   answer.json["sites"].push_back(siteJson(s));
                                   answer.json["sites"].back()["working"] = workingJson(working);
                                   const auto score = outlook::scoreOf(diary, s.site);
                                   answer.json["sites"].back()["score"] = scoreJson(score);
                                   answer.json["sites"].back()["next_days"] = nextDaysJson(s.forecast);
                                   answer.text += siteText(s) + workingText(working) + scoreText(s.forecast, score);
                               }
                               if (answer.json["sites"].empty() && only)
                                   throw Refused{fmt::format("--site: nothing is recorded about {}", token(*only))};
                               if (answer.text.empty())
                                   answer.text = "no site is in use yet\n";
                               return answer;
                           };
                       }};

} // namespace

} // namespace firstdew::cli
