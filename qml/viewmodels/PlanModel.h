#pragma once

#include "PlanValues.h"
#include "Store.h"

namespace firstdew::viewmodels {

/// What stands in the plan, and the choices that change it.
class PlanModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QList<firstdew::ui::SitePlan> sites READ sites NOTIFY changed)
    /// For each kind of session in use and each current.
    Q_PROPERTY(QList<firstdew::ui::LimitLine> limits READ limits NOTIFY changed)
    Q_PROPERTY(firstdew::ui::MachineKit machine READ machine NOTIFY changed)
    Q_PROPERTY(firstdew::ui::ReminderPlan reminders READ reminders NOTIFY changed)
    Q_PROPERTY(QList<firstdew::ui::SheetInUse> careSheets READ careSheets NOTIFY changed)
    Q_PROPERTY(firstdew::ui::PersonInUse person READ person NOTIFY changed)
    Q_PROPERTY(firstdew::ui::ScreeningDue::Value screeningDue READ screeningDue NOTIFY changed)
    Q_PROPERTY(QList<firstdew::ui::HealthQuestion> questions READ questions NOTIFY changed)
    /// Those of them that stand in the way of a session.
    Q_PROPERTY(QList<firstdew::ui::HealthQuestion> blocking READ blocking NOTIFY changed)
    /// What the first start has still to ask.
    Q_PROPERTY(firstdew::ui::SetUpStep::Value setUpStep READ setUpStep NOTIFY changed)
    Q_PROPERTY(double shortest READ shortest CONSTANT)
    Q_PROPERTY(double tallest READ tallest CONSTANT)
    Q_PROPERTY(double lightest READ lightest CONSTANT)
    Q_PROPERTY(double heaviest READ heaviest CONSTANT)
    /// What is heard during a session.
    Q_PROPERTY(firstdew::ui::SoundChoice::Value sound READ sound WRITE setSound NOTIFY changed)
    /// Whose voice speaks during a session.
    Q_PROPERTY(firstdew::ui::VoiceChoice::Value voice READ voice WRITE setVoice NOTIFY changed)
    /// Whether a pedal or a switch stops a session like a key.
    Q_PROPERTY(bool pedal READ pedal WRITE setPedal NOTIFY changed)
    /// Whether each step of a session is felt; the alarm is felt whatever was chosen.
    Q_PROPERTY(bool vibration READ vibration WRITE setVibration NOTIFY changed)
    /// The chance of dampness at which a top-up counts as due.
    Q_PROPERTY(double risk READ risk NOTIFY changed)
    Q_PROPERTY(QList<firstdew::ui::AwayDays> away READ away NOTIFY changed)

public:
    explicit PlanModel(Store& store);
    static PlanModel* create(QQmlEngine*, QJSEngine*);

    [[nodiscard]] QList<ui::SitePlan> sites() const;
    [[nodiscard]] QList<ui::LimitLine> limits() const;
    [[nodiscard]] ui::MachineKit machine() const;
    [[nodiscard]] ui::ReminderPlan reminders() const;
    [[nodiscard]] QList<ui::SheetInUse> careSheets() const;
    [[nodiscard]] ui::PersonInUse person() const;
    [[nodiscard]] ui::ScreeningDue::Value screeningDue() const;
    [[nodiscard]] QList<ui::HealthQuestion> questions() const;
    [[nodiscard]] QList<ui::HealthQuestion> blocking() const;
    [[nodiscard]] ui::SetUpStep::Value setUpStep() const;
    [[nodiscard]] ui::SoundChoice::Value sound() const;
    [[nodiscard]] ui::VoiceChoice::Value voice() const;
    [[nodiscard]] bool pedal() const;
    void setPedal(bool there);
    [[nodiscard]] bool vibration() const;
    [[nodiscard]] double risk() const;
    /// Sessions that a return of dampness costs at that risk.
    Q_INVOKABLE static double returnCostAt(double risk);
    [[nodiscard]] QList<ui::AwayDays> away() const;
    void setSound(ui::SoundChoice::Value sound);
    void setVoice(ui::VoiceChoice::Value voice);
    void setVibration(bool on);

    /// The plan of what a session treats; not known where that is not in use.
    Q_INVOKABLE firstdew::ui::SitePlan planOf(firstdew::ui::Site::Value treatedAs) const;
    Q_INVOKABLE bool uses(firstdew::ui::Site::Value site) const;
    Q_INVOKABLE void cautionsRead();
    Q_INVOKABLE bool setPerson(const QString& name, const QString& birth, double heightCm, double weightKg,
                               const QString& adult);
    Q_INVOKABLE bool useSite(firstdew::ui::Site::Value site, bool inUse);
    Q_INVOKABLE bool setMachine(const QString& name, bool direct, bool pulsed, firstdew::ui::PolaritySwap::Value swap,
                                bool remote, firstdew::ui::PowerSource::Value power, double pad);
    Q_INVOKABLE bool cellsChanged();
    /// A chance from 0.01 to 0.9.
    Q_INVOKABLE void setRisk(double chance);
    /// Times as minutes of the day.
    Q_INVOKABLE bool setReminders(bool on, int checkIn, int sessions, int quietFrom, int quietUntil,
                                  bool backupMonthly);
    /// Reminders are on, with a check-in at that minute of the day; the rest stays as it is.
    Q_INVOKABLE bool remindAt(int checkIn);
    /// Answers to all questions: those of the rows named are yes.
    Q_INVOKABLE bool answerQuestions(const QList<firstdew::ui::ScreeningRow::Value>& yes);
    Q_INVOKABLE bool startCourse(firstdew::ui::Site::Value site, firstdew::ui::CourseTemplate::Value plan, int day,
                                 const QList<firstdew::ui::Weekday::Value>& free);
    Q_INVOKABLE bool moveCourse(firstdew::ui::Site::Value site, int number, int day);
    Q_INVOKABLE bool setPace(firstdew::ui::Site::Value site, firstdew::ui::Pace::Value pace);
    Q_INVOKABLE bool addAway(int from, int to);
    Q_INVOKABLE bool pause(firstdew::ui::Site::Value site, bool paused);
    Q_INVOKABLE bool clearance(firstdew::ui::ScreeningRow::Value row, const QString& who, int day);
    Q_INVOKABLE bool addPerson(const QString& name, const QString& birth, const QString& adult);
    /// Whether a text is a day that has been (a birthday, say).
    Q_INVOKABLE bool isPastDay(const QString& typed) const;
    /// Bounds of a height in centimetres and of a weight in kilograms.
    [[nodiscard]] static double shortest();
    [[nodiscard]] static double tallest();
    [[nodiscard]] static double lightest();
    [[nodiscard]] static double heaviest();
    /// Whether somebody born on that day counts as a child.
    Q_INVOKABLE bool isChild(const QString& birth) const;

signals:
    void changed();

private:
    Store& m_store;
};

} // namespace firstdew::viewmodels
