#include "print/SiteParts.h"

#include "charts/SpellColumnsPainter.h"
#include "charts/WeeksPainter.h"
#include "outlook/UsualDays.h"
#include "words/Names.h"

#include <algorithm>
#include <array>
#include <functional>

namespace firstdew::print {

namespace {

using namespace facts;
using summary::Contents;
using summary::SiteContents;

constexpr double kSmall = 6.4;
constexpr double kGap = 10; // between columns
constexpr double kLeastChart = 34;
constexpr double kBelowCaption = 2.5;
constexpr double kBelowChart = 3;
constexpr double kBelowSite = 2;
constexpr double kMostHeight = 170; // of a site, unless its words need more

struct Row {
    QString label;
    QString value;
};

QString levelsOf(const SiteContents& s, LocalDate to)
{
    QStringList out;
    for (const auto& h : s.levels) {
        const QString level = Page::tr("%1 · %2", "milliamperes · kind of current")
                                  .arg(words::milliamps(h.level.mA), words::waveformName(h.waveform));
        const QString day = wholeDay(h.date, to);
        out << (h.limit
                    ? bracketsWhole(
                          Page::tr("%1 · %2 (limit %3)", "level · day").arg(level, day, words::milliamps(h.limit->mA)))
                    : Page::tr("%1 · %2", "level · day").arg(level, day));
    }
    return out.join(QLatin1Char('\n'));
}

/// The score before the course, and the latest ones.
QString scoresOf(const SiteContents& s)
{
    constexpr std::size_t kMost = 2;
    QStringList out;
    const auto& began = s.situation.hdssStartOn;
    if (s.situation.hdssStart && began)
        out << Page::tr("%1 on %2, to begin with", "score on day").arg(*s.situation.hdssStart).arg(wholeDate(*began));
    for (std::size_t i = s.scores.size() > kMost ? s.scores.size() - kMost : 0; i < s.scores.size(); ++i)
        if (s.scores[i].date != began)
            out << Page::tr("%1 on %2", "score on day").arg(s.scores[i].score).arg(wholeDate(s.scores[i].date));
    return out.join(QLatin1Char('\n'));
}

QString spellsOf(const SiteContents& s)
{
    const auto& f = s.situation.forecast;
    const auto usual = outlook::usualDays(f);
    const int ended = f.learned - f.censored;
    const QString count = Page::tr("%n dry spell(s) seen to the end", nullptr, ended) + QLatin1Char('\n') +
                          Page::tr("%n not seen to the end", "dry spells", f.censored);
    return (outlook::usualIsKnown(f) ? bracketsWhole(Page::tr("median %n day(s) (%1: %2 to %3)", nullptr, usual.median)
                                                         .arg(words::percent(0.8))
                                                         .arg(usual.from)
                                                         .arg(usual.to))
                                     : Page::tr("not known yet")) +
           QLatin1Char('\n') + count;
}

/// "1 of 7 sessions done", from when to when, and what was moved.
QString courseOf(const SiteContents& s, LocalDate to)
{
    QString out = Page::tr("%1 of %2 sessions done").arg(s.courseDone).arg(s.sessionsPlanned);
    if (s.courseStart)
        out += QLatin1Char('\n') + Page::tr("planned from %1").arg(wholeDay(*s.courseStart, to));
    if (s.courseDone > 0 && s.courseDone < s.sessionsPlanned && s.situation.lastSession)
        out += QLatin1Char('\n') + Page::tr("last session on %1").arg(wholeDay(*s.situation.lastSession, to));
    if (s.courseMoved > 0)
        out += QLatin1Char('\n') + Page::tr("%n of them on another day than planned", nullptr, s.courseMoved);
    return out;
}

std::vector<Row> rowsOf(const Contents& c, const SiteContents& s)
{
    std::vector<Row> rows{{Page::tr("Stage"), words::stageName(s.situation.stage)}};
    if (s.sessionsPlanned > 0)
        rows.push_back({Page::tr("Course"), courseOf(s, c.to)});
    if (!s.scores.empty())
        rows.push_back({Page::tr("Severity 1–4, own answer (modelled on the HDSS)"), scoresOf(s)});
    QString sessions = Page::tr("%1 completed").arg(s.sessionsDone);
    if (s.sessionsInterrupted > 0)
        sessions = words::listed({sessions, Page::tr("%1 interrupted").arg(s.sessionsInterrupted)});
    rows.push_back({Page::tr("Sessions in the period"), sessions});
    if (!s.levels.empty())
        rows.push_back({Page::tr("Highest comfortable in the period"), levelsOf(s, c.to)});
    if (s.situation.forecast.lastSession)
        rows.push_back({Page::tr("Usual dry spell, all time"), spellsOf(s)});
    if (!s.line.empty())
        rows.push_back(
            {Page::tr("Last check-in"),
             Page::tr("%1, %2", "day, level")
                     .arg(wholeDay(s.line.back().first, c.to), words::within(words::levelName(s.line.back().second))) +
                 QLatin1Char('\n') + Page::tr("%n in the period", "check-ins", s.checkIns)});
    if (s.situation.nextSession && s.situation.advice != situation::Advice::Blocked)
        rows.push_back({Page::tr("Next session"), wholeDate(*s.situation.nextSession)});
    return rows;
}

std::vector<charts::SpellColumn> columnsOf(const SiteContents& s, std::size_t most)
{
    const auto& spells = s.situation.forecast.spells;
    std::vector<charts::SpellColumn> out;
    for (std::size_t i = spells.size() > most ? spells.size() - most : 0; i < spells.size(); ++i)
        out.push_back({spells[i].lastSession, spells[i].left, spells[i].right, i + 1 == spells.size()});
    return out;
}

charts::WeeksData weeksOf(const Contents& c, const SiteContents& s)
{
    charts::WeeksData data{c.from, c.to, {}, s.sessions};
    for (const auto& week : s.weeks) {
        const auto damp = week.days.aWeek(situation::kLeastInWeek);
        const auto wet = week.days.wetAWeek(situation::kLeastInWeek);
        data.weeks.push_back({week.monday, damp, wet.value_or(0)});
    }
    return data;
}

/// How the words of the sites are set beside their charts.
struct Setting {
    double share; ///< of the width
    double size;  ///< of the type
};

/// The first that leaves room is taken.
constexpr std::array kSettings{Setting{0.42, 7.4}, Setting{0.47, 7.4}, Setting{0.47, 7}, Setting{0.47, 6.6}};

/// The words of a site, below `top`. Returns their height.
double paintRows(Sheet& sheet, const std::vector<Row>& rows, const Setting& set, double top, bool draw)
{
    const double column = sheet.width() * set.share - kGap;
    const double label = column * 0.43;
    double y = top;
    for (const Row& row : rows) {
        const double a = sheet.text(0, y, label - kGap, row.label, set.size, kSoft, false, draw);
        const double b = sheet.text(label, y, column - label, row.value, set.size, kInk, true, draw);
        y += std::max(a, b) + 1.6;
    }
    return y - top;
}

/// A picture below its caption, which takes as many lines as it needs.
struct Captioned {
    QString caption;
    double captionHeight = 0;
    std::function<void(const QRectF&)> paint;
};

double chartWidth(const Sheet& sheet, const Setting& set) { return sheet.width() * (1 - set.share); }

/// The two pictures of a site: its dry spells, and its damp days week by week.
std::array<Captioned, 2> picturesOf(Sheet& sheet, const Contents& c, const SiteContents& s, double width)
{
    QFont font = Sheet::font();
    font.setPixelSize(6);
    const charts::ChartLook look{kSoft, kRule, kWater, kAccent, kWash, font, 0.7, sheet.mirrored()};
    const auto columns = columnsOf(s, charts::columnsIn(width, look));
    std::array<Captioned, 2> out{
        {{columns.empty() ? QString()
                          : Page::tr("Days dry after the latest %n session(s). Hollow: first damp day unknown. "
                                     "Pointed: end not seen.",
                                     nullptr, static_cast<int>(columns.size())),
          0, [&sheet, columns, look](const QRectF& area) { paintSpellColumns(sheet.painter(), area, columns, look); }},
         {Page::tr("Days a week noted as damp, also after heat or effort, 0 to 7. Dark: wet or dripping. Ticks: "
                   "sessions."),
          0, [&sheet, weeks = weeksOf(c, s), look](const QRectF& area) {
              paintWeeks(sheet.painter(), area, weeks, look);
          }}}};
    for (Captioned& one : out)
        one.captionHeight = sheet.heightOf(one.caption, width, kSmall) + kBelowCaption;
    return out;
}

void paintPictures(Sheet& sheet, const std::array<Captioned, 2>& pictures, double top, double width, double height)
{
    double plots = height;
    for (const Captioned& one : pictures)
        plots -= one.captionHeight + kBelowChart;
    const double each = plots / static_cast<double>(pictures.size());
    double y = top;
    for (const Captioned& one : pictures) {
        sheet.text(sheet.width() - width, y, width, one.caption, kSmall, kSoft);
        y += one.captionHeight;
        one.paint(QRectF(sheet.left(sheet.width() - width, width), y, width, each));
        y += each + kBelowChart;
    }
}

/// What a site needs at least: its words, and charts in which something can be seen.
double leastHeight(Sheet& sheet, const Contents& c, const SiteContents& s, const Setting& set)
{
    double charts = 0;
    for (const Captioned& one : picturesOf(sheet, c, s, chartWidth(sheet, set)))
        charts += one.captionHeight + kLeastChart + kBelowChart;
    return std::max(charts, paintRows(sheet, rowsOf(c, s), set, 0, false));
}

/// The height of each site below its heading, so that all of them take no more than `room`. Empty where they need more.
std::vector<double> heightsOf(Sheet& sheet, const Contents& c, std::span<const SiteContents> sites, const Setting& set,
                              double room)
{
    std::vector<double> out;
    for (const SiteContents& s : sites) {
        out.push_back(leastHeight(sheet, c, s, set));
        room -= sheet.headingHeight(words::siteName(s.site)) + out.back() + kBelowSite;
    }
    if (room < 0)
        return {};
    // What is left over makes the lowest ones higher, up to a point.
    for (; room >= 1; --room) {
        const auto lowest = std::ranges::min_element(out);
        if (*lowest + 1 > kMostHeight)
            break;
        *lowest += 1;
    }
    return out;
}

void paintSite(Sheet& sheet, const Contents& c, const SiteContents& s, const Setting& set, double height)
{
    sheet.heading(words::siteName(s.site));
    const double width = chartWidth(sheet, set);
    paintRows(sheet, rowsOf(c, s), set, sheet.y(), true);
    paintPictures(sheet, picturesOf(sheet, c, s, width), sheet.y(), width, height);
    sheet.skip(height + kBelowSite);
}

} // namespace

std::size_t paintSites(Sheet& sheet, const Contents& c, std::span<const SiteContents> sites, double foot)
{
    for (; !sites.empty(); sites = sites.first(sites.size() - 1))
        for (const Setting& set : kSettings) {
            const auto heights = heightsOf(sheet, c, sites, set, foot - sheet.y());
            for (std::size_t i = 0; i < heights.size(); ++i)
                paintSite(sheet, c, sites[i], set, heights[i]);
            if (!heights.empty())
                return heights.size();
        }
    return 0;
}

} // namespace firstdew::print
