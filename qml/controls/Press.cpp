#include "Press.h"

#include "Ripples.h"

#include <QGuiApplication>
#include <QPainter>
#include <QQuickWindow>
#include <QSGImageNode>
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

Press::Press(QQuickItem* parent) : QQuickItem(parent)
{
    setFlag(ItemHasContents);
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
    QQuickItem::componentComplete();
    measure();
}

/// How far what is drawn reaches beyond the item.
qreal Press::outside() const { return m_visualFocus ? std::max(0.0, m_focusOut) : 0; }

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
    QQuickItem::geometryChange(now, before);
    if (now.size() == before.size() || !isComponentComplete())
        return;
    if (now.width() != before.width())
        layOut();
    redraw();
}

void Press::itemChange(ItemChange change, const ItemChangeData& data)
{
    if (change == ItemDevicePixelRatioHasChanged)
        redraw();
    QQuickItem::itemChange(change, data);
}

void Press::redraw()
{
    m_stale = true;
    update();
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
    if (!QGuiApplication::styleHints()->setFocusOnTouchRelease())
        forceActiveFocus(Qt::MouseFocusReason);
    setDown(true);
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

void Press::paint(QPainter* painter)
{
    painter->setRenderHint(QPainter::Antialiasing);
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

    const bool mirrored = QGuiApplication::layoutDirection() == Qt::RightToLeft;
    const qreal words = wordsHeight();
    const QSizeF picture = pictured() ? QSizeF(m_pictureWide, m_pictureHigh) : QSizeF(0, 0);
    const qreal gap = pictured() && words > 0 ? m_between : 0;
    QRectF pictureAt(box.center() - QPointF(picture.width(), picture.height()) / 2, picture);
    QPointF wordsAt(box.center() - QPointF(m_room, words) / 2);
    if (m_stacked) {
        pictureAt.moveTop((height() - picture.height() - gap - words) / 2);
        wordsAt.setY(pictureAt.bottom() + gap);
    } else if (pictured() && words > 0) {
        const qreal left = (width() - picture.width() - gap - m_room) / 2;
        pictureAt.moveLeft(mirrored ? left + m_room + gap : left);
        wordsAt.setX(mirrored ? left : left + picture.width() + gap);
    }
    if (m_ripples >= 0) {
        paintRipples(painter, pictureAt, m_ripples, m_ink, kRippleStroke);
    } else {
        m_icon.choose(m_iconName, m_ink);
        m_icon.paint(painter, pictureAt, mirrored && pointsAlong(m_iconName));
    }
    if (words > 0) {
        painter->setPen(m_ink);
        for (int i = 0; i < m_layout.lineCount(); ++i) {
            const QTextLine line = m_layout.lineAt(i);
            const qreal x = wordsAt.x() + (m_room - line.naturalTextWidth()) / 2 - line.naturalTextRect().left();
            line.draw(painter, QPointF(std::round(x), std::round(wordsAt.y())));
        }
    }
}

QSGNode* Press::updatePaintNode(QSGNode* old, UpdatePaintNodeData* /*data*/)
{
    auto* node = static_cast<QSGImageNode*>(old); // of nothing else, see below
    const QRectF where = QRectF(0, 0, width(), height()).adjusted(-outside(), -outside(), outside(), outside());
    if (width() <= 0 || height() <= 0) {
        delete node;
        return nullptr;
    }
    if (node == nullptr) {
        node = window()->createImageNode();
        node->setOwnsTexture(true);
        m_stale = true;
    }
    if (!m_stale)
        return node;
    const qreal ratio = window()->effectiveDevicePixelRatio();
    QImage image((where.size() * ratio).toSize().expandedTo({1, 1}), QImage::Format_ARGB32_Premultiplied);
    image.setDevicePixelRatio(ratio);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.translate(-where.topLeft());
    paint(&painter);
    painter.end();
    node->setTexture(window()->createTextureFromImage(image, QQuickWindow::TextureHasAlphaChannel));
    node->setRect(where);
    m_stale = false;
    return node;
}

} // namespace firstdew::controls
