#pragma once

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace firstdew::viewmodels {

/// The words for the tokens, dates and numbers that cross to the pages. Reached as `Appearance.phrases`, so that every text
/// is asked for anew when another language is chosen.
class Phrases : public QObject {
    Q_OBJECT
    QML_ANONYMOUS
    /// The tokens of the closed sets that the pages offer, each set in its own order.
    Q_PROPERTY(QStringList levels READ levels CONSTANT)
    Q_PROPERTY(QStringList sites READ sites CONSTANT)
    Q_PROPERTY(QStringList circumstances READ circumstances CONSTANT)
    Q_PROPERTY(QStringList skinFindings READ skinFindings CONSTANT)
    Q_PROPERTY(QStringList weekdays READ weekdays CONSTANT)
    Q_PROPERTY(QStringList languages READ languages CONSTANT)

public:
    explicit Phrases(QObject* parent) : QObject(parent) {}
    [[nodiscard]] QStringList levels() const;
    /// Width of the widest level's name in that size and weight.
    Q_INVOKABLE qreal widestLevel(qreal size, int weight) const;
    [[nodiscard]] QStringList sites() const;
    [[nodiscard]] QStringList circumstances() const;
    [[nodiscard]] QStringList skinFindings() const;
    [[nodiscard]] QStringList weekdays() const;
    [[nodiscard]] QStringList languages() const;
    Q_INVOKABLE QString languageName(const QString& language) const;

    Q_INVOKABLE QString place(const QString& place) const;
    /// Of a diary site or of what a session treats.
    Q_INVOKABLE QString site(const QString& token) const;
    /// What a session treats, where a site of the diary has the same token: "Both hands".
    Q_INVOKABLE QString treated(const QString& token) const;
    Q_INVOKABLE QString bath(const QString& token) const;
    Q_INVOKABLE QString level(const QString& token) const;
    /// "Hands: clammy" in one; the level alone without a site.
    Q_INVOKABLE QString siteIs(const QString& site, const QString& level) const;
    Q_INVOKABLE QString circumstance(const QString& token) const;
    Q_INVOKABLE QString waveform(const QString& token) const;
    Q_INVOKABLE QString stage(const QString& token) const;
    Q_INVOKABLE QString skin(const QString& token) const;
    Q_INVOKABLE QString comfort(const QString& token) const;
    Q_INVOKABLE QString course(const QString& token) const;
    Q_INVOKABLE QString screening(const QString& token) const;
    Q_INVOKABLE QString screeningShort(const QString& token) const;
    Q_INVOKABLE QString weekday(const QString& token) const;
    Q_INVOKABLE QStringList cautions() const;

    /// Dates come as ISO text; an empty one gives an empty text.
    Q_INVOKABLE QString dayLong(const QString& iso) const;
    Q_INVOKABLE QString dayFull(const QString& iso) const;
    Q_INVOKABLE QString dayYear(const QString& iso) const;
    Q_INVOKABLE QString dayNumber(const QString& iso) const;
    Q_INVOKABLE QString dayShort(const QString& iso) const;
    /// Kept in its own direction within a sentence of another: paths, names, file endings.
    Q_INVOKABLE QString asWritten(const QString& text) const;
    /// Minutes of the day as 19:30.
    Q_INVOKABLE QString clock(int minutes) const;
    Q_INVOKABLE QString milliamps(double mA) const;
    Q_INVOKABLE QString percent(double share) const;
    Q_INVOKABLE QString number(double value, int decimals) const;
    /// The number somebody typed, in whichever digits and with a point or a comma; not a number where it is none.
    Q_INVOKABLE double numberIn(const QString& typed) const;
};

} // namespace firstdew::viewmodels
