#pragma once

#include "Enums.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

namespace firstdew::viewmodels {

class Store;

/// The words for the values, dates and numbers that cross to the pages. Reached as `Appearance.phrases`, so that every
/// text is asked for anew when another language is chosen.
class Phrases : public QObject {
    Q_OBJECT
    QML_ANONYMOUS
    /// The closed sets that the pages offer, each in its own order.
    Q_PROPERTY(QList<firstdew::ui::Level::Value> levels READ levels CONSTANT)
    Q_PROPERTY(QList<firstdew::ui::Site::Value> sites READ sites CONSTANT)
    Q_PROPERTY(QList<firstdew::ui::Circumstance::Value> circumstances READ circumstances CONSTANT)
    Q_PROPERTY(QList<firstdew::ui::SkinFinding::Value> skinFindings READ skinFindings CONSTANT)
    Q_PROPERTY(QList<firstdew::ui::Comfort::Value> comforts READ comforts CONSTANT)
    Q_PROPERTY(QList<firstdew::ui::Weekday::Value> weekdays READ weekdays CONSTANT)
    Q_PROPERTY(QList<firstdew::ui::OtherKind::Value> otherKinds READ otherKinds CONSTANT)
    Q_PROPERTY(QStringList languages READ languages CONSTANT)

public:
    Phrases(const Store& store, QObject* parent) : QObject(parent), m_store(store) {}
    [[nodiscard]] QList<ui::Level::Value> levels() const;
    [[nodiscard]] QList<ui::Site::Value> sites() const;
    [[nodiscard]] QList<ui::Circumstance::Value> circumstances() const;
    [[nodiscard]] QList<ui::SkinFinding::Value> skinFindings() const;
    [[nodiscard]] QList<ui::Comfort::Value> comforts() const;
    [[nodiscard]] QList<ui::Weekday::Value> weekdays() const;
    [[nodiscard]] QList<ui::OtherKind::Value> otherKinds() const;
    [[nodiscard]] QStringList languages() const;
    Q_INVOKABLE QString languageName(const QString& language) const;
    /// Width of the widest level's name in that size and weight.
    Q_INVOKABLE qreal widestLevel(qreal size, int weight) const;

    Q_INVOKABLE QString place(firstdew::ui::Place::Value place) const;
    Q_INVOKABLE QString site(firstdew::ui::DiarySite::Value site) const;
    /// What a session treats: "Both hands".
    Q_INVOKABLE QString treated(firstdew::ui::Site::Value site) const;
    Q_INVOKABLE QString bath(firstdew::ui::Site::Value site) const;
    Q_INVOKABLE QString level(firstdew::ui::Level::Value level) const;
    /// "Hands: clammy" in one.
    Q_INVOKABLE QString siteIs(firstdew::ui::DiarySite::Value site, firstdew::ui::Level::Value level) const;
    /// "Hands: Course": a name and what belongs to it.
    Q_INVOKABLE static QString pair(const QString& what, const QString& says);
    /// A name of ours as it goes on a sentence, after a colon or a comma.
    Q_INVOKABLE static QString within(const QString& name);
    Q_INVOKABLE QString circumstance(firstdew::ui::Circumstance::Value circumstance) const;
    Q_INVOKABLE QString waveform(firstdew::ui::Waveform::Value waveform) const;
    Q_INVOKABLE QString stage(firstdew::ui::Stage::Value stage) const;
    Q_INVOKABLE QString skin(firstdew::ui::SkinFinding::Value finding) const;
    Q_INVOKABLE QString comfort(firstdew::ui::Comfort::Value comfort) const;
    Q_INVOKABLE QString course(firstdew::ui::CourseTemplate::Value plan) const;
    Q_INVOKABLE QString otherKind(firstdew::ui::OtherKind::Value what) const;
    Q_INVOKABLE QString screeningShort(firstdew::ui::ScreeningRow::Value row) const;
    Q_INVOKABLE QString weekday(firstdew::ui::Weekday::Value day) const;
    /// The text of a drawing for whoever does not see it.
    Q_INVOKABLE QString drawing(firstdew::ui::Subject::Value subject) const;
    Q_INVOKABLE QStringList cautions() const;

    /// Days are days since 1970-01-01; 0 gives an empty text.
    Q_INVOKABLE QString dayLong(int day) const;
    Q_INVOKABLE QString dayFull(int day) const;
    Q_INVOKABLE QString dayYear(int day) const;
    Q_INVOKABLE QString dayNumber(int day) const;
    Q_INVOKABLE QString dayShort(int day) const;
    /// Kept in its own direction within a sentence of another: paths, names, file endings.
    Q_INVOKABLE QString asWritten(const QString& text) const;
    /// Minutes of the day, as 19:30 or 7:30 PM.
    Q_INVOKABLE QString clock(int minutes) const;
    Q_INVOKABLE QString milliamps(double mA) const;
    Q_INVOKABLE QString percent(double share) const;
    Q_INVOKABLE QString milligrams(double value, int decimals) const;
    Q_INVOKABLE QString minutes(double value) const;
    /// "Heat, stress", with the comma of the language.
    Q_INVOKABLE QString listed(const QStringList& parts) const;
    /// The day on which a week begins; Sunday is 0.
    Q_INVOKABLE int firstWeekday() const;
    Q_INVOKABLE QString number(double value, int decimals) const;
    /// The same with as many decimals as it needs, one at most.
    Q_INVOKABLE QString shortNumber(double value) const;
    /// As the language writes it.
    Q_INVOKABLE QString decimalPoint() const;
    /// The number somebody typed, in whichever digits and with a point or a comma; not a number where it is none.
    Q_INVOKABLE static double numberIn(const QString& typed);

private:
    const Store& m_store;
};

} // namespace firstdew::viewmodels
