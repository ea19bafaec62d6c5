#include "print/DetailsPage.h"

#include "print/SiteParts.h"
#include "words/ComparedWords.h"
#include "words/Names.h"
#include "words/ScoreWords.h"
#include "words/SheetWords.h"
#include "words/TaughtWords.h"

#include <algorithm>
#include <array>

namespace firstdew::print {

namespace {

using namespace facts;
using summary::Contents;
using summary::SiteContents;

constexpr double kText = 7.6;
constexpr double kSourcesSize = 6.4;

QString healthLine(const Contents& c)
{
    QStringList yes;
    for (const auto row : c.screeningYes)
        yes << words::screeningShort(row);
    return !c.screened     ? Page::tr("The health questions have not been answered yet.")
           : yes.isEmpty() ? Page::tr("Health questions: nothing answered with yes.")
                           : Page::tr("Answered with yes: %1.").arg(words::listed(yes));
}

QString machineLine(const Machine& machine)
{
    const QString name = !machine.name.empty() ? words::asWritten(machine.name)
                         : machine.pulsed      ? Page::tr("direct and pulsed current")
                                               : Page::tr("direct current");
    return Page::tr("Machine: %1.").arg(name);
}

void paintPrescription(Sheet& sheet, const Contents& c)
{
    sheet.heading(Page::tr("Health questions and prescription"));
    QStringList lines{healthLine(c)};
    for (const auto& e : c.clearances)
        lines << Page::tr("Approved by %1 on %2: %3.")
                     .arg(words::asWritten(e.payload.who), wholeDate(e.payload.given),
                          words::screeningShort(e.payload.row));
    for (const auto& [given, sites] : c.careSheets)
        lines << Page::tr("Care sheet of %1, %2, for: %3.")
                     .arg(words::giverName(given.who), wholeDate(given.given), words::within(words::siteNames(sites)));
    for (const auto& e : c.taught) {
        lines << Page::tr("Taught: %1.").arg(words::within(words::taughtLine(e)));
        if (const QStringList seen = words::taughtTicks(e.payload); !seen.isEmpty())
            lines << Page::tr("Seen: %1.").arg(seen.join(QStringLiteral("; ")));
    }
    if (c.machine)
        lines << machineLine(*c.machine);
    const bool armpits = std::ranges::any_of(c.sites, [](const auto& s) { return s.site == DiarySite::Armpits; });
    if (c.machine && armpits)
        lines << (c.machine->pad ? Page::tr("Armpit pads: %1.").arg(words::squareCentimetres(*c.machine->pad))
                                 : Page::tr("The size of the armpit pads is not entered, so their limit is kept low."));
    if (c.cellSessionsLeft)
        lines << (*c.cellSessionsLeft > 0
                      ? Page::tr("Batteries: about %n session(s) left.", nullptr, *c.cellSessionsLeft)
                      : Page::tr("Batteries: probably used up."));
    sheet.paragraph(lines.join(QLatin1Char(' ')), kText, kInk);
}

QString charge(MilliampMinutes c) { return words::quantity(c.mAmin, words::Unit::MilliampMinutes); }

/// A word and its count, joined: "Dry 12, Clammy 3". It follows a colon.
template <class E, class Name>
QString counted(const PerValue<E, int>& counts, Name name, bool zeros)
{
    QStringList out;
    for (const E value : allOf<E>())
        if (zeros || counts[value] > 0)
            out << QStringLiteral("%1 %2").arg(words::within(name(value))).arg(counts[value]);
    return words::listed(out);
}

void paintFigures(Sheet& sheet, const SiteContents& s)
{
    QStringList lines;
    lines
        << Page::tr("Check-ins on %n day(s): %1.", nullptr, s.checkIns).arg(counted(s.byLevel, words::levelName, true));
    if (const QString stirred = counted(s.stirred, words::circumstanceName, false); !stirred.isEmpty())
        lines << Page::tr("Days with a circumstance: %1.").arg(stirred);
    if (s.meanCharge)
        lines << Page::tr("Mean charge a session: %1.").arg(charge(*s.meanCharge));
    if (s.score.verdict != outlook::ScoreVerdict::TooFew)
        lines << words::scoreLines(s.score) << words::scoreVerdict(s.score);
    if (s.situation.comparison)
        lines << words::comparisonOnPaper(*s.situation.comparison);
    QStringList weighed;
    for (const auto& [date, rate] : s.weighings)
        weighed << Page::tr("%1 a minute on %2").arg(words::quantity(rate, words::Unit::Milligrams), wholeDate(date));
    if (!weighed.isEmpty())
        lines << Page::tr("Weighed: %1.").arg(words::listed(weighed));
    const double label = sheet.width() * 0.16;
    const double a = sheet.text(0, sheet.y(), label - 4, words::siteName(s.site), kText, kSoft);
    const double b = sheet.text(label, sheet.y(), sheet.width() - label, lines.join(QLatin1Char(' ')), kText, kInk);
    sheet.skip(std::max(a, b) + 2);
}

/// One session, one line.
std::array<QString, 7> cellsOf(const Entry<Session>& e)
{
    const Session& s = e.payload;
    QStringList felt;
    if (!s.completed)
        felt.append(Page::tr("interrupted"));
    if (s.comfort)
        felt.append(words::comfortName(*s.comfort));
    for (const auto f : allOf<SkinFinding>())
        if (f != SkinFinding::Fine && s.skin.contains(f))
            felt.append(words::skinName(f));
    const auto current = [](const std::optional<Milliamps>& m) {
        return m ? words::milliamps(m->mA) : QStringLiteral("–");
    };
    return {unbroken(words::shortDayOfYear(e.happened.date)),
            words::siteName(s.site),
            words::waveformName(s.waveform),
            current(s.peak),
            current(s.comfortable),
            s.charge ? charge(*s.charge) : QStringLiteral("–"),
            words::listed(felt)};
}

constexpr double kTableSize = 7.2;
constexpr double kTableLine = 10.6;

/// A line of the table. Returns its height.
double paintLine(Sheet& sheet, const std::array<QString, 7>& cells, QColor colour, bool draw)
{
    constexpr std::array<double, 7> kShare{0.16, 0.17, 0.15, 0.10, 0.12, 0.12, 0.18};
    double x = 0;
    double h = kTableLine;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        const double w = kShare[i] * sheet.width();
        h = std::max(h, sheet.text(x, sheet.y(), w - 3, cells[i], kTableSize, colour, false, draw));
        x += w;
    }
    return h;
}

/// The latest sessions as a table, as many as end above `foot`.
void paintSessions(Sheet& sheet, const std::vector<Entry<Session>>& sessions, double foot)
{
    const std::array<QString, 7> names{Page::tr("Day"),     Page::tr("Site"),        Page::tr("Current"),
                                       Page::tr("Highest"), Page::tr("Comfortable"), Page::tr("Charge"),
                                       Page::tr("Felt")};
    const auto earlier = [](std::size_t count) {
        return Page::tr("%n earlier; all of them are in the exports.", nullptr, static_cast<int>(count));
    };
    sheet.heading(Page::tr("Sessions"));
    std::vector<double> heights;
    for (const auto& e : sessions)
        heights.push_back(paintLine(sheet, cellsOf(e), kInk, false));
    double needed = paintLine(sheet, names, kSoft, false);
    for (const double h : heights)
        needed += h;
    // What came earlier is said in a line of its own.
    const double room = foot - sheet.y();
    const double said = needed > room ? sheet.heightOf(earlier(sessions.size()), sheet.width(), kText) : 0;
    std::size_t first = 0;
    for (; first < sessions.size() && needed + said > room; ++first)
        needed -= heights[first];
    if (first > 0)
        sheet.paragraph(earlier(first), kText, kSoft);
    if (first == sessions.size())
        return;
    sheet.skip(paintLine(sheet, names, kSoft, true));
    for (std::size_t i = first; i < sessions.size(); ++i)
        sheet.skip(paintLine(sheet, cellsOf(sessions[i]), kInk, true));
}

QString sources()
{
    return Page::tr("Dry spells are reckoned from the last session to the first clammy day, with days not seen and "
                    "top-ups made while still dry taken as "
                    "what they are (interval- and right-censored). Response by HDSS: two steps strong, one good "
                    "(Gülmez & Solak, J Clin Med 2026;15:640, where "
                    "%1 of %2 responded).")
               .arg(words::quantity(65.2, words::Unit::Percent, 1), words::number(92)) +
           QLatin1Char(' ') + Page::tr("Severity is asked in the app's own words, in four steps after the HDSS.");
}

/// Whose page it is, on every page but the first.
void paintName(Sheet& sheet, const Contents& c)
{
    const QString who = c.name.empty() ? Page::tr("Name not given") : words::asWritten(c.name);
    sheet.paragraph(Page::tr("%1   ·   %2 to %3").arg(who, wholeDate(c.from), wholeDate(c.to)), 9, kInk, true);
}

std::span<const SiteContents> sitesFrom(const Contents& c, std::size_t first)
{
    return std::span(c.sites).subspan(std::min(first, c.sites.size()));
}

} // namespace

std::size_t paintSitesPage(QPainter& painter, QSizeF size, const Contents& c, std::size_t first)
{
    Sheet sheet(painter, size);
    paintName(sheet, c);
    return paintSites(sheet, c, sitesFrom(c, first), sheet.height());
}

void paintDetailsPage(QPainter& painter, QSizeF size, const Contents& c, std::size_t first)
{
    Sheet sheet(painter, size);
    paintName(sheet, c);
    paintSites(sheet, c, sitesFrom(c, first), sheet.height());
    paintPrescription(sheet, c);
    sheet.heading(Page::tr("Figures of this period"));
    for (const auto& s : c.sites)
        paintFigures(sheet, s);
    const double foot = sheet.height() - sheet.heightOf(sources(), sheet.width(), kSourcesSize);
    sheet.text(0, foot, sheet.width(), sources(), kSourcesSize, kSoft);
    if (!c.sessions.empty())
        paintSessions(sheet, c.sessions, foot - kTableLine);
}

} // namespace firstdew::print
