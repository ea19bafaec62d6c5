#pragma once

#include "print/SummaryPdf.h"
#include "words/Names.h"

#include <QColor>
#include <QCoreApplication>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QStringList>
#include <QTextLayout>
#include <algorithm>
#include <map>
#include <memory>
#include <tuple>

// Paper as these pages draw on it: a column of text and charts, from top to bottom, in points.
namespace firstdew::print {

/// Marks and translates in one; the tool that gathers texts reads the class name here.
struct Page {
    Q_DECLARE_TR_FUNCTIONS(Page)
};

inline const QColor kInk(0x17, 0x2f, 0x36);
inline const QColor kSoft(0x4d, 0x61, 0x66);
inline const QColor kRule(0xc9, 0xd2, 0xd0);
inline const QColor kAccent(0xb4, 0x4a, 0x1e);
inline const QColor kDanger(0xa3, 0x1d, 0x2b);
inline const QColor kWater(0x2f, 0x7f, 0x8c);
inline const QColor kWash(0xc5, 0xdc, 0xe0);

inline constexpr int kDpi = 300;
inline constexpr double kPoint = kDpi / 72.0;

/// The same text on one line, however narrow its column is.
[[nodiscard]] inline QString unbroken(QString text) { return text.replace(QLatin1Char(' '), QChar(QChar::Nbsp)); }
/// Dates on paper keep to one line.
[[nodiscard]] inline QString wholeDate(facts::LocalDate date) { return unbroken(words::dayOfYear(date)); }
[[nodiscard]] inline QString wholeDay(facts::LocalDate date, facts::LocalDate today)
{
    return unbroken(words::dayAndMonth(date, today));
}
/// What stands in the first brackets keeps to one line.
[[nodiscard]] inline QString bracketsWhole(const QString& text)
{
    const qsizetype from = std::max<qsizetype>(0, text.indexOf(QLatin1Char('(')));
    const qsizetype to = text.indexOf(QLatin1Char(')'), from);
    return to < 0 ? text : text.left(from) + unbroken(text.mid(from, to - from)) + text.mid(to);
}

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

    /// The height of that text in a column of that width.
    [[nodiscard]] double heightOf(const QString& t, double w, double size, bool strong = false)
    {
        return t.isEmpty() ? 0 : text(0, 0, w, t, size, kInk, strong, false);
    }

    void paragraph(const QString& t, double size, QColor colour, bool strong = false)
    {
        m_y += text(0, m_y, m_width, t, size, colour, strong);
    }

    void heading(const QString& t)
    {
        m_y += kAboveRule;
        QPainter& p = painter();
        p.setPen(QPen(kRule, 0.7));
        p.drawLine(QPointF(0, m_y), QPointF(m_width, m_y));
        m_y += kBelowRule;
        paragraph(t, kHeading, kWater, true);
        m_y += kBelowHeading;
    }
    [[nodiscard]] double headingHeight(const QString& t)
    {
        return kAboveRule + kBelowRule + heightOf(t, m_width, kHeading, true) + kBelowHeading;
    }

    /// The painter for other drawings, in points.
    QPainter& painter()
    {
        scaleTo(1);
        return m_p;
    }

private:
    static constexpr double kAboveRule = 9;
    static constexpr double kBelowRule = 5;
    static constexpr double kHeading = 9.5;
    static constexpr double kBelowHeading = 3;

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
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere); // a word wider than its column stays inside
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

} // namespace firstdew::print
