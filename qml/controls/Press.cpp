#include "Press.h"

#include "IconDrawing.h"
#include "Ripples.h"

#include <QGuiApplication>
#include <QPainter>
#include <QStyleHints>
#include <algorithm>
#include <cmath>

namespace firstdew::controls {

namespace {
constexpr qreal kRippleStroke = 2.4;

bool isEnter(int key) { return key == Qt::Key_Return || key == Qt::Key_Enter; }
bool isPress(int key) { return key == Qt::Key_Space || key == Qt::Key_Select; }

/// Icons that point the way one reads stand the other way round where one reads from right to left.
bool pointsAlong(const QString& icon)
{
    return icon == QLatin1String("back") || icon == QLatin1String("next") || icon == QLatin1String("undo");
}
} // namespace

Press::Press(QQuickItem* parent) : Drawn(parent)
{
    setActiveFocusOnTab(true);
    setAcceptedMouseButtons(Qt::LeftButton);
    connect(this, &Press::textChanged, this, &Press::measure);
    connect(this, &Press::iconNameChanged, this, &Press::measure);
    connect(this, &Press::wordsChanged, this, &Press::measure);
    connect(this, &Press::fillChanged, this, &Press::redraw);
    connect(this, &Press::lookChanged, this, &Press::redraw);
    connect(this, &QQuickItem::enabledChanged, this, [this] {
        if (!isEnabled())
            setDown(false);
    });
}

QFont Press::font() const
{
    QFont font;
    font.setFamily(m_family);
    font.setPixelSize(std::max(1, static_cast<int>(m_textSize)));
    font.setWeight(static_cast<QFont::Weight>(m_weight));
    return font;
}

void Press::componentComplete()
{
    Drawn::componentComplete();
    measure();
}

/// Width that the words cannot have.
qreal Press::besides() const
{
    return 2 * m_side + (pictured() && !m_stacked ? m_pictureWide + m_between : 0);
}

/// Reads the words anew.
void Press::measure()
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

qreal Press::wordsHeight() const
{
    const int lines = lineCount();
    return lines == 0 ? 0 : std::ceil(m_layout.lineAt(lines - 1).rect().bottom());
}

/// Breaks the words for the width there is.
void Press::layOut()
{
    if (!m_wordless) {
        m_room = std::min(m_natural, std::max(1.0, (width() > 0 ? width() : implicitWidth()) - besides()));
    }
    // Words on one line are laid out already.
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
    const qreal high = m_stacked ? picture + (picture > 0 && words > 0 ? m_between : 0) + words : std::max(picture, words);
    setImplicitHeight(std::max(m_leastHigh, std::ceil(high + 2 * m_above)));
    emit laidOut();
    redraw();
}

void Press::geometryChange(const QRectF& now, const QRectF& before)
{
    Drawn::geometryChange(now, before);
    if (now.width() != before.width() && isComponentComplete())
        layOut();
}

void Press::setDown(bool down)
{
    if (m_down == down)
        return;
    m_down = down;
    redraw();
    emit downChanged();
}

void Press::setVisualFocus(bool visible)
{
    if (m_visualFocus == visible)
        return;
    m_visualFocus = visible;
    redraw();
    emit visualFocusChanged();
}

void Press::mousePressEvent(QMouseEvent* event)
{
    setDown(true); // first: what looks after the keyboard's place has to know
    if (!QGuiApplication::styleHints()->setFocusOnTouchRelease())
        forceActiveFocus(Qt::MouseFocusReason);
    event->accept();
}

void Press::mouseMoveEvent(QMouseEvent* event) { setDown(contains(event->position())); }

void Press::mouseReleaseEvent(QMouseEvent* event)
{
    const bool meant = m_down && contains(event->position());
    setDown(false);
    if (!meant)
        return;
    if (QGuiApplication::styleHints()->setFocusOnTouchRelease())
        forceActiveFocus(Qt::MouseFocusReason);
    emit clicked();
}

void Press::keyPressEvent(QKeyEvent* event)
{
    if (event->isAutoRepeat() || (!isEnter(event->key()) && !isPress(event->key()))) {
        event->ignore();
        return;
    }
    if (isEnter(event->key()))
        emit clicked();
    else
        setDown(true);
}

void Press::keyReleaseEvent(QKeyEvent* event)
{
    if (event->isAutoRepeat() || !isPress(event->key())) {
        event->ignore();
        return;
    }
    const bool meant = m_down;
    setDown(false);
    if (meant)
        emit clicked();
}

void Press::focusInEvent(QFocusEvent* event)
{
    QQuickItem::focusInEvent(event);
    const auto reason = event->reason();
    setVisualFocus(reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason || reason == Qt::ShortcutFocusReason);
}

void Press::focusOutEvent(QFocusEvent* event)
{
    QQuickItem::focusOutEvent(event);
    setVisualFocus(false);
    setDown(false);
}

Press::Places Press::places() const
{
    const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    const QSizeF words(wordsHeight() > 0 ? m_room : 0, wordsHeight());
    const QSizeF picture = pictured() ? QSizeF(m_pictureWide, m_pictureHigh) : QSizeF(0, 0);
    const qreal gap = !picture.isEmpty() && !words.isEmpty() ? m_between : 0;
    const QPointF middle(width() / 2, height() / 2);
    Places at{{middle - QPointF(picture.width(), picture.height()) / 2, picture}, {middle - QPointF(words.width(), words.height()) / 2, words}};
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

QRectF Press::extent() const
{
    const QRectF box(0, 0, width(), height());
    if (m_visualFocus)
        return box.marginsAdded(QMarginsF(1, 1, 1, 1) * std::max(0.0, m_focusOut));
    if ((m_down ? m_fillDown : m_fill).alpha() > 0 || m_edgeWidth > 0)
        return box;
    const Places at = places();
    return at.picture.united(at.words).adjusted(-1, -1, 1, 1).intersected(at.picture.isEmpty() && at.words.isEmpty() ? QRectF() : box);
}

void Press::draw(QPainter* painter)
{
    const QRectF box(0, 0, width(), height());
    painter->setPen(m_edgeWidth > 0 ? QPen(m_edge, m_edgeWidth) : QPen(Qt::NoPen));
    painter->setBrush(m_down ? m_fillDown : m_fill);
    const qreal half = m_edgeWidth / 2;
    painter->drawRoundedRect(box.adjusted(half, half, -half, -half), m_radius - half, m_radius - half);
    if (m_visualFocus) {
        const qreal by = m_focusLine / 2 - m_focusOut;
        painter->setPen(QPen(m_focusColor, m_focusLine));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(box.adjusted(by, by, -by, -by), std::max(0.0, m_radius - by), std::max(0.0, m_radius - by));
    }

    const Places at = places();
    if (m_ripples >= 0) {
        paintRipples(painter, at.picture, m_ripples, m_ink, kRippleStroke);
    } else {
        paintIcon(painter, at.picture, m_iconName, m_ink, QGuiApplication::layoutDirection() == Qt::RightToLeft && pointsAlong(m_iconName));
    }
    painter->setPen(m_ink);
    for (int i = 0; i < lineCount(); ++i) {
        const QTextLine line = m_layout.lineAt(i);
        const qreal x = at.words.left() + (m_room - line.naturalTextWidth()) / 2 - line.naturalTextRect().left();
        line.draw(painter, QPointF(std::round(x), at.words.top()));
    }
}

} // namespace firstdew::controls
