#pragma once

#include "Enums.h"
#include "Phrases.h"
#include "theme/Theme.h"
#ifndef Q_MOC_RUN // moc of Qt 6.4 cannot read <concepts>, which this brings in
#include "diary/Preferences.h"
#include "words/Names.h"
#endif

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

class QQmlEngine;
class QJSEngine;

namespace firstdew::viewmodels {

class Store;

/// How the interface is to look: chosen by the person (kept as preferences) unless the start asked otherwise.
class Appearance : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool dark READ dark NOTIFY changed)
    Q_PROPERTY(firstdew::ui::ThemeChoice::Value theme READ theme WRITE setTheme NOTIFY changed)
    /// As chosen here, without the system's own.
    Q_PROPERTY(qreal textScale READ textScale WRITE setTextScale NOTIFY changed)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)
    /// One reads from right to left.
    Q_PROPERTY(bool rightToLeft READ rightToLeft NOTIFY directionChanged)
    /// How long something that comes in moves, in milliseconds; 0 where nothing may move.
    Q_PROPERTY(int motion READ motion NOTIFY motionChanged)
    /// Texts, dates and numbers of the present language.
    Q_PROPERTY(firstdew::viewmodels::Phrases* phrases READ phrases NOTIFY changed)
    Q_PROPERTY(firstdew::ui::Place::Value startPlace READ startPlace CONSTANT)
    Q_PROPERTY(int startWidth READ startWidth CONSTANT)
    Q_PROPERTY(int startHeight READ startHeight CONSTANT)
    Q_PROPERTY(QString version READ version CONSTANT)

public:
    /// What the command line asked for, as it writes it; empty or 0: not asked.
    struct Asked {
        std::optional<diary::Theme> theme;
        QString language;
        std::string place = "today";
        QString version;
        double textScale = 0;
        int width = 390, height = 844;
    };
    Appearance(Store& store, Asked asked);
    static Appearance* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] bool dark() const;
    [[nodiscard]] ui::ThemeChoice::Value theme() const;
    [[nodiscard]] qreal textScale() const;
    [[nodiscard]] QString language() const; ///< one of words::languages(); the system's where never chosen
    [[nodiscard]] bool rightToLeft() const;
    [[nodiscard]] int motion() const { return m_still ? 0 : kMotionMs; }
    [[nodiscard]] Phrases* phrases() { return &m_phrases; }
    [[nodiscard]] ui::Place::Value startPlace() const;
    [[nodiscard]] int startWidth() const { return m_asked.width; }
    [[nodiscard]] int startHeight() const { return m_asked.height; }
    [[nodiscard]] QString version() const { return m_asked.version; }
    /// Keeps those sides of the window free of everything but backgrounds.
    void keepFree(const QMarginsF& safe) { m_theme.keepFree(safe); }
    /// Times of the day are counted so from now on.
    void countHours(words::Hours hours);
    void setTheme(ui::ThemeChoice::Value theme);
    /// Shows a theme without recording it as chosen.
    void showTheme(ui::ThemeChoice::Value theme);
    void setTextScale(qreal scale);
    void setLanguage(const QString& language);
    /// How much larger than usual the system wants text, which counts beside what the person chose here, and whether it
    /// wants more contrast.
    void see(qreal textScale, bool contrast);
    /// Whether the system asks for no motion. Until it has answered nothing moves.
    void setStill(bool still);

signals:
    void changed();
    void directionChanged();
    void motionChanged();

private:
    static constexpr int kMotionMs = 160; ///< long enough to see where something comes from

    void applyTheme();

    Store& m_store;
    Asked m_asked;
    Theme m_theme{this};
    Phrases m_phrases;
    bool m_still = true;
    qreal m_systemScale = 1;
    bool m_contrast = false;
};

} // namespace firstdew::viewmodels
