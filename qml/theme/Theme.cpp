#include "Theme.h"

#include <QQmlEngine>

namespace firstdew {

namespace {
Theme* theTheme = nullptr;
} // namespace

Theme::Theme(QObject* owner)
{
    if (owner != nullptr)
        theTheme = this;
}

Theme::~Theme()
{
    if (theTheme == this)
        theTheme = nullptr;
}

Theme* Theme::instance() { return theTheme; }

Theme* Theme::create(QQmlEngine*, QJSEngine*)
{
    QQmlEngine::setObjectOwnership(theTheme, QQmlEngine::CppOwnership);
    return theTheme;
}

void Theme::take(bool dark, qreal textScale)
{
    if (dark == m_dark && textScale == m_textScale)
        return;
    m_dark = dark;
    m_textScale = textScale;
    emit changed();
}

std::array<QFont, 6> Theme::fontsOfToday() const
{
    const auto font = [](qreal pixels, int weight) {
        QFont f;
        f.setFamily(family());
        f.setPixelSize(static_cast<int>(pixels));
        f.setWeight(static_cast<QFont::Weight>(weight));
        return f;
    };
    return {font(title(), kStrong), font(body(), QFont::Normal), font(body(), kStrong), font(label(), QFont::Normal), font(label(), kStrong), font(lead(), QFont::Normal)};
}

} // namespace firstdew
