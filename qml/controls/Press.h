#pragma once

#include "Drawn.h"

#include <QTextLayout>
#include <QtQml/qqmlregistration.h>

namespace firstdew::controls {

/// What can be pressed: by finger, mouse, Space, Return or Enter. It draws itself whole, ground, edge, picture, words and the
/// frame that shows where the keyboard is, since pages are full of buttons and one made of many items costs ten times as
/// much to make and to keep. What it holds beside that lies over it.
class Press : public Drawn {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString text MEMBER m_text NOTIFY textChanged)
    Q_PROPERTY(QString iconName MEMBER m_iconName NOTIFY iconNameChanged)
    /// A level of the diary as the picture, 0 to 3; -1: none.
    Q_PROPERTY(int ripples MEMBER m_ripples NOTIFY wordsChanged)
    /// The picture stands over the words, not before them.
    Q_PROPERTY(bool stacked MEMBER m_stacked NOTIFY wordsChanged)
    /// Words are not shown, only told to a screen reader.
    Q_PROPERTY(bool wordless MEMBER m_wordless NOTIFY wordsChanged)
    Q_PROPERTY(QString family MEMBER m_family NOTIFY wordsChanged)
    Q_PROPERTY(qreal textSize MEMBER m_textSize NOTIFY wordsChanged)
    Q_PROPERTY(int weight MEMBER m_weight NOTIFY wordsChanged)
    Q_PROPERTY(qreal pictureWide MEMBER m_pictureWide NOTIFY wordsChanged)
    Q_PROPERTY(qreal pictureHigh MEMBER m_pictureHigh NOTIFY wordsChanged)
    Q_PROPERTY(qreal between MEMBER m_between NOTIFY wordsChanged)  ///< picture and words
    Q_PROPERTY(qreal side MEMBER m_side NOTIFY wordsChanged)        ///< room left and right of what is in it
    Q_PROPERTY(qreal above MEMBER m_above NOTIFY wordsChanged)      ///< and above and below
    Q_PROPERTY(qreal leastHigh MEMBER m_leastHigh NOTIFY wordsChanged)
    Q_PROPERTY(qreal leastWide MEMBER m_leastWide NOTIFY wordsChanged)
    Q_PROPERTY(QColor fill MEMBER m_fill NOTIFY fillChanged)
    Q_PROPERTY(QColor fillDown MEMBER m_fillDown NOTIFY lookChanged)
    Q_PROPERTY(QColor edge MEMBER m_edge NOTIFY lookChanged)
    Q_PROPERTY(qreal edgeWidth MEMBER m_edgeWidth NOTIFY lookChanged)
    Q_PROPERTY(qreal radius MEMBER m_radius NOTIFY lookChanged)
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY lookChanged)
    Q_PROPERTY(QColor focusColor MEMBER m_focusColor NOTIFY lookChanged)
    Q_PROPERTY(qreal focusLine MEMBER m_focusLine NOTIFY lookChanged)
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

signals:
    void clicked();
    void textChanged();
    void iconNameChanged();
    void fillChanged();
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

    QString m_text, m_iconName, m_family;
    QColor m_fill{Qt::transparent}, m_fillDown{Qt::transparent}, m_edge{Qt::transparent}, m_ink{Qt::black}, m_focusColor{Qt::black};
    qreal m_textSize = 16, m_between = 0, m_side = 0, m_above = 0, m_leastHigh = 0, m_leastWide = 0, m_pictureWide = 0, m_pictureHigh = 0, m_edgeWidth = 0, m_radius = 0, m_focusLine = 0, m_focusOut = 0;
    int m_weight = QFont::DemiBold;
    int m_ripples = -1;
    bool m_stacked = false, m_wordless = false;
    bool m_down = false, m_visualFocus = false;
    QTextLayout m_layout;
    qreal m_natural = 0; ///< width of the words on one line
    qreal m_room = 0;
    bool m_broken = false; ///< the words were broken into lines for the room there is
};

} // namespace firstdew::controls
