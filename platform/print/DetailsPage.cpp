#include "print/DetailsPage.h"

#include "words/Names.h"
#include "words/ScoreWords.h"
#include "words/TaughtWords.h"

#include <algorithm>
#include <array>

namespace firstdew::print {

namespace {

using namespace facts;
using summary::Contents;
using summary::SiteContents;

constexpr double kText = 7.6;

QString healthLine(const Contents& c)
{
    QStringList yes;
    for (const auto row : c.screeningYes)
        yes << words::screeningShort(row);
    return !c.screened     ? Page::tr("The health questions have not been answered yet.")
           : yes.isEmpty() ? Page::tr("Health questions: nothing answered with yes.")
                           : Page::tr("Answered with yes: %1.").arg(listed(yes));
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
        lines << Page::tr("Cleared by %1 on %2: %3.")
                     .arg(words::asWritten(e.payload.who), words::dayOfYear(e.payload.given),
                          words::screeningShort(e.payload.row));
    for (const auto& [given, sites] : c.careSheets)
        lines << Page::tr("Care sheet of %1, %2, for: %3.")
                     .arg(words::giverName(given.who), words::dayOfYear(given.given), words::siteNames(sites));
    for (const auto& e : c.taught) {
        lines << Page::tr("Taught: %1.").arg(words::taughtLine(e));
        if (const QStringList seen = words::taughtTicks(e.payload); !seen.isEmpty())
            lines << Page::tr("Seen: %1.").arg(seen.join(QStringLiteral("; ")));
    }
    if (c.machine)
        lines << machineLine(*c.machine);
    const bool armpits = std::ranges::any_of(c.sites, [](const auto& s) { return s.site == DiarySite::Armpits; });
    if (c.machine && armpits)
        lines << (c.machine->pad ? Page::tr("Armpit pads: %1 cm² each.").arg(words::number(c.machine->pad->cm2))
                                 : Page::tr("The size of the armpit pads is not entered, so their limit is kept low."));
    if (c.cellSessionsLeft)
        lines << Page::tr("Batteries: about %n session(s) left.", nullptr, *c.cellSessionsLeft);
    sheet.paragraph(lines.join(QLatin1Char(' ')), kText, kInk);
}

/// A word and its count, joined: "Dry 12, Clammy 3".
template <class E, class Name>
QString counted(const PerValue<E, int>& counts, Name name, bool zeros)
{
    QStringList out;
    for (const E value : allOf<E>())
        if (zeros || counts[value] > 0)
            out << QStringLiteral("%1 %2").arg(name(value)).arg(counts[value]);
    return listed(out);
}

void paintFigures(Sheet& sheet, const SiteContents& s)
{
    QStringList lines;
    lines
        << Page::tr("Check-ins on %n day(s): %1.", nullptr, s.checkIns).arg(counted(s.byLevel, words::levelName, true));
    if (const QString stirred = counted(s.stirred, words::circumstanceName, false); !stirred.isEmpty())
        lines << Page::tr("Days with a circumstance: %1.").arg(stirred);
    if (s.meanCharge)
        lines << Page::tr("Mean charge a session: %1 mA·min.").arg(words::number(s.meanCharge->mAmin));
    if (s.score.verdict != outlook::ScoreVerdict::TooFew)
        lines << words::scoreLines(s.score) << words::scoreVerdict(s.score);
    QStringList weighed;
    for (const auto& [date, rate] : s.weighings)
        weighed << Page::tr("%1 mg a minute on %2").arg(words::number(rate), words::dayOfYear(date));
    if (!weighed.isEmpty())
        lines << Page::tr("Weighed: %1.").arg(listed(weighed));
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
    return {QStringLiteral("%1 %2").arg(words::shortDay(e.happened.date)).arg(e.happened.date.year()),
            words::siteName(s.site),
            words::waveformName(s.waveform),
            current(s.peak),
            current(s.comfortable),
            s.charge ? Page::tr("%1 mA·min").arg(words::number(s.charge->mAmin)) : QStringLiteral("–"),
            listed(felt)};
}

constexpr double kTableSize = 7.2;
constexpr double kTableLine = 10.6;

/// The sessions from `first` on as a table.
void paintTable(Sheet& sheet, const std::vector<Entry<Session>>& sessions, std::size_t first)
{
    constexpr std::array<double, 7> kShare{0.16, 0.17, 0.15, 0.10, 0.12, 0.12, 0.18};
    const std::array<QString, 7> names{Page::tr("Day"),     Page::tr("Site"),        Page::tr("Current"),
                                       Page::tr("Highest"), Page::tr("Comfortable"), Page::tr("Charge"),
                                       Page::tr("Felt")};
    const auto line = [&](const std::array<QString, 7>& cells, QColor colour) {
        double x = 0;
        double h = kTableLine;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            const double w = kShare[i] * sheet.width();
            h = std::max(h, sheet.text(x, sheet.y(), w - 3, cells[i], kTableSize, colour));
            x += w;
        }
        sheet.skip(h);
    };
    line(names, kSoft);
    for (std::size_t i = first; i < sessions.size(); ++i)
        line(cellsOf(sessions[i]), kInk);
}

QString sources()
{
    return Page::tr("Dry spells are reckoned from the last session to the first clammy day, with days not seen and "
                    "top-ups made while still dry taken as "
                    "what they are (interval- and right-censored). Response by HDSS: two steps strong, one good "
                    "(Gülmez & Solak, J Clin Med 2026;15:640, where "
                    "65.2 % of 92 responded).") +
           QLatin1Char(' ') + Page::tr("Severity is asked in the app's own words, in four steps after the HDSS.");
}

} // namespace

void paintDetailsPage(QPainter& painter, QSizeF size, const Contents& c)
{
    Sheet sheet(painter, size);
    const QString who = c.name.empty() ? Page::tr("Name not given") : words::asWritten(c.name);
    sheet.paragraph(Page::tr("%1   ·   %2 to %3").arg(who, words::dayOfYear(c.from), words::dayOfYear(c.to)), 9, kInk,
                    true);
    paintPrescription(sheet, c);
    sheet.heading(Page::tr("Figures of this period"));
    for (const auto& s : c.sites)
        paintFigures(sheet, s);
    const double foot = sheet.text(0, 0, sheet.width(), sources(), 6.4, kSoft, false, false);
    sheet.text(0, sheet.height() - foot, sheet.width(), sources(), 6.4, kSoft);
    if (c.sessions.empty())
        return;
    sheet.heading(Page::tr("Sessions"));
    const double room = sheet.height() - foot - 2 * kTableLine - sheet.y();
    auto lines = static_cast<std::size_t>(std::max(1.0, room / kTableLine));
    if (c.sessions.size() > lines)
        --lines; // what came earlier is said in a line of its own
    const std::size_t first = c.sessions.size() > lines ? c.sessions.size() - lines : 0;
    if (first > 0)
        sheet.paragraph(Page::tr("%n earlier; all of them are in the exports.", nullptr, static_cast<int>(first)),
                        kText, kSoft);
    paintTable(sheet, c.sessions, first);
}

} // namespace firstdew::print
