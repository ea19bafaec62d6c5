#include "print/FrontPage.h"

#include "outlook/UsualDays.h"
#include "print/SiteParts.h"
#include "words/Names.h"
#include "words/ScoreWords.h"
#include "words/WorkingWords.h"

#include <algorithm>

namespace firstdew::print {

namespace {

using namespace facts;
using summary::Ask;
using summary::AskKind;
using summary::Contents;
using summary::SiteContents;
using summary::Verdict;

constexpr double kSmall = 6.4;
constexpr double kText = 8;
constexpr double kBand = 4;    // width of the coloured bar beside the verdict
constexpr double kBelongs = 9; // before a line that belongs to the one above
constexpr double kAboveFooter = 6;

QString verdictName(Verdict verdict)
{
    switch (verdict) {
    case Verdict::StopAndLook: return Page::tr("Stop and look");
    case Verdict::Blocked: return Page::tr("No session for now");
    case Verdict::NotYet: return Page::tr("It does not work yet");
    case Verdict::Partly: return Page::tr("It works in part");
    case Verdict::Working: return Page::tr("It works");
    case Verdict::TooEarly: return Page::tr("Too early to say");
    case Verdict::NotStarted: return Page::tr("Not started yet");
    }
    return {};
}

QColor verdictColour(Verdict verdict)
{
    switch (verdict) {
    case Verdict::StopAndLook:
    case Verdict::Blocked: return kDanger;
    case Verdict::NotYet: return kAccent;
    case Verdict::Partly:
    case Verdict::TooEarly:
    case Verdict::NotStarted: return kInk;
    case Verdict::Working: return kWater;
    }
    return kInk;
}

QString askSentence(const Ask& ask)
{
    const QString site = ask.site ? words::siteName(*ask.site) : QString();
    const QString date = ask.date ? wholeDate(*ask.date) : QString();
    switch (ask.kind) {
    case AskKind::LookAtSkin:
        return ask.finding == SkinFinding::Burn
                   ? Page::tr("Look at the skin (%1): a burn was noted on %2. No session there until you have.")
                         .arg(site, date)
                   : Page::tr("Look at the skin (%1): a blister was noted on %2. No session there until you have.")
                         .arg(site, date);
    case AskKind::OverLimit:
        return Page::tr("The meter was above the limit in %n session(s), last on %1.", nullptr, ask.count).arg(date);
    case AskKind::HealthAnswer:
        return Page::tr("Is this treatment possible with %1 (answered yes on %2)? No session until a clinician has "
                        "approved treatment.")
            .arg(ask.row ? words::screeningShort(*ask.row) : QString(), date);
    case AskKind::NoResponse:
        return Page::tr("The course brought no response (%1). Talk about other treatments.").arg(site);
    case AskKind::Review: return Page::tr("The review named on the care sheet is due (%1).").arg(date);
    case AskKind::Questions: return Page::tr("There are %n question(s) for you, below.", nullptr, ask.count);
    }
    return {};
}

/// Who is treated, as it matters for the limits.
QString ageOf(const Contents& c)
{
    if (!c.years)
        return Page::tr("no birth date entered");
    return c.age == AgeGroup::Child ? Page::tr("child, %n year(s)", nullptr, *c.years)
                                    : Page::tr("adult, %n year(s)", nullptr, *c.years);
}

void paintHead(Sheet& sheet, const Contents& c)
{
    const double h =
        sheet.text(0, sheet.y(), sheet.width() * 0.5, Page::tr("Iontophoresis summary"), kText, kWater, true);
    const QString period = Page::tr("%1 to %2").arg(wholeDate(c.from), wholeDate(c.to));
    sheet.text(sheet.width() * 0.5, sheet.y(), sheet.width() * 0.5, period, kText, kSoft, false, true, Qt::AlignRight);
    sheet.skip(h + 1);
    const QString who = c.name.empty() ? Page::tr("Name not given") : words::asWritten(c.name);
    sheet.paragraph(who, 17, kInk, true);
    sheet.paragraph(ageOf(c), kText, kSoft);
    sheet.skip(6);
}

/// The verdict of a site and the figures behind it, in a line.
QString siteLine(const SiteContents& s)
{
    QStringList parts{words::workingLine(s.working)};
    if (s.working.dampNow)
        parts << Page::tr("damp days a week: %1").arg(words::dampDaysChange(s.working));
    if (s.working.scoreBefore && s.working.scoreNow)
        parts << Page::tr("severity %1\u00a0now, %2\u00a0"
                          "before")
                     .arg(*s.working.scoreNow)
                     .arg(*s.working.scoreBefore);
    return Page::tr("%1: %2", "site: its verdict")
        .arg(words::siteName(s.site), words::within(parts.join(QStringLiteral(" · "))));
}

void paintVerdict(Sheet& sheet, const Contents& c)
{
    const double top = sheet.y();
    const double indent = kBand + 7;
    const double room = sheet.width() - indent;
    const QColor colour = verdictColour(c.verdict);
    double y = top;
    y += sheet.text(indent, y, room, verdictName(c.verdict), 15, colour, true);
    for (const auto& s : c.sites) {
        y += sheet.text(indent, y, room, siteLine(s), kText + 0.5, kInk);
        if (const auto shorter = outlook::shorterToTell(s.situation.forecast))
            y += sheet.text(indent + kBelongs, y, room - kBelongs, words::shorterLine(*shorter, c.to), kText + 0.5,
                            kInk, true);
    }
    if (c.sites.empty())
        y += sheet.text(indent, y, room, Page::tr("No site in use."), kText, kInk);
    sheet.painter().fillRect(QRectF(sheet.left(0, kBand), top + 2, kBand, y - top - 2), colour);
    sheet.moveTo(y);
    sheet.heading(Page::tr("For you to do"));
    if (c.asks.empty())
        sheet.paragraph(Page::tr("Nothing at present."), kText, kInk);
    for (const Ask& ask : c.asks)
        sheet.paragraph(QStringLiteral("•  ") + askSentence(ask), kText,
                        ask.kind <= AskKind::HealthAnswer ? kDanger : kInk, ask.kind <= AskKind::HealthAnswer);
    for (const auto& q : c.questions)
        sheet.paragraph(QStringLiteral("–  ") + words::asWritten(q), kText, kInk);
}

QString skinLine(const Entry<SideEffect>& e, const std::vector<Entry<Session>>& sessions, LocalDate to)
{
    QStringList found;
    for (const auto f : allOf<SkinFinding>())
        if (e.payload.skin.contains(f))
            found << words::within(words::skinName(f));
    QString line =
        Page::tr("%1: %2 · %3", "day: site · skin")
            .arg(wholeDay(e.happened.date, to), words::within(words::siteName(e.payload.site)), words::listed(found));
    for (const auto& s : sessions)
        if (s.happened.date == e.happened.date && s.payload.peak && treats(s.payload.site).contains(e.payload.site))
            line += Page::tr(" · %1 · %2", "continues a line: current, its kind")
                        .arg(words::milliamps(s.payload.peak->mA), words::waveformName(s.payload.waveform));
    if (!e.payload.note.empty())
        line += QStringLiteral(" (%1)").arg(words::asWritten(e.payload.note));
    return line;
}

QString overLine(const summary::OverLimitEpisode& o, LocalDate to)
{
    const QString line = Page::tr("%1: %2 · %3 with a limit of %4", "day: site · peak, limit")
                             .arg(wholeDay(o.date, to), words::within(words::siteName(o.site)),
                                  words::milliamps(o.peak.mA), words::milliamps(o.limit.mA));
    return o.seconds && o.seconds->s > 0 ? Page::tr("%1, for %n second(s)", nullptr, o.seconds->s).arg(line) : line;
}

/// The latest lines, and how many came before.
QString latest(QStringList lines, const QString& none)
{
    constexpr qsizetype kMost = 5;
    if (lines.isEmpty())
        return none;
    if (const qsizetype more = lines.size() - kMost; more > 0) {
        lines = lines.mid(more);
        lines.prepend(Page::tr("%n earlier", nullptr, static_cast<int>(more)));
    }
    return lines.join(QLatin1Char('\n'));
}

/// Limits that are alike stand in one line: "Direct current · Both hands: 20 mA. Common practice, adults."
QString limitLines(const std::vector<summary::LimitInForce>& limits)
{
    QStringList lines;
    std::vector<bool> told(limits.size());
    for (std::size_t i = 0; i < limits.size(); ++i) {
        if (told[i])
            continue;
        const auto& l = limits[i];
        std::vector<Site> sites;
        for (std::size_t j = i; j < limits.size(); ++j) {
            const auto& m = limits[j];
            if (m.waveform != l.waveform || m.answer.limit != l.answer.limit || m.answer.binding != l.answer.binding ||
                m.setBy != l.setBy)
                continue;
            told[j] = true;
            sites.push_back(m.site);
        }
        lines << Page::tr("%1 · %2: %3. %4.", "kind of current · sites: limit. Who set it.")
                     .arg(words::waveformName(l.waveform), words::siteNames(sites), words::milliamps(l.answer.limit.mA),
                          words::limitSource(l.answer.binding, l.setBy));
    }
    return lines.join(QLatin1Char('\n'));
}

void paintSafety(Sheet& sheet, const Contents& c)
{
    sheet.heading(Page::tr("Skin and current in this period"));
    QStringList skin;
    for (const auto& e : c.sideEffects)
        skin << skinLine(e, c.sessions, c.to);
    QStringList over;
    for (const auto& o : c.overLimit)
        over << overLine(o, c.to);
    const double label = sheet.width() * 0.16;
    const auto row = [&](const QString& name, const QString& value) {
        const double a = sheet.text(0, sheet.y(), label - 4, name, kText, kSoft);
        const double b = sheet.text(label, sheet.y(), sheet.width() - label, value, kText, kInk);
        sheet.skip(std::max(a, b) + 1);
    };
    row(Page::tr("Skin"), latest(skin, Page::tr("Nothing recorded.")));
    row(Page::tr("Above the limit"),
        latest(over, c.sessions.empty() ? Page::tr("No sessions in this period.") : Page::tr("Nothing recorded.")));
    if (!c.limits.empty())
        row(Page::tr("Limits now"),
            limitLines(c.limits) +
                (c.careSheets.empty() ? QLatin1Char('\n') + Page::tr("No prescriber has set a limit.") : QString()));
    QStringList others;
    for (const auto& e : c.otherTreatments)
        others << words::otherTreatmentLine(e.payload);
    if (!others.isEmpty())
        row(Page::tr("Other treatments"), others.join(QStringLiteral("   ·   ")) + QLatin1Char('\n') +
                                              Page::tr("Dry spells in this time are left out of the outlook."));
}

QString footer()
{
    return Page::tr("Recorded by the person at home; not a medical device, no diagnosis. Machine's instructions, local "
                    "rules and the clinician come first. "
                    "Burns, blisters, faintness or palpitations: stop and seek help.");
}

} // namespace

std::size_t paintFrontPage(QPainter& painter, QSizeF size, const summary::Contents& c)
{
    Sheet sheet(painter, size);
    paintHead(sheet, c);
    paintVerdict(sheet, c);
    paintSafety(sheet, c);
    const double foot = sheet.height() - sheet.heightOf(footer(), sheet.width(), kSmall);
    const std::size_t told = paintSites(sheet, c, c.sites, foot - kAboveFooter);
    sheet.text(0, foot, sheet.width(), footer(), kSmall, kSoft);
    return told;
}

} // namespace firstdew::print
