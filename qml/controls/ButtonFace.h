#pragma once

#include "Drawn.h"
#include "theme/Theme.h"

#include <QTextLayout>
#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// The face of a button, painted in one item: ground, edge, picture, words and the keyboard's focus frame. Pages are
/// full of buttons, and a face made of several items costs several times as much memory. ActionButton.qml is the
/// button.
class ButtonFace : public firstdew::controls::Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(Kind kind MEMBER m_kind NOTIFY wordsChanged)
    Q_PROPERTY(QString text MEMBER m_text NOTIFY textChanged)
    Q_PROPERTY(QString iconName MEMBER m_iconName NOTIFY iconNameChanged)
    /// A diary level, 0 to 3, as the picture; -1: none.
    Q_PROPERTY(int ripples MEMBER m_ripples NOTIFY wordsChanged)
    /// The picture stands above the words instead of before them.
    Q_PROPERTY(bool stacked MEMBER m_stacked NOTIFY wordsChanged)
    /// The words are for the screen reader alone and are not drawn.
    Q_PROPERTY(bool wordless MEMBER m_wordless NOTIFY wordsChanged)
    /// In pixels; the size of running text if not set.
    Q_PROPERTY(qreal textSize READ textSize WRITE setTextSize NOTIFY wordsChanged)
    Q_PROPERTY(int weight MEMBER m_weight NOTIFY wordsChanged)
    Q_PROPERTY(qreal pictureWide MEMBER m_pictureWide NOTIFY wordsChanged)
    Q_PROPERTY(qreal pictureHigh MEMBER m_pictureHigh NOTIFY wordsChanged)
    Q_PROPERTY(qreal between MEMBER m_between NOTIFY wordsChanged) ///< space between picture and words
    /// Space left and right of the content; depends on the kind if not set.
    Q_PROPERTY(qreal side READ side WRITE setSide NOTIFY wordsChanged)
    Q_PROPERTY(qreal above MEMBER m_above NOTIFY wordsChanged) ///< space above and below the content
    Q_PROPERTY(qreal leastHigh MEMBER m_leastHigh NOTIFY wordsChanged)
    Q_PROPERTY(qreal leastWide MEMBER m_leastWide NOTIFY wordsChanged)
    Q_PROPERTY(qreal radius MEMBER m_radius NOTIFY lookChanged)
    /// Depends on the kind if not set.
    Q_PROPERTY(QColor ink READ ink WRITE setInk NOTIFY lookChanged)
    /// How far the focus frame lies outside the button; inside if below zero.
    Q_PROPERTY(qreal focusOut MEMBER m_focusOut NOTIFY lookChanged)
    Q_PROPERTY(bool down MEMBER m_down NOTIFY lookChanged)
    /// The button has the keyboard focus and was reached with the keyboard.
    Q_PROPERTY(bool visualFocus MEMBER m_visualFocus NOTIFY lookChanged)
    /// The number of lines that the words take, and the width they were laid out in.
    Q_PROPERTY(int lineCount READ lineCount NOTIFY laidOut)
    Q_PROPERTY(qreal room READ room NOTIFY laidOut)
    Q_PROPERTY(QFont font READ font NOTIFY wordsChanged)

public:
    enum Kind {
        Plain,
        Now,    ///< the one thing to do now
        Main,   ///< the main action of a page
        Danger, ///< stops or deletes
        Alarm,  ///< Danger, on a ground of the danger colour
        Quiet,  ///< words without ground or edge
        Choice, ///< one of several side by side, not chosen
        Bare    ///< no ground; ink of the page
    };
    Q_ENUM(Kind)

    explicit ButtonFace(QQuickItem* parent = nullptr);
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
    void textChanged();
    void iconNameChanged();
    void wordsChanged();
    void lookChanged();
    void laidOut();

protected:
    void componentComplete() override;
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void draw(QPainter* painter) override;
    [[nodiscard]] QRectF extent() const override;

private:
    struct Colours {
        QColor fill, ink, edge; ///< an invalid edge is not drawn
    };
    [[nodiscard]] Colours colours() const;
    void measure();
    void layOut();
    /// Positions of picture and words.
    struct Places {
        QRectF picture, words;
    };
    [[nodiscard]] Places places() const;
    [[nodiscard]] bool pictured() const { return !m_iconName.isEmpty() || m_ripples >= 0; }
    [[nodiscard]] qreal besides() const;
    [[nodiscard]] qreal wordsHeight() const;

    Kind m_kind = Plain;
    QString m_text, m_iconName;
    QColor m_ink;         ///< invalid: that of the kind
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
    bool m_broken = false; ///< the words were broken into several lines
};

} // namespace firstdew::controls
