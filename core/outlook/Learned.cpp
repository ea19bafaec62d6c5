#include "outlook/Learned.h"

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
    return evidenceOf(seen, spell.lastSession, spell.watched, rules.after(spell.onDamp));
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
    std::vector<Evidence> fresh;
    std::vector<double> doses;
    for (const Spell& s : past.subspan(kept->spells.size())) {
        kept->spells.push_back(s);
        if (s.otherwise)
            continue; // what another treatment did says nothing of the sessions
        fresh.push_back(evidenceOf(s, reports, rules));
        doses.push_back(s.dose);
    }
    if (!fresh.empty())
        kept->clock.learn(fresh, doses);
    const double dose = spells.empty() ? 1 : spells.back().dose;
    if (!fresh.empty() || kept->dose != dose) {
        kept->dose = dose;
        for (const Clock which : {Clock::InForce, Clock::AsLearned})
            kept->present[static_cast<std::size_t>(which)] = {kept->clock.afterUnusual(dose, which), {}};
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
    return keptFor(site, spells, reports, rules).clock.inForce();
}

const Predictive& Learned::presentFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                      const FilterRules& rules, Clock which)
{
    const Kept& kept = keptFor(site, spells, reports, rules);
    const auto& stretched = kept.present[static_cast<std::size_t>(which)].clock;
    return stretched ? *stretched : kept.clock.of(which);
}

const Fitting& Learned::fittingOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                  const FilterRules& rules)
{
    return keptFor(site, spells, reports, rules).clock.fitting();
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
