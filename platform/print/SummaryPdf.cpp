#include "print/SummaryPdf.h"

#include "charts/DampnessPainter.h"
#include "journal/OwnFile.h"
#include "print/PdfLanguage.h"
#include "words/Sentences.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPdfWriter>
#include <QResource>
#include <QTextLayout>
#include <algorithm>
#include <map>
#include <memory>
#include <tuple>

namespace firstdew::print {

namespace {

using namespace facts;

struct Page {
    Q_DECLARE_TR_FUNCTIONS(Page)
};

const QColor kInk(0x17, 0x2f, 0x36);
const QColor kSoft(0x4d, 0x61, 0x66);
const QColor kRule(0xc9, 0xd2, 0xd0);
const QColor kAccent(0xb4, 0x4a, 0x1e);
const QColor kWater(0x2f, 0x7f, 0x8c);
const QColor kWash(0xc5, 0xdc, 0xe0);

constexpr int kDpi = 300;
constexpr double kPoint = kDpi / 72.0;

/// A noun inside a list. German keeps its capital letter.
QString noun(const QString& name) { return QLocale().language() == QLocale::German ? name : name.toLower(); }

/// Draws the page from top to bottom. All lengths are in points.
class Sheet {
public:
    Sheet(QPainter& painter, QSizeF size)
        : m_p(painter), m_width(size.width() / kPoint), m_height(size.height() / kPoint),
          m_mirrored(QLocale().textDirection() == Qt::RightToLeft)
    {
        m_p.setLayoutDirection(QLocale().textDirection());
    }

    [[nodiscard]] double width() const { return m_width; }
    [[nodiscard]] double height() const { return m_height; }
    [[nodiscard]] double y() const { return m_y; }
    /// Whether the page reads from right to left.
    [[nodiscard]] bool mirrored() const { return m_mirrored; }
    /// The left edge of a column that begins `x` after the start of the line.
    [[nodiscard]] double left(double x, double w) const { return m_mirrored ? m_width - x - w : x; }
    void skip(double points) { m_y += points; }
    void moveTo(double y) { m_y = y; }

    static QFont font(bool strong = false)
    {
        QFont f(QStringLiteral("Inter"));
        f.setFamilies({QStringLiteral("Inter"), QStringLiteral("Noto Sans Arabic")});
        f.setStyleHint(QFont::SansSerif);
        f.setWeight(strong ? QFont::DemiBold : QFont::Normal);
        f.setPixelSize(100);
        return f;
    }

    /// Draws text wrapped to a column that begins `x` after the start of the line, and returns its height. The text is
    /// set in a large size and scaled down, so that its widths are not rounded to screen pixels.
    double text(double x, double y, double w, const QString& text, double size, QColor colour, bool strong = false,
                bool draw = true, Qt::Alignment align = Qt::AlignLeft)
    {
        const double k = size / 100;
        const Composed& words = composed(text, w / k, strong, m_mirrored != (align == Qt::AlignRight));
        if (draw) {
            scaleTo(k);
            if (m_p.pen() != QPen(colour))
                m_p.setPen(colour);
            words.layout.draw(&m_p, QPointF(left(x, w), y) / k);
        }
        return words.height * k;
    }

    void paragraph(const QString& t, double size, QColor colour, bool strong = false)
    {
        m_y += text(0, m_y, m_width, t, size, colour, strong);
    }

    void heading(const QString& t)
    {
        m_y += 9;
        QPainter& p = painter();
        p.setPen(QPen(kRule, 0.7));
        p.drawLine(QPointF(0, m_y), QPointF(m_width, m_y));
        m_y += 5;
        paragraph(t, 9.5, kWater, true);
        m_y += 3;
    }

    /// The painter for other drawings, in points.
    QPainter& painter()
    {
        scaleTo(1);
        return m_p;
    }

private:
    /// Text broken into lines, in hundredths of the type size.
    struct Composed {
        QTextLayout layout;
        double height = 0;
    };
    struct Typeface {
        QFont font;
        QFontMetricsF metrics;
        Typeface(bool strong, QPaintDevice* device) : font(Sheet::font(strong), device), metrics(font) {}
    };

    /// Cached, because text is measured before it is drawn, and tables repeat most of their words.
    const Composed& composed(const QString& text, double room, bool strong, bool toTheRight)
    {
        auto& place = m_composed[{text, room, strong, toTheRight}];
        if (place)
            return *place;
        loadTypefacesFor(text);
        place = std::make_unique<Composed>();
        const auto& [font, metrics] = strong ? m_strong : m_plain;
        // A fixed line height keeps the lines even if typefaces mix. Arabic letters need more of it.
        const double leading = metrics.height() * (m_mirrored ? 1.22 : 1);
        QTextLayout& layout = place->layout;
        layout.setText(QString(text).replace(QLatin1Char('\n'), QChar(QChar::LineSeparator)));
        layout.setFont(font);
        QTextOption option(Qt::AlignLeft | Qt::AlignAbsolute);
        option.setTextDirection(m_p.layoutDirection());
        layout.setTextOption(option);
        layout.setCacheEnabled(true); // keeps the shaped text for drawing
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(room);
            line.setPosition(QPointF(toTheRight ? room - line.naturalTextWidth() : 0,
                                     place->height + leading - metrics.descent() - line.ascent()));
            place->height += leading;
        }
        layout.endLayout();
        return *place;
    }

    /// Sets the unit of the following drawings, in points. Each change adds to the file, so repeated values are
    /// skipped.
    void scaleTo(double k)
    {
        if (m_k == k)
            return;
        m_k = k;
        m_p.setTransform(QTransform::fromScale(kPoint * k, kPoint * k));
    }

    QPainter& m_p;
    double m_width;
    double m_height;
    bool m_mirrored;
    double m_y = 0;
    double m_k = 0; ///< the present scale
    Typeface m_plain{false, m_p.device()};
    Typeface m_strong{true, m_p.device()};
    std::map<std::tuple<QString, double, bool, bool>, std::unique_ptr<Composed>> m_composed;
};

struct Row {
    QString label;
    QString value;
};

QString listed(const QStringList& parts) { return parts.join(Page::tr(", ", "between the parts of a list")); }

/// The median, the middle 80 % and the number of spells behind them.
QString drySpell(const outlook::Forecast& f)
{
    const QString span = Page::tr("median %1 days (80 %: %2 to %3)")
                             .arg(words::number(f.usualMedian), words::number(f.usualFrom), words::number(f.usualTo));
    return span + QLatin1Char('\n') + Page::tr("%n dry spell(s)", nullptr, f.learned) +
           (f.censored > 0 ? Page::tr(", %1 of them not seen to their end").arg(f.censored) : QString());
}

std::vector<Row> rowsOf(const summary::SiteContents& s)
{
    std::vector<Row> rows;
    rows.push_back({Page::tr("Stage"), words::stageName(s.situation.stage)});
    if (s.sessionsPlanned > 0)
        rows.push_back(
            {Page::tr("First course"), Page::tr("%1 of %2 sessions done").arg(s.courseDone).arg(s.sessionsPlanned)});
    if (s.situation.hdssStart && s.situation.hdssNow) {
        const QString steps = Page::tr("%1 before, %2 now").arg(*s.situation.hdssStart).arg(*s.situation.hdssNow);
        rows.push_back({Page::tr("HDSS"),
                        s.situation.response ? listed({steps, words::responseName(*s.situation.response)}) : steps});
    }
    QString sessions = Page::tr("%1 completed").arg(s.sessionsDone);
    if (s.sessionsInterrupted > 0)
        sessions = listed({sessions, Page::tr("%1 interrupted").arg(s.sessionsInterrupted)});
    rows.push_back({Page::tr("Sessions in the period"), sessions});
    if (s.highestComfortable)
        rows.push_back({Page::tr("Highest comfortable"), words::milliamps(s.highestComfortable->mA)});
    if (s.meanCharge)
        rows.push_back(
            {Page::tr("Mean charge a session"), Page::tr("%1 mA·min").arg(words::number(s.meanCharge->mAmin))});
    if (s.situation.forecast.lastSession)
        rows.push_back({Page::tr("Usual dry spell"), drySpell(s.situation.forecast)});
    QStringList levels;
    for (const auto level : allOf<Level>())
        levels.append(QStringLiteral("%1 %2").arg(s.byLevel[level]).arg(words::levelName(level).toLower()));
    rows.push_back(
        {Page::tr("Check-ins"), Page::tr("%n day(s)", nullptr, s.checkIns) + QLatin1Char('\n') + listed(levels)});
    QStringList stirred;
    for (const auto c : allOf<Circumstance>())
        if (const int days = s.stirred[c]; days > 0)
            stirred.append(QStringLiteral("%1 %2").arg(days).arg(noun(words::circumstanceName(c))));
    if (!stirred.isEmpty())
        rows.push_back({Page::tr("Days stirred up"), listed(stirred)});
    if (s.situation.nextSession)
        rows.push_back({Page::tr("Next session"), words::dayOfYear(*s.situation.nextSession)});
    return rows;
}

void paintSite(Sheet& sheet, const summary::Contents& c, const summary::SiteContents& s, double chartHeight)
{
    sheet.heading(words::siteName(s.site));
    const double top = sheet.y();
    const double column = sheet.width() * 0.40;
    const double label = column * 0.40;
    double y = top;
    for (const Row& row : rowsOf(s)) {
        const double a = sheet.text(0, y, label - 4, row.label, 7.6, kSoft);
        const double b = sheet.text(label, y, column - label - 8, row.value, 7.6, kInk, true);
        y += std::max(a, b) + 1.6;
    }
    charts::DampnessData data;
    data.from = c.from;
    data.to = c.to;
    data.levels = s.line;
    data.baths = s.sessions;
    data.weighings = s.weighings;
    for (const auto level : allOf<Level>())
        data.levelNames[level] = words::levelName(level);
    QFont font = Sheet::font();
    font.setPixelSize(7);
    const double height = std::max(chartHeight, y - top);
    const double width = sheet.width() - column;
    charts::paintDampness(sheet.painter(), QRectF(sheet.left(column, width), top, width, height), data,
                          {kSoft, kRule, kWater, kAccent, kWash, font, 0.7, sheet.mirrored()});
    sheet.moveTo(top + height + 2);
}

void paintRest(Sheet& sheet, const summary::Contents& c)
{
    QStringList lines;
    for (const auto& e : c.sideEffects) {
        QStringList found;
        for (const auto f : allOf<SkinFinding>())
            if (e.payload.skin.contains(f))
                found.append(words::skinName(f));
        QString line = Page::tr("%1: %2, %3", "day: site, skin")
                           .arg(words::dayAndMonth(e.happened.date, c.to), words::siteName(e.payload.site),
                                listed(found).toLower());
        if (!e.payload.note.empty())
            line += QStringLiteral(" (%1)").arg(words::asWritten(e.payload.note));
        lines.append(line);
    }
    constexpr qsizetype kMost = 5;
    const qsizetype more = lines.size() - kMost;
    if (more > 0) {
        lines = lines.mid(more);
        lines.prepend(Page::tr("%n earlier", nullptr, static_cast<int>(more)));
    }
    sheet.heading(Page::tr("Skin and side effects"));
    sheet.paragraph(lines.isEmpty() ? Page::tr("None recorded in this period.") : lines.join(QStringLiteral("   ·   ")),
                    7.6, kInk);

    if (!c.otherTreatments.empty()) {
        QStringList others;
        for (const auto& e : c.otherTreatments)
            others.append(words::otherTreatmentLine(e.payload));
        sheet.heading(Page::tr("Other treatments"));
        sheet.paragraph(others.join(QStringLiteral("   ·   ")) + QLatin1Char(' ') +
                            Page::tr("Dry spells in this time are left out of the outlook."),
                        7.6, kInk);
    }
    sheet.heading(Page::tr("Safety and prescription"));
    QStringList safety;
    QStringList yes;
    for (const auto row : c.screeningYes)
        yes.append(words::screeningShort(row));
    safety.append(!c.screened     ? Page::tr("The health questions have not been answered yet.")
                  : yes.isEmpty() ? Page::tr("Health questions: nothing answered with yes.")
                                  : Page::tr("Answered with yes: %1.").arg(listed(yes)));
    for (const auto& e : c.clearances)
        safety.append(Page::tr("Cleared by %1 on %2: %3.")
                          .arg(words::asWritten(e.payload.who), words::dayOfYear(e.payload.given),
                               words::screeningShort(e.payload.row)));
    for (const auto& [given, sites] : c.careSheets)
        safety.append(Page::tr("Care sheet of %1, %2, for: %3.")
                          .arg(words::giverName(given.who), words::dayOfYear(given.given), words::siteNames(sites)));
    if (c.machine)
        safety.append(Page::tr("Machine: %1.")
                          .arg(c.machine->name.empty() ? (c.machine->pulsed ? Page::tr("direct and pulsed current")
                                                                            : Page::tr("direct current"))
                                                       : words::asWritten(c.machine->name)));
    const bool armpits = std::ranges::any_of(c.sites, [](const auto& s) { return s.site == DiarySite::Armpits; });
    if (c.machine && armpits)
        safety.append(c.machine->pad
                          ? Page::tr("Armpit pads: %1 cm² each.").arg(words::number(c.machine->pad->cm2))
                          : Page::tr("The size of the armpit pads is not entered, so their limit is kept low."));
    if (c.cellSessionsLeft)
        safety.append(Page::tr("Batteries: about %n session(s) left.", nullptr, *c.cellSessionsLeft));
    sheet.paragraph(safety.join(QLatin1Char(' ')), 7.6, kInk);

    if (!c.questions.empty()) {
        sheet.heading(Page::tr("Questions"));
        for (const auto& q : c.questions)
            sheet.paragraph(QStringLiteral("– ") + words::asWritten(q), 8, kInk);
    }
}

/// One session, one line.
std::array<QString, 7> cellsOf(const Entry<Session>& e)
{
    const Session& s = e.payload;
    QStringList felt;
    if (!s.completed)
        felt.append(Page::tr("interrupted"));
    if (s.comfort)
        felt.append(words::comfortName(*s.comfort).toLower());
    for (const auto f : allOf<SkinFinding>())
        if (f != SkinFinding::Fine && s.skin.contains(f))
            felt.append(noun(words::skinName(f)));
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

QString footer()
{
    return Page::tr("Dry spells are reckoned from the last session to the first clammy day, with days not seen and "
                    "top-ups made while still dry taken as "
                    "what they are (interval- and right-censored). Response by HDSS: two steps strong, one good "
                    "(Gülmez & Solak, J Clin Med 2026;15:640, where "
                    "65.2 % of 92 responded).") +
           QLatin1Char(' ') +
           Page::tr("Recorded by the person at home; not a medical device, no diagnosis. Machine's instructions, local "
                    "rules and the clinician come first. "
                    "Burns, blisters, faintness or palpitations: stop and seek help.");
}

QString legend(const summary::Contents& c)
{
    const QString line = Page::tr("Line: worst report of the day, dry to dripping. Ticks below: sessions.");
    const bool weighed =
        std::any_of(c.sites.begin(), c.sites.end(), [](const auto& s) { return !s.weighings.empty(); });
    return weighed ? line + QLatin1Char(' ') + Page::tr("Diamonds above: weighings, in mg a minute.") : line;
}

/// Draws the first page with everything important. Returns true if some sessions had no room.
bool paintPage(QPainter& painter, QSizeF size, const summary::Contents& c)
{
    Sheet sheet(painter, size);
    sheet.paragraph(Page::tr("Iontophoresis summary"), 17, kInk, true);
    sheet.skip(2);
    const QString who = c.name.empty() ? Page::tr("Name not given") : words::asWritten(c.name);
    sheet.paragraph(Page::tr("%1   ·   %2 to %3").arg(who, words::dayOfYear(c.from), words::dayOfYear(c.to)), 9, kSoft);
    if (c.sites.empty())
        sheet.paragraph(Page::tr("No site in use."), 9, kInk);

    const double footerHeight = sheet.text(0, 0, sheet.width(), footer(), 6.4, kSoft, false, false);
    const double chart = c.sites.size() > 2 ? 92 : 118;
    for (const auto& s : c.sites)
        paintSite(sheet, c, s, chart);
    sheet.skip(2);
    sheet.text(sheet.width() * 0.40, sheet.y(), sheet.width() * 0.60, legend(c), 6.4, kSoft, false, true,
               Qt::AlignRight);
    sheet.skip(7);
    paintRest(sheet, c);
    constexpr double kHeading = 3 * kTableLine; // includes the names of the columns
    const double room = sheet.height() - footerHeight - kTableLine - sheet.y() - kHeading;
    const auto lines = static_cast<std::size_t>(std::max(0.0, room / kTableLine));
    const std::size_t first = c.sessions.size() > lines ? c.sessions.size() - lines : 0;
    if (lines > 0 && !c.sessions.empty()) {
        sheet.heading(first == 0 ? Page::tr("Sessions") : Page::tr("Latest sessions"));
        paintTable(sheet, c.sessions, first);
    }
    sheet.text(0, sheet.height() - footerHeight, sheet.width(), footer(), 6.4, kSoft);
    return first > 0;
}

/// Draws the second page: all sessions of the period, or the latest ones if the page is full.
void paintDetails(QPainter& painter, QSizeF size, const summary::Contents& c)
{
    Sheet sheet(painter, size);
    sheet.paragraph(Page::tr("All sessions of the period"), 12, kInk, true);
    const auto lines = static_cast<std::size_t>((sheet.height() - sheet.y() - 3 * kTableLine) / kTableLine);
    const std::size_t first = c.sessions.size() > lines ? c.sessions.size() - lines : 0;
    if (first > 0)
        sheet.paragraph(Page::tr("%n earlier; all of them are in the exports.", nullptr, static_cast<int>(first)), 7.6,
                        kSoft);
    sheet.skip(4);
    paintTable(sheet, c.sessions, first);
}

} // namespace

namespace {

/// Uses the data inside the program without a copy.
void loadTypeface(const char* name)
{
    const QResource file(QStringLiteral(":/firstdew/fonts/%1").arg(QLatin1String(name)));
    QFontDatabase::addApplicationFontFromData(
        QByteArray::fromRawData(reinterpret_cast<const char*>(file.data()), file.size()));
}

} // namespace

void loadTypefaces()
{
    for (const char* name : {"Inter-Regular.ttf", "Inter-SemiBold.ttf"})
        loadTypeface(name);
}

void loadTypefacesFor(const QString& text)
{
    static bool loaded = false;
    if (loaded || std::none_of(text.begin(), text.end(), [](QChar c) { return c.script() == QChar::Script_Arabic; }))
        return;
    loaded = true;
    for (const char* name : {"NotoSansArabic-Regular.ttf", "NotoSansArabic-Bold.ttf"})
        loadTypeface(name);
}

facts::Result<int> writeSummary(const summary::Contents& contents, Paper paper, const QString& file)
{
    int pages = 1;
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(kDpi);
        writer.setPageSize(QPageSize(paper == Paper::A4 ? QPageSize::A4 : QPageSize::Letter));
        writer.setPageMargins(QMarginsF(16, 14, 16, 12), QPageLayout::Millimeter);
        writer.setTitle(Page::tr("Iontophoresis summary"));
        writer.setCreator(QStringLiteral("Firstdew"));
        QPainter painter(&writer);
        if (!painter.isActive())
            return Error{"pdf-failed", file.toStdString(), "the page could not be drawn; nothing was written"};
        const QSizeF size(writer.width(), writer.height());
        if (paintPage(painter, size, contents) && writer.newPage()) {
            paintDetails(painter, size, contents);
            pages = 2;
        }
    }
    const QByteArray drawn = buffer.data();
    const auto finished =
        inLanguage({drawn.constData(), static_cast<std::size_t>(drawn.size())}, QLocale().bcp47Name().toStdString());
    if (!finished)
        return Error{finished.error().code, file.toStdString(), finished.error().message};
    const auto written = journal::replaceFile(file.toStdString(), *finished);
    if (!written)
        return written.error();
    return pages;
}

} // namespace firstdew::print
