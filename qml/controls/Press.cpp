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
    connect(this, &Press::lookChanged, this, &Press::redraw);
    connect(this, &QQuickItem::enabledChanged, this, [this] {
        if (!isEnabled())
            setDown(false);
        redraw();
        emit lookChanged();
    });
    connect(Theme::instance(), &Theme::changed, this, [this] {
        measure();
        emit lookChanged();
    });
    connect(qGuiApp, &QGuiApplication::layoutDirectionChanged, this, &Press::measure);
}

QFont Press::font() const { return Theme::font(textSize(), m_weight); }

qreal Press::textSize() const { return m_textSize > 0 ? m_textSize : Theme::instance()->body(); }

qreal Press::side() const
{
    if (m_side >= 0)
        return m_side;
    return m_kind == QLatin1String("bare")     ? 0
           : m_kind == QLatin1String("quiet")  ? Theme::kGap
           : m_kind == QLatin1String("choice") ? Theme::kTight
                                               : Theme::kMargin;
}

QColor Press::ink() const { return m_ink.isValid() && isEnabled() ? m_ink : dress().ink; }

void Press::setTextSize(qreal pixels)
{
    if (m_textSize == pixels)
        return;
    m_textSize = pixels;
    emit wordsChanged();
}

void Press::setSide(qreal room)
{
    if (m_side == room)
        return;
    m_side = room;
    emit wordsChanged();
}

void Press::setInk(const QColor& ink)
{
    if (m_ink == ink)
        return;
    m_ink = ink;
    emit lookChanged();
}

Press::Dress Press::dress() const
{
    const Theme& t = *Theme::instance();
    constexpr int kPressed = 115; // per cent darker
    const bool plain = m_kind == QLatin1String("plain");
    const bool choice = m_kind == QLatin1String("choice");
    if (m_kind == QLatin1String("bare"))
        return {m_down ? t.cardPressed() : Theme::clear(), isEnabled() ? t.ink() : t.line(), {}};
    if (!isEnabled())
        return {t.sunken(), t.inkSoft(), plain || choice ? t.edge() : QColor()};
    if (plain)
        return {m_down ? t.cardPressed() : t.card(), t.ink(), t.edge()};
    if (choice)
        return {m_down ? t.cardPressed() : t.paper(), t.ink(), t.edge()};
    if (m_kind == QLatin1String("quiet"))
        return {m_down ? t.cardPressed() : Theme::clear(), t.main(), {}};
    if (m_kind == QLatin1String("now"))
        return {m_down ? t.nowPressed() : t.now(), t.nowInk(), {}};
    const bool alarm = m_kind == QLatin1String("alarm");
    const bool danger = m_kind == QLatin1String("danger");
    Q_ASSERT(alarm || danger || m_kind == QLatin1String("main"));
    const QColor fill = alarm ? t.dangerInk() : danger ? t.danger() : t.main();
    return {m_down ? fill.darker(kPressed) : fill, alarm ? t.danger() : danger ? t.dangerInk() : t.mainInk(), {}};
}

void Press::componentComplete()
{
    Drawn::componentComplete();
    measure();
}

/// Width that the words cannot have.
qreal Press::besides() const { return 2 * side() + (pictured() && !m_stacked ? m_pictureWide + m_between : 0); }

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
    const qreal high =
        m_stacked ? picture + (picture > 0 && words > 0 ? m_between : 0) + words : std::max(picture, words);
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
    setVisualFocus(reason == Qt::TabFocusReason || reason == Qt::BacktabFocusReason ||
                   reason == Qt::ShortcutFocusReason);
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

QRectF Press::extent() const
{
    const QRectF box(0, 0, width(), height());
    if (m_visualFocus)
        return box.marginsAdded(QMarginsF(1, 1, 1, 1) * std::max(0.0, m_focusOut));
    if (const Dress d = dress(); d.fill.alpha() > 0 || d.edge.isValid())
        return box;
    const Places at = places();
    return at.picture.united(at.words)
        .adjusted(-1, -1, 1, 1)
        .intersected(at.picture.isEmpty() && at.words.isEmpty() ? QRectF() : box);
}

void Press::draw(QPainter* painter)
{
    const QRectF box(0, 0, width(), height());
    const Dress d = dress();
    const qreal edge = d.edge.isValid() ? Theme::kHair : 0;
    // One area on the other: a line round it takes longer.
    painter->setPen(Qt::NoPen);
    if (edge > 0) {
        painter->setBrush(d.edge);
        painter->drawRoundedRect(box, m_radius, m_radius);
    }
    painter->setBrush(d.fill);
    painter->drawRoundedRect(box.adjusted(edge, edge, -edge, -edge), m_radius - edge, m_radius - edge);
    if (m_visualFocus) {
        const qreal by = Theme::kFocusLine / 2.0 - m_focusOut;
        painter->setPen(QPen(Theme::instance()->main(), Theme::kFocusLine));
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(box.adjusted(by, by, -by, -by), std::max(0.0, m_radius - by),
                                 std::max(0.0, m_radius - by));
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
