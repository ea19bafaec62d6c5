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
    for (const Spell& s : past.subspan(kept->spells.size())) {
        kept->spells.push_back(s);
        if (s.otherwise)
            continue; // what another treatment did says nothing of the sessions
        fresh.push_back(evidenceOf(s, reports, rules));
    }
    if (!fresh.empty()) {
        kept->clock.learn(fresh);
        kept->renewal.reset();
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

const Fitting& Learned::fittingOf(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                  const FilterRules& rules)
{
    return keptFor(site, spells, reports, rules).clock.fitting();
}

const Renewal& Learned::renewalFor(DiarySite site, std::span<const Spell> spells, std::span<const DayReport> reports,
                                   const FilterRules& rules, double returnCost)
{
    Kept& kept = keptFor(site, spells, reports, rules);
    if (!kept.renewal || kept.returnCost != returnCost)
        kept.renewal.emplace([&](double days) { return kept.clock.inForce().survivor(days); }, returnCost);
    kept.returnCost = returnCost;
    return *kept.renewal;
}

} // namespace firstdew::outlook
