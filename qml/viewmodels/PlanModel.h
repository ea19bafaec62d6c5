#pragma once

#include "Store.h"

namespace firstdew::viewmodels {

/// What stands in the plan, and the choices that change it.
class PlanModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    /// Per diary site: site, treatedAs, stage, paused, hdssStart, hdssNow, sessions: [{number,date,done,shift}],
    /// windowEnd, fits, overrun.
    Q_PROPERTY(QVariantList sites READ sites NOTIFY changed)
    /// Per kind of session in use: site, waveform, limit, allowed, source (in words).
    Q_PROPERTY(QVariantList limits READ limits NOTIFY changed)
    Q_PROPERTY(QVariantMap machine READ machine NOTIFY changed)
    Q_PROPERTY(QVariantMap reminders READ reminders NOTIFY changed)
    Q_PROPERTY(QVariantMap careSheet READ careSheet NOTIFY changed)
    Q_PROPERTY(QVariantMap person READ person NOTIFY changed)
    /// none, short-question or full, and the rows that stand in the way.
    Q_PROPERTY(QString screeningDue READ screeningDue NOTIFY changed)
    Q_PROPERTY(QVariantList screeningRows READ screeningRows NOTIFY changed)
    /// What is heard during a bath: both, voice or tones.
    Q_PROPERTY(QString sound READ sound NOTIFY changed)
    /// Whose voice speaks during a bath: recorded or device.
    Q_PROPERTY(QString voice READ voice NOTIFY changed)
    /// Whether each step of a bath is felt; the alarm is felt whatever was chosen.
    Q_PROPERTY(bool vibration READ vibration WRITE setVibration NOTIFY changed)
    /// The chance of dampness at which a top-up counts as due.
    Q_PROPERTY(double risk READ risk NOTIFY changed)
    Q_PROPERTY(QVariantList away READ away NOTIFY changed)

public:
    explicit PlanModel(QObject* parent = nullptr);
    [[nodiscard]] QVariantList sites() const;
    [[nodiscard]] QVariantList limits() const;
    [[nodiscard]] QVariantMap machine() const;
    [[nodiscard]] QVariantMap reminders() const;
    [[nodiscard]] QVariantMap careSheet() const;
    [[nodiscard]] QVariantMap person() const;
    [[nodiscard]] QString screeningDue() const;
    [[nodiscard]] QVariantList screeningRows() const;
    [[nodiscard]] QString sound() const;
    [[nodiscard]] QString voice() const;
    [[nodiscard]] bool vibration() const;
    void setVibration(bool on);
    [[nodiscard]] double risk() const;
    [[nodiscard]] QVariantList away() const;

    Q_INVOKABLE bool setPerson(const QString& name, const QString& birth, double heightCm, double weightKg,
                               const QString& adult);
    Q_INVOKABLE bool useSite(const QString& site, bool inUse);
    Q_INVOKABLE bool setMachine(const QString& name, bool direct, bool pulsed, const QString& swap, bool remote,
                                const QString& power);
    Q_INVOKABLE bool cellsChanged();
    /// A chance from 0.01 to 0.9.
    Q_INVOKABLE void setRisk(double chance);
    /// Times as minutes of the day.
    Q_INVOKABLE bool setReminders(bool on, int checkIn, int sessions, int quietFrom, int quietUntil,
                                  bool backupMonthly);
    Q_INVOKABLE bool setScreening(const QStringList& asked, const QStringList& yes);
    Q_INVOKABLE bool startCourse(const QString& site, const QString& plan, const QString& start,
                                 const QStringList& free);
    Q_INVOKABLE bool moveCourse(const QString& site, int number, const QString& date);
    Q_INVOKABLE bool addAway(const QString& from, const QString& to);
    Q_INVOKABLE bool pause(const QString& site, bool paused);
    Q_INVOKABLE bool clearance(const QString& row, const QString& who);
    Q_INVOKABLE bool addPerson(const QString& name, const QString& birth, const QString& adult);
    /// Whether `iso` is a day that has been (a birthday, say).
    Q_INVOKABLE bool isPastDay(const QString& iso) const;
    /// adult or child, by the birthday given.
    Q_INVOKABLE QString ageGroup(const QString& birth) const;

signals:
    void changed();
};

} // namespace firstdew::viewmodels
