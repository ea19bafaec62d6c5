#include "Appearance.h"

#include "Edge.h"
#include "Store.h"
#include "Tokens.h"
#include "words/Names.h"

#include <QGuiApplication>
#include <QLocale>
#include <QPalette>

namespace firstdew::viewmodels {

namespace {
constexpr qreal kHalf = 0.5; // of the way from black to white
constexpr qreal kLeastScale = 0.85;
constexpr qreal kMostScale = 2.0;
} // namespace

Appearance::Appearance(Store& store, Asked asked) : m_store(store), m_asked(std::move(asked)), m_phrases(store, this)
{
    if (auto* shown = qobject_cast<QGuiApplication*>(
            QCoreApplication::instance())) { // reminders are looked after without a window
        connect(shown, &QGuiApplication::layoutDirectionChanged, this, &Appearance::directionChanged);
        connect(this, &Appearance::changed, this, &Appearance::applyTheme); // first of all who listen
        applyTheme();
    }
    connect(&store, &Store::changed, this, &Appearance::changed);
}

void Appearance::applyTheme()
{
    m_theme.follow(dark(), qBound(kLeastScale, textScale() * m_systemScale, kMostScale), m_contrast);
}

void Appearance::countHours(words::Hours hours)
{
    words::countHours(hours);
    emit changed();
}

ui::ThemeChoice::Value Appearance::theme() const
{
    return ui::shown(m_asked.theme.value_or(m_store.diary().preferences.theme));
}

ui::Place::Value Appearance::startPlace() const { return valueOf(kPlaceTokens, m_asked.place, ui::Place::Today); }

bool Appearance::rightToLeft() const { return QGuiApplication::layoutDirection() == Qt::RightToLeft; }

bool Appearance::dark() const
{
    const auto chosen = theme();
    return chosen == ui::ThemeChoice::System ? QGuiApplication::palette().color(QPalette::Window).lightnessF() < kHalf
                                             : chosen == ui::ThemeChoice::Dark;
}

qreal Appearance::textScale() const
{
    const qreal asked = m_asked.textScale > 0 ? m_asked.textScale : m_store.diary().preferences.textScale;
    return qBound(kLeastScale, asked, kMostScale);
}

QString Appearance::language() const
{
    if (!m_asked.language.isEmpty())
        return m_asked.language;
    if (const auto& chosen = m_store.diary().preferences.language)
        return QString::fromStdString(*chosen);
    return words::languageLike(QLocale::system());
}

// A choice made by hand overrules what the start asked for.
void Appearance::setTheme(ui::ThemeChoice::Value theme)
{
    m_asked.theme.reset();
    if (const auto chosen = ui::core(theme); chosen && *chosen != m_store.diary().preferences.theme)
        m_store.append(diary::themePreference(*chosen));
}

void Appearance::showTheme(ui::ThemeChoice::Value theme)
{
    m_asked.theme = ui::core(theme);
    emit changed();
}

void Appearance::setTextScale(qreal scale)
{
    m_asked.textScale = 0;
    if (scale != m_store.diary().preferences.textScale)
        m_store.append(diary::textScalePreference(scale));
}

void Appearance::setLanguage(const QString& language)
{
    m_asked.language.clear();
    if (language.toStdString() != m_store.diary().preferences.language)
        m_store.append(diary::languagePreference(language.toStdString()));
}

void Appearance::see(qreal textScale, bool contrast)
{
    if (textScale == m_systemScale && contrast == m_contrast)
        return;
    m_systemScale = textScale;
    m_contrast = contrast;
    emit changed();
}

void Appearance::setStill(bool still)
{
    if (still == m_still)
        return;
    m_still = still;
    emit motionChanged();
}

} // namespace firstdew::viewmodels
