#pragma once

#include "Drawn.h"
#include "theme/Theme.h"

#include <QTextLayout>
#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// What can be pressed: by finger, mouse, Space, Return or Enter. It draws itself whole, ground, edge, picture, words
/// and the frame that shows where the keyboard is, since pages are full of buttons and one made of many items costs ten
/// times as much to make and to keep. What it holds beside that lies over it. Its colours are those of its kind.
class Press : public Drawn {
    Q_OBJECT
    QML_ELEMENT
    /// "now" (the one thing to do), "main", "plain", "danger", "alarm" (danger on its own colour), "quiet" (words
    /// alone), "choice" (one of several side by side, not chosen), "bare" (ground of what it lies on).
    Q_PROPERTY(QString kind MEMBER m_kind NOTIFY wordsChanged)
    Q_PROPERTY(QString text MEMBER m_text NOTIFY textChanged)
    Q_PROPERTY(QString iconName MEMBER m_iconName NOTIFY iconNameChanged)
    /// A level of the diary as the picture, 0 to 3; -1: none.
    Q_PROPERTY(int ripples MEMBER m_ripples NOTIFY wordsChanged)
    /// The picture stands over the words, not before them.
    Q_PROPERTY(bool stacked MEMBER m_stacked NOTIFY wordsChanged)
    /// Words are not shown, only told to a screen reader.
    Q_PROPERTY(bool wordless MEMBER m_wordless NOTIFY wordsChanged)
    /// In pixels; that of running text where it is not said.
    Q_PROPERTY(qreal textSize READ textSize WRITE setTextSize NOTIFY wordsChanged)
    Q_PROPERTY(int weight MEMBER m_weight NOTIFY wordsChanged)
    Q_PROPERTY(qreal pictureWide MEMBER m_pictureWide NOTIFY wordsChanged)
    Q_PROPERTY(qreal pictureHigh MEMBER m_pictureHigh NOTIFY wordsChanged)
    Q_PROPERTY(qreal between MEMBER m_between NOTIFY wordsChanged) ///< picture and words
    /// Room left and right of what is in it; that of the kind where it is not said.
    Q_PROPERTY(qreal side READ side WRITE setSide NOTIFY wordsChanged)
    Q_PROPERTY(qreal above MEMBER m_above NOTIFY wordsChanged) ///< room above and below
    Q_PROPERTY(qreal leastHigh MEMBER m_leastHigh NOTIFY wordsChanged)
    Q_PROPERTY(qreal leastWide MEMBER m_leastWide NOTIFY wordsChanged)
    Q_PROPERTY(qreal radius MEMBER m_radius NOTIFY lookChanged)
    /// That of the kind where it is not said.
    Q_PROPERTY(QColor ink READ ink WRITE setInk NOTIFY lookChanged)
    /// The frame of the keyboard lies this far outside; below zero within.
    Q_PROPERTY(qreal focusOut MEMBER m_focusOut NOTIFY lookChanged)
    Q_PROPERTY(bool down READ down NOTIFY downChanged)
    /// It has the keyboard, and was reached with it.
    Q_PROPERTY(bool visualFocus READ visualFocus NOTIFY visualFocusChanged)
    /// What the words came to: the lines they take, and the width they had.
    Q_PROPERTY(int lineCount READ lineCount NOTIFY laidOut)
    Q_PROPERTY(qreal room READ room NOTIFY laidOut)
    Q_PROPERTY(QFont font READ font NOTIFY wordsChanged)

public:
    explicit Press(QQuickItem* parent = nullptr);
    [[nodiscard]] bool down() const { return m_down; }
    [[nodiscard]] bool visualFocus() const { return m_visualFocus; }
    [[nodiscard]] int lineCount() const { return m_wordless ? 0 : m_layout.lineCount(); }
    [[nodiscard]] qreal room() const { return m_room; }
    [[nodiscard]] QFont font() const;
    [[nodiscard]] qreal textSize() const;
    [[nodiscard]] qreal side() const;
    [[nodiscard]] QColor ink() const;
    void setTextSize(qreal pixels);
    void setSide(qreal room);
    void setInk(const QColor& ink);

signals:
    void clicked();
    void textChanged();
    void iconNameChanged();
    void wordsChanged();
    void lookChanged();
    void downChanged();
    void visualFocusChanged();
    void laidOut();

protected:
    void componentComplete() override;
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override { setDown(false); }
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void draw(QPainter* painter) override;
    [[nodiscard]] QRectF extent() const override;

private:
    /// How the kind looks, as it is now.
    struct Dress {
        QColor fill, ink, edge; ///< no edge where it is not valid
    };
    [[nodiscard]] Dress dress() const;
    void measure();
    void layOut();
    void setDown(bool down);
    void setVisualFocus(bool visible);
    /// Where picture and words stand.
    struct Places {
        QRectF picture, words;
    };
    [[nodiscard]] Places places() const;
    [[nodiscard]] bool pictured() const { return !m_iconName.isEmpty() || m_ripples >= 0; }
    [[nodiscard]] qreal besides() const;
    [[nodiscard]] qreal wordsHeight() const;

    QString m_kind = QStringLiteral("plain");
    QString m_text, m_iconName;
    QColor m_ink;         ///< not valid: that of the kind
    qreal m_textSize = 0; ///< 0: that of running text
    qreal m_side = -1;    ///< below 0: that of the kind
    qreal m_pictureWide = Theme::kIcon, m_pictureHigh = Theme::kIcon, m_between = Theme::kSmall,
          m_above = Theme::kSmall;
    qreal m_leastHigh = Theme::kTarget, m_leastWide = Theme::kTarget;
    qreal m_radius = Theme::kRadius, m_focusOut = Theme::kFocusLine;
    int m_weight = Theme::kStrong;
    int m_ripples = -1;
    bool m_stacked = false, m_wordless = false;
    bool m_down = false, m_visualFocus = false;
    QTextLayout m_layout;
    qreal m_natural = 0; ///< width of the words on one line
    qreal m_room = 0;
    bool m_broken = false; ///< the words were broken into lines for the room there is
};

} // namespace firstdew::controls
