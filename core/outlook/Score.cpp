#include "outlook/Score.h"

#include "outlook/Filter.h"
#include "outlook/Learned.h"

#include <algorithm>
#include <map>

namespace firstdew::outlook {

namespace {

bool courseOpenOn(const SiteDiary& site, LocalDate evening)
{
    return std::ranges::any_of(site.courses, [&](const diary::CourseSet& c) {
        return c.course.start <= evening && !(c.firstReview && *c.firstReview <= evening);
    });
}

void judgeSpell(const SiteDiary& site, const Spell& spell, const Predictive& clock, const FilterRules& rules,
                std::vector<JudgedDay>& out)
{
    const auto& reports = site.spellReports;
    auto report = std::upper_bound(reports.begin(), reports.end(), spell.lastSession,
                                   [](LocalDate d, const DayReport& r) { return d < r.date; });
    const FilterRules own = rulesAfter(spell, rules);
    Filter filter(clock, own);
    for (int age = 1; age <= spell.watched; ++age) {
        const LocalDate day = spell.lastSession + age;
        filter.pass();
        if (report == reports.end() || report->date != day)
            continue;
        const double said = 1 - filter.belief().dry;
        const bool judged = age > kSettlingDays && said <= kAlreadyLikely && !report->stirred();
        if (judged && !courseOpenOn(site, day - 1) && !site.otherwiseTreated(spell.lastSession, day - 1))
            out.push_back({day, said, report->level != Level::Dry});
        filter.hear(report->level, report->stirred());
        ++report;
    }
}

} // namespace

std::vector<JudgedDay> judgedDays(const Diary& diary, DiarySite site, const Settings& settings)
{
    const SiteDiary& own = diary.at(site);
    std::vector<JudgedDay> out;
    Lessons lessons;
    for (const Spell& spell : spellsFor(diary, site)) {
        const auto unusual = lessons.clock.afterUnusual(spell.dose);
        const FilterRules rules = lessons.reporting.rulesFor(settings.rules);
        judgeSpell(own, spell, unusual ? *unusual : lessons.clock.inForce(), rules, out);
        if (!spell.otherwise)
            lessons.learn({&spell, 1}, own.spellReports, settings.rules);
    }
    return out;
}

Score scoreOf(const Diary& diary, DiarySite site, const Settings& settings)
{
    const auto days = judgedDays(diary, site, settings);
    const Forecast forecast = forecastFor(diary, site, settings);
    std::map<Odds, ScoreLine> lines;
    for (const JudgedDay& day : days) {
        ScoreLine& line = lines[oddsOf(day.said)];
        line.said = oddsOf(day.said);
        ++line.days;
        line.damp += day.damp ? 1 : 0;
    }
    Score out;
    out.days = static_cast<int>(days.size());
    out.eValue = forecast.misfit;
    out.missing = std::max(0, kDaysThatScore - out.days);
    out.verdict = forecast.widened  ? ScoreVerdict::Widened
                  : out.missing > 0 ? ScoreVerdict::TooFew
                                    : ScoreVerdict::Fits;
    for (const auto& [odds, line] : lines)
        if (out.missing == 0 && line.days >= kDaysOfLine)
            out.lines.push_back(line);
    if (out.lines.size() > kLinesTold)
        out.lines.erase(out.lines.begin(), out.lines.end() - kLinesTold);
    return out;
}

std::vector<DayChance> daysToTell(const Forecast& forecast)
{
    std::vector<DayChance> out;
    for (const std::size_t ahead : {std::size_t{1}, std::size_t{3}, std::size_t{7}})
        if (ahead < forecast.days.size())
            out.push_back(forecast.days[ahead]);
    return out;
}

} // namespace firstdew::outlook
