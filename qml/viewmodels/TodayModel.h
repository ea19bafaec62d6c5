#pragma once

#include "Store.h"

namespace firstdew::viewmodels {

/// What Today shows and does. Sites, levels, stages and reasons cross as their tokens; pages put them into words.
class TodayModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Per site: site, treatedAs, stage, advice, title, checkedIn, level, with, reasons, next, lastSession.
    Q_PROPERTY(QVariantList sites READ sites NOTIFY changed)
    /// Index of what matters now, or -1.
    Q_PROPERTY(int first READ first NOTIFY changed)
    /// Fourteen days: date, sites: [{site, chance (of clamminess begun, -1 unknown), bath}].
    Q_PROPERTY(QVariantList strip READ strip NOTIFY changed)
    /// The last seven days before today: date, sites: [{site, level or ""}].
    Q_PROPERTY(QVariantList lately READ lately NOTIFY changed)
    /// Sites are in use, but the machine or the answers to the health questions are not all known.
    Q_PROPERTY(bool unready READ unready NOTIFY changed)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY changed)

public:
    explicit TodayModel(QObject* parent = nullptr);

    [[nodiscard]] QVariantList sites() const;
    [[nodiscard]] int first() const;
    [[nodiscard]] QVariantList strip() const;
    [[nodiscard]] QVariantList lately() const;
    [[nodiscard]] bool unready() const;
    [[nodiscard]] bool canUndo() const { return !m_lastCheckIn.empty(); }

    /// Records (or, where the day has one, corrects) the level of `site` on `date` (ISO; empty: today).
    Q_INVOKABLE bool checkIn(const QString& site, const QString& level, const QString& date = {});
    /// Sets the circumstances of that day's check-in, which must be there.
    Q_INVOKABLE bool setCircumstances(const QString& site, const QStringList& with, const QString& date = {});
    /// Takes back the last check-in made here.
    Q_INVOKABLE void undo();
    /// Answers the call for a top-up: start-now, this-evening, tomorrow, not-this-time.
    Q_INVOKABLE bool answer(const QString& site, const QString& answer, const QString& reason = {});
    Q_INVOKABLE bool reviewDone(const QString& treatedAs, bool keepGoing);

signals:
    void changed();

private:
    std::string m_lastCheckIn;
    bool m_lastWasCorrection = false;
};

} // namespace firstdew::viewmodels
