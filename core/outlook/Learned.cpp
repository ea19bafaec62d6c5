#include "outlook/Learned.h"

#include "outlook/Filter.h"

#include <algorithm>
#include <utility>

namespace firstdew::outlook {

namespace {

std::span<const DayReport> within(std::span<const DayReport> reports, LocalDate after, LocalDate until)
{
    const auto later = [](LocalDate d, const DayReport& r) { return d < r.date; };
    const auto from = std::upper_bound(reports.begin(), reports.end(), after, later);
    return {from, std::upper_bound(from, reports.end(), until, later)};
}

} // namespace

Learned& learnedFrom(const Diary& diary)
{
    return diary.learned.orMake([] { return new Learned; });
}

Evidence evidenceOf(const Spell& spell, std::span<const DayReport> reports, const FilterRules& rules)
{
    const auto seen = within(reports, spell.lastSession, spell.lastSession + spell.watched);
    return evidenceOf(seen, spell.lastSession, spell.watched, rulesAfter(spell, rules));
}

void Lessons::learnErrors(const Spell& spell, std::span<const DayReport> reports, const FilterRules& rules)
{
    if (spell.dose != 1)
        return; // how long it lasts is less certain
    std::vector<double> days;
    for (int day = 0; day <= std::min(spell.watched, kErrorsWithin); ++day)
        days.push_back(day);
    const auto seen = within(reports, spell.lastSession, spell.lastSession + spell.watched);
    reporting.see(seen, spell, clock.learned().survivorsOn(days), rulesAfter(spell, rules));
}

std::vector<std::size_t> Lessons::learn(std::span<const Spell> spells, std::span<const DayReport> reports,
                                        const FilterRules& rules)
{
    std::vector<double> doses;
    for (const Spell& s : spells)
        doses.push_back(s.dose);
    std::vector<std::size_t> taught;
    const auto next = [&](std::size_t i) {
        learnErrors(spells[i], reports, rules);
        Evidence out = evidenceOf(spells[i], reports, reporting.rulesFor(rules));
        if (!out.pieces.empty())
            taught.push_back(i);
        return out;
    };
    clock.learn(spells.size(), next, doses);
    return taught;
}

FilterRules Learned::rulesFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                              const FilterRules& rules)
{
    return keptFor(site, spells, reports, rules).lessons.reporting.rulesFor(rules);
}

ErrorRates Learned::errorsOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                             const FilterRules& rules)
{
    return keptFor(site, spells, reports, rules).lessons.reporting.rates();
}

Learned::Kept& Learned::keptFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                const FilterRules& rules)
{
    const auto past = spells.empty() ? spells : spells.first(spells.size() - 1);
    auto& kept = m_kept[static_cast<std::size_t>(site)];
    const bool stands = kept && kept->rules == rules && kept->spells.size() <= past.size() &&
                        kept->reports.size() <= reports.size() &&
                        std::equal(kept->spells.begin(), kept->spells.end(), past.begin()) &&
                        std::equal(kept->reports.begin(), kept->reports.end(), reports.begin());
    // A report added later may fall into a spell that was already learned.
    const bool whole =
        stands && (kept->spells.empty() || kept->reports.size() == reports.size() ||
                   reports[kept->reports.size()].date > kept->spells.back().lastSession + kept->spells.back().watched);
    if (!whole) {
        Kept anew;
        anew.rules = rules;
        kept = std::move(anew);
    }
    const std::size_t before = kept->spells.size();
    std::vector<Spell> fresh;
    std::vector<std::size_t> indexes;
    for (std::size_t i = before; i < past.size(); ++i) {
        kept->spells.push_back(past[i]);
        if (past[i].otherwise)
            continue; // what another treatment did says nothing of the sessions
        fresh.push_back(past[i]);
        indexes.push_back(i);
    }
    if (!fresh.empty()) {
        for (const std::size_t i : kept->lessons.learn(fresh, reports, rules))
            kept->taught.push_back(indexes[i]);
        kept->medianBefore.reset();
    }
    const double dose = spells.empty() ? 1 : spells.back().dose;
    if (!fresh.empty() || kept->dose != dose) {
        kept->dose = dose;
        for (const Clock which : {Clock::InForce, Clock::AsLearned})
            kept->present[static_cast<std::size_t>(which)] = {kept->lessons.clock.afterUnusual(dose, which), {}};
    }
    if (kept->spells.size() > before) {
        const auto until = within(reports, LocalDate(-10'000'000), past.back().lastSession + past.back().watched);
        kept->reports.assign(until.begin(), until.end());
    }
    return *kept;
}

const Predictive& Learned::clockFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                    const FilterRules& rules)
{
    return keptFor(site, spells, reports, rules).lessons.clock.inForce();
}

const Predictive& Learned::presentFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                      const FilterRules& rules, Clock which)
{
    const Kept& kept = keptFor(site, spells, reports, rules);
    const auto& stretched = kept.present[static_cast<std::size_t>(which)].clock;
    return stretched ? *stretched : kept.lessons.clock.of(which);
}

const Fitting& Learned::fittingOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                  const FilterRules& rules)
{
    return keptFor(site, spells, reports, rules).lessons.clock.fitting();
}

std::optional<Changed> Learned::changeOf(DiarySite site, std::span<const Spell> spells,
                                         std::span<const DayReport> reports, const FilterRules& rules)
{
    const Kept& kept = keptFor(site, spells, reports, rules);
    const auto& change = kept.lessons.clock.change();
    if (!change)
        return std::nullopt;
    const Spell& first = kept.spells[kept.taught[change->since]];
    const Spell& told = kept.spells[kept.taught[change->found]];
    return Changed{first.lastSession, told.lastSession + told.watched, kept.lessons.clock.since()->quantile(0.5), {}};
}

double Learned::medianBeforeChange(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                   const FilterRules& rules)
{
    Kept& kept = keptFor(site, spells, reports, rules);
    if (kept.medianBefore)
        return *kept.medianBefore;
    const Change& change = *kept.lessons.clock.change();
    std::vector<Evidence> old;
    for (std::size_t i = std::max(change.before, change.since - std::min(change.since, kChangeWithin));
         i < change.since; ++i) {
        const Spell& s = kept.spells[kept.taught[i]];
        old.push_back(
            kept.lessons.clock.asUsual(evidenceOf(s, reports, kept.lessons.reporting.rulesFor(rules)), s.dose));
    }
    kept.medianBefore = Predictive(old).quantile(0.5);
    return *kept.medianBefore;
}

double Learned::shorteningOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                             const FilterRules& rules)
{
    return keptFor(site, spells, reports, rules).lessons.clock.shift().eValue();
}

const Renewal& Learned::renewalFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                   const FilterRules& rules, double returnCost, Clock which)
{
    const Predictive& clock = presentFor(site, spells, reports, rules, which);
    Kept& kept = *m_kept[static_cast<std::size_t>(site)];
    if (kept.returnCost != returnCost)
        for (auto& present : kept.present)
            present.renewal.reset();
    kept.returnCost = returnCost;
    auto& renewal = kept.present[static_cast<std::size_t>(which)].renewal;
    if (!renewal)
        renewal.emplace([&](double days) { return clock.survivor(days); }, returnCost);
    return *renewal;
}

} // namespace firstdew::outlook
