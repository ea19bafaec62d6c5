#include "print/Handout.h"

#include "exchange/CareSheetFile.h"
#include "exchange/QrCode.h"
#include "print/PaperSheet.h"
#include "protocol/Course.h"
#include "protocol/Drawings.h"
#include "protocol/SheetLimits.h"
#include "words/Drawings.h"
#include "words/Names.h"
#include "words/SheetWords.h"

#include <QFile>
#include <QPainterPath>
#include <QPicture>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <algorithm>

namespace firstdew::print {

namespace {

using namespace facts;
using protocol::Drawing;

constexpr int kQuiet = 4;          // modules, ISO/IEC 18004
constexpr double kModule = 1.28;   // 0.45 mm: read from an arm's length
constexpr double kLeastCode = 110; // points
constexpr double kMostCode = 215;  // 0.41 mm a module for the largest code
constexpr double kGap = 14;
constexpr double kBox = 11;
constexpr double kBesideBox = 4;
constexpr double kDateSize = 9.5;
constexpr int kMostColumns = 6;
constexpr int kFreeBoxes = 12;
constexpr double kMostScale = 1.3;
constexpr double kLeastScale = 0.55;
constexpr double kScaleStep = 0.05;

/// The page at one size of type. `ink` is false while it is only measured.
struct Handout {
    Sheet& sheet;
    const HandoutContents& c;
    double k = 1;
    bool ink = true;

    [[nodiscard]] double line(double x, double y, double w, const QString& t, double size, QColor colour = kInk,
                              bool strong = false) const
    {
        return sheet.text(x, y, w, t, size * k, colour, strong, ink);
    }
    void paragraph(const QString& t, double size, QColor colour = kInk, bool strong = false) const
    {
        sheet.skip(line(0, sheet.y(), sheet.width(), t, size, colour, strong));
    }
    void heading(const QString& t, QColor colour = kWater) const
    {
        sheet.skip(7 * k);
        if (ink) {
            sheet.painter().setPen(QPen(kRule, 0.7));
            sheet.painter().drawLine(QPointF(0, sheet.y()), QPointF(sheet.width(), sheet.y()));
        }
        sheet.skip(5 * k);
        paragraph(t, 11, colour, true);
        sheet.skip(3 * k);
    }
};

/// One path, so that no seams show between the modules.
void paintCode(Sheet& sheet, const exchange::QrCode& code, double x, double y, double side)
{
    const double module = side / (code.size + 2 * kQuiet);
    QPainterPath path;
    for (int row = 0; row < code.size; ++row)
        for (int column = 0; column < code.size; ++column)
            if (code.at(column, row))
                path.addRect(x + (column + kQuiet) * module, y + (row + kQuiet) * module, module, module);
    sheet.painter().fillPath(path, Qt::black);
}

QString limitLine(const protocol::SheetLimit& one)
{
    return Page::tr("%1, %2: at most %3")
        .arg(words::siteName(one.site), words::waveformName(one.waveform), words::milliamps(one.limit.mA));
}

/// Beside the code: whose plan it is, where, and up to which current.
double paintFacts(const Handout& h, double top, double width)
{
    const CareSheet& s = h.c.sheet;
    double y = top;
    const auto add = [&](const QString& t, double size, QColor colour = kInk, bool strong = false, double after = 2) {
        y += h.line(0, y, width, t, size, colour, strong) + after * h.k;
    };
    add(Page::tr("Your treatment plan"), 19, kInk, true, 3);
    add(Page::tr("For: %1").arg(h.c.name.empty() ? QString(28, QLatin1Char('_')) : words::asWritten(h.c.name)), 11);
    add(Page::tr("From %1, %2").arg(words::giverName(s.who), wholeDate(s.given)), 9.5, kSoft, false, 7);
    for (const auto& one : protocol::limitsOf(s, h.c.age))
        add(limitLine(one), 12, kInk, true);
    if (s.level)
        add(Page::tr("Begin with %1 or less.").arg(words::milliamps(s.level->mA)), 11);
    add(Page::tr("The app or the machine may show a lower limit. The lowest one counts."), 9, kSoft, false, 5);
    QStringList phases;
    for (const Site site : allOf<Site>())
        if (s.sites.contains(site))
            phases << words::phasesOf(site);
    add(phases.join(QLatin1Char('\n')), 10);
    add(Page::tr("Current to zero and polarity swapped after each part."), 9, kSoft);
    if (s.pad)
        add(Page::tr("Armpit pads: %1.").arg(words::squareCentimetres(*s.pad)), 9);
    return y;
}

void paintTop(const Handout& h)
{
    const auto code = exchange::qrCodeOf(exchange::careSheetLine(h.c.sheet));
    const double side = code ? std::clamp((code->size + 2 * kQuiet) * kModule, kLeastCode, kMostCode) : 0;
    const double width = h.sheet.width() - side - kGap;
    double below = side;
    if (code) {
        if (h.ink)
            paintCode(h.sheet, *code, h.sheet.left(width + kGap, side), 0, side);
        below +=
            h.line(width + kGap, side, side, Page::tr("In Firstdew: Plan, Care sheet, Scan the code."), 7.5, kSoft);
    }
    h.sheet.moveTo(std::max(paintFacts(h, 0, width), below));
}

/// What stands beside each box.
QStringList boxTexts(const HandoutContents& c)
{
    QStringList out;
    const auto plan = c.sheet.plan
                          ? protocol::templateDays(*c.sheet.plan, c.sheet.days, c.start.value_or(c.sheet.given))
                          : facts::Result<protocol::TemplateDays>(protocol::TemplateDays{});
    if (!c.sheet.plan || !plan) {
        for (int i = 0; i < kFreeBoxes; ++i)
            out << QStringLiteral("__________");
        return out;
    }
    for (const int day : plan->days) {
        if (!c.start) {
            out << Page::tr("Day %1").arg(day);
            continue;
        }
        const LocalDate date = *c.start + (day - 1);
        out << Page::tr("%1 %2", "weekday and day")
                   .arg(QLocale().dayName(words::toQDate(date).dayOfWeek(), QLocale::ShortFormat),
                        unbroken(words::shortDay(date)));
    }
    return out;
}

/// As many columns of boxes as leave each of their texts one line.
int columnsFor(const Handout& h, const QStringList& texts, double box)
{
    const double line = h.sheet.text(0, 0, h.sheet.width(), QStringLiteral("1"), kDateSize * h.k, kInk, false, false);
    const auto fits = [&](const QString& text, int columns) {
        const double room = h.sheet.width() / columns - box - kBesideBox - 2;
        return h.sheet.text(0, 0, room, text, kDateSize * h.k, kInk, false, false) < 1.5 * line;
    };
    int columns = kMostColumns;
    while (columns > 1 && !std::ranges::all_of(texts, [&](const QString& one) { return fits(one, columns); }))
        --columns;
    return columns;
}

void paintDays(const Handout& h)
{
    h.heading(Page::tr("Your sessions"));
    const QStringList texts = boxTexts(h.c);
    const double high = 17 * h.k;
    const double box = kBox * h.k;
    const int columns = columnsFor(h, texts, box);
    const double across = h.sheet.width() / columns;
    for (int i = 0; i < texts.size(); ++i) {
        const double x = (i % columns) * across;
        const double y = h.sheet.y() + (i / columns) * high;
        if (h.ink) {
            h.sheet.painter().setPen(QPen(kInk, 0.9));
            h.sheet.painter().drawRect(QRectF(h.sheet.left(x, box), y, box, box));
        }
        (void)h.line(x + box + kBesideBox, y - 0.5, across - box - kBesideBox - 2, texts[i], kDateSize);
    }
    h.sheet.skip((texts.size() + columns - 1) / columns * high + 1);
    QStringList notes{Page::tr("Tick each session when it is done.")};
    if (h.c.sheet.plan)
        notes << (h.c.start ? Page::tr("If you begin on another day, every day moves along.")
                            : Page::tr("Day 1 is the day of your first session."));
    else
        notes << Page::tr("Firstdew tells you when the next one is due.");
    h.paragraph(notes.join(QLatin1Char(' ')), 9, kSoft);
}

struct Picture {
    Drawing drawing{};
    QString text;
};

std::vector<Picture> picturesFor(Site site)
{
    using protocol::PrepItem;
    const bool pads = site == Site::Armpits;
    const auto first = [site](PrepItem item) { return protocol::drawingsOf(item, site).front(); };
    const Drawing inPlace = site == Site::Hands     ? Drawing::HandsInTrays
                            : site == Site::Feet    ? Drawing::FeetInTrays
                            : site == Site::Armpits ? Drawing::PadsFitted
                                                    : Drawing::HandFootRight;
    return {{first(PrepItem::SkinChecked), Page::tr("Look at the skin. Cover small cuts with jelly.")},
            {first(pads ? PrepItem::PadsSoaked : PrepItem::PlateUnderGrid),
             pads ? Page::tr("Soak the pads.") : Page::tr("Plate in, grid over it, then warm water.")},
            {inPlace, pads ? Page::tr("Put the pads on. Switch on: the meter shows zero.")
                           : Page::tr("Skin under water. Switch on: the meter shows zero.")},
            {Drawing::TurnUp, Page::tr("Turn up slowly. It may prickle. It must not hurt.")},
            {Drawing::SwapLeads, site == Site::HandFoot
                                     ? Page::tr("Between the parts: down to zero, swap or change sides, up again.")
                                     : Page::tr("Between the parts: down to zero, swap, up again.")},
            {Drawing::MachineOff, pads ? Page::tr("Down to zero, machine off. Then the pads come off.")
                                       : Page::tr("Down to zero, machine off. Then take your hands or feet out.")}};
}

/// Files of PDF/A-1 know no transparency: what is see-through in a drawing is left out.
QByteArray opaque(Drawing drawing)
{
    QFile file(words::drawingFile(drawing, false));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    static const QRegularExpression seeThrough(QStringLiteral(R"(fill="[^"]*" fill-opacity="[^"]*")"));
    return QString::fromUtf8(file.readAll()).replace(seeThrough, QStringLiteral(R"(fill="none")")).toUtf8();
}

/// The kinds of session that are drawn: one in trays, one with pads.
std::vector<Site> drawnSites(const CareSheet& sheet)
{
    std::vector<Site> out;
    for (const Site site : allOf<Site>())
        if (sheet.sites.contains(site) && (site == Site::Armpits || out.empty()))
            out.push_back(site);
    return out;
}

/// Whoever has to be there.
QString companyLine(const HandoutContents& c)
{
    if (c.age == AgeGroup::Child)
        return Page::tr("An adult stays beside the child the whole time.");
    return c.sheet.sites.contains(Site::Hands) ? Page::tr("Both hands in the water: somebody stays beside you.")
                                               : QString();
}

void paintPicturesOf(const Handout& h, Site site)
{
    const auto pictures = picturesFor(site);
    const double across = h.sheet.width() / static_cast<double>(pictures.size());
    const double side = (across - 10) * std::min(1.0, h.k);
    double lowest = 0;
    for (std::size_t i = 0; i < pictures.size(); ++i) {
        const double x = static_cast<double>(i) * across;
        if (h.ink) {
            // The picture's edge cuts some drawings off.
            QPainter& painter = h.sheet.painter();
            const QRectF place(h.sheet.left(x, side), h.sheet.y(), side, side);
            painter.save();
            painter.setClipRect(place);
            QSvgRenderer(opaque(pictures[i].drawing)).render(&painter, place);
            painter.restore();
        }
        const QString text = QStringLiteral("%1. %2").arg(i + 1).arg(pictures[i].text);
        lowest = std::max(lowest, h.line(x, h.sheet.y() + side + 2, across - 8, text, 8.5));
    }
    h.sheet.skip(side + 2 + lowest);
}

void paintPictures(const Handout& h)
{
    for (const Site site : drawnSites(h.c.sheet)) {
        h.heading(Page::tr("Each session: %1").arg(words::siteName(site)));
        paintPicturesOf(h, site);
    }
    if (const QString company = companyLine(h.c); !company.isEmpty()) {
        h.sheet.skip(3 * h.k);
        h.paragraph(company, 10, kInk, true);
    }
}

void paintStop(const Handout& h)
{
    h.heading(Page::tr("When to stop"), kDanger);
    const QStringList lines{
        Page::tr("It hurts, you feel faint, or your heart races: turn down to zero, machine off, then take your hands "
                 "or feet out."),
        Page::tr("A burn or a blister: leave the machine off until a clinician has looked at it."),
        Page::tr("Pregnant, a new implant, or another health answer changed: leave the machine off and ask first.")};
    for (const QString& one : lines)
        h.paragraph(QStringLiteral("• ") + one, 10);
    h.sheet.skip(4 * h.k);
    const auto& contact = h.c.sheet.contact;
    h.paragraph(Page::tr("Call: %1").arg(contact ? words::asWritten(*contact) : QString(40, QLatin1Char('_'))), 13,
                kInk, true);
}

void paintAfter(const Handout& h)
{
    const CareSheet& s = h.c.sheet;
    if (!s.review && s.atNoResponse.empty() && s.notes.empty())
        return;
    h.heading(Page::tr("Afterwards"));
    if (s.review)
        h.paragraph(Page::tr("Review: %1").arg(wholeDate(*s.review)), 10, kInk, true);
    if (!s.atNoResponse.empty())
        h.paragraph(Page::tr("If the course does not help: %1").arg(words::asWritten(s.atNoResponse)), 10);
    if (!s.notes.empty())
        h.paragraph(words::asWritten(s.notes), 10);
}

void paintBody(const Handout& h)
{
    paintTop(h);
    paintDays(h);
    paintPictures(h);
    paintStop(h);
    paintAfter(h);
}

QString footer()
{
    return Page::tr("Written with Firstdew, which is not a medical device. Follow your machine's instructions and your "
                    "clinician.");
}

/// The largest size of type at which the page holds everything.
double scaleFor(QSizeF size, const HandoutContents& contents)
{
    double k = kMostScale;
    for (; k > kLeastScale; k -= kScaleStep) {
        QPicture nothing;
        QPainter painter(&nothing);
        Sheet sheet(painter, size);
        paintBody({sheet, contents, k, false});
        const double foot = sheet.text(0, 0, sheet.width(), footer(), 7, kSoft, false, false);
        if (sheet.y() + foot + 4 <= sheet.height())
            break;
    }
    return k;
}

} // namespace

void paintHandout(QPainter& painter, QSizeF size, const HandoutContents& contents)
{
    const double k = scaleFor(size, contents);
    Sheet sheet(painter, size);
    paintBody({sheet, contents, k, true});
    const double foot = sheet.text(0, 0, sheet.width(), footer(), 7, kSoft, false, false);
    sheet.text(0, sheet.height() - foot, sheet.width(), footer(), 7, kSoft);
}

facts::Result<int> writeHandout(const HandoutContents& contents, Paper paper, const QString& file)
{
    return writePages({[&](QPainter& painter, QSizeF size) { paintHandout(painter, size, contents); }},
                      Page::tr("Your treatment plan"), paper, file);
}

QImage previewOf(const HandoutContents& contents, Paper paper, int width)
{
    return pictureOf([&](QPainter& painter, QSizeF size) { paintHandout(painter, size, contents); }, paper, width);
}

} // namespace firstdew::print
