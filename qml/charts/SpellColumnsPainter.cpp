#include "charts/SpellColumnsPainter.h"

#include "words/Names.h"

#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <algorithm>

namespace firstdew::charts {

namespace {

constexpr double kWidest = 36;   // dp, of a column
constexpr double kShare = 0.66;  // of its place that a column takes
constexpr double kTip = 6;       // dp, height of the tip of a spell that was not seen to end
constexpr double kStub = 2;      // dp, a session that brought no dry day
constexpr int kLeastDays = 7;    // the height of the chart stands for at least a week
constexpr std::size_t kMost = 8; // more columns are too thin to compare

constexpr QChar kTo(0x2013); // an en dash

/// "14"; "3–10" where the first damp day is not known better; "9+" where the end was not seen.
QString numberOf(const SpellColumn& s)
{
    const QString dry = QLocale().toString(s.dry);
    if (!s.over)
        return dry + QLatin1Char('+');
    return *s.over - 1 > s.dry ? dry + kTo + QLocale().toString(*s.over - 1) : dry;
}

/// Where the columns stand.
struct Place {
    QRectF plot;
    double step = 0;
    double width = 0;
    double day = 0; ///< height of a day
    bool mirrored = false;

    Place(const QRectF& area, const std::vector<SpellColumn>& spells, const ChartLook& look) : mirrored(look.mirrored)
    {
        const double line = QFontMetricsF(look.font).height();
        plot = area.adjusted(0, line + kTip * look.unit, 0, -line - 4 * look.unit);
        step = plot.width() / static_cast<double>(spells.size());
        width = std::min(kShare * step, kWidest * look.unit);
        int longest = kLeastDays;
        for (const auto& s : spells)
            longest = std::max({longest, s.dry, s.over.value_or(0)});
        day = plot.height() / longest;
    }
    [[nodiscard]] double middle(std::size_t i) const
    {
        const double along = (static_cast<double>(i) + 0.5) * step;
        return mirrored ? plot.right() - along : plot.left() + along;
    }
};

void paintColumn(QPainter& p, const Place& at, double middle, const SpellColumn& s, const ChartLook& look)
{
    const QColor colour = s.present ? look.bath : look.line;
    const double left = middle - at.width / 2;
    const double dry = std::max(s.dry * at.day, kStub * look.unit);
    double top = at.plot.bottom() - dry;
    p.setPen(Qt::NoPen);
    p.setBrush(colour);
    if (s.over)
        p.drawRect(QRectF(left, top, at.width, dry));
    if (s.over && *s.over > s.dry) {
        const double over = at.plot.bottom() - *s.over * at.day;
        p.setPen(QPen(colour, look.unit));
        p.setBrush(Qt::NoBrush);
        p.drawRect(QRectF(left + look.unit / 2, over, at.width - look.unit, top - over));
        top = over;
    } else if (!s.over) {
        const double tip = top - kTip * look.unit;
        const double foot = at.plot.bottom();
        p.drawPolygon(QPolygonF({QPointF(left, foot), QPointF(left, top), QPointF(middle, tip),
                                 QPointF(left + at.width, top), QPointF(left + at.width, foot)}));
        top = tip;
    }
    const double line = QFontMetricsF(look.font).height();
    p.setPen(look.ink);
    // "10+" is written so in every script.
    p.drawText(QRectF(middle - at.step / 2, top - line - look.unit, at.step, line),
               Qt::AlignHCenter | Qt::AlignBottom | Qt::TextDontClip | Qt::TextForceLeftToRight, numberOf(s));
}

/// From the latest on, each day that does not touch the one before.
void paintDays(QPainter& p, const Place& at, const std::vector<SpellColumn>& spells, const ChartLook& look)
{
    const QFontMetricsF metrics(look.font);
    std::optional<QRectF> taken;
    for (std::size_t i = spells.size(); i-- > 0;) {
        const QString text = words::shortDay(spells[i].from);
        const double width = metrics.horizontalAdvance(text);
        const double left =
            std::clamp(at.middle(i) - width / 2, at.plot.left(), std::max(at.plot.left(), at.plot.right() - width));
        const QRectF box(left, at.plot.bottom() + 4 * look.unit, width, metrics.height());
        if (taken && box.adjusted(-6 * look.unit, 0, 6 * look.unit, 0).intersects(*taken))
            continue;
        p.drawText(box, Qt::AlignHCenter | Qt::TextDontClip, text);
        taken = box;
    }
}

} // namespace

std::size_t columnsIn(double width, const ChartLook& look)
{
    const QString range = QLocale().toString(88) + kTo + QLocale().toString(88);
    const double least = QFontMetricsF(look.font).horizontalAdvance(range) + 4 * look.unit;
    return std::clamp<std::size_t>(static_cast<std::size_t>(std::max(0.0, width / least)), 1, kMost);
}

void paintSpellColumns(QPainter& painter, const QRectF& area, const std::vector<SpellColumn>& spells,
                       const ChartLook& look)
{
    if (spells.empty() || area.isEmpty())
        return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(look.font);
    const Place at(area, spells, look);
    painter.setPen(QPen(look.faint, look.unit));
    painter.drawLine(at.plot.bottomLeft(), at.plot.bottomRight());
    for (std::size_t i = 0; i < spells.size(); ++i)
        paintColumn(painter, at, at.middle(i), spells[i], look);
    painter.setPen(look.ink);
    paintDays(painter, at, spells, look);
    painter.restore();
}

} // namespace firstdew::charts
