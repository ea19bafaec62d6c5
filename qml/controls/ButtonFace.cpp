#include "ButtonFace.h"

#include "IconDrawing.h"
#include "Ripples.h"

#include <QGuiApplication>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace firstdew::controls {

namespace {
constexpr qreal kRippleStroke = 2.4;

/// These icons point in the reading direction, so they are mirrored from right to left.
bool pointsAlong(const QString& icon)
{
    return icon == QLatin1String("back") || icon == QLatin1String("next") || icon == QLatin1String("undo");
}
} // namespace

ButtonFace::ButtonFace(QQuickItem* parent) : Drawn(parent)
{
    connect(this, &ButtonFace::textChanged, this, &ButtonFace::measure);
    connect(this, &ButtonFace::iconNameChanged, this, &ButtonFace::measure);
    connect(this, &ButtonFace::wordsChanged, this, &ButtonFace::measure);
    connect(this, &ButtonFace::lookChanged, this, &ButtonFace::redraw);
    connect(this, &QQuickItem::enabledChanged, this, &ButtonFace::lookChanged);
    connect(Theme::instance(), &Theme::changed, this, [this] {
        measure();
        emit lookChanged();
    });
    connect(qGuiApp, &QGuiApplication::layoutDirectionChanged, this, &ButtonFace::measure);
}

QFont ButtonFace::font() const { return Theme::font(textSize(), m_weight); }

qreal ButtonFace::textSize() const { return m_textSize > 0 ? m_textSize : Theme::instance()->body(); }

qreal ButtonFace::side() const
{
    if (m_side >= 0)
        return m_side;
    switch (m_kind) {
    case Bare: return 0;
    case Quiet: return Theme::kGap;
    case Choice: return Theme::kTight;
    default: return Theme::kMargin;
    }
}

QColor ButtonFace::ink() const { return m_ink.isValid() && isEnabled() ? m_ink : colours().ink; }

void ButtonFace::setTextSize(qreal pixels)
{
    if (m_textSize == pixels)
        return;
    m_textSize = pixels;
    emit wordsChanged();
}

void ButtonFace::setSide(qreal room)
{
    if (m_side == room)
        return;
    m_side = room;
    emit wordsChanged();
}

void ButtonFace::setInk(const QColor& ink)
{
    if (m_ink == ink)
        return;
    m_ink = ink;
    emit lookChanged();
}

ButtonFace::Colours ButtonFace::colours() const
{
    const Theme& t = *Theme::instance();
    constexpr int kPressed = 115; // per cent darker
    const auto solid = [this](const QColor& fill, const QColor& ink) {
        return Colours{m_down ? fill.darker(kPressed) : fill, ink, {}};
    };
    if (!isEnabled() && m_kind != Bare)
        return {t.sunken(), t.inkSoft(), m_kind == Plain || m_kind == Choice ? t.edge() : QColor()};
    switch (m_kind) {
    case Plain: return {m_down ? t.cardPressed() : t.card(), t.ink(), t.edge()};
    case Choice: return {m_down ? t.cardPressed() : t.paper(), t.ink(), t.edge()};
    case Bare: return {m_down ? t.cardPressed() : Theme::clear(), isEnabled() ? t.ink() : t.line(), {}};
    case Quiet: return {m_down ? t.cardPressed() : Theme::clear(), t.main(), {}};
    case Now: return {m_down ? t.nowPressed() : t.now(), t.nowInk(), {}};
    case Main: return solid(t.main(), t.mainInk());
    case Danger: return solid(Theme::alarm(), Theme::alarmInk());
    case Alarm: return solid(Theme::alarmInk(), Theme::alarm());
    }
    Q_UNREACHABLE();
}

void ButtonFace::componentComplete()
{
    Drawn::componentComplete();
    measure();
}

/// Width that is not free for the words.
qreal ButtonFace::besides() const { return 2 * side() + (pictured() && !m_stacked ? m_pictureWide + m_between : 0); }

/// Lays the words out on one line and takes the implicit width from that.
void ButtonFace::measure()
{
    if (!isComponentComplete())
        return;
    m_natural = 0;
    m_layout.clearLayout();
    if (!m_wordless) {
        QTextOption option(Qt::AlignLeft | Qt::AlignAbsolute); // lines are centred as they are drawn
        option.setTextDirection(QGuiApplication::layoutDirection());
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        m_layout.setText(m_text);
        m_layout.setFont(font());
        m_layout.setTextOption(option);
        m_layout.setCacheEnabled(true);
        m_layout.beginLayout();
        QTextLine line = m_layout.createLine();
        if (line.isValid()) {
            line.setLineWidth(1e6);
            m_natural = std::ceil(line.naturalTextWidth());
        }
        m_layout.endLayout();
        m_broken = false;
    }
    const qreal wide = m_stacked ? std::max(m_natural, pictured() ? m_pictureWide : 0) : m_natural;
    setImplicitWidth(std::max(m_leastWide, std::ceil(wide + besides())));
    layOut();
}

qreal ButtonFace::wordsHeight() const
{
    const int lines = lineCount();
    return lines == 0 ? 0 : std::ceil(m_layout.lineAt(lines - 1).rect().bottom());
}

/// Breaks the words into lines for the width there is and takes the implicit height from that.
void ButtonFace::layOut()
{
    if (!m_wordless) {
        m_room = std::min(m_natural, std::max(1.0, (width() > 0 ? width() : implicitWidth()) - besides()));
    }
    // measure() has laid the words out on one line already.
    if (!m_wordless && (m_broken || m_room < m_natural)) {
        m_broken = true;
        qreal y = 0;
        m_layout.beginLayout();
        for (QTextLine line = m_layout.createLine(); line.isValid(); line = m_layout.createLine()) {
            line.setLineWidth(m_room);
            line.setPosition({0, y});
            y += line.height();
        }
        m_layout.endLayout();
    }
    const qreal picture = pictured() ? m_pictureHigh : 0;
    const qreal words = wordsHeight();
    const qreal high =
        m_stacked ? picture + (picture > 0 && words > 0 ? m_between : 0) + words : std::max(picture, words);
    setImplicitHeight(std::max(m_leastHigh, std::ceil(high + 2 * m_above)));
    emit laidOut();
    redraw();
}

void ButtonFace::geometryChange(const QRectF& now, const QRectF& before)
{
    Drawn::geometryChange(now, before);
    if (now.width() != before.width() && isComponentComplete())
        layOut();
}

ButtonFace::Places ButtonFace::places() const
{
    const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    const QSizeF words(wordsHeight() > 0 ? m_room : 0, wordsHeight());
    const QSizeF picture = pictured() ? QSizeF(m_pictureWide, m_pictureHigh) : QSizeF(0, 0);
    const qreal gap = !picture.isEmpty() && !words.isEmpty() ? m_between : 0;
    const QPointF middle(width() / 2, height() / 2);
    Places at{{middle - QPointF(picture.width(), picture.height()) / 2, picture},
              {middle - QPointF(words.width(), words.height()) / 2, words}};
    if (m_stacked) {
        at.picture.moveTop((height() - picture.height() - gap - words.height()) / 2);
        at.words.moveTop(at.picture.bottom() + gap);
    } else if (gap > 0 || (!picture.isEmpty() && !words.isEmpty())) {
        const qreal left = (width() - picture.width() - gap - words.width()) / 2;
        at.picture.moveLeft(mirrored ? left + words.width() + gap : left);
        at.words.moveLeft(mirrored ? left : left + picture.width() + gap);
    }
    at.words.moveTopLeft({std::round(at.words.left()), std::round(at.words.top())});
    return at;
}

QRectF ButtonFace::extent() const
{
    const QRectF box(0, 0, width(), height());
    if (m_visualFocus)
        return box.marginsAdded(QMarginsF(1, 1, 1, 1) * std::max(0.0, m_focusOut + Theme::kHalo));
    if (const Colours c = colours(); c.fill.alpha() > 0 || c.edge.isValid())
        return box;
    const Places at = places();
    return at.picture.united(at.words)
        .adjusted(-1, -1, 1, 1)
        .intersected(at.picture.isEmpty() && at.words.isEmpty() ? QRectF() : box);
}

void ButtonFace::draw(QPainter* painter)
{
    const QRectF box(0, 0, width(), height());
    const Colours c = colours();
    const qreal edge = c.edge.isValid() ? Theme::kHair : 0;
    // Two filled areas: a stroked outline takes longer to paint.
    painter->setPen(Qt::NoPen);
    if (edge > 0) {
        painter->setBrush(c.edge);
        painter->drawRoundedRect(box, m_radius, m_radius);
    }
    painter->setBrush(c.fill);
    painter->drawRoundedRect(box.adjusted(edge, edge, -edge, -edge), m_radius - edge, m_radius - edge);
    if (m_visualFocus) {
        const qreal by = Theme::kFocusLine / 2.0 - m_focusOut;
        const Theme& t = *Theme::instance();
        painter->setBrush(Qt::NoBrush);
        for (const auto& [colour, wide] : {std::pair(t.paper(), Theme::kFocusLine + 2 * Theme::kHalo),
                                           std::pair(t.focus(), int(Theme::kFocusLine))}) {
            painter->setPen(QPen(colour, wide));
            painter->drawRoundedRect(box.adjusted(by, by, -by, -by), std::max(0.0, m_radius - by),
                                     std::max(0.0, m_radius - by));
        }
    }

    const Places at = places();
    const QColor ink = this->ink();
    if (m_ripples >= 0) {
        paintRipples(painter, at.picture, m_ripples, ink, kRippleStroke);
    } else {
        paintIcon(painter, at.picture, m_iconName, ink,
                  QGuiApplication::layoutDirection() == Qt::RightToLeft && pointsAlong(m_iconName));
    }
    painter->setPen(ink);
    for (int i = 0; i < lineCount(); ++i) {
        const QTextLine line = m_layout.lineAt(i);
        const qreal x = at.words.left() + (m_room - line.naturalTextWidth()) / 2 - line.naturalTextRect().left();
        line.draw(painter, QPointF(std::round(x), at.words.top()));
    }
}

} // namespace firstdew::controls
