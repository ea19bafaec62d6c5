#pragma once

#include "Store.h"

namespace firstdew::viewmodels {

/// The diary as it is read: days with levels, and the baths among them.
class DiaryModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QStringList sites READ sites NOTIFY changed)
    /// Days from the first check-in or session to today; 0 where there is none.
    Q_PROPERTY(int daysKept READ daysKept NOTIFY changed)

public:
    explicit DiaryModel(QObject* parent = nullptr);
    [[nodiscard]] QStringList sites() const;
    [[nodiscard]] int daysKept() const;
    /// Check-ins of `site` from `from` to `to` (ISO): [{day (offset from `from`), date, level (0-3), with}].
    Q_INVOKABLE QVariantList levels(const QString& site, const QString& from, const QString& to) const;
    /// Baths that treat `site`: [{day, date, completed, comfortable (mA or -1), peak, comfort, waveform}].
    Q_INVOKABLE QVariantList baths(const QString& site, const QString& from, const QString& to) const;
    /// Everything of one day: [{id, kind, site, ...}], latest last.
    Q_INVOKABLE QVariantList day(const QString& date) const;
    Q_INVOKABLE bool addHdss(const QString& site, int score);
    Q_INVOKABLE bool addSideEffect(const QString& site, const QStringList& skin, const QString& note);
    Q_INVOKABLE bool addWeighing(const QString& site, double beforeMg, double afterMg, double minutes);
    /// Takes the entry of that id out of the count; the record keeps it.
    Q_INVOKABLE bool withdraw(const QString& id);
    Q_INVOKABLE QString plusDays(const QString& date, int days) const;

signals:
    void changed();
};

} // namespace firstdew::viewmodels
