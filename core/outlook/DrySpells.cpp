#include "outlook/DrySpells.h"

#include "outlook/Filter.h"
#include "outlook/Learned.h"

#include <algorithm>

namespace firstdew::outlook {

namespace {

constexpr int kLongest = 365;     // days on the curve at most
constexpr double kTail = 0.05;    // the curve ends at this chance
constexpr int kBeyondPresent = 2; // days shown after the present one

} // namespace

std::optional<DrySpells> drySpellsOf(const Diary& diary, DiarySite site, const Settings& settings)
{
    const LocalDate today = diary.today;
    DrySpells out;
    out.spells = spellsFor(diary, site);
    if (out.spells.empty())
        return std::nullopt;
    auto reports = diary.at(site).spellReports;
    const Predictive& clock = learnedFrom(diary).clockFor(site, out.spells, reports, settings.rules);
    for (std::size_t i = 0; i < out.usual.size(); ++i)
        out.usual[i] = clock.quantile(DrySpells::kLevels[i]);

    const LocalDate last = out.spells.back().lastSession;
    out.day = today - last;
    const int least = std::min(out.day + kBeyondPresent, kLongest);
    for (int d = 0; d <= kLongest; ++d) {
        out.lasting.push_back(clock.survivor(d));
        if (d >= least && out.lasting.back() < kTail)
            break;
    }

    const FilterRules rules =
        rulesAfter(out.spells.back(), learnedFrom(diary).rulesFor(site, out.spells, reports, settings.rules));
    const Predictive& present =
        learnedFrom(diary).presentFor(site, out.spells, diary.at(site).spellReports, settings.rules);
    out.now = filterStates(present, reports, last, today, 0, rules).back();
    out.reportedToday = !reports.empty() && reports.back().date == today;
    if (out.reportedToday)
        reports.pop_back();
    out.beforeReport = filterStates(present, reports, last, today, 0, rules).back();
    return out;
}

std::vector<DayChance> beliefsOf(const Diary& diary, DiarySite site, const Settings& settings)
{
    const auto spells = spellsFor(diary, site);
    const auto& reports = diary.at(site).spellReports;
    const Predictive& clock = learnedFrom(diary).clockFor(site, spells, reports, settings.rules);
    const FilterRules rules = learnedFrom(diary).rulesFor(site, spells, reports, settings.rules);
    std::vector<DayChance> out;
    for (const Spell& spell : spells) {
        const auto from = std::lower_bound(reports.begin(), reports.end(), spell.lastSession,
                                           [](const DayReport& r, LocalDate d) { return r.date < d; });
        const auto states = filterStates(clock, {from, reports.end()}, spell.lastSession,
                                         spell.lastSession + spell.watched, 0, rulesAfter(spell, rules));
        for (std::size_t i = 0; i < states.size(); ++i) {
            const LocalDate day = spell.lastSession + static_cast<int>(i);
            // The day of the next session belongs to the next spell.
            if (!out.empty() && out.back().date == day)
                out.pop_back();
            out.push_back({day, 1 - states[i].dry, states[i]});
        }
    }
    return out;
}

} // namespace firstdew::outlook
