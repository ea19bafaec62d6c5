#include "Theme.h"

#include <QFontMetricsF>
#include <QQmlEngine>
#include <QRegularExpression>

#include <algorithm>
#include <cmath>

namespace firstdew {

namespace {
Theme* theTheme = nullptr;
} // namespace

Theme::Theme(QObject* /*owner*/) { theTheme = this; }

Theme::~Theme() { theTheme = nullptr; }

Theme* Theme::instance() { return theTheme; }

Theme* Theme::create(QQmlEngine*, QJSEngine*)
{
    QQmlEngine::setObjectOwnership(theTheme, QQmlEngine::CppOwnership);
    return theTheme;
}

void Theme::follow(bool dark, qreal textScale, bool contrast)
{
    if (dark == m_dark && textScale == m_textScale && contrast == m_contrast)
        return;
    m_contrast = contrast;
    m_dark = dark;
    m_textScale = textScale;
    emit changed();
}

void Theme::keepFree(const QMarginsF& safe)
{
    if (safe == m_safe)
        return;
    m_safe = safe;
    emit safeChanged();
}

qreal Theme::fitted(const QString& text, qreal size, int weight, qreal room)
{
    constexpr qreal kLeast = 2.0 / 3;
    constexpr qreal kHair = 1;
    static const QRegularExpression between(QStringLiteral("[\\s\u00ad/-]"));
    const QFontMetricsF metrics(font(size, weight));
    qreal widest = 0;
    for (const QString& word : text.split(between, Qt::SkipEmptyParts))
        widest = std::max(widest, metrics.horizontalAdvance(word) + kHair);
    return room <= 0 || widest <= room ? size : std::floor(size * std::max(kLeast, (room - kHair) / widest));
}

QFont Theme::font(qreal pixels, int weight)
{
    QFont font; // the program's own in all else
    font.setFamily(family());
    font.setPixelSize(std::max(1, static_cast<int>(pixels)));
    font.setWeight(static_cast<QFont::Weight>(weight));
    return font;
}

} // namespace firstdew
