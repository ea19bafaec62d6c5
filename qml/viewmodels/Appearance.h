#pragma once

#include "Phrases.h"
#include "theme/Theme.h"

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

class QQmlEngine;
class QJSEngine;

namespace firstdew::viewmodels {

/// How the interface is to look: chosen by the person (kept as preferences) unless the start asked otherwise.
class Appearance : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool dark READ dark NOTIFY changed)
    Q_PROPERTY(QString theme READ theme WRITE setTheme NOTIFY changed)
    Q_PROPERTY(qreal textScale READ textScale WRITE setTextScale NOTIFY changed)
    Q_PROPERTY(QString language READ language WRITE setLanguage NOTIFY changed)
    /// One reads from right to left.
    Q_PROPERTY(bool rightToLeft READ rightToLeft NOTIFY directionChanged)
    /// Texts, dates and numbers of the present language.
    Q_PROPERTY(firstdew::viewmodels::Phrases* phrases READ phrases NOTIFY changed)
    Q_PROPERTY(QString startPage READ startPage CONSTANT)
    Q_PROPERTY(int startWidth READ startWidth CONSTANT)
    Q_PROPERTY(int startHeight READ startHeight CONSTANT)
    Q_PROPERTY(QString version READ version CONSTANT)

public:
    /// What the command line asked for; empty or 0: not asked.
    struct Asked {
        QString theme, language, page = QStringLiteral("today"), version;
        double textScale = 0;
        int width = 390, height = 844;
    };
    explicit Appearance(Asked asked);
    static Appearance* instance();
    static Appearance* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] bool dark() const;
    [[nodiscard]] QString theme() const; ///< light, dark or system
    [[nodiscard]] qreal textScale() const;
    [[nodiscard]] QString language() const; ///< en, de, es, ar; the system's where never chosen
    [[nodiscard]] bool rightToLeft() const;
    [[nodiscard]] Phrases* phrases() { return &m_phrases; }
    [[nodiscard]] QString startPage() const { return m_asked.page; }
    [[nodiscard]] int startWidth() const { return m_asked.width; }
    [[nodiscard]] int startHeight() const { return m_asked.height; }
    [[nodiscard]] QString version() const { return m_asked.version; }
    void setTheme(const QString& theme);
    /// Shows a theme without recording it as chosen.
    void showTheme(const QString& theme);
    void setTextScale(qreal scale);
    void setLanguage(const QString& language);

signals:
    void changed();
    void directionChanged();

private:
    void dressTheme();

    Asked m_asked;
    Theme m_theme{this};
    Phrases m_phrases{this};
};

} // namespace firstdew::viewmodels
