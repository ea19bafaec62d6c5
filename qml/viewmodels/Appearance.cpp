#include "Appearance.h"

#include "Store.h"
#include "words/Names.h"

#include <QGuiApplication>
#include <QLocale>
#include <QPalette>
#include <QQmlEngine>

namespace firstdew::viewmodels {

namespace {
Appearance* theAppearance = nullptr;
constexpr qreal kLeastScale = 0.85;
constexpr qreal kMostScale = 2.0;
} // namespace

Appearance::Appearance(Asked asked) : m_asked(std::move(asked))
{
    theAppearance = this;
    if (auto* shown = qobject_cast<QGuiApplication*>(
            QCoreApplication::instance())) { // reminders are looked after without a window
        connect(shown, &QGuiApplication::layoutDirectionChanged, this, &Appearance::directionChanged);
        connect(this, &Appearance::changed, this, &Appearance::dressTheme); // first of all who listen
        dressTheme();
    }
    connect(Store::instance(), &Store::changed, this, &Appearance::changed);
}

void Appearance::dressTheme() { m_theme.take(dark(), textScale()); }

Appearance* Appearance::instance() { return theAppearance; }

Appearance* Appearance::create(QQmlEngine*, QJSEngine*)
{
    QQmlEngine::setObjectOwnership(theAppearance, QQmlEngine::CppOwnership);
    return theAppearance;
}

QString Appearance::theme() const
{
    return m_asked.theme.isEmpty() ? Store::instance()->preferenceOr("theme", "system") : m_asked.theme;
}

bool Appearance::rightToLeft() const { return QGuiApplication::layoutDirection() == Qt::RightToLeft; }

bool Appearance::dark() const
{
    const QString chosen = theme();
    if (chosen == QLatin1String("system"))
        return QGuiApplication::palette().color(QPalette::Window).lightnessF() < 0.5;
    return chosen == QLatin1String("dark");
}

qreal Appearance::textScale() const
{
    const qreal asked =
        m_asked.textScale > 0 ? m_asked.textScale : Store::instance()->preferenceOr("text-scale", "1").toDouble();
    return qBound(kLeastScale, asked, kMostScale);
}

QString Appearance::language() const
{
    if (!m_asked.language.isEmpty())
        return m_asked.language;
    const QString system = QLocale::system().name().left(2);
    const bool known = words::languages().contains(system);
    return Store::instance()->preferenceOr("language", known ? system : QStringLiteral("en"));
}

// A choice made by hand overrules what the start asked for.
void Appearance::setTheme(const QString& theme)
{
    m_asked.theme.clear();
    Store::instance()->setPreference("theme", theme);
}

void Appearance::showTheme(const QString& theme)
{
    m_asked.theme = theme;
    emit changed();
}

void Appearance::setTextScale(qreal scale)
{
    m_asked.textScale = 0;
    Store::instance()->setPreference("text-scale", QString::number(scale));
}

void Appearance::setLanguage(const QString& language)
{
    m_asked.language.clear();
    Store::instance()->setPreference("language", language);
}

} // namespace firstdew::viewmodels
