#pragma once

#include <QColor>
#include <QFont>
#include <QMarginsF>
#include <QObject>
#include <QtQml/qqmlregistration.h>
#include <algorithm>

class QQmlEngine;
class QJSEngine;

namespace firstdew {

/// Every colour, size and duration, by its role. Pages name roles, never values. Sizes are in device-independent
/// pixels, durations in milliseconds. Nothing moves but what a finger moves.
class Theme : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(qreal textScale READ textScale NOTIFY changed)

    Q_PROPERTY(QColor paper READ paper NOTIFY changed)
    Q_PROPERTY(QColor card READ card NOTIFY changed)
    Q_PROPERTY(QColor cardPressed READ cardPressed NOTIFY changed)
    Q_PROPERTY(QColor sunken READ sunken NOTIFY changed)
    Q_PROPERTY(QColor line READ line NOTIFY changed)
    Q_PROPERTY(QColor edge READ edge NOTIFY changed)
    Q_PROPERTY(QColor ink READ ink NOTIFY changed)
    Q_PROPERTY(QColor inkSoft READ inkSoft NOTIFY changed)
    Q_PROPERTY(QColor main READ main NOTIFY changed)
    Q_PROPERTY(QColor focus READ focus NOTIFY changed)
    Q_PROPERTY(QColor mainInk READ mainInk NOTIFY changed)
    Q_PROPERTY(QColor now READ now NOTIFY changed)
    Q_PROPERTY(QColor nowInk READ nowInk NOTIFY changed)
    Q_PROPERTY(QColor nowText READ nowText NOTIFY changed)
    Q_PROPERTY(QColor nowWash READ nowWash NOTIFY changed)
    Q_PROPERTY(QColor danger READ danger NOTIFY changed)
    Q_PROPERTY(QColor dangerInk READ dangerInk NOTIFY changed)
    Q_PROPERTY(QColor alarm READ alarm CONSTANT)       ///< what stops, and what is too high: red in both themes
    Q_PROPERTY(QColor alarmInk READ alarmInk CONSTANT) ///< on it
    Q_PROPERTY(QColor dangerWash READ dangerWash NOTIFY changed)
    Q_PROPERTY(QColor good READ good NOTIFY changed)
    Q_PROPERTY(QColor veil READ veil NOTIFY changed)
    Q_PROPERTY(QColor clear READ clear CONSTANT)

    Q_PROPERTY(int target MEMBER kTarget CONSTANT)
    Q_PROPERTY(int bathTarget MEMBER kBathTarget CONSTANT)
    Q_PROPERTY(int hair MEMBER kHair CONSTANT)
    Q_PROPERTY(int focusLine MEMBER kFocusLine CONSTANT)
    Q_PROPERTY(int halo MEMBER kHalo CONSTANT) ///< of paper around that line, on whatever ground
    Q_PROPERTY(int tight MEMBER kTight CONSTANT)
    Q_PROPERTY(int small MEMBER kSmall CONSTANT)
    Q_PROPERTY(int gap MEMBER kGap CONSTANT)
    Q_PROPERTY(int margin MEMBER kMargin CONSTANT)
    Q_PROPERTY(int wide MEMBER kWide CONSTANT)
    Q_PROPERTY(int vast MEMBER kVast CONSTANT)
    Q_PROPERTY(int radius MEMBER kRadius CONSTANT)
    Q_PROPERTY(int radiusSmall MEMBER kRadiusSmall CONSTANT)
    Q_PROPERTY(int icon MEMBER kIcon CONSTANT)
    Q_PROPERTY(int iconSmall MEMBER kIconSmall CONSTANT)
    Q_PROPERTY(int iconLarge MEMBER kIconLarge CONSTANT)
    Q_PROPERTY(int measure MEMBER kMeasure CONSTANT) ///< widest column that reads well
    /// From this width on, a page has two columns; large text needs more room for the same words.
    Q_PROPERTY(qreal twoColumns READ twoColumns NOTIFY changed)
    Q_PROPERTY(int barHeight MEMBER kBarHeight CONSTANT)
    Q_PROPERTY(int barWidth MEMBER kBarWidth CONSTANT) ///< where the places stand beside the page
    Q_PROPERTY(int lowHeight MEMBER kLowHeight CONSTANT)
    Q_PROPERTY(int lowSession MEMBER kLowSession CONSTANT) ///< below, two buttons one above the other leave no room
    Q_PROPERTY(int tall MEMBER kTall CONSTANT)             ///< from here on a running session has room for large words
    Q_PROPERTY(int tallest MEMBER kTallest CONSTANT)       ///< and from here on for a Stop as large
    Q_PROPERTY(int ring MEMBER kRing CONSTANT)             ///< widest clock of a running session
    Q_PROPERTY(int padKey MEMBER kPadKey CONSTANT)
    Q_PROPERTY(int drawing MEMBER kDrawing CONSTANT) ///< a drawing that has room
    Q_PROPERTY(int curve MEMBER kCurve CONSTANT)     ///< a chart without its labels

    // What the system keeps of each side of the window: backgrounds reach under it, nothing else does.
    Q_PROPERTY(qreal safeLeft READ safeLeft NOTIFY safeChanged)
    Q_PROPERTY(qreal safeTop READ safeTop NOTIFY safeChanged)
    Q_PROPERTY(qreal safeRight READ safeRight NOTIFY safeChanged)
    Q_PROPERTY(qreal safeBottom READ safeBottom NOTIFY safeChanged)

    Q_PROPERTY(QString family READ family CONSTANT)
    Q_PROPERTY(int strong MEMBER kStrong CONSTANT)
    Q_PROPERTY(qreal tiny READ tiny NOTIFY changed)
    Q_PROPERTY(qreal body READ body NOTIFY changed)
    Q_PROPERTY(qreal label READ label NOTIFY changed)
    Q_PROPERTY(qreal lead READ lead NOTIFY changed)
    Q_PROPERTY(qreal shared READ shared NOTIFY changed) ///< words beside a current that share a line
    Q_PROPERTY(qreal narrow READ narrow NOTIFY changed) ///< the word between less and more
    Q_PROPERTY(qreal title READ title NOTIFY changed)
    Q_PROPERTY(qreal display READ display NOTIFY changed)
    Q_PROPERTY(qreal numerals READ numerals NOTIFY changed)
    Q_PROPERTY(bool largeText READ largeText NOTIFY changed)

    Q_PROPERTY(int leftAlone MEMBER kLeftAlone CONSTANT) ///< a meter reading counts when it was left alone this long

public:
    static constexpr int kTarget = 48, kBathTarget = 96, kHair = 1, kFocusLine = 3, kHalo = 2;
    static constexpr int kTight = 4, kSmall = 8, kGap = 12, kMargin = 16, kWide = 24, kVast = 40;
    static constexpr int kRadius = 14, kRadiusSmall = 8, kIcon = 24, kIconSmall = 18, kIconLarge = 40;
    static constexpr int kMeasure = 620, kTwoColumns = 840, kBarHeight = 64, kBarWidth = 88, kLowHeight = 480,
                         kTall = 700, kTallest = 780, kLowSession = 360, kRing = 340, kPadKey = 64, kCurve = 160,
                         kDrawing = 160;
    static constexpr int kStrong = QFont::DemiBold;
    static constexpr int kLeftAlone = 1200;

    /// The theme of this program, which belongs to `owner`. (Made without arguments, the engine would make one of its
    /// own.)
    explicit Theme(QObject* owner);
    ~Theme() override;
    /// There is one as long as there is an Appearance.
    static Theme* instance();
    static Theme* create(QQmlEngine*, QJSEngine*);
    /// What the person and the system want; `textScale` from 0.85 to 2. With more contrast nothing is written softly,
    /// and edges are as strong as words.
    void follow(bool dark, qreal textScale, bool contrast = false);

    void keepFree(const QMarginsF& safe);

    [[nodiscard]] qreal textScale() const { return m_textScale; }
    [[nodiscard]] qreal safeLeft() const { return m_safe.left(); }
    [[nodiscard]] qreal safeTop() const { return m_safe.top(); }
    [[nodiscard]] qreal safeRight() const { return m_safe.right(); }
    [[nodiscard]] qreal safeBottom() const { return m_safe.bottom(); }

    // Slate-teal ink on warm paper; marigold for "now"; crimson for danger.
    [[nodiscard]] QColor paper() const { return tone(0xf6f1e6, 0x0f1d21); }
    [[nodiscard]] QColor card() const { return tone(0xfffcf5, 0x182b31); }
    [[nodiscard]] QColor cardPressed() const { return tone(0xefe8d8, 0x22393f); }
    [[nodiscard]] QColor sunken() const { return tone(0xece5d5, 0x13252a); }
    [[nodiscard]] QColor line() const { return m_contrast ? edgeTone() : tone(0xd5cbb6, 0x35505a); }
    [[nodiscard]] QColor edge() const { return m_contrast ? ink() : edgeTone(); }
    [[nodiscard]] QColor ink() const { return m_contrast ? tone(0x000000, 0xffffff) : tone(0x15323a, 0xedf2ec); }
    [[nodiscard]] QColor inkSoft() const { return m_contrast ? ink() : tone(0x48606a, 0xadc0c4); }
    [[nodiscard]] QColor main() const { return tone(0x1f5a66, 0x7cc0c6); }
    /// Where the keyboard is: like nothing that is chosen, main or alarming.
    [[nodiscard]] QColor focus() const { return tone(0x4b3fa8, 0xc2b8ff); }
    [[nodiscard]] QColor mainInk() const { return tone(0xffffff, 0x08191d); }
    [[nodiscard]] QColor now() const { return tone(0xf0a82a, 0xf2b544); }
    [[nodiscard]] QColor nowPressed() const { return tone(0xd98f10, 0xd99a22); }
    [[nodiscard]] QColor nowInk() const { return tone(0x1d1a10, 0x1c1300); }
    [[nodiscard]] QColor nowText() const { return tone(0x7c4a00, 0xf2b544); }
    [[nodiscard]] QColor nowWash() const { return tone(0xfbe9c4, 0x33301f); }
    [[nodiscard]] QColor danger() const { return tone(0xa3182c, 0xf7a3a3); }
    [[nodiscard]] QColor dangerInk() const { return tone(0xffffff, 0x33060b); }
    [[nodiscard]] static QColor alarm() { return QColor(0xa3182c); }
    [[nodiscard]] static QColor alarmInk() { return Qt::white; }
    [[nodiscard]] QColor dangerWash() const { return tone(0xf8dfdc, 0x3b2024); }
    [[nodiscard]] QColor good() const { return tone(0x2a6a43, 0x8fcf9f); }
    [[nodiscard]] QColor veil() const { return QColor::fromRgba(m_dark ? 0xb0050a0c : 0x8015323a); }
    [[nodiscard]] static QColor clear() { return Qt::transparent; }

    [[nodiscard]] static QString family() { return QStringLiteral("Inter"); }
    [[nodiscard]] qreal tiny() const { return 12 * m_textScale; }
    [[nodiscard]] qreal body() const { return 16 * m_textScale; }
    [[nodiscard]] qreal label() const { return 14 * m_textScale; }
    [[nodiscard]] qreal lead() const { return 18 * std::min(m_textScale, 1.75); } // stays below a title
    [[nodiscard]] qreal shared() const { return 16 * std::min(m_textScale, 1.25); }
    [[nodiscard]] qreal narrow() const { return 16 * std::min(m_textScale, 1.1); }
    // Headings are large already and grow less, so that their words fit a small screen.
    [[nodiscard]] qreal title() const { return 22 * std::min(m_textScale, 1.5); }
    [[nodiscard]] qreal display() const { return 29 * std::min(m_textScale, 1.2); }
    [[nodiscard]] qreal numerals() const { return 88 * std::min(m_textScale, 1.1); } // 10 mm high on a phone
    [[nodiscard]] qreal twoColumns() const { return kTwoColumns * std::max(1.0, m_textScale); }
    [[nodiscard]] bool largeText() const { return m_textScale > 1.4; }
    /// The largest size up to `size` in which no word of the text is wider than the room, down to two thirds of it.
    Q_INVOKABLE [[nodiscard]] static qreal fitted(const QString& text, qreal size, int weight, qreal room);
    /// Our type in that size and weight.
    [[nodiscard]] static QFont font(qreal pixels, int weight = QFont::Normal);

signals:
    void changed();
    void safeChanged();

private:
    [[nodiscard]] QColor tone(QRgb light, QRgb dark) const { return QColor(m_dark ? dark : light); }

    [[nodiscard]] QColor edgeTone() const { return tone(0x6f8187, 0x7d979e); }

    bool m_dark = false;
    bool m_contrast = false;
    qreal m_textScale = 1;
    QMarginsF m_safe;
};

} // namespace firstdew
