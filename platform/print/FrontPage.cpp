#include "print/FrontPage.h"

#include "charts/SpellColumnsPainter.h"
#include "charts/WeeksPainter.h"
#include "outlook/UsualDays.h"
#include "words/Names.h"
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
constexpr double kBand = 4; // width of the coloured bar beside the verdict
constexpr double kHeadingRoom = 34;
constexpr double kLeastChart = 80;
constexpr double kMostChart = 170;

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
    const QString date = ask.date ? words::dayOfYear(*ask.date) : QString();
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
                        "cleared it.")
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
    const QString period = Page::tr("%1 to %2").arg(words::dayOfYear(c.from), words::dayOfYear(c.to));
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
        parts << Page::tr("severity %1 now, %2 before").arg(*s.working.scoreNow).arg(*s.working.scoreBefore);
    return Page::tr("%1: %2", "site: its verdict").arg(words::siteName(s.site), parts.join(QStringLiteral(" · ")));
}

void paintVerdict(Sheet& sheet, const Contents& c)
{
    const double top = sheet.y();
    const double indent = kBand + 7;
    const double room = sheet.width() - indent;
    const QColor colour = verdictColour(c.verdict);
    double y = top;
    y += sheet.text(indent, y, room, verdictName(c.verdict), 15, colour, true);
    for (const auto& s : c.sites)
        y += sheet.text(indent, y, room, siteLine(s), kText + 0.5, kInk);
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
            found << words::skinName(f);
    QString line = Page::tr("%1: %2 · %3", "day: site · skin")
                       .arg(words::dayAndMonth(e.happened.date, to), words::siteName(e.payload.site), listed(found));
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
                             .arg(words::dayAndMonth(o.date, to), words::siteName(o.site), words::milliamps(o.peak.mA),
                                  words::milliamps(o.limit.mA));
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
        const QString day = words::dayAndMonth(h.date, to);
        out << (h.limit ? Page::tr("%1 · %2 (limit %3)", "level · day").arg(level, day, words::milliamps(h.limit->mA))
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
        out << Page::tr("%1 on %2, to begin with", "score on day")
                   .arg(*s.situation.hdssStart)
                   .arg(words::dayOfYear(*began));
    for (std::size_t i = s.scores.size() > kMost ? s.scores.size() - kMost : 0; i < s.scores.size(); ++i)
        if (s.scores[i].date != began)
            out << Page::tr("%1 on %2", "score on day").arg(s.scores[i].score).arg(words::dayOfYear(s.scores[i].date));
    return out.join(QLatin1Char('\n'));
}

QString spellsOf(const SiteContents& s)
{
    const auto& f = s.situation.forecast;
    const auto usual = outlook::usualDays(f);
    const int ended = f.learned - f.censored;
    const QString count = Page::tr("%n dry spell(s) seen to the end", nullptr, ended) + QLatin1Char('\n') +
                          Page::tr("%n not seen to the end", "dry spells", f.censored);
    return (outlook::usualIsKnown(f)
                ? Page::tr("median %1 days (80 %: %2 to %3)").arg(usual.median).arg(usual.from).arg(usual.to)
                : Page::tr("not known yet")) +
           QLatin1Char('\n') + count;
}

/// "1 of 7 sessions done", from when to when, and what was moved.
QString courseOf(const SiteContents& s, LocalDate to)
{
    QString out = Page::tr("%1 of %2 sessions done").arg(s.courseDone).arg(s.sessionsPlanned);
    if (s.courseStart)
        out += QLatin1Char('\n') + Page::tr("planned from %1").arg(words::dayAndMonth(*s.courseStart, to));
    if (s.courseDone > 0 && s.courseDone < s.sessionsPlanned && s.situation.lastSession)
        out += QLatin1Char('\n') + Page::tr("last session on %1").arg(words::dayAndMonth(*s.situation.lastSession, to));
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
        sessions = listed({sessions, Page::tr("%1 interrupted").arg(s.sessionsInterrupted)});
    rows.push_back({Page::tr("Sessions in the period"), sessions});
    if (!s.levels.empty())
        rows.push_back({Page::tr("Highest comfortable in the period"), levelsOf(s, c.to)});
    if (s.situation.forecast.lastSession)
        rows.push_back({Page::tr("Usual dry spell, all time"), spellsOf(s)});
    if (!s.line.empty())
        rows.push_back(
            {Page::tr("Last check-in"),
             Page::tr("%1, %2", "day, level")
                     .arg(words::dayAndMonth(s.line.back().first, c.to), words::levelName(s.line.back().second)) +
                 QLatin1Char('\n') + Page::tr("%n in the period", "check-ins", s.checkIns)});
    if (s.situation.nextSession && s.situation.advice != situation::Advice::Blocked)
        rows.push_back({Page::tr("Next session"), words::dayOfYear(*s.situation.nextSession)});
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

/// The two pictures of a site: its dry spells, and its damp days week by week.
void paintCharts(Sheet& sheet, const Contents& c, const SiteContents& s, const QRectF& area)
{
    QFont font = Sheet::font();
    font.setPixelSize(6);
    const charts::ChartLook look{kSoft, kRule, kWater, kAccent, kWash, font, 0.7, sheet.mirrored()};
    const double name = 9;
    const double half = area.height() / 2;
    const auto title = [&](double y, const QString& text) {
        sheet.text(sheet.width() - area.width(), y, area.width(), text, kSmall, kSoft);
    };
    const QRectF above(area.left(), area.top() + name, area.width(), half - name - 3);
    const auto columns = columnsOf(s, charts::columnsIn(above.width(), look));
    if (!columns.empty())
        title(
            area.top(),
            Page::tr("Days dry after the latest %n session(s). Hollow: first damp day unknown. Pointed: end not seen.",
                     nullptr, static_cast<int>(columns.size())));
    charts::paintSpellColumns(sheet.painter(), above, columns, look);
    title(area.top() + half,
          Page::tr(
              "Days a week noted as damp, also after heat or effort, 0 to 7. Dark: wet or dripping. Ticks: sessions."));
    charts::paintWeeks(sheet.painter(), QRectF(area.left(), area.top() + half + name, area.width(), half - name - 3),
                       weeksOf(c, s), look);
}

void paintSite(Sheet& sheet, const Contents& c, const SiteContents& s, double chartHeight)
{
    sheet.heading(words::siteName(s.site));
    const double top = sheet.y();
    const double column = sheet.width() * 0.40;
    const double label = column * 0.42;
    double y = top;
    for (const Row& row : rowsOf(c, s)) {
        const double a = sheet.text(0, y, label - 4, row.label, 7.4, kSoft);
        const double b = sheet.text(label, y, column - label - 8, row.value, 7.4, kInk, true);
        y += std::max(a, b) + 1.6;
    }
    const double height = std::max(chartHeight, y - top);
    const double width = sheet.width() - column;
    paintCharts(sheet, c, s, QRectF(sheet.left(column, width), top, width, height));
    sheet.moveTo(top + height + 2);
}

QString footer()
{
    return Page::tr("Recorded by the person at home; not a medical device, no diagnosis. Machine's instructions, local "
                    "rules and the clinician come first. "
                    "Burns, blisters, faintness or palpitations: stop and seek help.");
}

} // namespace

void paintFrontPage(QPainter& painter, QSizeF size, const summary::Contents& c)
{
    Sheet sheet(painter, size);
    paintHead(sheet, c);
    paintVerdict(sheet, c);
    paintSafety(sheet, c);
    const double height = sheet.text(0, 0, sheet.width(), footer(), kSmall, kSoft, false, false);
    const double left = sheet.height() - height - sheet.y();
    const double sites = static_cast<double>(std::max<std::size_t>(1, c.sites.size()));
    for (const auto& s : c.sites)
        paintSite(sheet, c, s, std::clamp(left / sites - kHeadingRoom, kLeastChart, kMostChart));
    sheet.text(0, sheet.height() - height, sheet.width(), footer(), kSmall, kSoft);
}

} // namespace firstdew::print
